"""A file of facts to be filled in: every question as remarks, and below it its key, waiting for a value.

Nothing in it counts until somebody takes a # away. Examples stand in remarks only, so that an invented
name can never be taken for an answer.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from textwrap import wrap

import yaml

from firstpaper.facts import Case
from firstpaper.intake.blank import Group, Room, groups, open_groups
from firstpaper.intake.engine import Asked
from firstpaper.intake.kinds import AnswerKind
from firstpaper.intake.question import Topic
from firstpaper.intake.reading.day_order import DayOrder, year_first
from firstpaper.locale import _

BEGINS = "# Firstpaper: a file of facts\n"
EXAMPLE = "#     "
"""How a remark begins that shows a line of facts, ready to be copied."""

_BARE = (AnswerKind.DATE, AnswerKind.NUMBER, AnswerKind.MONEY, AnswerKind.PERCENT)
_LISTS = (AnswerKind.LINES, AnswerKind.PERIODS, AnswerKind.HOMES, AnswerKind.CONTRIBUTIONS)

GroupsOf = Callable[[Topic], Iterable[Group]]
"""Gives the groups of questions of a topic that stand in the file."""

WIDTH = 100
LONGEST = 10_000


def skeleton(topics: Sequence[Topic], room: Room, first_words: Sequence[str] = ()) -> str:
    """The file, with blocks for so many rows of each group, and `first_words` as remarks near its top."""
    return _whole(topics, lambda topic: groups(topic, room), first_words)


def open_skeleton(topics: Sequence[Topic], case: Case, first_words: Sequence[str] = ()) -> str:
    """The same with only those questions that the case leaves open."""
    return _whole(topics, lambda topic: open_groups(topic, case), first_words)


def _whole(topics: Sequence[Topic], groups_of: GroupsOf, first_words: Sequence[str]) -> str:
    return BEGINS + "\n".join([*_remarks(*first_words, *_how_to()), *_body(topics, groups_of)]) + "\n"


def _how_to() -> tuple[str, ...]:
    return (
        _("To give an answer, take away the # in front of its name and write the answer after the colon."),
        _("Leave all other lines as they are. What you leave out stays open, and nothing is lost."),
        _("Answers may be: don't know. Where nothing is an answer, write: none"),
        _("Put several answers in a list, like this: [one, two]"),
        _("Write dates with the year first, like 2026-03-14. Or add one line: day_order: month_first"),
        _("Leave out Social Security numbers. Of an account, give the last four digits."),
        _("When it is done, type: firstpaper enter home.case, and after it the name of this file."),
    )


def _body(topics: Sequence[Topic], groups_of: GroupsOf) -> Iterator[str]:
    for topic in topics:
        yield from ("", "", f"# ===== {_(topic.title)} =====")
        yield from _remarks(_(topic.opening) if topic.opening else "")
        for group in groups_of(topic):
            for asked in group.questions:
                yield from ("", *_question(group, asked))


def _question(group: Group, asked: Asked) -> Iterator[str]:
    yield from _remarks(*asked.notice)
    if group.only_if:
        yield from _remarks(_("Only if {condition}:").format(condition=group.only_if))
    yield from _remarks(asked.ask, asked.hint or "")
    for value, words in _values(asked):
        yield from _remarks(f"- {value}: {words}")
    yield f"{EXAMPLE}{asked.key}: {_example(asked)}"
    yield f"#{asked.key}:"


def _values(asked: Asked) -> Iterator[tuple[str, str]]:
    """What can be written for the choices, each with its words."""
    yield from asked.choices
    if asked.none:
        yield "none", asked.none


def _example(asked: Asked) -> str:
    """A value that could stand at the question, as it is written in the file."""
    examples = [year_first(one, DayOrder.MONTH_FIRST) for one in asked.examples]
    if asked.kind is AnswerKind.YES_NO:
        return "yes"
    if asked.kind is AnswerKind.SEVERAL:
        return f"[{', '.join(choice.value for choice in asked.choices[:2])}]"
    if asked.choices:
        return asked.choices[0].value
    if not examples:
        return "none" if asked.none else "don't know"
    if asked.kind in _BARE:
        return examples[0]
    return _in_yaml(examples if asked.kind in _LISTS else examples[0])


def _in_yaml(value: object) -> str:
    text: str = yaml.safe_dump(value, default_flow_style=True, allow_unicode=True, width=LONGEST)
    return text.removesuffix("...\n").strip()


def _remarks(*paragraphs: str) -> Iterator[str]:
    for paragraph in paragraphs:
        hanging = "  " if paragraph.startswith("- ") else ""
        for line in wrap(paragraph, WIDTH, subsequent_indent=hanging, break_on_hyphens=False):
            yield f"# {line}"
