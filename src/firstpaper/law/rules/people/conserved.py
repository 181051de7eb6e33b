"""The other side has a conservator."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Special
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import took_part
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _


@rule(
    "The other side has a conservator",
    cite=("Code Civ. Proc. 416.70", "Code Civ. Proc. 372(a)(1)"),
    since=date(2023, 1, 1),
    not_modelled="Who has to act for the other side, and whether a judge lets the second set of papers go.",
)
def conserved(case: Case, on: date) -> Found | None:
    """Where a court named a conservator, the papers go to the conservator and to the person, both.

    What the law says. Two sets are handed over: one to the conservator, one to the spouse. Only the court
    can let you leave out the second. In the case, a conservator of the estate acts for the spouse, or
    somebody whom the judge names for it (a guardian ad litem).

    If you are the conservator. You cannot stand on both sides. Somebody else must act for your spouse.

    What to do. Talk to a lawyer before you file and before you pay the fee. Have the court and the number of
    the conservatorship case at hand: it is another case to tell the court of.

    An example. Her brother is her conservator. He is given one set, and she another.
    """
    special = known(case.people.special) or ()
    if Special.OTHER_SIDE_CONSERVED not in special or took_part(case, on):
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "The other side has a conservator. The papers must go to the conservator and to your spouse or "
            "partner, and somebody must act for them in the case."
        ),
        _("Do this before you pay the fee: {help}").format(help=help_first()),
        facts=("people.special",),
    )
