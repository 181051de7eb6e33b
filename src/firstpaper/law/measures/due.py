"""A day by which something is to be done: the target, and the court day it moves to."""

from dataclasses import dataclass, replace
from datetime import date

from firstpaper.counting import Counted, CourtCalendar, MissingDay, add_months, short_date
from firstpaper.counting.months import no_such_day
from firstpaper.facts import Case
from firstpaper.law.measures.court import calendar_of, holidays_only
from firstpaper.locale import _, _n


@dataclass(frozen=True, slots=True)
class Due:
    """The last day to act. `target` is the day counted; `rolled` the court day it moves to.

    They differ where the court is closed on the target day (Code Civ. Proc. 12a). The target is the
    day to aim for: the law keeps the time open until the other. `closed` is the day counted, where the thing
    can be done only at the court and so the target is the last open day before.
    """

    target: date
    rolled: date
    steps: tuple[str, ...]
    closed: date | None = None

    def missed(self, on: date) -> bool:
        """Whether the time has run out on that day, however it is counted."""
        return on > self.rolled


def due_at_court(case: Case, counted: Counted) -> Due:
    """The day counted, and the day it moves to on which the court of this case is open."""
    return _moved(counted, calendar_of(case))


def due_at_the_clerk(case: Case, counted: Counted) -> Due:
    """The same for what the filer can do only at the court: the day to aim for is one on which it is open."""
    due = due_at_court(case, counted)
    return aimed(due, calendar_of(case).roll_back(due.target).day)


def aimed(due: Due, open_day: date) -> Due:
    """The same last day, to be aimed for on an open day up to it."""
    return due if open_day == due.target else replace(due, target=open_day, closed=due.target)


def due_elsewhere(counted: Counted) -> Due:
    """The same for an act that is not done at the court, such as handing over papers.

    Weekends and court holidays move it as well. But a closure holds only for the business of the office that
    was closed (Code Civ. Proc. 12b), so it moves nothing here.
    """
    return _moved(counted, holidays_only())


def unmoved(counted: Counted) -> Due:
    """The day counted, for something the court does or that simply comes: no closed day moves it."""
    return Due(counted.day, counted.day, counted.steps)


def months_after(day: date, months: int) -> Counted:
    """The same day of the month so many months later; the last day of a month too short to have it."""
    reached = add_months(day, months, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    steps = [
        _("{date}: the starting day, not counted").format(date=short_date(day)),
        _("{date}: {span} later").format(date=short_date(reached), span=_span(months)),
    ]
    if reached.day != day.day:
        steps.append(no_such_day(day, reached))
    return Counted(reached, tuple(steps))


def _moved(counted: Counted, calendar: CourtCalendar) -> Due:
    rolled = calendar.roll_forward(counted.day)
    return Due(counted.day, rolled.day, counted.steps + rolled.steps)


def _span(months: int) -> str:
    years, rest = divmod(months, 12)
    if rest:
        return _n("{count} month", "{count} months", months).format(count=months)
    return _n("{count} year", "{count} years", years).format(count=years)
