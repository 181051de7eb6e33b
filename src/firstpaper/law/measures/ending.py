"""Whether a case file is done with: the case is over, or this desk has nothing more to do in it."""

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.law.measures.record import day, happened


class Ending(StrEnum):
    """How it ended, by the name of its event."""

    JUDGMENT = "judgment"
    DISMISSAL = "dismissal"
    WITHDRAWN = "withdrawn"
    REFERRED = "referred"
    TRANSFERRED = "transferred"
    RECONCILED = "reconciled"


_DAY_OF = {
    Ending.JUDGMENT: "judgment_on",
    Ending.DISMISSAL: "dismissed_on",
    Ending.WITHDRAWN: "withdrawn_on",
    Ending.REFERRED: "referred_on",
    Ending.TRANSFERRED: "transferred_on",
    Ending.RECONCILED: "reconciled_on",
}

KEYS = tuple(f"record.{name}" for name in _DAY_OF.values())
"""The keys of the days that end a case file."""


class Ended(NamedTuple):
    """How and when; `day` is None where it was not told whole."""

    how: Ending
    day: date | None


def ended(case: Case, on: date) -> Ended | None:
    """The latest ending that was recorded and has come by the day `on`; None while the case goes on."""
    record = happened(case, on)
    told = [(how, getattr(record, name)) for how, name in _DAY_OF.items()]
    found = [Ended(how, day(fact)) for how, fact in told if fact is not None]
    return max(found, key=lambda one: one.day or date.min, default=None)
