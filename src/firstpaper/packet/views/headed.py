"""Findings under their titles: what is said on one matter stands together, its title once."""

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from firstpaper.law.finding import Finding
from firstpaper.law.words import help_first


class Headed(NamedTuple):
    """A title, and what the findings under it say and say to do, in order."""

    title: str
    says: tuple[str, ...]


def headed(findings: Iterable[Finding]) -> tuple[Headed, ...]:
    """The findings by title, in the order in which the titles first come."""
    found: dict[str, list[str]] = {}
    for one in findings:
        found.setdefault(one.title, []).append(f"{one.says} {one.do}".strip().removeprefix(f"{one.title}. "))
    return tuple(Headed(title, tuple(_each_once(says))) for title, says in found.items())


def _each_once(texts: Iterable[str]) -> Iterator[str]:
    """The texts, each once; whom to ask, which ends many of them, is said in the last one that says it."""
    different = tuple(dict.fromkeys(texts))
    asking = [text for text in different if text.endswith(help_first())]
    for text in different:
        yield text.removesuffix(help_first()).rstrip() if text in asking[:-1] else text
