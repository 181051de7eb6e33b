"""Calendar days, counted the way the codes count them."""

from calendar import isleap
from collections.abc import Callable, Iterable
from datetime import date, timedelta
from typing import NamedTuple

from firstpaper.counting.dates import short_date
from firstpaper.locale import _, _n

ONE_DAY = timedelta(days=1)


class Counted(NamedTuple):
    """A day that was reached by counting, and the steps a person can follow to check it."""

    day: date
    steps: tuple[str, ...]

    def then(self, count: Callable[[date], "Counted"]) -> "Counted":
        """Go on counting from this day, keeping the steps so far.

        `days_after(served_on, 30).then(calendar.roll_forward)`
        """
        reached = count(self.day)
        return Counted(reached.day, self.steps + reached.steps)


def days_after(day: date, count: int) -> Counted:
    """The day `count` days after `day`: the first day is left out, the last is counted.

    Code Civ. Proc. 12; Gov. Code 6800. The last day is not moved off a weekend or a holiday; that
    is `CourtCalendar.roll_forward`. Raises ValueError for a negative count.
    """
    reached = day_after(day, count)
    steps = [_("{date}: the starting day, not counted").format(date=short_date(day))]
    if count > 1:
        steps.append(_("{date}: day 1").format(date=short_date(day + ONE_DAY)))
    if count:
        steps.append(_("{date}: day {number}").format(date=short_date(reached), number=count))
    return Counted(reached, tuple(steps))


def day_after(day: date, count: int = 1) -> date:
    """The day that `days_after` reaches, where nobody is shown the counting. Raises ValueError alike."""
    require_count(count)
    return day + count * ONE_DAY


def count_back(day: date, count: int) -> Counted:
    """The day `count` days before `day`, which is itself left out (Code Civ. Proc. 12c(a)).

    Days added for the manner of service are counted back from the day found here (12c(b)). Raises
    ValueError for a negative count.
    """
    require_count(count)
    reached = day - count * ONE_DAY
    steps = [_("{date}: the starting day, not counted").format(date=short_date(day))]
    if count:
        before = _n("{date}: {number} day before", "{date}: {number} days before", count)
        steps.append(before.format(date=short_date(reached), number=count))
    return Counted(reached, tuple(steps))


def leaving_out(start: date, end: date, spans: Iterable[tuple[date, date]]) -> Counted:
    """The end of a time that began after `start`, with the days of the spans left out of it.

    A span has its first and its last day; a day in two spans is left out once. As the time gets longer,
    later spans come into it.
    """
    out = {first + number * ONE_DAY for first, last in spans for number in range((last - first).days + 1)}
    more, reached = -1, end
    while more != (more := sum(start < day <= reached for day in out)):
        reached = end + more * ONE_DAY
    later = _n("{date}: {count} day is left out", "{date}: {count} days are left out", more)
    return Counted(reached, (later.format(date=short_date(reached), count=more),) if more else ())


def statutory_days(day: date, count: int) -> date:
    """The day reached after `count` statutory days; `day` itself is not counted.

    February 29 and the day before it are one day (Gov. Code 6803). So February 29 adds nothing to
    the count, and a count that ends on that double day ends on February 28. Raises ValueError for
    a negative count.
    """
    require_count(count)
    reached = day + count * ONE_DAY
    counted_from = day
    while leap_days := _leap_days_within(counted_from, reached):
        counted_from, reached = reached, reached + leap_days * ONE_DAY
    return reached


def require_count(count: int) -> None:
    """Raise ValueError for a negative count."""
    if count < 0:
        raise ValueError(f"a count of days cannot be negative: {count}")


def _leap_days_within(after: date, to: date) -> int:
    """How many days February 29 lie after the first day and not after the second."""
    return sum(
        1 for year in range(after.year, to.year + 1) if isleap(year) and after < date(year, 2, 29) <= to
    )
