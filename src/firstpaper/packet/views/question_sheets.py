"""Blank question sheets, for people who are interviewed away from a computer. They come from no case."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.intake import AnswerKind, Asked, Topic
from firstpaper.intake.blank import Group, Room, groups, open_groups
from firstpaper.intake.kinds import Row
from firstpaper.intake.to_come import Usual
from firstpaper.law.figure import figure
from firstpaper.locale import _
from firstpaper.packet.views.sheet import Sheet

WIDE = frozenset({AnswerKind.PERIODS, AnswerKind.HOMES, AnswerKind.PEOPLE, AnswerKind.PARAGRAPH})
"""Kinds whose answers need the whole width of the page."""
LONG_NOTICE = 900
"""Letters; with more of them before it, a question takes the whole width too."""
OWN_HEADING = 3
"""So many questions with one condition get a heading; fewer say it themselves."""


class Placed(NamedTuple):
    """A question as it stands on a sheet, with the condition that it says itself."""

    asked: Asked
    condition: str | None = None

    @property
    def is_wide(self) -> bool:
        """Whether it takes the whole width of the page."""
        return self.asked.kind in WIDE or sum(map(len, self.asked.notice)) > LONG_NOTICE


@dataclass(frozen=True, slots=True)
class Part:
    """Questions under a heading or under none. `skip` tells those it is not for where to go on."""

    heading: str
    skip: str
    new_page: bool
    questions: tuple[Placed, ...]

    @property
    def runs(self) -> Iterator[tuple[Placed, ...]]:
        """The questions in order: those that stand in two columns together, and alone what has the width."""
        for wide, run in groupby(self.questions, key=attrgetter("is_wide")):
            together = tuple(run)
            yield from ((one,) for one in together) if wide else (together,)


def sheets(topics: Sequence[Topic], room: Room, on: date, usual: Usual | None = None) -> Iterator[Sheet]:
    """A page on how to use the sheets, then one sheet a topic, with blocks for so many rows of each group.

    With `usual`, the questions of that usual case alone.
    """
    yield Sheet(
        template="question-sheets-start.html",
        title=_("How to use these sheets"),
        running=_("Question sheets"),
        style="reading",
        values={
            "hotline": figure("help.domestic_violence_hotline", on).value,
        },
    )
    for topic in topics:
        if parts := tuple(_parts(groups(topic, room, usual))):
            yield _sheet(topic, parts)


def open_sheets(case: Case, topics: Sequence[Topic]) -> Iterator[Sheet]:
    """One sheet a topic with just those questions that the case leaves open."""
    for topic in topics:
        found = tuple(open_groups(topic, case))
        if found:
            yield _sheet(topic, tuple(Part(_of_row(group), "", False, _placed(group)) for group in found))


def _sheet(topic: Topic, parts: tuple[Part, ...]) -> Sheet:
    return Sheet(
        template="question-sheet.html",
        title=_(topic.title),
        running=_("Questions: {topic}").format(topic=_(topic.title)),
        values={
            "title": _(topic.title),
            "opening": _(topic.opening) if topic.opening else "",
            "parts": parts,
            "theirs": _("your spouse or partner"),
            "mine": _("my spouse or partner"),
        },
        style="reading",
        follows=True,
    )


def _of_row(group: Group) -> str:
    return _numbered(group.row) if group.row else _("Still open")


def _placed(group: Group, condition: str | None = None) -> tuple[Placed, ...]:
    return tuple(Placed(one, condition) for one in group.questions)


def _parts(found: Iterable[Group]) -> Iterator[Part]:
    """Each row begins a page, and so does what follows the rows, so that a page can be copied."""
    part: Part | None = None
    before: Group | None = None
    for group in found:
        turns = before is not None and before.row != group.row
        begins_row = group.row is not None and (before is None or turns)
        headed = begins_row or (group.only_if is not None and len(group.questions) >= OWN_HEADING)
        if part and not (turns or headed or (part.skip and not group.row)):
            part = replace(part, questions=(*part.questions, *_placed(group, group.only_if)))
        else:
            if part:
                yield part
            said = None if headed else group.only_if
            part = Part(*_heading(group, begins_row, headed, part), turns, _placed(group, said))
        before = group
    if part:
        yield part


def _heading(group: Group, begins_row: bool, headed: bool, before: Part | None) -> tuple[str, str]:
    """The heading of the part that this group begins, and whom it is not for."""
    if begins_row and group.row:
        return _numbered(group.row), _skip(group)
    if headed:
        return _("Only if {condition}").format(condition=group.only_if), _go_on()
    return (_("For everyone") if before else ""), ""


def _numbered(row: Row) -> str:
    words = {"child": _("Child {number}"), "asset": _("Thing {number}"), "debt": _("Debt {number}")}
    return words[row.group].format(number=row.number)


def _skip(group: Group) -> str:
    if group.only_if is None:
        return ""
    only = _("Only if {condition}.").format(condition=group.only_if)
    return f"{only} {_go_on()}"


def _go_on() -> str:
    return _("If not, go on to the next heading.")
