"""Stretches of time, one a line: ``3/1/2026 to 4/15/2026, work in Nevada``."""

import re
from collections.abc import Callable
from datetime import date
from typing import TypeVar

from pydantic import ValidationError

from firstpaper.facts import Day
from firstpaper.facts.matter import Period
from firstpaper.intake.reading.dates import begins_like_a_day, read_day, spell
from firstpaper.intake.refusals import AnswerRefused, Unreadable, refusal
from firstpaper.locale import _

T = TypeVar("T")

MOST_PERIODS = 100
LONGEST_PERIOD = 600

_FROM = r"(?i)\s*(?:from|between|de|desde)\s+"
_SINCE = r"(?i)\s*(?:since|desde el|desde)\s+"
_TO = r"(?i)\s+(?:to|until|till|til|through|thru|hasta|a|[-\u2013\u2014])\s+"
_STILL = r"(?i)(?:now|today|present|the present|this day|still|ahora|hoy)\b[.,;:]?\s*"
_MOST_WORDS_IN_A_DATE = 6


def read_periods(text: str, today: date, *, not_after_today: bool = False) -> tuple[Period, ...]:
    """The periods, in the order typed. Raises AnswerRefused naming the line that is not clear."""
    return each_line(text, lambda line: read_period(line, today, not_after_today=not_after_today))


def each_line(text: str, read: Callable[[str], T]) -> tuple[T, ...]:
    """What `read` makes of each line, in order. A line that it refuses is named by its number."""
    lines = [line.strip() for line in re.split(r"[\n;]", text) if line.strip()]
    if len(lines) > MOST_PERIODS:
        raise AnswerRefused(_("That is more than {most} lines. Please list less.").format(most=MOST_PERIODS))
    found = []
    for number, line in enumerate(lines, 1):
        try:
            found.append(read(line))
        except AnswerRefused as refused:
            if len(lines) == 1:
                raise
            where = _("Line {number}: {message}").format(number=number, message=refused.message)
            raise type(refused)(where) from None
    return tuple(found)


def read_period(line: str, today: date, *, not_after_today: bool = False) -> Period:
    """The period on one line. Raises AnswerRefused where it is not clear."""
    if len(line) > LONGEST_PERIOD:
        raise AnswerRefused(_("That line is too long. Please say in a few words what it was."))
    since = re.match(_SINCE, line)
    begin = since or re.match(_FROM, line)
    rest = line[begin.end() :] if begin else line
    for to in re.finditer(_TO, rest):
        after = rest[to.end() :]
        still = re.match(_STILL, after)
        if not (still or begins_like_a_day(after)):
            continue
        try:
            start = read_day(rest[: to.start()], today, not_after_today=not_after_today)
        except AnswerRefused:
            continue
        if still:
            return period(start, None, after[still.end() :])
        end, why = leading_day(after, today, not_after_today=False)
        return period(start, end, why)
    if since:
        start, why = leading_day(rest, today, not_after_today)
        return period(start, None, why)
    raise Unreadable(_unclear(rest, today, not_after_today))


def is_period(line: str) -> bool:
    """Whether a line is about more than a single day, readable or not: it has a "since", "from" or "to"."""
    if re.match(_SINCE, line) or re.match(_FROM, line):
        return True
    after = (line[to.end() :] for to in re.finditer(_TO, line))
    return any(begins_like_a_day(rest) or re.match(_STILL, rest) for rest in after)


def _unclear(line: str, today: date, not_after_today: bool) -> str:
    """Why no period was found: the reason its first date was refused, or that an end is missing."""
    to = re.search(_TO, line)
    if to:
        try:
            read_day(line[: to.start()], today, not_after_today=not_after_today)
        except AnswerRefused as refused:
            return refused.message
    return _(
        "Please type both days on one line, with the word to between them. If it has not ended, begin with "
        "the word since and give one day."
    )


def leading_day(text: str, today: date, not_after_today: bool = False) -> tuple[Day, str]:
    """The day that a text begins with, and the rest of the text."""
    ends = [match.end() for match in re.finditer(r"\S+", text)][:_MOST_WORDS_IN_A_DATE]
    for end in reversed(ends):
        try:
            day = read_day(text[:end], today)
        except AnswerRefused:
            continue
        read_day(text[:end], today, not_after_today=not_after_today)
        return day, text[end:]
    first = text.split(",", maxsplit=1)[0] if text.strip() else ""
    return read_day(first, today), ""


def period(start: Day, end: Day | None, why: str) -> Period:
    """The period from `start` to `end`. Raises AnswerRefused where it cannot be so."""
    if end is not None and end.latest < start.earliest:
        raise AnswerRefused(
            _("The end, {end}, is before the start, {start}. Please check both days.").format(
                end=spell(end), start=spell(start)
            )
        )
    try:
        return Period(start=start, end=end, why=why.strip(" ,:;.-\u2013\u2014"))
    except ValidationError as error:
        raise refusal(error) from None
