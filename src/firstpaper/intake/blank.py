"""The questions as they stand before anybody has answered: topic by topic, in groups that apply together."""

from collections.abc import Iterable, Iterator
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.intake.engine import Asked
from firstpaper.intake.kinds import for_child
from firstpaper.intake.only_if import only_if
from firstpaper.intake.question import Topic
from firstpaper.locale import _


class Group(NamedTuple):
    """Questions in a row that are asked of the same people, about one child or about none.

    `only_if` is the condition in words; None where they are asked of everybody.
    """

    child: int | None
    only_if: str | None
    questions: tuple[Asked, ...]


def groups(topic: Topic, children: int) -> Iterator[Group]:
    """The questions of a topic in their order, those about each child once for each of `children`."""
    nobody = _nobody(children)
    for each_child, row in groupby(topic.questions, key=attrgetter("each_child")):
        same = [(when, tuple(group)) for when, group in groupby(row, key=attrgetter("when"))]
        numbers: Iterable[int | None] = range(1, children + 1) if each_child else (None,)
        for number in numbers:
            for when, questions in same:
                yield Group(
                    number,
                    only_if(when) if when else None,
                    tuple(Asked(one, for_child(one.key, number), topic, number, nobody) for one in questions),
                )


def _nobody(children: int) -> Case:
    """A case that only puts words where names would stand."""
    case = Case().with_fact("respondent.name", _("your spouse or partner"))
    return case.with_fact("children.how_many", children or None)
