"""Places where a child lived, one a line: ``8/2019 to 6/2024, Portland, OR, with both of us``."""

import re
from datetime import date

from pydantic import ValidationError

from firstpaper.facts import Day
from firstpaper.facts.children import Home
from firstpaper.facts.matter import Period
from firstpaper.intake.reading.addresses import state_or_country
from firstpaper.intake.reading.periods import each_line, read_period
from firstpaper.intake.refusals import Unreadable, refusal
from firstpaper.locale import _

_WITH = r"(?i)(?:^|\s+)(?:with|con)\s+"
_FIRST_WITH = r"(?i)(?:with|con)\s+"


def read_homes(text: str, today: date, *, not_after_today: bool = False) -> tuple[Home, ...]:
    """The homes, in the order typed. Raises AnswerRefused naming the line that is not clear."""
    return each_line(text, lambda line: _home(read_period(line, today, not_after_today=not_after_today)))


def home(start: Day, end: Day | None, place: str, state: str, with_whom: str) -> Home:
    """The home in that place. Raises AnswerRefused where a piece does not fit."""
    try:
        return Home(start=start, end=end, place=place, state=state, with_whom=with_whom)
    except ValidationError as error:
        raise refusal(error) from None


def _home(period: Period) -> Home:
    """A state or country on its own between commas is looked for first: "Baja California" is none."""
    parts = [part.strip() for part in period.why.split(",") if part.strip()]
    for alone in (True, False):
        for number, part in enumerate(parts):
            whole, *who = re.split(_WITH, part, maxsplit=1)
            before, state = state_or_country(whole)
            place = ", ".join(filter(None, (*parts[:number], before)))
            if state and place and (alone is not bool(before)):
                rest = ", ".join((*who, *parts[number + 1 :]))
                said = re.match(_FIRST_WITH, rest)
                return home(period.start, period.end, place, state, rest[said.end() :] if said else rest)
    raise Unreadable(_("Please give the city and the state, or the country, after the days."))
