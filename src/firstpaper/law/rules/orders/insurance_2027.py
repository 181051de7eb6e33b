"""Insurance under the orders in the summons, from 2027."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import filed_on, happened, opens_on
from firstpaper.law.measures.service import serves_again
from firstpaper.law.register import rule
from firstpaper.law.words import spaced
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

    An amended petition. If the other side has not taken part, practice books say to serve it with a new
    summons. If that one is of 2027, it carries the new words, and the first one the old words. We found no
    law that says which of the two then counts, so keep to the stricter words. Where you two filed together
    and one of you then files alone, there is a law: the orders of the first summons stay in effect
    (Fam. Code 2342.5(b)(4)).

    An example. You filed on December 15, 2026. In February the car insurance is up for renewal. Your
    summons does not speak of that, but to let it lapse can still be held against you. Renew it.

    What to do. Pay the bills and renew. If you cannot pay, ask the court for an order before the cover
    ends.
    """
    filed = filed_on(case, on)
    if filed is None:
        return None
    if _kept_up(filed):
        return _sure(
            _(
                "Your summons also forbids letting insurance lapse and failing to renew it. For insurance it "
                "makes no exception for written consent."
            )
        )
    if _may_come_with_a_new_summons(case, on):
        return _one_of_two(filed)
    if _kept_up(on):
        return _sure(
            _(
                "You filed on {day}, so your summons carries the older words on insurance. A summons of "
                "today also forbids letting it lapse."
            ).format(day=spell_date(filed))
        )
    return None


def _kept_up(issued: date) -> bool:
    """Whether a summons of that day forbids letting insurance lapse."""
    return bool(figure("restraining_orders.insurance_must_be_kept_up", issued).value)


def _may_come_with_a_new_summons(case: Case, on: date) -> bool:
    """Whether an amended petition, filed or planned, may bring a summons of the newer words with it."""
    if not serves_again(case):
        return False
    recorded = known(happened(case, on).amended_on)
    return _kept_up(recorded.latest if recorded else opens_on(case, on).day)


def _sure(says: str) -> Found:
    return Found(Outcome.MET, Weight.GOOD_TO_KNOW, says, _renew(), facts=("record.filed_on",))


def _one_of_two(first: date) -> Found:
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        _(
            "Your first summons is of {day} and carries the older words on insurance. If the court issues a "
            "new one with your amended petition, that one also forbids letting it lapse. We found no law "
            "that says which of the two then counts."
        ).format(day=spell_date(first)),
        spaced((_("Keep to the stricter words."), _renew())),
        facts=("record.filed_on", "matter.amended", "record.amended_on"),
        certainty=Certainty.UNCONFIRMED,
    )


def _renew() -> str:
    return _("Pay the bills and renew. If you cannot, ask the court before the cover ends.")
