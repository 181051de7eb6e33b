"""What the predicates of several topics look at."""

from typing import TypeVar

from firstpaper.facts import Day, DontKnow, known

T = TypeVar("T")


def several(chosen: DontKnow | tuple[T, ...] | None) -> tuple[T, ...]:
    """The answers chosen where several may be; none where nothing was told."""
    return known(chosen) or ()


def may_be_earlier(one: Day | None, other: Day | None) -> bool:
    """Whether the first day may lie before the second, also because one of them is not known for sure."""
    if one is None or other is None or one.unsure or other.unsure:
        return True
    return one.earliest < other.latest
