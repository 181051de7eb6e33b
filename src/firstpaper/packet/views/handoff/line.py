"""The one shape of what the hand-off sheet says."""

from collections.abc import Sequence
from typing import NamedTuple

from firstpaper.counting import short_date
from firstpaper.facts import Day
from firstpaper.law.words import spell_day
from firstpaper.locale import _n

MOST_NAMED = 3


class Line(NamedTuple):
    """A label, what was told or worked out, and where to look it up."""

    label: str
    words: str
    cite: str = ""


def short_day(day: Day) -> str:
    """A whole day in short words; else as much as was told."""
    return short_date(day.whole) if day.whole else spell_day(day)


def a_few(parts: Sequence[str]) -> str:
    """The first parts in a row, and how many more there are."""
    named = list(parts[:MOST_NAMED])
    if more := len(parts) - len(named):
        named.append(_n("{count} more", "{count} more", more).format(count=more))
    return "; ".join(named)
