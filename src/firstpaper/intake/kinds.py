"""What kind of answer each fact takes, read from the models so that it is said only once."""

import re
from collections.abc import Iterator, Mapping
from enum import StrEnum
from functools import cache
from typing import Annotated, Any, NamedTuple, get_args, get_origin

from firstpaper.facts import Case, Day, DontKnow
from firstpaper.facts.children import MOST_CHILDREN, Home
from firstpaper.facts.count import Count
from firstpaper.facts.income import Income
from firstpaper.facts.matter import Period
from firstpaper.facts.model import Facts
from firstpaper.facts.money import Amount
from firstpaper.facts.people import Address
from firstpaper.facts.record import Attempt, Closure, Record
from firstpaper.facts.schedule import Asset, Debt, Schedule
from firstpaper.facts.text import Paragraph
from firstpaper.facts.uccjea import Person

_NO_QUESTION = (Record, Schedule, Asset, Debt, Income)
"""Facts that are entered in another way than by a question, so that no answer stands behind them."""

_CHILD_NUMBER = re.compile(r"(?<=^child\.)[1-9][0-9]?(?=\.)")


class AnswerKind(StrEnum):
    """The kinds of answer a question can take."""

    YES_NO = "yes_no"
    DATE = "date"
    CHOICE = "choice"
    SEVERAL = "several"
    TEXT = "text"
    PARAGRAPH = "paragraph"
    LINES = "lines"
    PERIODS = "periods"
    HOMES = "homes"
    PEOPLE = "people"
    ADDRESS = "address"
    NUMBER = "number"
    MONEY = "money"
    ATTEMPTS = "attempts"
    CLOSURES = "closures"


class Place(NamedTuple):
    """Where a fact lives: the model and the field that check it, and what kind of answer it takes."""

    kind: AnswerKind
    model: type[Facts]
    field: str
    choices: type[StrEnum] | None = None


def general(key: str) -> str:
    """The key a question carries: ``child.*.name`` for ``child.2.name``, any other key unchanged."""
    number = child_number(key)
    return key if number is None else _CHILD_NUMBER.sub("*", key)


def is_key(key: str) -> bool:
    """Whether a fact lives at `key`."""
    return "*" not in key and general(key) in places()


def child_number(key: str) -> int | None:
    """Which child the key is about, from 1 to MOST_CHILDREN; None where it is about none."""
    match = _CHILD_NUMBER.search(key)
    number = int(match[0]) if match else MOST_CHILDREN + 1
    return number if number <= MOST_CHILDREN else None


def for_child(key: str, number: int | None) -> str:
    """The key of one child's fact: ``child.2.name`` for ``child.*.name``; any other key unchanged."""
    return key if number is None else key.replace("*", str(number))


@cache
def places() -> Mapping[str, Place]:
    """The place of every fact that can be asked, by key. What is entered in another way is not among them."""
    return dict(_places(Case, ""))


@cache
def recorded_places() -> Mapping[str, Place]:
    """The place of every fact about what happened since the filing, by key."""
    return dict(_places(Record, "record."))


def place_of(key: str) -> Place:
    """The place of the fact at `key`, asked or recorded; KeyError for an unknown key."""
    place = places().get(general(key))
    return place if place else recorded_places()[key]


def _places(model: type[Facts], prefix: str) -> Iterator[tuple[str, Place]]:
    for name, field in model.model_fields.items():
        annotation: Any = field.annotation
        row = _row_of(annotation)
        if (row or annotation) in _NO_QUESTION:
            continue
        if row is not None:
            yield from _places(row, f"{prefix}{name}.*.")
        elif _is_group(annotation):
            yield from _places(annotation, f"{prefix}{name}.")
        else:
            kind, choices = _kind(_told(annotation))
            yield prefix + name, Place(kind, model, name, choices)


def _is_group(annotation: Any) -> bool:
    return isinstance(annotation, type) and issubclass(annotation, Facts)


def _row_of(annotation: Any) -> type[Facts] | None:
    """The model of one row, where the field itself holds rows of facts (the children)."""
    if get_origin(annotation) is not tuple:
        return None
    row = get_args(annotation)[0]
    return row if _is_group(row) else None


def _told(annotation: Any) -> Any:
    """The type of a told fact, without "don't know" and "not asked"."""
    (told,) = (part for part in get_args(annotation) if part not in (DontKnow, type(None)))
    return told


def _kind(told: Any) -> tuple[AnswerKind, type[StrEnum] | None]:
    if get_origin(told) is tuple:
        return _kind_of_many(get_args(told)[0])
    if isinstance(told, type) and issubclass(told, StrEnum):
        return AnswerKind.CHOICE, told
    if get_origin(told) is Annotated:
        return next((kind for one, kind in _CHECKED if told == one), AnswerKind.TEXT), None
    return _PLAIN[told], None


def _kind_of_many(one: Any) -> tuple[AnswerKind, type[StrEnum] | None]:
    if isinstance(one, type) and issubclass(one, StrEnum):
        return AnswerKind.SEVERAL, one
    return _ROWS.get(one, AnswerKind.LINES), None


_ROWS = {
    Period: AnswerKind.PERIODS,
    Home: AnswerKind.HOMES,
    Attempt: AnswerKind.ATTEMPTS,
    Closure: AnswerKind.CLOSURES,
    Person: AnswerKind.PEOPLE,
}

_CHECKED = (
    (Paragraph, AnswerKind.PARAGRAPH),
    (Amount, AnswerKind.MONEY),
    (Count, AnswerKind.NUMBER),
)
_PLAIN = {
    bool: AnswerKind.YES_NO,
    Day: AnswerKind.DATE,
    Address: AnswerKind.ADDRESS,
}
