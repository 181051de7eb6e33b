"""What the two own, owe and earn: what is asked about it, and what stands.

The questions lie in `listing/NN-topic.yaml`, in the format of the question bank. The interview asks none of
them: a person tells of one thing or debt at a time. Pure, as the engine of the questions is: a case in, a
case out.
"""

from collections.abc import Iterator
from typing import Any, NamedTuple

from firstpaper.facts import Case
from firstpaper.intake.engine import Asked, applies, put, row_at
from firstpaper.intake.kinds import ROWS, Row, in_row
from firstpaper.intake.loading import listing
from firstpaper.intake.question import Topic

GROUPS = ("asset", "debt")
"""The groups of rows, in the order in which they are shown."""

NOTES = ("thing-notes", "debt-notes")
"""Topics that are offered, and asked only of those who want to tell more."""


class Part(NamedTuple):
    """What can be told together: a topic that is asked once, or all the topics about one row."""

    topics: tuple[Topic, ...]
    number: int | None = None

    def asked(self, case: Case) -> tuple[Asked, ...]:
        """The questions that apply now, in order."""
        return tuple(
            Asked(question, in_row(question.key, self.number), topic, self.number, case)
            for topic in self.topics
            for question in topic.questions
            if applies(question, case, self.number)
        )

    def told(self, case: Case) -> tuple[Asked, ...]:
        """Those of them that have an answer."""
        return tuple(one for one in self.asked(case) if case.fact(one.key) is not None)

    def open(self, case: Case) -> tuple[Asked, ...]:
        """Those of them that have none."""
        return tuple(one for one in self.asked(case) if case.fact(one.key) is None)


def about(row: Row) -> Part:
    """What is asked about one row, without the notes."""
    return Part(tuple(topic for topic in _topics(row.group) if topic.name not in NOTES), row.number)


def notes_on(row: Row) -> Part:
    """What is asked about one row only of those who want to tell more."""
    return Part(tuple(topic for topic in _topics(row.group) if topic.name in NOTES), row.number)


def all_about(row: Row) -> Part:
    """Everything that is asked about one row."""
    return Part(_topics(row.group), row.number)


def in_general() -> tuple[Part, ...]:
    """What is asked once: what holds for everything that is listed, and the incomes."""
    return tuple(Part((topic,)) for topic in listing().topics if topic.questions[0].each is None)


def rows(case: Case) -> tuple[Row, ...]:
    """Every thing and debt that is listed."""
    return tuple(Row(group, number) for group in GROUPS for number in range(1, len(case.fact(group)) + 1))


def new_row(case: Case, group: str) -> Row | None:
    """The row after the last one; None where no more fit."""
    number = len(case.fact(group)) + 1
    return Row(group, number) if number <= ROWS[group] else None


def is_empty(case: Case, row: Row) -> bool:
    """Whether nothing is told about the row."""
    told = row_at(case, row.group, row.number)
    return told == type(told).nothing()


def not_standing(case: Case) -> tuple[Row, ...]:
    """The rows of which nothing stands: about which nothing is told, or only what does not go with them."""
    stands = settled(case)
    return tuple(row for row in rows(case) if is_empty(stands, row))


def with_told(case: Case, key: str, value: Any) -> Case:
    """The case with one fact told, and without those that do not go with it any more.

    Raises AnswerRefused where the value does not fit.
    """
    return settled(put(case, key, value))


def without_row(case: Case, row: Row) -> Case:
    """The case without that thing or debt. Those after it move up by one."""
    told = case.fact(row.group)
    return case.with_fact(row.group, (*told[: row.number - 1], *told[row.number :]))


def settled(case: Case) -> Case:
    """The case without listed facts that nothing asks for in it; taking one out can unsettle the next."""
    while loose := tuple(unasked(case)):
        for key in loose:
            case = case.with_fact(key, None)
    return case


def unasked(case: Case) -> Iterator[str]:
    """The keys of listed facts that are told, and that nothing asks for in this case."""
    parts = (*in_general(), *map(all_about, rows(case)))
    for part in parts:
        asked = {one.key for one in part.asked(case)}
        keys = (in_row(question.key, part.number) for topic in part.topics for question in topic.questions)
        yield from (key for key in keys if key not in asked and case.fact(key) is not None)


def listed(case: Case) -> dict[str, Any]:
    """Everything told about what the two own, owe and earn, by key."""
    parts = (*in_general(), *map(all_about, rows(case)))
    keys = (
        in_row(question.key, part.number)
        for part in parts
        for topic in part.topics
        for question in topic.questions
    )
    return {key: value for key in keys if (value := case.fact(key)) is not None}


def _topics(group: str) -> tuple[Topic, ...]:
    return tuple(topic for topic in listing().topics if topic.questions[0].each == group)
