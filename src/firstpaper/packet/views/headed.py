"""Findings under their titles: what is said on one matter stands together, its title once."""

from collections.abc import Iterable
from typing import NamedTuple

from firstpaper.law.finding import Finding


class Headed(NamedTuple):
    """A title, and what the findings under it say and say to do, in order."""

    title: str
    says: tuple[str, ...]


def headed(findings: Iterable[Finding]) -> tuple[Headed, ...]:
    """The findings by title, in the order in which the titles first come."""
    found: dict[str, list[str]] = {}
    for one in findings:
        found.setdefault(one.title, []).append(f"{one.says} {one.do}".strip())
    return tuple(Headed(title, tuple(dict.fromkeys(says))) for title, says in found.items())
