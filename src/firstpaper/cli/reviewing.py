"""The answers so far, in plain words, by topic."""

from collections.abc import Iterator, Sequence
from itertools import groupby

from firstpaper.facts import Case
from firstpaper.intake import Asked, asked, echo
from firstpaper.locale import _


def answered(case: Case) -> tuple[Asked, ...]:
    """The questions that apply and have an answer, in order. Their place in this list is their number."""
    return tuple(one for one in asked(case) if case.fact(one.key) is not None)


def still_open(case: Case) -> tuple[Asked, ...]:
    """The questions that apply and have no answer yet."""
    return tuple(one for one in asked(case) if case.fact(one.key) is None)


def review(case: Case) -> str:
    """Every answer under its topic, numbered through."""
    numbered = list(enumerate(answered(case), 1))
    groups = groupby(numbered, key=lambda pair: pair[1].topic.name)
    return "\n\n".join("\n".join(_topic(case, list(group))) for _name, group in groups)


def _topic(case: Case, group: Sequence[tuple[int, Asked]]) -> Iterator[str]:
    yield _(group[0][1].topic.title)
    for number, one in group:
        yield f"  {number}. {one.ask}"
        yield from (f"     {line}" for line in echo(one, case.fact(one.key)).splitlines())
