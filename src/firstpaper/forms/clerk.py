"""What a clerk may not send papers back for, and what to look at because papers do come back for it."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from typing import TypeVar

from firstpaper.data_files import Place, built, read_file
from firstpaper.facts import Case
from firstpaper.forms.asking import question

T = TypeVar("T")
FILE = Path(__file__).with_name("clerk.yaml")


@dataclass(frozen=True, slots=True)
class NoReason:
    """A reason for which a clerk may not refuse papers, to stand after "only because"."""

    says: str
    authority: str


@dataclass(frozen=True, slots=True)
class Check:
    """One thing to look at before the papers are handed in; `when` names the question on which it hangs."""

    check: str
    when: str
    authority: str = ""


@dataclass(frozen=True, slots=True)
class Counter:
    """Everything on the counter."""

    may_not_refuse: tuple[NoReason, ...]
    checks: tuple[Check, ...]

    @property
    def words(self) -> tuple[str, ...]:
        """Everything that a person sees, for translators."""
        return (*(one.says for one in self.may_not_refuse), *(one.check for one in self.checks))


def last_checks(case: Case, on: date) -> tuple[Check, ...]:
    """The checks for the papers of one case, filed on the day `on`."""
    return tuple(one for one in counter().checks if question(one.when)(case, on))


@cache
def counter() -> Counter:
    """The file, checked."""
    place = Place(FILE.name)
    told = place.properties(read_file(FILE), needed=("may_not_refuse", "checks"))
    refuse = tuple(_rows(NoReason, place.into("may_not_refuse"), told["may_not_refuse"]))
    checks = tuple(_rows(Check, place.into("checks"), told["checks"]))
    for check in checks:
        question(check.when)
    return Counter(refuse, checks)


def _rows(model: type[T], place: Place, shape: object) -> Iterator[T]:
    return (built(model, here, here.mapping(row)) for here, row in place.rows(shape))
