"""What kind of answer each fact takes, read from the models so that it is said only once."""

import re
from collections.abc import Collection, Iterator, Mapping
from enum import StrEnum
from functools import cache
from typing import Annotated, Any, NamedTuple, get_args, get_origin

from firstpaper.facts import Case, Day, DontKnow
from firstpaper.facts.children import MOST_CHILDREN, Home
from firstpaper.facts.count import Age, Count
from firstpaper.facts.income import Percent
from firstpaper.facts.matter import Period
from firstpaper.facts.model import Facts
from firstpaper.facts.money import Amount
from firstpaper.facts.people import Address
from firstpaper.facts.record import Attempt, Closure, Record
from firstpaper.facts.schedule import MOST_LISTED, Contribution, Months, Shares
from firstpaper.facts.text import Paragraph
from firstpaper.facts.uccjea import Person
from firstpaper.former_names import Named, called_now

ROWS: Mapping[str, int] = {"child": MOST_CHILDREN, "asset": MOST_LISTED, "debt": MOST_LISTED}
"""The groups of facts that come in numbered rows, and how many rows each can have."""

_AFTER_FILING = frozenset({"record"})
_LISTED = frozenset({"schedule", "asset", "debt", "income"})
"""Groups of facts outside the interview: each kind has a bank of questions of its own."""

_NUMBERED = re.compile(rf"(?P<group>{'|'.join(ROWS)})\.(?P<number>[1-9][0-9]?)(?=\.)")


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
    PERCENT = "percent"
    QUANTITY = "quantity"
    ATTEMPTS = "attempts"
    CLOSURES = "closures"
    CONTRIBUTIONS = "contributions"


ONE_A_LINE = frozenset(
    {
        AnswerKind.LINES,
        AnswerKind.PERIODS,
        AnswerKind.HOMES,
        AnswerKind.PEOPLE,
        AnswerKind.ATTEMPTS,
        AnswerKind.CLOSURES,
        AnswerKind.CONTRIBUTIONS,
    }
)
"""The kinds whose answers are several, each told on a line of its own."""


class Place(NamedTuple):
    """Where a fact lives: the model and the field that check it, and what kind of answer it takes."""

    kind: AnswerKind
    model: type[Facts]
    field: str
    choices: type[StrEnum] | None = None


class Row(NamedTuple):
    """One row of facts: the second child, the third thing owned. Numbers count from 1."""

    group: str
    number: int


def row_of(key: str) -> Row | None:
    """The row that the key is about; None where it is about none."""
    match = _NUMBERED.match(key)
    row = Row(match["group"], int(match["number"])) if match else None
    return row if row and row.number <= ROWS[row.group] else None


def general(key: str) -> str:
    """The key a question carries: ``child.*.name`` for ``child.2.name``, any other key unchanged."""
    row = row_of(key)
    return key if row is None else f"{row.group}.*{key.removeprefix(f'{row.group}.{row.number}')}"


def in_row(key: str, number: int | None) -> str:
    """The key of one row's fact: ``child.2.name`` for ``child.*.name``; any other key unchanged."""
    return key if number is None else key.replace("*", str(number))


def key_now(key: str) -> str:
    """The key by which the fact goes now: the key itself, unless it was given up."""
    if is_key(key):
        return key
    row = row_of(key)
    return in_row(called_now(Named.FACT, general(key)), row.number if row else None)


def is_key(key: str) -> bool:
    """Whether a fact that a person tells lives at `key`. What is recorded after the filing is not told."""
    return "*" not in key and general(key) in told_places()


@cache
def places() -> Mapping[str, Place]:
    """The place of every fact that the interview asks for, by key."""
    return {key: place for key, place in told_places().items() if key.partition(".")[0] not in _LISTED}


@cache
def listed_places() -> Mapping[str, Place]:
    """The place of every fact about what the two own, owe and earn, by key."""
    return {key: place for key, place in told_places().items() if key not in places()}


@cache
def told_places() -> Mapping[str, Place]:
    """The place of every fact that a person tells before the filing, by key."""
    return dict(_places(Case, "", leave_out=_AFTER_FILING))


@cache
def recorded_places() -> Mapping[str, Place]:
    """The place of every fact about what happened since the filing, by key."""
    return dict(_places(Record, "record."))


def place_of(key: str) -> Place:
    """The place of the fact at `key`, told or recorded; KeyError for an unknown key."""
    key = general(key)
    for found in (places, listed_places):
        if place := found().get(key):
            return place
    return recorded_places()[key]


def _places(model: type[Facts], prefix: str, leave_out: Collection[str] = ()) -> Iterator[tuple[str, Place]]:
    for name, field in model.model_fields.items():
        if name in leave_out:
            continue
        annotation: Any = field.annotation
        row = _row_of(annotation)
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


_ROWS: Mapping[Any, AnswerKind] = {
    Period: AnswerKind.PERIODS,
    Home: AnswerKind.HOMES,
    Attempt: AnswerKind.ATTEMPTS,
    Closure: AnswerKind.CLOSURES,
    Person: AnswerKind.PEOPLE,
    Contribution: AnswerKind.CONTRIBUTIONS,
}
_CHECKED = (
    (Paragraph, AnswerKind.PARAGRAPH),
    (Amount, AnswerKind.MONEY),
    (Count, AnswerKind.NUMBER),
    (Age, AnswerKind.QUANTITY),
    (Percent, AnswerKind.PERCENT),
    (Months, AnswerKind.QUANTITY),
    (Shares, AnswerKind.QUANTITY),
)
_PLAIN = {
    bool: AnswerKind.YES_NO,
    Day: AnswerKind.DATE,
    Address: AnswerKind.ADDRESS,
}
