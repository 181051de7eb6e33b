"""From when which county is right for a divorce, in words that rules and sheets share."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.law.measures.court import calendar_of
from firstpaper.law.measures.residence import counties_open
from firstpaper.locale import _


def right_from(case: Case, on: date) -> str:
    """Each county that the answers open, with the first open day, as in "Kern is one today."; or nothing."""
    return " ".join(_each(case, on))


def _each(case: Case, on: date) -> Iterator[str]:
    for one in counties_open(case, on):
        opens = calendar_of(case).next_court_day_on_or_after(max(one.safe_day, on)).day
        today, later = _("{county} is one today."), _("{county} becomes one on {day}.")
        yield (today if one.safe_day <= on else later).format(county=one.county, day=spell_date(opens))
