"""The questions of `when.py` by the names that the data files give them."""

from collections.abc import Callable
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms import when

Question = Callable[[Case, date], bool]


def question(name: str) -> Question:
    """The question of that name; LookupError where there is none."""
    found = getattr(when, name, None)
    if not callable(found) or found.__module__ != when.__name__ or name.startswith("_"):
        raise LookupError(f"there is no question {name!r}")
    asked: Question = found
    return asked
