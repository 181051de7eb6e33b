"""Insurance under the orders in the summons, from 2027."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "Keep insurance going",
    cite=(
        "Fam. Code 2040(a)(3)",
        "Fam. Code 2040(a)(3) (Stats. 2025, ch. 48)",
    ),
    since=date(2026, 1, 1),
    not_modelled="A summons that the clerk issued on another day than the filing.",
)
def insurance_2027(case: Case, on: date) -> Found | None:
    """A summons issued from January 1, 2027 on also forbids letting insurance lapse or failing to renew it.

    What the orders say. Neither of you may cash in, borrow against, cancel, transfer or get rid of
    insurance held for the two of you and your children, or change who gets it. That covers life, health,
    car and disability insurance. From January 1, 2027 the orders add: do not let it lapse because a bill
    was not paid, and do not fail to renew it.

    Ask the court first. For property the orders make an exception for written consent. For insurance they
    make none.

    Which text counts. A summons carries the words of the day it was issued. We take that to be the day of
    filing. One issued in 2026 carries the old words, and no law says that it changes.

    An example. You filed on December 15, 2026. In February the car insurance is up for renewal. Your
    summons does not speak of that, but to let it lapse can still be held against you. Renew it.

    What to do. Pay the bills and renew. If you cannot pay, ask the court for an order before the cover
    ends.
    """
    filed = filed_on(case, on)
    if filed is None:
        return None
    if figure("restraining_orders.insurance_must_be_kept_up", filed).value:
        says = _(
            "Your summons also forbids letting insurance lapse and failing to renew it. For insurance it "
            "makes no exception for written consent."
        )
    elif figure("restraining_orders.insurance_must_be_kept_up", on).value:
        says = _(
            "You filed on {day}, so your summons carries the older words on insurance. A summons of today "
            "also forbids letting it lapse."
        ).format(day=spell_date(filed))
    else:
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says,
        _("Pay the bills and renew. If you cannot, ask the court before the cover ends."),
        facts=("record.filed_on",),
    )
