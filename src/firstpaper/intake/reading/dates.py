"""Dates as people in the United States type them: month, day, year. Read strictly, never guessed.

A month or a year alone is kept as such. A word of doubt ("about", "late", a question mark at the end)
is kept as "not sure". A year of two digits is taken only where one century alone is possible. Numbers
that can be read in two ways and days that no calendar has are refused, with what to type.
"""

import re
from calendar import monthrange
from collections.abc import Callable
from datetime import date
from typing import NamedTuple

from firstpaper.counting.dates import month_name, spell_date
from firstpaper.facts import Day
from firstpaper.facts.day import LAST_YEAR
from firstpaper.intake.habits import plainly
from firstpaper.intake.reading.ago import days_ago
from firstpaper.intake.refusals import AnswerRefused, Unreadable
from firstpaper.intake.typed import fold
from firstpaper.locale import _

EARLIEST_YEAR = 1900
YEARS_AHEAD = 50
LONGEST_DATE = 100
LONGEST_LIFE = 100
"""Years. Nothing that is asked here happened to anybody that long ago."""

_MONTHS = {
    1: "january jan enero ene",
    2: "february feb febrero",
    3: "march mar marzo",
    4: "april apr abril abr",
    5: "may mayo",
    6: "june jun junio",
    7: "july jul julio",
    8: "august aug agosto ago",
    9: "september sept sep septiembre setiembre set",
    10: "october oct octubre",
    11: "november nov noviembre",
    12: "december dec diciembre dic",
}
_MONTH_NUMBER = {word: number for number, words in _MONTHS.items() for word in words.split()}
_WEEKDAYS = (
    "monday mon lunes",
    "tuesday tue tues martes",
    "wednesday wed weds miércoles miercoles",
    "thursday thu thur thurs jueves",
    "friday fri viernes",
    "saturday sat sábado sabado",
    "sunday sun domingo",
)
_WEEKDAY_NUMBER = {word: number for number, words in enumerate(_WEEKDAYS) for word in words.split()}

_BEGINNINGS = {*_MONTH_NUMBER, *_WEEKDAY_NUMBER}

_DOUBT_BEFORE = (
    r"(?:i think|i believe|i'm not sure|im not sure|not sure|unsure|about|around|approximately|approx|roughly"
    r"|maybe|perhaps|probably|possibly|circa|ca|tal vez|quizás|quizas|alrededor de|más o menos|mas o menos"
    r"|early|mid|late|(?:the )?(?:beginning|start|middle|end) of|(?:principios|mediados|finales) de)"
    r"\b[-.,:;]? *"
)
_DOUBT_AFTER = r"[ ,]*(?:\?+|\(\?\)|\bor so|\(?\b(?:i think|i'm not sure|not sure|unsure)\)?)$"
_LEAD = r"^(?:on|in|since|el|en|desde) (?:the year )?"
_WEEKDAY = rf"({'|'.join(_WEEKDAY_NUMBER)})\b[.,]? +"

_WITH_A_SLASH = r"^(\d{1,2})?/?([^\W\d_]{3,})\.?/(\d{4})$"
_SEP = r" ?[-/. ] ?"
_WORD = r"([^\W\d_]+)\.?"
_DAY = r"(\d{1,2})(?:st|nd|rd|th)?"
_YEAR_FIRST = rf"(\d{{4}}){_SEP}(\d{{1,2}}){_SEP}(\d{{1,2}})"
_MONTH_FIRST = rf"(\d{{1,2}}){_SEP}(\d{{1,2}}){_SEP}(\d{{1,4}})"
_WORD_FIRST = rf"{_WORD}[ -]?{_DAY}(?: ?, ?|[ -])(?:of |de |del )?('?\d{{1,4}})"
_DAY_FIRST = rf"(?:the )?{_DAY}[ -]?(?:of |de )?{_WORD}(?: ?, ?|[ -])?(?:of |de |del )?('?\d{{1,4}})"
_WORD_YEAR = rf"{_WORD}(?: ?, ?|[ -])?(?:of |de |del )?(\d{{4}}|'\d{{2}})"
_MONTH_YEAR = r"(\d{1,2}) ?[-/. ] ?(\d{4})"
_YEAR_MONTH = r"(\d{4}) ?[-/.] ?(\d{1,2})"
_YEAR = r"(\d{4})"
_NO_YEAR = rf"{_WORD}[ -]?{_DAY}|{_DAY}[ -]?(?:of |de )?{_WORD}|\d{{1,2}}{_SEP}\d{{1,2}}"


