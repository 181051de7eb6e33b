"""The court of this case: on which days it is open, with the closures that a person told us of.

Every count of court days in a case goes through here, so that a closure moves each date that it touches and
none is forgotten.
"""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import CourtCalendar, day_after
from firstpaper.facts import Case, known
from firstpaper.facts.record import Closure
from firstpaper.law.figure import court_calendar

COUNTS_FROM = date(2015, 1, 1)
"""The first day from which we count. Ours, not the law's: every figure used here has a value from then on."""

LONGEST_CLOSURE_DAYS = 366
"""The longest closure that we take as told; a longer one is taken for a slip. Ours, not the law's."""


def holidays_only() -> CourtCalendar:
    """The court calendar without any closure, for what is not done at the court."""
    return court_calendar()


def calendar_of(case: Case) -> CourtCalendar:
    """The court calendar with the closures of this case.

    A day on which an office is shut is a holiday for the business of that office (Code Civ. Proc. 12b).
    """
    told = known(case.record.court_closed)
    if not told:
        return holidays_only()
    return court_calendar({day: each.why for each in told for day in closed_days(each)})


def closed_days(closure: Closure) -> Iterator[date]:
    """The days of a closure, in order; none where its days are not whole and sure, or cannot be right."""
    first, last = closure.first.sure, (closure.last or closure.first).sure
    if first is None or last is None or first < COUNTS_FROM:
        return
    if not 0 <= (last - first).days < LONGEST_CLOSURE_DAYS:
        return
    yield from (day_after(first, number) for number in range((last - first).days + 1))
