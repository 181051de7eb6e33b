"""Days told from today: "yesterday", "two months ago", "last year". No surer than the words are."""

import re
from datetime import date, timedelta

from firstpaper.facts import Day
from firstpaper.facts.day import FIRST_YEAR
from firstpaper.intake.reading.numbers import NUMBER_OF

_NUMBERS = {**NUMBER_OF, **dict.fromkeys(("a", "an", "un"), 1)}
_UNITS = {
    **dict.fromkeys(("day", "days", "día", "dia", "días", "dias"), "day"),
    **dict.fromkeys(("week", "weeks", "semana", "semanas"), "week"),
    **dict.fromkeys(("month", "months", "mes", "meses"), "month"),
    **dict.fromkeys(("year", "years", "año", "años", "ano", "anos"), "year"),
}
_AGO = rf"(?:hace )?(\d{{1,3}}|{'|'.join(_NUMBERS)}) ({'|'.join(_UNITS)})(?: ago| back)?|last (month|year)"
_WITH_A_WORD = r"hace .*|.* (?:ago|back)|last .*"


def days_ago(typed: str, today: date) -> Day | None:
    """The day that such words mean; None where they are no such words.

    Days are counted. Of weeks, months and years people speak roundly, so that the day is "not sure", and
    no more of it is taken than the unit tells: a month, or a year.
    """
    if typed in ("today", "hoy"):
        return Day.of(today)
    if typed in ("yesterday", "ayer"):
        return Day.of(today - timedelta(days=1))
    found = re.fullmatch(_AGO, typed) if re.fullmatch(_WITH_A_WORD, typed) else None
    if found is None:
        return None
    if found[3]:
        return _back(1, found[3], today, unsure=False)
    count = int(found[1]) if found[1].isdecimal() else _NUMBERS[found[1]]
    return _back(count, _UNITS[found[2]], today, unsure=True)


def _back(count: int, unit: str, today: date, *, unsure: bool) -> Day | None:
    if unit in ("day", "week"):
        day = today - timedelta(days=count * (7 if unit == "week" else 1))
        return Day(day.year, day.month, day.day, unsure=unit == "week")
    months = today.year * 12 + today.month - 1 - count * (12 if unit == "year" else 1)
    year, month = divmod(months, 12)
    if year < FIRST_YEAR:
        return None
    return Day(year, month + 1 if unit == "month" else None, None, unsure)
