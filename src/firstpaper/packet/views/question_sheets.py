"""Blank question sheets, for people who are interviewed away from a computer. They come from no case."""

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from firstpaper.facts import Case
from firstpaper.intake import AnswerKind, Asked, Topic
from firstpaper.intake.blank import Group, Room, groups, open_groups
from firstpaper.intake.kinds import Row
from firstpaper.law.figure import figure
from firstpaper.locale import _
from firstpaper.packet.views.sheet import Sheet

WIDE = frozenset({AnswerKind.PERIODS, AnswerKind.HOMES, AnswerKind.PEOPLE, AnswerKind.PARAGRAPH})
"""Kinds whose answers need the whole width of the page."""


@dataclass(frozen=True, slots=True)
class Part:
    """A group of questions under its heading. `skip` tells those it is not for where to go on."""

    heading: str
    skip: str
    new_page: bool
    group: Group

    @property
    def rows(self) -> Iterator[tuple[Asked, ...]]:
        """The questions two beside each other; one alone where its answer needs the whole width."""
        waiting: Asked | None = None
        for one in self.group.questions:
            if one.kind in WIDE or one.notice:
                if waiting:
                    yield (waiting,)
                waiting = None
                yield (one,)
            elif waiting:
                yield waiting, one
                waiting = None
            else:
                waiting = one
        if waiting:
            yield (waiting,)


def sheets(
    topics: Sequence[Topic], room: Room, on: date, only: Collection[str] | None = None
) -> Iterator[Sheet]:
    """A page on how to use the sheets, then one sheet a topic, with blocks for so many rows of each group.

    With `only`, those questions alone, by their general keys.
    """
    yield Sheet(
        template="question-sheets-start.html",
        title=_("How to use these sheets"),
        running=_("Question sheets"),
        values={
            "hotline": figure("help.domestic_violence_hotline", on).value,
        },
    )
    for topic in topics:
        if parts := tuple(_parts(groups(topic, room, only))):
            yield _sheet(topic, parts)


def open_sheets(case: Case, topics: Sequence[Topic]) -> Iterator[Sheet]:
    """One sheet a topic with just those questions that the case leaves open."""
    for topic in topics:
        found = tuple(open_groups(topic, case))
        if found:
            yield _sheet(topic, tuple(Part(_of_row(group), "", False, group) for group in found))


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
        follows=True,
    )


def _of_row(group: Group) -> str:
    return _numbered(group.row) if group.row else _("Still open")


def _parts(found: Iterable[Group]) -> Iterator[Part]:
    """Each row begins a page, and so does what follows the rows, so that a page can be copied."""
    before: Group | None = None
    for group in found:
        turns = before is not None and before.row != group.row
        begins = group.row is not None and (before is None or turns)
        yield Part(_heading(group, begins), _skip(group, begins), turns, group)
        before = group


def _heading(group: Group, begins_row: bool) -> str:
    if begins_row and group.row:
        return _numbered(group.row)
    if group.only_if is None:
        return _("For everyone")
    return _("Only if {condition}").format(condition=group.only_if)


def _numbered(row: Row) -> str:
    words = {"child": _("Child {number}"), "asset": _("Thing {number}"), "debt": _("Debt {number}")}
    return words[row.group].format(number=row.number)


def _skip(group: Group, begins_row: bool) -> str:
    if group.only_if is None:
        return ""
    go_on = _("If not, go on to the next heading.")
    if not begins_row:
        return go_on
    only = _("Only if {condition}.").format(condition=group.only_if)
    return f"{only} {go_on}"