def read_day(text: str, today: date, *, not_after_today: bool = False) -> Day:
    """The day, month or year typed. Raises AnswerRefused with what to type instead."""
    if len(text) > LONGEST_DATE:
        raise Unreadable(_unreadable())
    read = plainly("date", re.sub(_WITH_A_SLASH, r"\1 \2 \3", fold(text)))
    typed, unsure = _without_doubt(re.sub(_LEAD, "", read.rstrip(" .,;:"), count=1))
    day = days_ago(typed, today) or _written(typed, _Years(today, not_after_today))
    _check_range(day, today)
    if not_after_today and day.earliest > today:
        raise AnswerRefused(_still_to_come(day, today))
    return Day(day.year, day.month, day.day, unsure or day.unsure)


def begins_like_a_day(text: str) -> bool:
    """Whether a text seems to begin with a day, readable or not."""
    typed, _unsure = _without_doubt(fold(text[:LONGEST_DATE]))
    word = re.match(r"[^\W\d_]+", typed)
    return typed[:1].isdigit() or (word is not None and word[0] in _BEGINNINGS)


def spell(day: Day) -> str:
    """The day in words, no more of it than was told: "Saturday, March 14, 2026" or "March 2026"."""
    if day.whole:
        return spell_date(day.whole)
    if day.month:
        return _("{month} {year}").format(month=month_name(day.earliest), year=day.year)
    return str(day.year)


def _without_doubt(typed: str) -> tuple[str, bool]:
    rest = typed
    while match := re.match(_DOUBT_BEFORE, rest):
        rest = rest[match.end() :]
    while match := re.search(_DOUBT_AFTER, rest):
        rest = rest[: match.start()]
    return re.sub(_LEAD, "", rest, count=1), rest != typed


class _Years(NamedTuple):
    """The years in which what is asked can have happened, seen from today."""

    today: date
    past: bool

    def full(self, typed: str, month: int | None, day: int | None) -> str:
        """A year of two digits with its century, where only one is possible; else as it was typed."""
        typed = typed.lstrip("'")
        if len(typed) != 2 or (month and not 1 <= month <= 12):
            return typed
        years = (f"{century}{typed}" for century in (19, 20))
        possible = [year for year in years if self._can_be(int(year), month, day)]
        return possible[0] if len(possible) == 1 else typed

    def _can_be(self, year: int, month: int | None, day: int | None) -> bool:
        if self.past and (year, month or 1, day or 1) > (self.today.year, self.today.month, self.today.day):
            return False
        return self.today.year - LONGEST_LIFE < year <= self.today.year + YEARS_AHEAD


def _written(typed: str, years: _Years) -> Day:
    weekday = re.match(_WEEKDAY, typed)
    day = _from_parts(typed[weekday.end() :] if weekday else typed, years)
    if weekday and day.whole and day.whole.weekday() != _WEEKDAY_NUMBER[weekday[1]]:
        raise AnswerRefused(_other_weekday(day.whole))
    return day


def _from_parts(typed: str, years: _Years) -> Day:
    for form, parts in _FORMS:
        if match := re.fullmatch(form, typed):
            year, month, day = parts(match)
            certain = form != _MONTH_FIRST or not _either_way(int(match[1]), int(match[2]))
            return _day(years.full(year, month, day) if certain else year, month, day)
    if re.fullmatch(_NO_YEAR, typed):
        raise Unreadable(_("The year is missing. Please type it too, with four digits."))
    raise Unreadable(_unreadable())


