"""Attorney's fees and costs."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Fees
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import void, voidable
from firstpaper.law.register import rule
from firstpaper.locale import _

FEES = "requests.fees"


@rule(
    "Attorney's fees and costs",
    cite=("Fam. Code 2030(a)", "Fam. Code 2031(a)-(b)", "Fam. Code 2255"),
    since=date(2011, 1, 1),
    not_modelled="Whether and how much a court would order.",
)
def fees(case: Case, on: date) -> list[Found]:
    """The court can order the one with more money to help the other pay for a lawyer, if that is asked
    for.

    What the law says. The court looks at the income and needs of both, and can make one pay what is
    reasonable for the other's lawyer. Somebody without a lawyer can ask for money to hire one. During
    the case it is asked for by motion. In a nullity of a voidable marriage it goes only to a party who
    did no wrong and did not know what was amiss.

    Does the petition have to ask? There are two views. The law itself lets you bring the motion at any time
    before the judgment, and where nobody answers, even ask at the hearing (Fam. Code 2031). Practitioners
    say that without the mark the petition has to be amended before a judge can order it, and that where
    nobody answers, only what was asked can be ordered. That is common practice, not the words of the law.

    What speaks for asking. The door stays open, whichever view your judge takes.

    What speaks against it. To see this on the first paper upsets some people, and a fight costs money. You
    can still bring the motion later.

    Asking that you yourself pay is hardly ever meant.

    An example. One of you earns all the money and has a lawyer. The other asks that the first help to
    pay for a second lawyer.

    What to do. Choose. We do not choose for you.
    """
    return list(_each(case))


def _each(case: Case) -> Iterator[Found]:
    told = known(case.requests.fees)
    if told is None:
        unknown = case.requests.fees is DONT_KNOW
        yield Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("You have not chosen yet whether to ask for help with a lawyer's costs."),
            _("Asking keeps the door open. Not asking keeps things calmer. The self-help center can explain.")
            if unknown
            else _("Answer that question."),
            facts=(FEES,),
        )
    elif told is Fees.NOT_ASKED:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("Your petition does not ask for help with a lawyer's costs."),
            _(
                "That keeps things calmer. If you need it later, the law lets you ask by motion while the "
                "case is open. Practitioners say that you may have to change the petition first."
            ),
            facts=(FEES,),
            cite=("common practice",),
        )
    elif told is Fees.PAID_BY_PETITIONER:
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("Your petition asks that you pay the other side's lawyer. Hardly anyone means that."),
            _("If it is a slip, choose again."),
            facts=(FEES,),
        )
    else:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("Your petition asks that the other side help to pay for a lawyer. Nothing is ordered yet."),
            _(
                "It may upset the other side. For money now, a request for order with financial forms is "
                "needed."
            ),
            facts=(FEES,),
        )
    if told is Fees.PAID_BY_RESPONDENT and is_nullity(case) and (voidable(case) or not void(case)):
        yield Found(
            Outcome.MET,
            Weight.LOOK_AGAIN,
            _(
                "In a nullity of a voidable marriage the court grants this only to somebody who did no "
                "wrong and did not know of what was amiss."
            ),
            _("Ask the self-help center or a lawyer whether that fits you."),
            facts=(FEES, "matter.kind", "grounds.nullity"),
        )
