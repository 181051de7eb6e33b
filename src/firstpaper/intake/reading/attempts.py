"""Tries to hand over papers, one a line: ``12/2/2026 6:30 pm``. The time may be left out."""

import re
from datetime import date, time

from firstpaper.facts.record import Attempt
from firstpaper.intake.reading.dates import LONGEST_DATE, read_day
from firstpaper.intake.reading.periods import each_line
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold
from firstpaper.locale import _

_AT = (
    r"[ ,]+(?:at )?(?:(?P<hour>\d{1,2})(?::(?P<minute>\d{2}))? ?(?P<half>[ap])\.? ?m\.?"
    r"|(?P<clock>\d{1,2}):(?P<past>\d{2})|(?P<noon>noon))$"
)
LAST_HOUR = 23


def read_attempts(text: str, today: date) -> tuple[Attempt, ...]:
    """The tries, in the order typed. Raises AnswerRefused naming the line that is not clear."""
    return each_line(text, lambda line: _attempt(line, today))


def spell_time(at: time) -> str:
    """A time of day as people say it: "6:30 pm"."""
    hour, minute = at.hour % 12 or 12, f"{at.minute:02d}"
    words = _("{hour}:{minute} am") if at.hour < 12 else _("{hour}:{minute} pm")
    return words.format(hour=hour, minute=minute)


def _attempt(line: str, today: date) -> Attempt:
    typed = fold(line)
    found = re.search(_AT, typed) if len(typed) <= LONGEST_DATE else None
    day = read_day(typed[: found.start()] if found else typed, today, not_after_today=True)
    return Attempt(on=day, at=_time(found) if found else None)


def _time(found: re.Match[str]) -> time:
    if found["noon"]:
        return time(12)
    if found["clock"]:
        return _by_the_clock(int(found["clock"]), int(found["past"]))
    hour, minute = int(found["hour"]), int(found["minute"] or 0)
    if not 1 <= hour <= 12:
        raise AnswerRefused(_no_such_time())
    return _exact(hour % 12 + (12 if found["half"] == "p" else 0), minute)


def _by_the_clock(hour: int, minute: int) -> time:
    """A time without am or pm: only where it cannot be read in two ways."""
    if 1 <= hour <= 12:
        raise AnswerRefused(
            _("Is {time} in the morning or later? Type it like 6:30 am or 6:30 pm.").format(
                time=f"{hour}:{minute:02d}"
            )
        )
    return _exact(hour, minute)


def _exact(hour: int, minute: int) -> time:
    if hour > LAST_HOUR or minute > 59:
        raise AnswerRefused(_no_such_time())
    return time(hour, minute)


def _no_such_time() -> str:
    return _("There is no such time of day. Type it like 6:30 pm.")
