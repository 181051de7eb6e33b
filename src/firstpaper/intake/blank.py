"""The questions as they stand before anybody has answered: topic by topic, in groups that apply together."""

from collections.abc import Iterable, Iterator, Mapping
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.intake.engine import Asked, asked
from firstpaper.intake.kinds import Row, in_row, row_of
from firstpaper.intake.only_if import only_if
from firstpaper.intake.question import Topic
from firstpaper.intake.to_come import Usual
from firstpaper.locale import _

Room = Mapping[str, int]
"""How many rows of each group to leave room for, such as ``{"child": 2}``. None for a group not named."""

OF_LATER_ROWS = frozenset({"may_have_the_same_homes"})
"""Conditions that compare a row with one before it, so that the first never meets them."""


class Group(NamedTuple):
    """Questions in a row that are asked of the same people, about one row of facts or about none.

    `only_if` is the condition in words; None where they are asked of everybody.
    """

    row: Row | None
    only_if: str | None
    questions: tuple[Asked, ...]


def groups(topic: Topic, room: Room, usual: Usual | None = None) -> Iterator[Group]:
    """The questions of a topic in their order, those about each row once for each row there is room for.

    With `usual`, those of that usual case alone. What every case of its kind meets is then no condition.
    """
    nobody = _nobody(room)
    questions = [one for one in topic.questions if usual is None or one.key in usual.keys]
    for each, together in groupby(questions, key=attrgetter("each")):
        same = [tuple(group) for _when, group in groupby(together, key=attrgetter("when"))]
        numbers: Iterable[int | None] = range(1, room.get(each, 0) + 1) if each else (None,)
        for number in numbers:
            for group_questions in same:
                if number == 1 and group_questions[0].when in OF_LATER_ROWS:
                    continue
                yield Group(
                    Row(each, number) if each and number else None,
                    only_if(group_questions[0], usual.kind if usual else None),
                    tuple(
                        Asked(one, in_row(one.key, number), topic, number, nobody) for one in group_questions
                    ),
                )


def open_groups(topic: Topic, case: Case) -> Iterator[Group]:
    """The questions of a topic that this case still leaves open, those answered with "I don't know" too."""
    left = [one for one in asked(case) if one.topic is topic and known(case.fact(one.key)) is None]
    for number, questions in groupby(left, key=attrgetter("row")):
        same = tuple(questions)
        row = row_of(same[0].key)
        yield Group(row if number else None, None, same)


def _nobody(room: Room) -> Case:
    """A case that only puts words where names would stand."""
    case = Case().with_fact("respondent.name", _("your spouse or partner"))
    return case.with_fact("children.how_many", room.get("child") or None)
