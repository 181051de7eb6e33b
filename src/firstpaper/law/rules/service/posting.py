"""The summons posted at the courthouse."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import FeeState, ServiceMethod
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.service import method
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD, completed, need_day
from firstpaper.locale import _

FEE = "record.fee"


@rule(
    "The summons posted at the courthouse",
    cite=("Cal. Rules of Court, rule 5.72", "Code Civ. Proc. 413.30"),
    since=date(2015, 1, 1),
    not_modelled="What a judge asks to see first, where the papers hang, and what the order adds.",
)
def posting(case: Case, on: date) -> list[Found]:
    """If the other side cannot be found and you cannot pay, a judge can order that the summons be posted.

    What the rule asks. A judge must sign an order first. It is only for somebody who could have a fee
    waiver. The forms are FL-980 and FL-982, and FL-985 for the proof.

    How we count. We remember 28 days on the board, and a copy mailed to the last known address. We could
    not read the rule in its present words, and do not know if the first day is day 1. So we leave it
    out of the count, which gives the later day. The judge's order counts, not we.

    An example. First posted on Thursday, November 5, 2026: complete on Thursday, December 3 by our count.

    What it can do is less than service in person. See the page service.publication.
    """
    return list(_each(case, on)) if method(case) is ServiceMethod.POSTING else []


def _each(case: Case, on: date) -> Iterator[Found]:
    says = _("Service by posting is complete on {day}, as far as we can tell.")
    do = _("Read the judge's order. Ask the clerk on which day the time ends.")
    found = completed(case, on, says, do, weight=Weight.LOOK_AGAIN)
    yield found or need_day("record.service.first_posted_on", _("the first day it was posted"))
    if known(case.record.fee) is FeeState.PAID:
        yield Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _(
                "Posting is only for somebody who could have a fee waiver. You recorded that the fee was "
                "paid."
            ),
            _("Ask the self-help center if posting is open to you, or if a newspaper is needed."),
            facts=(METHOD, FEE),
        )
