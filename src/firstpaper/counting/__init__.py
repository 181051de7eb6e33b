"""The only date arithmetic in the project.

What is here: months, ages and spans; calendar days and statutory days; court days and court
holidays; the residence window; dates in words. Every function is pure: no clock, no file, and no
number set by law, which arrives as an argument. A choice the law leaves open, such as the day
after a month that is too short, is an argument the caller must state.

What is not here: which period the law sets (see `firstpaper.law`), and reading dates that a
person typed (see `firstpaper.intake`).

Names load when they are first used: a typed day needs no court holidays.
"""

from typing import TYPE_CHECKING

from firstpaper.on_first_use import names_of

if TYPE_CHECKING:
    from firstpaper.counting.court_days import CourtCalendar
    from firstpaper.counting.dates import month_name, short_date, short_month, spell_date, weekday_name
    from firstpaper.counting.days import (
        Counted,
        count_back,
        day_after,
        days_after,
        leaving_out,
        statutory_days,
    )
    from firstpaper.counting.holidays import (
        DayAfter,
        FixedDay,
        HolidayRule,
        NthWeekday,
        YearlyDay,
        observed_on,
    )
    from firstpaper.counting.months import MissingDay, add_months, age_on, anniversary, whole_months_between
    from firstpaper.counting.spans import YearsMonths, years_and_months
    from firstpaper.counting.windows import ResidenceBand, ResidenceWindow, residence_window

__all__ = [
    "Counted",
    "CourtCalendar",
    "DayAfter",
    "FixedDay",
    "HolidayRule",
    "MissingDay",
    "NthWeekday",
    "ResidenceBand",
    "ResidenceWindow",
    "YearlyDay",
    "YearsMonths",
    "add_months",
    "age_on",
    "anniversary",
    "count_back",
    "day_after",
    "days_after",
    "leaving_out",
    "month_name",
    "observed_on",
    "residence_window",
    "short_date",
    "short_month",
    "spell_date",
    "statutory_days",
    "weekday_name",
    "whole_months_between",
    "years_and_months",
]

__getattr__ = names_of(
    __name__,
    {
        "court_days": ("CourtCalendar",),
        "dates": ("month_name", "short_date", "short_month", "spell_date", "weekday_name"),
        "days": ("Counted", "count_back", "day_after", "days_after", "leaving_out", "statutory_days"),
        "holidays": ("DayAfter", "FixedDay", "HolidayRule", "NthWeekday", "YearlyDay", "observed_on"),
        "months": ("MissingDay", "add_months", "age_on", "anniversary", "whole_months_between"),
        "spans": ("YearsMonths", "years_and_months"),
        "windows": ("ResidenceBand", "ResidenceWindow", "residence_window"),
    },
)
