"""The summons posted at the courthouse."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import FeeState, ServiceMethod
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.service import method
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD, completed
from firstpaper.locale import _

FEE = "record.fee"
COMPLETE = "record.service.complete_on"


@rule(
    "The summons posted at the courthouse",
    cite=("Cal. Rules of Court, rule 5.72", "Code Civ. Proc. 413.30"),
    since=date(2015, 1, 1),
    not_modelled="What a judge asks to see first, where the papers hang, and what the order adds.",
)
def posting(case: Case, on: date) -> list[Found]:
    """If the other side cannot be found and you cannot pay, a judge can order that the summons be posted.

    What the rule asks. A judge must sign an order first. To ask for it you need an order that waives your
    court fees. The forms are FL-980 and FL-982, and FL-985 for the proof. You must list all that you did to
    find the other side.

    When it is complete. The rule names no number of days. The judge's order says for how long the papers
    hang and what is mailed. So we do not count. Read the order, ask the clerk on which day service is
    complete, and record that day. From then on we count the other dates.

    What it can do is less than service in person. A judge may not be able to order money from somebody who
    was only served this way. See the page service.publication.
    """
    return list(_each(case, on)) if method(case) is ServiceMethod.POSTING else []


def _each(case: Case, on: date) -> Iterator[Found]:
    says = _("By the judge's order, service by posting is complete on {day}.")
    do = _("A judge may not be able to order money from somebody served this way, so ask about that.")
    yield completed(case, on, says, do, weight=Weight.LOOK_AGAIN) or _not_known()
    if known(case.record.fee) is not FeeState.WAIVER_GRANTED:
        yield Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _(
                "Posting is only for somebody with an order that waives the court fees. You have not "
                "recorded one."
            ),
            _("Ask the self-help center if posting is open to you, or if a newspaper is needed."),
            facts=(METHOD, FEE),
        )


def _not_known() -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("Only the judge's order says when service by posting is complete. We do not count it."),
        _("Read the order, ask the clerk on which day it is complete, and record that day."),
        facts=(METHOD, COMPLETE),
    )
