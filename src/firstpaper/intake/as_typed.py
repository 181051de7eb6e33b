"""A fact as the text that gives it when it is typed at its question."""

from datetime import date
from decimal import Decimal
from typing import Any

from firstpaper.counting.dates import month_name
from firstpaper.facts import Day, DontKnow
from firstpaper.facts.schedule import Contribution
from firstpaper.intake.engine import Asked
from firstpaper.intake.reading import read_answer
from firstpaper.intake.reading.contributions import spell_contribution
from firstpaper.intake.refusals import AnswerRefused


def as_typed(asked: Asked, value: Any) -> str:
    """The text that, typed at the question, gives this fact; whoever reads it need not know the case."""
    if isinstance(value, DontKnow):
        return value.value
    if value in ("", ()):
        return "none" if asked.none else ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, Day):
        return _day(value)
    if isinstance(value, Decimal):
        return f"{value:f}"
    if isinstance(value, tuple):
        text = "\n".join(
            spell_contribution(one) if isinstance(one, Contribution) else str(one) for one in value
        )
    else:
        text = str(value)
    return text if _reads_as_itself(asked, text, value) else f"= {text}"


def _reads_as_itself(asked: Asked, text: str, value: Any) -> bool:
    """Whether the text is taken as it stands, and not for a word such as "none"."""
    try:
        return bool(read_answer(asked, text, date.max) == value)
    except AnswerRefused:
        return False


def _day(day: Day) -> str:
    """The day with the year first; a month and a year as words, of which no spreadsheet makes a day."""
    if whole := day.whole:
        text = whole.isoformat()
    elif day.month:
        words = f"{month_name(day.earliest)} {day.year}"
        text = words if day.unsure else f"in {words}"
    else:
        text = str(day.year)
    return f"about {text}" if day.unsure else text
