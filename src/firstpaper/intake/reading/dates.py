"""Dates as people in the United States type them: month, day, year. Read strictly, never guessed.

A month or a year alone is kept as such. A word of doubt ("about", a question mark at the end) is
kept as "not sure". Numbers that can be read in two ways, years of two digits and days that no
calendar has are refused, with what to type.
"""

import re
from calendar import monthrange
from collections.abc import Callable
from datetime import date, timedelta

from firstpaper.counting.dates import month_name, spell_date
from firstpaper.facts import Day
from firstpaper.facts.day import LAST_YEAR
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold
from firstpaper.locale import _

EARLIEST_YEAR = 1900
YEARS_AHEAD = 50
LONGEST_DATE = 100

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

_DOUBT_BEFORE = re.compile(
    r"(?:i think|i believe|i'm not sure|im not sure|not sure|unsure|about|around|approximately|approx|roughly"
    r"|maybe|perhaps|probably|possibly|circa|ca|tal vez|quizás|quizas|alrededor de|más o menos|mas o menos)"
    r"\b[.,:;]? *"
)
_DOUBT_AFTER = re.compile(r"[ ,]*(?:\?+|\(\?\)|\bor so|\(?\b(?:i think|i'm not sure|not sure|unsure)\)?)$")
_LEAD = re.compile(r"^(?:on|in|since|el|en|desde) (?:the year )?")
_WEEKDAY = re.compile(rf"({'|'.join(_WEEKDAY_NUMBER)})\b[.,]? +")

_SEP = r" ?[-/. ] ?"
_WORD = r"([^\W\d_]+)\.?"
_DAY = r"(\d{1,2})(?:st|nd|rd|th)?"
_YEAR_FIRST = re.compile(rf"(\d{{4}}){_SEP}(\d{{1,2}}){_SEP}(\d{{1,2}})")
_MONTH_FIRST = re.compile(rf"(\d{{1,2}}){_SEP}(\d{{1,2}}){_SEP}(\d{{1,4}})")
_WORD_FIRST = re.compile(rf"{_WORD}[ -]?{_DAY}(?: ?, ?|[ -])(?:of )?(\d{{1,4}})")
_DAY_FIRST = re.compile(
    rf"(?:the )?{_DAY}[ -]?(?:of |de )?{_WORD}(?: ?, ?|[ -])?(?:of |de |del )?(\d{{1,4}})"
)
_WORD_YEAR = re.compile(rf"{_WORD}(?: ?, ?|[ -])?(?:of |de |del )?(\d{{4}})")
_MONTH_YEAR = re.compile(r"(\d{1,2}) ?[-/. ] ?(\d{4})")
_YEAR_MONTH = re.compile(r"(\d{4}) ?[-/.] ?(\d{1,2})")
_YEAR = re.compile(r"(\d{4})")
_NO_YEAR = re.compile(rf"{_WORD}[ -]?{_DAY}|{_DAY}[ -]?(?:of |de )?{_WORD}|\d{{1,2}}{_SEP}\d{{1,2}}")


def read_day(text: str, today: date, *, not_after_today: bool = False) -> Day:
    """The day, month or year typed. Raises AnswerRefused with what to type instead."""
    if len(text) > LONGEST_DATE:
        raise AnswerRefused(_unreadable())
    typed, unsure = _without_doubt(_LEAD.sub("", fold(text).rstrip(" .,;:"), count=1))
    day = _relative(typed, today) or _written(typed)
    _check_range(day, today)
    if not_after_today and day.earliest > today:
        raise AnswerRefused(_still_to_come(day, today))
    return Day(day.year, day.month, day.day, unsure)


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
    while match := _DOUBT_BEFORE.match(rest):
        rest = rest[match.end() :]
    while match := _DOUBT_AFTER.search(rest):
        rest = rest[: match.start()]
    return _LEAD.sub("", rest, count=1), rest != typed


def _relative(typed: str, today: date) -> Day | None:
    if typed in ("today", "hoy"):
        return Day.of(today)
    if typed in ("yesterday", "ayer"):
        return Day.of(today - timedelta(days=1))
    return None


def _written(typed: str) -> Day:
    weekday = _WEEKDAY.match(typed)
    day = _from_parts(typed[weekday.end() :] if weekday else typed)
    if weekday and day.whole and day.whole.weekday() != _WEEKDAY_NUMBER[weekday[1]]:
        raise AnswerRefused(_other_weekday(day.whole))
    return day


def _from_parts(typed: str) -> Day:
    for form, parts in _FORMS:
        if match := form.fullmatch(typed):
            return _day(*parts(match))
    if _NO_YEAR.fullmatch(typed):
        raise AnswerRefused(
            _("The year is missing. Please type it too, with four digits, like 3/14/2026 or March 2026.")
        )
    raise AnswerRefused(_unreadable())


_FORMS: tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], tuple[str, int | None, int | None]]], ...] = (
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
        raise AnswerRefused(
            _("The month could not be read. Type it in full, like March, or as a number, like 3/14/2026.")
        )
    return number


def _day(year_typed: str, month: int | None, day: int | None) -> Day:
    if len(year_typed) != 4:
        raise AnswerRefused(
            _("Please type the year with four digits, so that it cannot be mistaken: 3/14/2026, not 3/14/26.")
        )
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
        "That could not be read as a date. Type it like 3/14/2026 or March 14 2026. If you do not know the "
        "day, type the month and the year, or the year alone."
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
