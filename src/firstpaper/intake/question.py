"""A question as data. The bank files hold these; nothing here decides anything.

Named tuples, not dataclasses: they are made eight times as fast, and the first prompt waits for them.
"""

from collections.abc import Callable, Iterable, Iterator
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple, Self

from firstpaper.intake.kinds import AnswerKind, place_of

Predicate = Callable[..., bool]
"""``(case) -> bool``; for a question asked about each row of facts, ``(case, row) -> bool``."""


class Choice(NamedTuple):
    """One of the answers to choose from: the value that is kept, and its words."""

    value: str
    words: str


class Feeds(NamedTuple):
    """What a question is asked for.

    Ids of rules, concepts of the petition's items, and other sheets that show the answer: one of our
    own by the name of its template, an official form by its number. `measures` are what is worked out
    from it, by their module in `firstpaper.law.measures`.
    """

    rules: tuple[str, ...] = ()
    items: tuple[str, ...] = ()
    sheets: tuple[str, ...] = ()
    measures: tuple[str, ...] = ()


class Question(NamedTuple):
    """One question. `when` names the predicate `applies`; without one it is always asked. `only_if` says it
    in words, to stand after "Only if", for paper and for files, where nothing can be worked out. It may ask
    one person too many, never one too few: an answer that is not needed is set aside when it is typed in.

    `spared_if` names a predicate under which nobody is asked, because other answers are enough. An answer
    that is known stands all the same; else `implied` does, where the answer follows from them. `needless_if`
    names a predicate under which nobody is asked, because nobody needs the answer.

    `no_takes_back` is the key of the answer that a "no" here takes back, so that it is asked again.

    `same_as` is the key of the question whose answer is meant by "the same".

    `short` is the name of the fact: what is told, in a few words, to stand after "we need to know" or in a
    list.
    """

    key: str
    short: str
    ask: str
    why: str
    feeds: Feeds
    examples: tuple[str, ...] = ()
    when: str | None = None
    only_if: str | None = None
    choices: tuple[Choice, ...] = ()
    none: str | None = None
    hint: str | None = None
    notice: tuple[str, ...] = ()
    not_after_today: bool = False
    applies: Predicate | None = None
    spared_if: str | None = None
    spared: Predicate | None = None
    implied: str | None = None
    needless_if: str | None = None
    needless: Predicate | None = None
    same_as: str | None = None
    no_takes_back: str | None = None

    @property
    def kind(self) -> AnswerKind:
        """The kind of answer, from the model's field."""
        return place_of(self.key).kind

    @property
    def each(self) -> str | None:
        """The group, such as "child", for each row of which it is asked; None where it is asked once."""
        group, rows, _field = self.key.partition(".*.")
        return group if rows else None


class Topic(NamedTuple):
    """The questions of one bank file, in the order they are asked.

    In `together` they stand once more, each run of questions that are asked of the same rows for itself,
    behind the group of those rows; None where they are asked once.
    """

    name: str
    title: str
    opening: str | None
    questions: tuple[Question, ...]
    together: tuple[tuple[str | None, tuple[Question, ...]], ...]

    @classmethod
    def of(cls, name: str, title: str, opening: str | None, questions: Iterable[Question]) -> Self:
        """The topic of these questions."""
        kept = tuple(questions)
        runs = groupby(kept, key=attrgetter("each"))
        return cls(name, title, opening, kept, tuple((each, tuple(run)) for each, run in runs))


_WORDS: tuple[str, ...] = ("short", "ask", "why", "only_if", "none", "hint")


def worded(question: Question) -> Iterator[tuple[str, str]]:
    """Everything in a question that a person may read, each with the name of what it is."""
    yield from ((name, words) for name in _WORDS if (words := getattr(question, name)))
    yield from (("notice", words) for words in question.notice)
    yield from ((f"choices.{choice.value}", choice.words) for choice in question.choices)


def all_words(topic: Topic) -> tuple[str, ...]:
    """Everything in a topic that a person may read, for checks of plain words."""
    questions = (words for question in topic.questions for _name, words in worded(question))
    return tuple(filter(None, (topic.title, topic.opening, *questions)))
