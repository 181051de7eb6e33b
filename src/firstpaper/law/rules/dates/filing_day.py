"""The day of the filing."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.court import calendar_of
from firstpaper.law.measures.record import begins_on, day, is_filed, opens_on
from firstpaper.law.register import rule
from firstpaper.law.words import spell_day
from firstpaper.locale import _

FILED, FIRST, AMENDED = "record.filed_on", "matter.first_filed_on", "record.amended_on"


@rule(
    "The day of the filing",
    cite=("Code Civ. Proc. 12b", "Code Civ. Proc. 135", "Code Civ. Proc. 1010.6(e)(3)"),
    since=date(2015, 1, 1),
    as_planned=True,
    not_modelled="A drop box, which some courts have, and how the clerk stamps what was put into it.",
)
def filing_day(case: Case, on: date) -> list[Found]:
    """Papers are filed on a day on which the clerk is open, and one petition has one day of filing.

    The clerk is closed on Saturdays, Sundays and court holidays. What is sent electronically on such a day
    counts as filed on the next open day. So for a filing planned on a closed day we name the next open day,
    and work everything out for that day: ages, times of living here, and all that is counted from the filing.

    An example. Christmas Day 2026 is a Friday. The next open day is Monday, December 28.

    The day that counts is the one stamped on your copy. If you told us two days for one and the same filing,
    one of them is wrong, and each count that begins with it too.

    What to do. Choose an open day. Look at the stamp.
    """
    return [*_closed(case, on), *_stamped_on_closed(case), *_two_days(case)]


def _closed(case: Case, on: date) -> Iterator[Found]:
    why = calendar_of(case).closed_because(on)
    if why is None or is_filed(case) or (begins_on(case, on) is None and not known(case.matter.amended)):
        return
    opens = opens_on(case, on)
    says = _(
        "The clerk is closed on {on} ({why}). The next open day is {opens}. All the rest here is "
        "worked out for that day."
    )
    yield Found(
        Outcome.CLOSE,
        Weight.LOOK_AGAIN,
        says.format(on=spell_date(on), why=why, opens=spell_date(opens.day)),
        _("Plan to file on that day or another open one."),
        dates={"first_court_day": opens.day},
        steps=opens.steps,
    )


def _stamped_on_closed(case: Case) -> Iterator[Found]:
    for key in (FILED, AMENDED):
        filed = day(case.fact(key))
        why = calendar_of(case).closed_because(filed) if filed else None
        if filed and why:
            yield Found(
                Outcome.CLOSE,
                Weight.LOOK_AGAIN,
                _("You recorded a filing on {day}, when the court was closed ({why}).").format(
                    day=spell_date(filed), why=why
                ),
                _(
                    "Look at the stamp on your copy. What is sent on a closed day counts on the next open "
                    "one."
                ),
                facts=(key,),
            )


def _two_days(case: Case) -> Iterator[Found]:
    recorded, told = known(case.record.filed_on), known(case.matter.first_filed_on)
    if recorded is None or told is None or not known(case.matter.amended):
        return
    if recorded.latest < told.earliest or told.latest < recorded.earliest:
        says = _("You told two days for the filing of your first petition: {told} and {recorded}.")
        yield Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            says.format(told=spell_day(told), recorded=spell_day(recorded)),
            _(
                "Look at the stamp on the first petition and correct the other one. We count from {day}."
            ).format(day=spell_day(recorded)),
            facts=(FIRST, FILED),
        )
