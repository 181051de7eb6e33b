"""The time between two days in whole years and months."""

from datetime import date
from typing import NamedTuple

from firstpaper.counting.dates import short_date
from firstpaper.counting.months import MissingDay, add_months, no_such_day, whole_months_between
from firstpaper.locale import _, _n


class YearsMonths(NamedTuple):
    """Whole years and months; leftover days are dropped.

    `by_convention` is true when the answer hangs on which day stands in for a day that a short
    month does not have, so that a court might count one month less.
    """

    years: int
    months: int
    by_convention: bool
    steps: tuple[str, ...]

    @property
    def total_months(self) -> int:
        """The whole span in months."""
        return self.years * 12 + self.months

    def __str__(self) -> str:
        return _span(self.years, self.months)


def years_and_months(start: date, end: date) -> YearsMonths:
    """The whole years and months from `start` to `end`.

    A month that has no such day ends on its last day, so a wedding on February 29 has its
    anniversary on February 28 in common years. That is this project's convention; no authority was
    found. Raises ValueError when `end` is before `start`.
    """
    total = whole_months_between(start, end, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    strict = whole_months_between(start, end, missing_day=MissingDay.FIRST_OF_NEXT_MONTH)
    years, months = divmod(total, 12)
    by_convention = total != strict
    return YearsMonths(years, months, by_convention, _steps(start, end, total, by_convention))


def _steps(start: date, end: date, total: int, by_convention: bool) -> tuple[str, ...]:
    reached = add_months(start, total, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    following = add_months(start, total + 1, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    steps = []
    if total:
        whole = _("{start} plus {span} is {date}.")
        span = _span(*divmod(total, 12))
        steps.append(whole.format(start=short_date(start), span=span, date=short_date(reached)))
    if reached.day != start.day:
        steps.append(no_such_day(start, reached))
    if by_convention:
        steps.append(_("The law does not say which day to use. A court may count one month less."))
    more = _("One more month would be {date}. That is after {end}.")
    steps.append(more.format(date=short_date(following), end=short_date(end)))
    return tuple(steps)


def _span(years: int, months: int) -> str:
    spoken_years = _n("{count} year", "{count} years", years).format(count=years)
    spoken_months = _n("{count} month", "{count} months", months).format(count=months)
    if years and months:
        return _("{years} and {months}").format(years=spoken_years, months=spoken_months)
    return spoken_years if years else spoken_months
