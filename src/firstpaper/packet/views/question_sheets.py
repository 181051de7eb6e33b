"""Blank question sheets, for people who are interviewed away from a computer. They come from no case."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from firstpaper.facts import Case
from firstpaper.intake import Topic
from firstpaper.intake.blank import Group, Room, groups, open_groups
from firstpaper.intake.kinds import Row
from firstpaper.law.figure import figure
from firstpaper.locale import _
from firstpaper.packet.views.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Part:
    """A group of questions under its heading. `skip` tells those it is not for where to go on."""

    heading: str
    skip: str
    new_page: bool
    group: Group


def sheets(topics: Sequence[Topic], room: Room, on: date) -> Iterator[Sheet]:
    """A page on how to use the sheets, then one sheet a topic, with blocks for so many rows of each group."""
    yield Sheet(
        template="question-sheets-start.html",
        title=_("How to use these sheets"),
        running=_("Question sheets"),
        values={
            "hotline": figure("help.domestic_violence_hotline", on).value,
        },
    )
    for topic in topics:
        yield _sheet(topic, tuple(_parts(groups(topic, room))))


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
        },
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