def _either_way(month: int, day: int) -> bool:
    """Whether month and day, in numbers, could change places."""
    return month != day and max(month, day) <= 12


_FORMS: tuple[tuple[str, Callable[[re.Match[str]], tuple[str, int | None, int | None]]], ...] = (
    (_YEAR_FIRST, lambda m: (m[1], int(m[2]), int(m[3]))),
    (_MONTH_FIRST, lambda m: (m[3], int(m[1]), int(m[2]))),
    (_WORD_FIRST, lambda m: (m[3], _month(m[1]), int(m[2]))),
    (_WORD_YEAR, lambda m: (m[2], _month(m[1]), None)),
    (_DAY_FIRST, lambda m: (m[3], _month(m[2]), int(m[1]))),
    (_MONTH_YEAR, lambda m: (m[2], int(m[1]), None)),
    (_YEAR_MONTH, lambda m: (m[1], int(m[2]), None)),
    (_YEAR, lambda m: (m[1], None, None)),
)


def _month(word: str) -> int:
    number = _MONTH_NUMBER.get(word)
    if number is None:
        raise Unreadable(_("The month could not be read. Type its name in full, or its number."))
    return number


def _day(year_typed: str, month: int | None, day: int | None) -> Day:
    if len(year_typed) != 4:
        raise Unreadable(_("Please type the year with four digits, so that it cannot be mistaken."))
    year = int(year_typed)
    if month is not None and not 1 <= month <= 12:
        raise AnswerRefused(_no_such_month(year, month, day))
    if year < EARLIEST_YEAR:
        raise AnswerRefused(
            _("The year {year} is too long ago to be right here. Please check the year.").format(
                year=year_typed
            )
        )
    if year > LAST_YEAR:
        raise AnswerRefused(_too_far_ahead(year))
    if month is not None and day is not None:
        _check_day(year, month, day)
    return Day(year, month, day)


def _unreadable() -> str:
    return _(
        "That could not be read as a date. Type month, day and year. If you do not know the day, type the "
        "month and the year, or the year alone."
    )


def _other_weekday(day: date) -> str:
    return _(
        "The weekday and the date do not go together: {date} is right. Please check a calendar, and "
        "type the date again."
    ).format(date=spell_date(day))


def _no_such_month(year: int, month: int, day: int | None) -> str:
    if day is None or not _is_day(year, day, month):
        return _(
            "We read dates with the month first, and there is no month {month}. Please type the month as "
            "a word, like March 14 2026."
        ).format(month=month)
    return _(
        "We read dates with the month first, and there is no month {month}. If you mean {name} {month}, "
        "{year}, type: {name} {month} {year}. If you mean another day, type the month as a word."
    ).format(month=month, name=month_name(date(year, day, 1)), year=year)


def _is_day(year: int, month: int, day: int) -> bool:
    return year >= EARLIEST_YEAR and 1 <= month <= 12 and 1 <= day <= monthrange(year, month)[1]


def _check_day(year: int, month: int, day: int) -> None:
    last = monthrange(year, month)[1]
    if not 1 <= day <= last:
        raise AnswerRefused(
            _(
                "There is no day {day} in {month} {year}: that month has {last} days. Please check the day."
            ).format(day=day, month=month_name(date(year, month, 1)), year=year, last=last)
        )


def _check_range(day: Day, today: date) -> None:
    if day.year > today.year + YEARS_AHEAD:
        raise AnswerRefused(_too_far_ahead(day.year))


def _too_far_ahead(year: int) -> str:
    return _("The year {year} is too far ahead to be right here. Please check the year.").format(year=year)


def _still_to_come(day: Day, today: date) -> str:
    return _(
        "{day} is still to come: today is {today}. This question is about something that has happened "
        "already. Please check the year."
    ).format(day=spell(day), today=spell_date(today))
