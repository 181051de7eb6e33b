"""The answers topic by topic, short enough to be read through at a table, and a place to sign."""

from collections.abc import Iterator
from datetime import date
from itertools import groupby
from typing import NamedTuple

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.intake import Asked, asked, echo
from firstpaper.intake.listing import all_about, in_general, rows
from firstpaper.locale import _
from firstpaper.packet.piles import Pile
from firstpaper.packet.views.sheet import Sheet

_NOT_ON_PAPER = ("safety",)
"""What tells of danger is not printed: the paper goes home."""


class Line(NamedTuple):
    """One answer: what was told, and the answer in words."""

    name: str
    answer: str


class Group(NamedTuple):
    """The answers of one topic."""

    title: str
    lines: tuple[Line, ...]


def sheet(case: Case, on: date) -> Sheet:
    """The pages: every answer that counts, what is still open, and the line to sign."""
    questions = asked(case)
    left = [_begun(one.short) for one in questions if case.fact(one.key) is None]
    return Sheet(
        template="read-back.html",
        title=_("Answers to read through"),
        running=_("Private: answers to read through"),
        style="reading",
        pile=Pile.PRIVATE,
        values={
            "groups": (*_groups(case, questions), *_listed(case)),
            "left": left,
            "day": spell_date(on),
        },
    )


def _groups(case: Case, questions: tuple[Asked, ...]) -> Iterator[Group]:
    told = [
        one for one in questions if case.fact(one.key) is not None and one.topic.name not in _NOT_ON_PAPER
    ]
    for title, group in groupby(told, key=lambda one: _(one.topic.title)):
        yield Group(title, tuple(_line(case, one) for one in group))


def _listed(case: Case) -> Iterator[Group]:
    """What the two own, owe and earn: one group for each thing, as it was told."""
    for row in rows(case):
        words = {"asset": _("Thing {number}"), "debt": _("Debt {number}")}[row.group]
        told = all_about(row).told(case)
        yield Group(words.format(number=row.number), tuple(_line(case, one) for one in told))
    for part in in_general():
        if told := part.told(case):
            yield Group(_(part.topics[0].title), tuple(_line(case, one) for one in told))


def _line(case: Case, one: Asked) -> Line:
    return Line(_begun(one.short), "; ".join(echo(one, case.fact(one.key)).splitlines()))


def _begun(name: str) -> str:
    """The name of a fact as a line begins with it."""
    return name[:1].upper() + name[1:]
