"""Whole months of work, for the estimates that share by time: counted only between days known to the day."""

from datetime import date

from firstpaper.counting import MissingDay, whole_months_between
from firstpaper.facts import Day, DontKnow, known


def months(start: date, end: date) -> int:
    """Whole calendar months from one day to another; 0 where the second comes first."""
    if end < start:
        return 0
    return whole_months_between(start, end, missing_day=MissingDay.LAST_DAY_OF_MONTH)


def sure(fact: Day | DontKnow | None) -> date | None:
    """The day, where it was told whole and without doubt."""
    day = known(fact)
    return day.sure if day else None
