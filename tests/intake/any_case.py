"""Cases made at random over all facts, for properties that hold for every household.

A case comes from one seed: much faster than drawing each fact, and a seed is enough to repeat a failure.
"""

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from functools import cache
from random import Random
from typing import Any

from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.children import Home
from firstpaper.facts.matter import Period
from firstpaper.facts.people import Address
from firstpaper.facts.uccjea import Person
from firstpaper.intake.kinds import AnswerKind, in_row, place_of
from firstpaper.intake.loading import bank

MOST_ROWS = 3
COUNTIES = ("Fresno", "Kern", "Nevada", "Orange")
"""Words that fit every kind of text, also where a county is asked for."""

SEEDS = st.integers(0, 2**32 - 1)


@cache
def all_keys() -> tuple[str, ...]:
    """Every key of a case with MOST_ROWS children, in the order of asking."""
    asked = [question.key for topic in bank().topics for question in topic.questions]
    return tuple(
        in_row(key, number)
        for key in asked
        for number in (range(1, MOST_ROWS + 1) if "*" in key else (None,))
    )


def any_answer(key: str, random: Random) -> Any:
    """An answer for the fact at `key`: mostly a value, sometimes "don't know", sometimes none."""
    return random.choices([None, DONT_KNOW, _any_value(key, random)], weights=[2, 1, 7])[0]


def any_case(seed: int) -> Case:
    """A case in which anything may be told, whether or not it was asked."""
    random = Random(seed)
    rows: list[dict[str, Any]] = [{} for _row in range(random.randint(0, MOST_ROWS))]
    facts: dict[str, Any] = {"child": rows}
    for key in all_keys():
        *groups, field = key.split(".")
        answer = any_answer(key, random)
        if groups[0] == "child":
            if int(groups[1]) <= len(rows):
                rows[int(groups[1]) - 1][field] = answer
            continue
        here = facts
        for group in groups:
            here = here.setdefault(group, {})
        here[field] = answer
    return Case.model_validate(facts)


CASES = SEEDS.map(any_case)


def _any_value(key: str, random: Random) -> Any:
    place = place_of(key)
    values = list(place.choices or ())
    if place.kind is AnswerKind.CHOICE:
        return random.choice(values)
    if place.kind is AnswerKind.SEVERAL:
        return tuple(value for value in values if random.random() < 0.4)
    return _VALUES[place.kind](random)


def _any_day(random: Random) -> Day:
    whole = date(1980, 1, 1) + timedelta(days=random.randrange(46 * 365))  # all before the tests' own today
    return random.choice([Day.of(whole), Day.of(whole), Day(whole.year)])


_VALUES: dict[AnswerKind, Callable[[Random], Any]] = {
    AnswerKind.YES_NO: lambda random: random.random() < 0.5,
    AnswerKind.DATE: _any_day,
    AnswerKind.TEXT: lambda random: random.choice(COUNTIES),
    AnswerKind.PARAGRAPH: lambda random: random.choice(["", *COUNTIES]),
    AnswerKind.LINES: lambda random: tuple(random.sample(COUNTIES, random.randint(0, 2))),
    AnswerKind.PERIODS: lambda random: tuple(
        Period(start=_any_day(random)) for _ in range(random.randint(0, 2))
    ),
    AnswerKind.HOMES: lambda random: tuple(
        Home(start=_any_day(random), place="Fresno", state=random.choice(["CA", "NV"]))
        for _ in range(random.randint(1, 2))
    ),
    AnswerKind.PEOPLE: lambda random: tuple(
        Person(name=name, relation="aunt", address="1 A St, Fresno, CA 93701")
        for name in random.sample(COUNTIES, random.randint(0, 2))
    ),
    AnswerKind.ADDRESS: lambda random: Address(street="1 A St", city="Fresno", zip="93701"),
    AnswerKind.NUMBER: lambda random: random.randint(1, MOST_ROWS),
    AnswerKind.MONEY: lambda random: Decimal(random.randrange(10_000_000)) / 100,
}
