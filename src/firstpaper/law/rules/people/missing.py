"""The other side cannot be found."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import is_filed, took_part
from firstpaper.law.measures.service import cannot_be_found, method
from firstpaper.law.register import rule
from firstpaper.law.words import spaced
from firstpaper.locale import _


@rule(
    "The other side cannot be found",
    cite=("Code Civ. Proc. 415.50(a)", "Cal. Rules of Court, rule 5.72", "Fam. Code 2011"),
    since=date(2014, 1, 1),
    not_modelled="How much searching a judge wants to see, and what a newspaper charges.",
)
def missing(case: Case, on: date) -> Found | None:
    """Where nobody knows where the other side is, a judge must first allow a newspaper or a posting.

    What the law asks. You show that you looked, and that no other way of service works. The application
    is FL-980. It lists every try: relatives, friends, old jobs, old addresses, social media, a search for
    prisons and jails, the post office. The order is FL-982. Only then the summons is printed or posted.

    The order of the papers. First FL-980 and FL-982. After that, with a newspaper: the proof that the
    newspaper signs. With a posting: FL-985, signed by whoever posted it. We have not seen these three
    forms and do not know their dates.

    Newspaper or posting. A posting is only for somebody who already has an order that waives the fees. A
    newspaper costs money, often some hundred dollars (common practice, no source).

    What it can do. The court can end the marriage and decide about land in California. It may not be able
    to order money.

    What to do. Begin to look now, before you pay the fee, and write down each try with its day. If you find
    an address, the usual ways are open, and they are better.
    """
    if not cannot_be_found(case) or took_part(case, on) or method(case) is not None:
        return None
    first = _(
        "Look for them first, and write down each try with its day. A judge must allow a newspaper or a "
        "posting: forms FL-980 and FL-982. Posting is only for somebody whose fees were waived by an order."
    )
    safe = (
        _("Looking can show them where you are. Talk to somebody who helps with violence before you begin.")
        if known(case.safety.dangers)
        else ""
    )
    before = _("Ask the self-help center before you pay the fee: a newspaper costs money too.")
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "You do not know where the other side is. Then the papers can reach them only by a newspaper or "
            "a posting. A judge may not be able to order money from somebody reached that way."
        ),
        spaced((safe, first, "" if is_filed(case) else before)),
        facts=("safety.dangers", "people.special", "respondent.mailing", "residence.respondent.lives"),
    )
