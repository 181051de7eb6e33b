"""The one place that asks what day it is. Everything else is told the day."""

from datetime import date, datetime

from firstpaper.locale import _

LAST_CHECK = date(2026, 11, 25)
"""The law was held against its sources on this day, so today is this day or later."""


def today() -> date:
    """The day on this computer's calendar."""
    return datetime.now().astimezone().date()


def clock_words(day: date) -> str:
    """What to say where the clock stands before the day on which the law here was last checked."""
    if day >= LAST_CHECK:
        return ""
    return _(
        "This computer's clock says {day}. The law in this program was checked after that day, so the clock "
        "is wrong. Dates are counted from it. Set it right first, or say the day yourself with --on."
    ).format(day=day)
