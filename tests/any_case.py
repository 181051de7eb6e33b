"""Random households for properties: any fact told, not known or not asked, in any mixture.

`any_case` may hold whatever the models can hold; `typed_case` what somebody can have typed in the interview,
so that it can be written out and read back. Both read the models, so that a new fact is drawn too.

A household is drawn from one random number generator, which hypothesis seeds and reports: drawing the
hundreds of facts one by one as strategies takes ten times as long, and thousands of cases are wanted.
"""

from collections.abc import Callable, Mapping
from contextlib import suppress
from datetime import date, time, timedelta
from decimal import Decimal
from enum import Enum
from functools import cache, partial
from random import Random
from typing import Annotated, Any, NamedTuple, get_args, get_origin

from hypothesis import strategies as st
from pydantic import BaseModel, TypeAdapter, ValidationError
from pydantic.fields import FieldInfo

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.children import Child, Home
from firstpaper.facts.counties import COUNTIES, County, CountyOrNone
from firstpaper.facts.income import Percent
from firstpaper.facts.matter import Period
from firstpaper.facts.people import Address
from firstpaper.facts.told import DontKnow
from firstpaper.facts.uccjea import Person
from firstpaper.intake.kinds import in_row
from firstpaper.intake.loading import bank

WORDS = (
    "",
    "Ana Soto",
    "Honda Civic",
    "Truck ending 1234",
    "Return my books.",
    '<b>Ana</b> & "Co" {{ petitioner.name }} %(x)s {name}',
    "Nguyễn Thị Hạnh 🙂 Łukasz",
    "O'Brien-Smythe",
    "93701",
    "CA",
    "26FL001234",
    "4821",
    "x" * 280,
    "a b " * 60 + "c",
)
"""A fact gets one of those that its model takes."""
TYPED_WORDS = ("Fresno", "Kern", "Nevada", "Orange")
"""Words that fit every kind of text, also where a county is asked for."""
COUNTY_CHECKS = {id(get_args(County)[-1]), id(get_args(CountyOrNone)[-1])}
MOST_CHILDREN = 7
MOST_TYPED = 3
"""Children of a household that was typed."""

Draw = Callable[[Random], Any]


class Way(NamedTuple):
    """What is drawn: which words, days of which stretch of time, how many of several, some models by hand."""

    words: tuple[str, ...]
    first_day: date
    days: int
    parts: tuple[int, ...]
    several: int
    made: Mapping[type, Draw]


# --- strategies -------------------------------------------------------------------------------------


def any_case() -> st.SearchStrategy[Case]:
    """A whole household."""
    return _generators().map(household)


def typed_case() -> st.SearchStrategy[Case]:
    """What the interview was told of a household, all before the year 2026."""
    return _generators().map(typed_household)


def _generators() -> st.SearchStrategy[Random]:
    """Generators of random numbers, each begun with one number of hypothesis's own."""
    return st.randoms(use_true_random=True).map(lambda of_hypothesis: Random(of_hypothesis.getrandbits(64)))


def filing_days() -> st.SearchStrategy[date]:
    """A planned filing day, before and after the changes of January 1, 2027."""
    return st.dates(date(2026, 1, 1), date(2028, 12, 31))


# --- households -------------------------------------------------------------------------------------


def household(draw: Random) -> Case:
    """A case whose facts are drawn each on its own, and as many children as it happens."""
    groups = {name: field.annotation for name, field in Case.model_fields.items() if name != "child"}
    children = tuple(_model(Child, draw) for _number in range(draw.randint(0, MOST_CHILDREN)))
    told = {name: value(of, draw) for name, of in groups.items()}
    told["record"] = told["record"].model_copy(update={"calendar_id": None})  # drawn by us, and never told
    return Case.model_construct(**told, child=children)


def typed_household(draw: Random) -> Case:
    """A case in which anything may be told that the interview asks for, whether or not it was asked."""
    rows: list[dict[str, Any]] = [{} for _row in range(draw.randint(0, MOST_TYPED))]
    facts: dict[str, Any] = {"child": rows}
    for key in typed_keys():
        *groups, field = key.split(".")
        answer = typed_answer(key, draw)
        if groups[0] == "child":
            if int(groups[1]) <= len(rows):
                rows[int(groups[1]) - 1][field] = answer
            continue
        here = facts
        for group in groups:
            here = here.setdefault(group, {})
        here[field] = answer
    return Case.model_validate(facts)


@cache
def typed_keys() -> tuple[str, ...]:
    """Every key of a case with MOST_TYPED children, in the order of asking."""
    asked = [question.key for topic in bank().topics for question in topic.questions]
    rows = range(1, MOST_TYPED + 1)
    return tuple(in_row(key, row) for key in asked for row in (rows if "*" in key else (None,)))


def typed_answer(key: str, draw: Random) -> Any:
    """An answer for the fact at a key: told three times out of four."""
    return value(_annotation(key), draw, TYPED)


