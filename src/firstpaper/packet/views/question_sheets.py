"""Blank question sheets, for people who are interviewed away from a computer. They come from no case."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from firstpaper.intake import Topic
from firstpaper.intake.blank import Group, groups
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


def sheets(topics: Sequence[Topic], children: int, on: date) -> Iterator[Sheet]:
    """A page on how to use the sheets, then one sheet a topic, with so many blocks for a child."""
    yield Sheet(
        template="question-sheets-start.html",
        title=_("How to use these sheets"),
        running=_("Question sheets"),
        values={
            "hotline": figure("help.domestic_violence_hotline", on).value,
        },
    )
    for topic in topics:
        yield Sheet(
            template="question-sheet.html",
            title=_(topic.title),
            running=_("Questions: {topic}").format(topic=_(topic.title)),
            values={
                "title": _(topic.title),
                "opening": _(topic.opening) if topic.opening else "",
                "parts": tuple(_parts(groups(topic, children))),
            },
        )


def _parts(found: Iterable[Group]) -> Iterator[Part]:
    """Each child begins a page, and so does what follows the children, so that a page can be copied."""
    before: Group | None = None
    for group in found:
        turns = before is not None and before.child != group.child
        begins = group.child is not None and (before is None or turns)
        yield Part(_heading(group, begins), _skip(group, begins), turns, group)
        before = group


def _heading(group: Group, begins_child: bool) -> str:
    if begins_child:
        return _("Child {number}").format(number=group.child)
    if group.only_if is None:
        return _("For everyone")
    return _("Only if {condition}").format(condition=group.only_if)


def _skip(group: Group, begins_child: bool) -> str:
    if group.only_if is None:
        return ""
    go_on = _("If not, go on to the next heading.")
    if not begins_child:
        return go_on
    only = _("Only if {condition}.").format(condition=group.only_if)
    return f"{only} {go_on}"
