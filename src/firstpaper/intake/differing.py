"""What is different between two states of a case: every answer and every recorded detail, by its key."""

from collections.abc import Iterator
from itertools import groupby
from typing import Any, NamedTuple

from firstpaper.facts import Case, DontKnow, known
from firstpaper.intake.engine import Asked
from firstpaper.intake.events import asking_anything
from firstpaper.intake.kinds import in_row, recorded_places, told_places
from firstpaper.intake.typed import fold

_WHO_IT_IS = ("petitioner.name", "respondent.name")
_WHICH_CHILD = ("name", "born_on")


class Difference(NamedTuple):
    """One fact that is not as it was; None stands for not told."""

    asked: Asked
    before: Any
    after: Any

    @property
    def key(self) -> str:
        """The key of the fact."""
        return self.asked.key

    @property
    def replaces(self) -> bool:
        """Whether another answer stood there."""
        return self.before is not None and self.after is not None

    @property
    def other_person(self) -> bool:
        """Whether a name or a day of birth was told before and is another one now."""
        return (
            says_who(self.key)
            and _is_told(self.before)
            and _is_told(self.after)
            and fold(str(self.before)) != fold(str(self.after))
        )


def differences(before: Case, after: Case) -> tuple[Difference, ...]:
    """What changed, in the order of the facts."""
    keys = dict.fromkeys((*told_keys(before, after), *recorded_places()))
    return tuple(
        Difference(one, before.fact(key), after.fact(key))
        for key in keys
        if before.fact(key) != after.fact(key) and (one := _asking(key, before, after))
    )


def says_who(key: str) -> bool:
    """Whether the fact says whom a case is about: a name, or the day a child was born."""
    group, _dot, rest = key.partition(".")
    return key in _WHO_IT_IS or (group == "child" and rest.partition(".")[2] in _WHICH_CHILD)


def _is_told(value: Any) -> bool:
    return known(value) is not None and not isinstance(value, DontKnow) and value != ""


def _asking(key: str, before: Case, after: Case) -> Asked | None:
    return asking_anything(key, after if after.fact(key) is not None else before)


def told_keys(*cases: Case) -> Iterator[str]:
    """The key of every fact that a person can tell in one of the cases, row by row."""
    for group, together in groupby(told_places(), key=_group):
        places = tuple(together)
        if not group:
            yield from places
            continue
        rows = max(len(case.fact(group)) for case in cases)
        yield from (in_row(place, number) for number in range(1, rows + 1) for place in places)


def _group(place: str) -> str:
    """The group of rows that a place is in; empty where it is in none."""
    group, in_rows, _field = place.partition(".*.")
    return group if in_rows else ""
