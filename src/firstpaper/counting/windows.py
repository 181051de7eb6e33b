"""The residence window: how long somebody has lived in a place, in three bands.

A month is a calendar month, and half a year is 182 days (Gov. Code 6803, 6804). Where both can be
meant, the longer counts: Gonzales v. County of Los Angeles (1988) 199 Cal.App.3d 601; Jimenez v.
Chavez (2023) 97 Cal.App.5th 50. Those cases are about time limits. No published opinion counts the
months of residence day by day, so between the two answers this says "close", and does not decide.
"""

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting.dates import short_date
from firstpaper.counting.days import ONE_DAY, statutory_days
from firstpaper.counting.months import MissingDay, add_months, no_such_day
from firstpaper.locale import _, _n


class ResidenceBand(StrEnum):
    """Where a filing day lies against the residence window."""

    NOT_MET = "not_met"
    CLOSE = "close"
    MET = "met"


class ResidenceWindow(NamedTuple):
    """The window that opens on the day somebody began to live in a place.

    `calendar_day` is the same day of the month, `months` months on (the last day of a month too
    short to have it). `statutory_day` is reached after `statutory_days` days counted under Gov.
    Code 6803. `safe_day` is the day after the later of the two: the time must lie *before* the
    filing, so neither the first day nor the filing day is counted.
    """

    since: date
    months: int
    statutory_days: int
    calendar_day: date
    statutory_day: date
    safe_day: date

    @property
    def steps(self) -> tuple[str, ...]:
        """The counting, step by step, in words; spelled only when somebody looks."""
        months, days = self.months, self.statutory_days
        steps = [_("{date}: the first day there, not counted").format(date=short_date(self.since))]
        later = _n("{date}: {count} month later", "{date}: {count} months later", months)
        steps.append(later.format(date=short_date(self.calendar_day), count=months))
        if self.calendar_day.day != self.since.day:
            steps.append(no_such_day(self.since, self.calendar_day))
        later = _n("{date}: {count} day later", "{date}: {count} days later", days)
        steps.append(later.format(date=short_date(self.statutory_day), count=days))
        if self.statutory_day != self.since + days * ONE_DAY:
            steps.append(_("By law, February 28 and 29 count as one day."))
        steps.append(_("{date}: the day after the later of the two").format(date=short_date(self.safe_day)))
        return tuple(steps)

    def band(self, filing: date) -> ResidenceBand:
        """Whether a filing on that day is too early, close to the line, or safe."""
        if filing < self.calendar_day:
            return ResidenceBand.NOT_MET
        return ResidenceBand.CLOSE if filing < self.safe_day else ResidenceBand.MET


def residence_window(since: date, *, months: int, days: int) -> ResidenceWindow:
    """The window for residence of so many months, also counted as so many statutory days."""
    calendar_day = add_months(since, months, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    statutory_day = statutory_days(since, days)
    safe_day = max(calendar_day, statutory_day) + ONE_DAY
    return ResidenceWindow(since, months, days, calendar_day, statutory_day, safe_day)
