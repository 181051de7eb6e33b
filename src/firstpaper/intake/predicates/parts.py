"""What the predicates of several topics look at."""

from collections.abc import Collection

from firstpaper.facts import Case, Day, known


def several(case: Case, key: str) -> Collection[object]:
    """The answers chosen where several may be; none where nothing was told."""
    chosen = known(case.fact(key))
    return chosen if isinstance(chosen, tuple) else ()


def may_be_earlier(one: Day | None, other: Day | None) -> bool:
    """Whether the first day may lie before the second, also because one of them is not known for sure."""
    if one is None or other is None or one.unsure or other.unsure:
        return True
    return one.earliest < other.latest
