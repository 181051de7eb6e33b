"""Calendar months: adding them, counting them, anniversaries and ages.

A month is a calendar month (Gov. Code 6804; Code Civ. Proc. 17(b)(4)). One month after January 31
is not a day that exists, and the law does not say which day to take, so every caller says.
"""

from calendar import monthrange
from datetime import date
from enum import Enum

from firstpaper.counting.dates import month_name
from firstpaper.locale import _


class MissingDay(Enum):
    """Which day to take when the month reached is too short to have the day asked for."""

    LAST_DAY_OF_MONTH = "last day of month"
    FIRST_OF_NEXT_MONTH = "first of next month"


def add_months(day: date, months: int, *, missing_day: MissingDay) -> date:
    """The same day of the month, `months` months later (earlier when negative).

    Raises ValueError when the result would fall outside the years 1 to 9999.
    """
    year, month = _month_after(day, months)
    if day.day <= monthrange(year, month)[1]:
        return date(year, month, day.day)
    if missing_day is MissingDay.LAST_DAY_OF_MONTH:
        return date(year, month, monthrange(year, month)[1])
    return date(*_month_after(day, months + 1), 1)


def whole_months_between(start: date, end: date, *, missing_day: MissingDay) -> int:
    """The largest number of months that, added to `start`, does not pass `end`.

    Raises ValueError when `end` is before `start`.
    """
    if end < start:
        raise ValueError(f"the end {end} is before the start {start}")
    months = (end.year - start.year) * 12 + end.month - start.month
    return months if add_months(start, months, missing_day=missing_day) <= end else months - 1


def anniversary(day: date, years: int) -> date:
    """The anniversary of `day` after `years` years.

    February 29 has its anniversary on February 28 in common years. That is this project's
    convention; no authority was found.
    """
    return add_months(day, years * 12, missing_day=MissingDay.LAST_DAY_OF_MONTH)


def age_on(born: date, on: date) -> int:
    """Completed years of age on the day `on`; birthdays as in `anniversary`.

    Raises ValueError when the person was not yet born on that day.
    """
    return whole_months_between(born, on, missing_day=MissingDay.LAST_DAY_OF_MONTH) // 12


def no_such_day(wanted: date, reached: date) -> str:
    """The step that tells a person why `reached` is the last day of a month too short."""
    short = _("{month} {year} has no day {day}, so we use its last day.")
    return short.format(month=month_name(reached), year=reached.year, day=wanted.day)


def _month_after(day: date, months: int) -> tuple[int, int]:
    """The year and month (1 to 12) that lie `months` months after the month of `day`."""
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    return year, month + 1
