"""The one shape of what the hand-off sheet says."""

from dataclasses import dataclass

from firstpaper.counting import short_date
from firstpaper.facts import Day
from firstpaper.law.words import spell_day


@dataclass(frozen=True, slots=True)
class Line:
    """A label, what was told or worked out, and where to look it up."""

    label: str
    words: str
    cite: str = ""


def short_day(day: Day) -> str:
    """A whole day in short words; else as much as was told."""
    return short_date(day.whole) if day.whole else spell_day(day)
