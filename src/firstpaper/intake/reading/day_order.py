"""Days in numbers that can be read two ways: 08/05/2026 is August 5 to one writer and May 8 to another.

Which of the two is meant is asked, or stated once in a file; it is never guessed.
"""

import re
from collections.abc import Iterable, Iterator
from datetime import date
from enum import StrEnum

from firstpaper.counting.dates import spell_date
from firstpaper.intake.kinds import AnswerKind
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.locale import _

DATED = frozenset(
    {AnswerKind.DATE, AnswerKind.PERIODS, AnswerKind.HOMES, AnswerKind.ATTEMPTS, AnswerKind.CLOSURES}
)
"""The kinds of answer in which days stand."""

_NUMBERS = r"(?<![\d/.-])(\d{1,2}) ?([-/.]) ?(\d{1,2}) ?\2 ?(\d{4})(?!\d)"
MOST_MONTHS = 12


class DayOrder(StrEnum):
    """What a writer puts first in a date made of numbers."""

    MONTH_FIRST = "month_first"
    DAY_FIRST = "day_first"


def two_readings(text: str) -> tuple[str, date, date] | None:
    """The first day that can be read two ways: as typed, with the month first, and with the day first."""
    for typed, first, second, year in _days(text):
        if first != second and max(first, second) <= MOST_MONTHS and min(first, second) >= 1 and year:
            return typed, date(year, first, second), date(year, second, first)
    return None


def order_shown(text: str) -> DayOrder | None:
    """The order that the text itself shows, by a day above 12; None where it shows none."""
    for _typed, first, second, _year in _days(text):
        if first > MOST_MONTHS >= second:
            return DayOrder.DAY_FIRST
        if second > MOST_MONTHS >= first:
            return DayOrder.MONTH_FIRST
    return None


def with_month_first(text: str, order: DayOrder | None) -> str:
    """The text with its days written year first, where the writer puts the day first.

    Raises AnswerRefused for a day that has its month first after all.
    """
    if order is not DayOrder.DAY_FIRST:
        return text
    if order_shown(text) is DayOrder.MONTH_FIRST:
        raise AnswerRefused(
            _("You put the day first, and there is no such month here. Type the month as a word, like March.")
        )
    return year_first(text, order)


def year_first(text: str, order: DayOrder) -> str:
    """The text with its days in numbers written year first, as no one can mistake them."""
    month, day = (1, 3) if order is DayOrder.MONTH_FIRST else (3, 1)
    return re.sub(_NUMBERS, lambda found: f"{found[4]}-{int(found[month]):02d}-{int(found[day]):02d}", text)


def order_of(texts: Iterable[str]) -> DayOrder | None:
    """The one order that texts of one hand show; None where they show none, or both."""
    shown = {order for text in texts if (order := order_shown(text))}
    return shown.pop() if len(shown) == 1 else None


def one_reading(kind: AnswerKind, text: str, order: DayOrder | None = None) -> str:
    """An answer of that kind with its days in an order that cannot be mistaken.

    Raises AnswerRefused where a day can be read two ways and nothing says which is meant.
    """
    if kind not in DATED:
        return text
    if order is None and (both := both_readings(text)):
        raise AnswerRefused(
            " ".join([both, _("Write the year first, like 2026-03-14, or the month as a word.")])
        )
    return with_month_first(text, order)


def both_readings(text: str) -> str:
    """What is said of a day that can be read two ways; empty where the text has none."""
    found = two_readings(text)
    if not found:
        return ""
    typed, month_first, day_first = found
    return _("{typed} can be read two ways: {one} or {other}.").format(
        typed=typed, one=spell_date(month_first), other=spell_date(day_first)
    )


def _days(text: str) -> Iterator[tuple[str, int, int, int]]:
    for day in re.finditer(_NUMBERS, text):
        yield day[0], int(day[1]), int(day[3]), int(day[4])
