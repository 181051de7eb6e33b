"""Measures that many rules ask for, worked out once for a case."""

from collections.abc import Callable
from functools import wraps
from typing import Any, Concatenate, ParamSpec, TypeVar, cast

from firstpaper.facts import Case
from firstpaper.locale import language

P = ParamSpec("P")
T = TypeVar("T")


def once_a_case(measure: Callable[Concatenate[Case, P], T]) -> Callable[Concatenate[Case, P], T]:
    """The measure, which remembers what it gave for the case that it was asked about last.

    Facts never change, so that the same case gives the same answer; of another case nothing is kept. The
    language is part of the question, because the steps of a count are words.
    """
    found: dict[tuple[Any, ...], T] = {}
    latest: list[Case] = []

    @wraps(measure)
    def remembered(case: Case, /, *args: P.args, **named: P.kwargs) -> T:
        if not latest or latest[0] is not case:
            latest[:] = [case]
            found.clear()
        asked = (language(), args, tuple(named.items()))
        if asked not in found:
            found[asked] = measure(case, *args, **named)
        return found[asked]

    return cast("Callable[Concatenate[Case, P], T]", remembered)
