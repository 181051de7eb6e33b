"""Random households: any fact told, not known or not asked, in any mixture, for properties.

A household is drawn from one random number generator, which hypothesis seeds and reports: drawing the
hundred facts one by one as strategies takes ten times as long, and thousands of cases are wanted.
"""

import random
from datetime import date, time, timedelta
from decimal import Decimal
from enum import Enum
from functools import cache
from typing import Annotated, Any, NamedTuple, get_args, get_origin

from hypothesis import strategies as st
from pydantic import BaseModel

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.children import Child
from firstpaper.facts.counties import COUNTIES, County, CountyOrNone
from firstpaper.facts.text import AddressLine, Name, Number
from firstpaper.facts.told import DontKnow

SHORT = (
    "Ana Soto",
    "Honda Civic",
    "Truck ending 1234",
    "Return my books.",
    '<b>Ana</b> & "Co" {{ petitioner.name }} %(x)s {name}',
    "Nguyễn Thị Hạnh 🙂 Łukasz",
    "O'Brien-Smythe",
)
LONG = ("x" * 280, "a b " * 60 + "c")
COUNTY_CHECKS = {id(get_args(County)[-1]), id(get_args(CountyOrNone)[-1])}
NEVER_EMPTY = {id(get_args(Name)[-1])}
SHORT_CHECKS = {id(check) for text in (Number, AddressLine) for check in get_args(text)[3:]}
MOST_CHILDREN = 7
FIRST_DAY = date(2005, 1, 1)
DAYS = 23 * 365


def any_case() -> st.SearchStrategy[Case]:
    """A whole household."""
    return st.randoms(use_true_random=True).map(household)


def filing_days() -> st.SearchStrategy[date]:
    """A planned filing day, before and after the changes of January 1, 2027."""
    return st.dates(date(2026, 1, 1), date(2028, 12, 31))


class Words(NamedTuple):
    """The texts a fact may hold, and how often it is empty."""

    words: tuple[str, ...]
    empty: float


def household(draw: random.Random) -> Case:
    """A case whose facts are drawn each on its own, and as many children as it happens."""
    groups = {name: field.annotation for name, field in Case.model_fields.items() if name != "child"}
    children = tuple(_model(Child, draw) for _number in range(draw.randint(0, MOST_CHILDREN)))
    told = {name: value(of, draw) for name, of in groups.items()}
    told["record"] = told["record"].model_copy(update={"calendar_id": None})  # drawn by us, and never told
    return Case.model_construct(**told, child=children)


def value(annotation: Any, draw: random.Random) -> Any:
    """A value of that type. A fact is told three times out of four."""
    kind, inner = _kind(annotation)
    if kind == "told":
        return draw.choice((None, DONT_KNOW)) if draw.random() < 0.25 else value(inner, draw)
    if kind == "optional":
        return None if draw.random() < 0.25 else value(inner, draw)
    if kind == "words":
        return "" if draw.random() < inner.empty else draw.choice(inner.words)
    if kind == "several":
        return tuple(dict.fromkeys(value(inner, draw) for _number in range(draw.randint(0, 4))))
    if kind == "model":
        return _model(inner, draw)
    if kind == "choice":
        return draw.choice(tuple(inner))
    return PLAIN[inner](draw)


def _day(draw: random.Random) -> Day:
    day = FIRST_DAY + timedelta(days=draw.randrange(DAYS))
    parts = draw.choice((3, 3, 3, 3, 2, 1))
    month, of_month = (day.month if parts > 1 else None), (day.day if parts > 2 else None)
    return Day(day.year, month, of_month, unsure=draw.random() < 0.1)


PLAIN: dict[type, Any] = {
    bool: lambda draw: draw.random() < 0.5,
    int: lambda draw: draw.randint(1, MOST_CHILDREN),
    str: lambda draw: draw.choice(SHORT),
    Decimal: lambda draw: Decimal(draw.randrange(10_000_000)) / 100,
    Day: _day,
    time: lambda draw: time(draw.randrange(24), 0),
}


@cache
def _kind(annotation: Any) -> tuple[str, Any]:
    origin, inside = get_origin(annotation), get_args(annotation)
    if origin is Annotated and COUNTY_CHECKS & set(map(id, inside)):
        return "choice", COUNTIES
    if origin is Annotated and inside[0] is str:
        checks = set(map(id, inside))
        words = SHORT if SHORT_CHECKS & checks else SHORT + LONG
        return "words", Words(words, 0.0 if NEVER_EMPTY & checks else 0.2)
    if origin is Annotated:
        return _kind(inside[0])
    if type(None) in inside or DontKnow in inside:
        (of,) = [each for each in inside if each not in (type(None), DontKnow)]
        return "told" if DontKnow in inside else "optional", of
    if origin is tuple:
        return "several", inside[0]
    if issubclass(annotation, Enum):
        return "choice", annotation
    if issubclass(annotation, BaseModel):
        return "model", annotation
    return "plain", annotation


def _model(of: type[BaseModel], draw: random.Random) -> Any:
    return of.model_construct(**{name: value(f.annotation, draw) for name, f in of.model_fields.items()})