@cache
def _annotation(key: str) -> Any:
    annotation: Any = Case
    for part in key.split("."):
        in_rows = part.isdecimal()
        annotation = get_args(annotation)[0] if in_rows else annotation.model_fields[part].annotation
    return annotation


# --- values -----------------------------------------------------------------------------------------


def value(annotation: Any, draw: Random, way: Way | None = None) -> Any:
    """A value of that type. A fact is told three times out of four."""
    return _value(_kind(annotation), draw, way or ANYTHING)


def _value(kind: "Kind", draw: Random, way: Way) -> Any:
    name, inner = kind
    if name == "told":
        return draw.choice((None, DONT_KNOW)) if draw.random() < 0.25 else _value(inner, draw, way)
    if name == "optional":
        return None if draw.random() < 0.25 else _value(inner, draw, way)
    if name == "words":
        return draw.choice(_taken(inner, way.words))
    if name == "several":
        rows = range(draw.randint(0, way.several))
        return tuple(dict.fromkeys(_value(inner, draw, way) for _number in rows))
    if name == "model":
        return way.made.get(inner, partial(_model, inner, way=way))(draw)
    if name == "choice":
        return draw.choice(inner)
    return _day(draw, way) if inner is Day else PLAIN[inner](draw)


def _day(draw: Random, way: Way) -> Day:
    day = way.first_day + timedelta(days=draw.randrange(way.days))
    parts = draw.choice(way.parts)
    month, of_month = (day.month if parts > 1 else None), (day.day if parts > 2 else None)
    return Day(day.year, month, of_month, unsure=draw.random() < 0.1)


PLAIN: Mapping[Any, Draw] = {
    bool: lambda draw: draw.random() < 0.5,
    int: lambda draw: draw.randint(1, MOST_CHILDREN),
    str: lambda draw: draw.choice(WORDS),
    Decimal: lambda draw: Decimal(draw.randrange(10_000_000)) / 100,
    Percent: lambda draw: Decimal(draw.randrange(1001)) / 10,
    time: lambda draw: time(draw.randrange(24), 0),
}


class Kind(NamedTuple):
    """What a type holds: for a fact, something optional and several of a kind another kind, else a type."""

    name: str
    inner: Any


@cache
def _kind(annotation: Any) -> Kind:
    origin, inside = get_origin(annotation), get_args(annotation)
    if origin is Annotated and COUNTY_CHECKS & set(map(id, inside)):
        return Kind("choice", tuple(COUNTIES))
    if origin is Annotated and inside[0] is str:
        return Kind("words", annotation)
    if annotation == Percent:
        return Kind("plain", Percent)
    if origin is Annotated:
        return _kind(inside[0])
    if type(None) in inside or DontKnow in inside:
        (of,) = [each for each in inside if each not in (type(None), DontKnow)]
        return Kind("told" if DontKnow in inside else "optional", _kind(of))
    if origin is tuple:
        return Kind("several", _kind(inside[0]))
    if issubclass(annotation, Enum):
        return Kind("choice", tuple(annotation))
    if issubclass(annotation, BaseModel):
        return Kind("model", annotation)
    return Kind("plain", annotation)


@cache
def _taken(annotation: Any, words: tuple[str, ...]) -> tuple[str, ...]:
    """Those words that a text of this kind takes, as it keeps them."""
    adapter: TypeAdapter[str] = TypeAdapter(annotation)
    taken = []
    for word in words:
        with suppress(ValidationError):
            taken.append(adapter.validate_python(word))
    return tuple(taken) or ("abcdefghijklmnopqrst",)


def _model(of: type[BaseModel], draw: Random, way: Way | None = None) -> Any:
    way = way or ANYTHING
    return of.model_construct(**{name: _value(kind, draw, way) for name, kind in _kinds_of(of)})


@cache
def _kinds_of(model: type[BaseModel]) -> tuple[tuple[str, Kind], ...]:
    return tuple((name, _kind(_whole(field))) for name, field in model.model_fields.items())


def _whole(field: FieldInfo) -> Any:
    """The type of a field with its checks, which a model keeps apart."""
    return Annotated[(field.annotation, *field.metadata)] if field.metadata else field.annotation


# --- the two ways -----------------------------------------------------------------------------------

ANYTHING = Way(WORDS, date(2005, 1, 1), 23 * 365, (3, 3, 3, 3, 2, 1), 4, {})
TYPED = Way(
    TYPED_WORDS,
    date(1980, 1, 1),
    46 * 365,
    (3, 3, 1),
    2,
    {
        Period: lambda draw: Period(start=_day(draw, TYPED)),
        Home: lambda draw: Home(start=_day(draw, TYPED), place="Fresno", state=draw.choice(("CA", "NV"))),
        Person: lambda draw: Person(
            name=draw.choice(TYPED_WORDS), relation="aunt", address="1 A St, Fresno, CA 93701"
        ),
        Address: lambda _draw: Address(street="1 A St", city="Fresno", zip="93701"),
    },
)
"""What reads back as it was typed: whole addresses, no end before its beginning, no day to come."""
