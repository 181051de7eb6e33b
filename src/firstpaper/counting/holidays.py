"""Holidays as rules: a day of each year, the span it holds for, and the weekend rule."""

from dataclasses import dataclass
from datetime import date, timedelta
from typing import NamedTuple, Protocol

from dateutil.relativedelta import relativedelta
from dateutil.relativedelta import weekday as nth_weekday

SATURDAY, SUNDAY = 5, 6
A_COMMON_YEAR = 2001


class YearlyDay(Protocol):
    """A day that comes once in each year."""

    def in_year(self, year: int) -> date:
        """The date in that year."""
        ...


@dataclass(frozen=True, slots=True)
class FixedDay:
    """The same month and day each year, as July 4.

    Raises ValueError for a day that some year does not have.
    """

    month: int
    day: int

    def __post_init__(self) -> None:
        try:
            self.in_year(A_COMMON_YEAR)
        except ValueError as missing:
            raise ValueError(f"not every year has a day {self.day} of month {self.month}") from missing

    def in_year(self, year: int) -> date:
        """The date in that year."""
        return date(year, self.month, self.day)


@dataclass(frozen=True, slots=True)
class NthWeekday:
    """The nth weekday of a month, first to fourth; -1 is the last one. Monday is 0, as in `date.weekday`.

    Raises ValueError for any other place in the month: not every month has a fifth Monday.
    """

    month: int
    weekday: int
    nth: int

    def __post_init__(self) -> None:
        if self.nth not in {1, 2, 3, 4, -1}:
            raise ValueError(f"not every month has weekday number {self.nth}")

    def in_year(self, year: int) -> date:
        """The date in that year."""
        count_from = 1 if self.nth > 0 else 31
        return date(year, self.month, 1) + relativedelta(
            day=count_from, weekday=nth_weekday(self.weekday, self.nth)
        )


class DayAfter(NamedTuple):
    """The day after another yearly day, as the Friday after Thanksgiving."""

    of: YearlyDay

    def in_year(self, year: int) -> date:
        """The date in that year."""
        return self.of.in_year(year) + timedelta(days=1)


class HolidayRule(NamedTuple):
    """One court holiday under one name, from `since` to `until`, both days included.

    `until` is None while no end is known. A holiday that was renamed is two rules.
    """

    name: str
    falls_on: YearlyDay
    since: date = date.min
    until: date | None = None

    def in_year(self, year: int) -> date | None:
        """The holiday's own date in that year, before the weekend rule; None if not in force then."""
        day = self.falls_on.in_year(year)
        return day if self.since <= day and (self.until is None or day <= self.until) else None


def observed_on(holiday: date) -> date:
    """The day a court keeps a holiday: Saturday's on Friday, Sunday's on Monday.

    Cal. Rules of Court, rule 1.11.
    """
    shift = {SATURDAY: -1, SUNDAY: 1}.get(holiday.weekday(), 0)
    return holiday + timedelta(days=shift)
