"""Which questions apply, which comes next, and which answers stand. Pure: a case in, answers out.

The questions are walked in their order. Predicates look only at facts asked earlier, so one walk
that leaves out each answer whose question does not apply, as it goes, sees at every question just
the facts that stand there. An answer that is left out is not lost: it stays in the case, and counts
again once its question applies again.
"""

import re
from collections import deque
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from pydantic import ValidationError

from firstpaper.facts import Case, known
from firstpaper.facts.case import row_model
from firstpaper.facts.model import Facts
from firstpaper.intake.kinds import (
    AnswerKind,
    general,
    in_row,
    is_key,
    key_now,
    listed_places,
    places,
    row_of,
)
from firstpaper.intake.loading import bank, bank_for
from firstpaper.intake.question import Choice, Question, Topic
from firstpaper.intake.refusals import AnswerRefused, refusal
from firstpaper.locale import _

_IN_A_WORD: Mapping[str, object] = {"yes": True, "no": False, "none": ""}
"""Answers that follow from others, where the bank does not give one of the answers to choose from."""

_NAME_IN_WORDS = re.compile(r"\{(child|petitioner|respondent|county)\}")


@dataclass(frozen=True)
class Asked:
    """A question put to this household: with its key, the row it is about, and names filled in."""

    question: Question
    key: str
    topic: Topic
    row: int | None = None
    case: Case = field(default_factory=Case.nothing, repr=False, compare=False)

    @property
    def kind(self) -> AnswerKind:
        """The kind of answer it takes."""
        return self.question.kind

    @property
    def ask(self) -> str:
        """The question itself."""
        return self._say(self.question.ask)

    @property
    def why(self) -> str:
        """Why it is asked."""
        return self._say(self.question.why)

    @property
    def hint(self) -> str | None:
        """How to type the answer."""
        return self._say(self.question.hint) if self.question.hint else None

    @property
    def short(self) -> str:
        """The name of the fact: what is told, in a few words."""
        return self._say(self.question.short)

    @property
    def head(self) -> str:
        """What stands before the answer read back: in a list of things the name, else the question."""
        return self.short if general(self.key) in listed_places() else self.ask

    @property
    def examples(self) -> tuple[str, ...]:
        """Answers as one may type them."""
        return tuple(map(self._say, self.question.examples))

    @property
    def none(self) -> str | None:
        """The words for "nothing", where nothing is an answer."""
        return self._say(self.question.none) if self.question.none else None

    @property
    def notice(self) -> tuple[str, ...]:
        """Paragraphs to show before the question."""
        return tuple(self._say(words) for words in self.question.notice)

    @property
    def choices(self) -> tuple[Choice, ...]:
        """The answers to choose from, in the order shown."""
        return tuple(Choice(choice.value, self._say(choice.words)) for choice in self.question.choices)

    def _say(self, words: str) -> str:
        return _NAME_IN_WORDS.sub(lambda match: self._name(match[1]), _(words))

    def _name(self, who: str) -> str:
        if who == "child":
            told = self.case.child[self.row - 1 : self.row] if self.row else ()
            return next((name for child in told if (name := known(child.name))), None) or _child_in_words(
                self.row, self.case
            )
        if who == "county":
            return known(self.case.court.county) or _("your county")
        if who == "petitioner":
            return known(self.case.petitioner.name) or _("the person who files")
        return known(self.case.respondent.name) or _("the other side")


class Progress(NamedTuple):
    """How far the interview has come. Topics count only where they have something to ask."""

    answered: int
    applicable: int
    topic_number: int
    topics: int


class _Walk:
    """One walk over the questions; `case` is what stands of the answers passed so far."""

    def __init__(self, case: Case) -> None:
        self.case = case

    def __iter__(self) -> Iterator[Asked]:
        for topic in bank().each_topic():
            for question, number in self._stops(topic):
                key = in_row(question.key, number)
                if applies(question, self.case, number):
                    if not self._spared(question, key):
                        yield Asked(question, key, topic, number, self.case)
                elif self.case.fact(key) is not None:
                    self.case = self.case.supposing(key, None)

    def _spared(self, question: Question, key: str) -> bool:
        """Whether nobody is asked, because other answers are enough; a known answer is kept.

        Where the answer follows from those others, it counts as told from here on.
        """
        told = self.case.fact(key)
        if told is None and question.needless is not None and question.needless(self.case):
            return True
        if question.spared is None or not question.spared(self.case):
            return False
        if question.implied is None:
            return known(told) is None
        follows = self.case.with_fact(key, _IN_A_WORD.get(question.implied, question.implied))
        if told is not None and told != follows.fact(key):
            return False
        self.case = follows
        return True

    def _stops(self, topic: Topic) -> Iterator[tuple[Question, int | None]]:
        for each, questions in topic.together:
            rows = (None,) if each is None else range(1, self._leave_out_rows(each) + 1)
            yield from ((question, number) for number in rows for question in questions)

    def _leave_out_rows(self, group: str) -> int:
        """How many rows the group has; the case goes on without those beyond."""
        rows = self.case.fact(group)
        count = _ROWS_TOLD[group](self.case) if group in _ROWS_TOLD else len(rows)
        if len(rows) > count:
            self.case = self.case.supposing(group, rows[:count])
        return count


_ROWS_TOLD: Mapping[str, Callable[[Case], int]] = {"child": lambda case: known(case.children.how_many) or 0}
"""Groups of which an answer says how many rows there are. Of the others there are as many as were told."""


def applies(question: Question, case: Case, number: int | None = None) -> bool:
    """Whether the question is asked now, of the row with that number where it is asked of each row."""
    if question.applies is None:
        return True
    if question.each is None or number is None:
        return question.applies(case)
    return question.applies(case, row_at(case, question.each, number))


def row_at(case: Case, group: str, number: int) -> Facts:
    """The row with that number, counted from 1; one in which nothing is told where there is none."""
    rows = case.fact(group)
    if number <= len(rows):
        row: Facts = rows[number - 1]
        return row
    model = row_model(Case, group)
    assert model is not None
    return model.nothing()


class _Walked(NamedTuple):
    """What a walk to the end has met: the questions that apply, in order, and what stands of the answers."""

    stops: tuple[Asked, ...]
    standing: Case


_latest: deque[tuple[Case, _Walked]] = deque(maxlen=4)
"""The walks of the cases asked about last: an answer is asked about before and after it, again and again."""


def _remembered(case: Case) -> _Walked | None:
    return next((walked for walked_before, walked in _latest if walked_before is case), None)


def _walked(case: Case) -> _Walked:
    """The walk over a case. Facts never change, so that the same case is walked once."""
    walked = _remembered(case)
    if walked is None:
        walk = _Walk(case)
        walked = _Walked(tuple(walk), walk.case)
        _latest.append((case, walked))
    return walked


def asked(case: Case) -> tuple[Asked, ...]:
    """Every question that applies now, answered or not, in order."""
    return _walked(case).stops


def asking(key: str, case: Case) -> Asked | None:
    """The question for the fact at `key`, whether or not it applies now; None where nothing asks it.

    A key that was given up finds the question of today.
    """
    found = bank_for(key).find(key)
    if found is None:
        now = key_now(key)
        return None if now == key else asking(now, case)
    topic, question = found
    row = row_of(key)
    return Asked(question, key, topic, row.number if row else None, case)


def next_question(case: Case, passed: Collection[str] = ()) -> Asked | None:
    """The first question that applies, has no answer and was not passed over; None when all are done."""
    walked = _remembered(case)
    stops = walked.stops if walked else _Walk(case)  # of the topics behind it none need be loaded
    return next((stop for stop in stops if case.fact(stop.key) is None and stop.key not in passed), None)


def progress(case: Case, passed: Collection[str] = ()) -> Progress:
    """How many of the questions that apply now are answered, and in which topic the next one is."""
    stops = asked(case)
    topics = list(dict.fromkeys(stop.topic.name for stop in stops))
    open_stops = (stop for stop in stops if case.fact(stop.key) is None)
    following = next((stop for stop in open_stops if stop.key not in passed), None)
    return Progress(
        answered=sum(case.fact(stop.key) is not None for stop in stops),
        applicable=len(stops),
        topic_number=topics.index(following.topic.name) + 1 if following else len(topics),
        topics=len(topics),
    )


def put(case: Case, key: str, value: Any) -> Case:
    """The case with the answer at `key`; None takes an answer back.

    Raises AnswerRefused where no fact has this key or the value does not fit it.
    """
    if not is_key(key):
        raise AnswerRefused(_("There is no question with that name. Please check the spelling."))
    return with_value(case, key, value)


def with_value(case: Case, key: str, value: Any) -> Case:
    """The case with the fact at `key`, told or recorded. Raises AnswerRefused where it does not fit."""
    try:
        return case.with_fact(key, value)
    except ValidationError as error:
        raise refusal(error) from None


def standing(case: Case) -> Case:
    """The case without every answer that its question does not stand behind now.

    Left out: answers whose question does not apply, children beyond the number told, and facts that
    no question asks about.
    """
    return standing_and_open(case)[0]


def standing_and_open(case: Case) -> tuple[Case, tuple[str, ...]]:
    """What `standing` gives, and the keys of the questions that apply and have no answer, in one walk."""
    stops, kept = _walked(case)
    still_open = tuple(stop.key for stop in stops if case.fact(stop.key) is None)
    for key in bank().unasked:
        if kept.fact(key) is not None:
            kept = kept.supposing(key, None)
    return kept, still_open


def set_aside(case: Case) -> tuple[str, ...]:
    """The keys of answers that are kept but do not stand, so that nothing is lost without a word."""
    kept = standing(case)
    return tuple(key for key in _answered_keys(case) if kept.fact(key) is None)


def switched(old: Sequence[Asked], new: Sequence[Asked]) -> tuple[tuple[Asked, ...], tuple[Asked, ...]]:
    """The questions that stand only among the new ones, and those that stand only among the old ones."""
    old_keys, new_keys = {stop.key for stop in old}, {stop.key for stop in new}
    on = tuple(stop for stop in new if stop.key not in old_keys)
    off = tuple(stop for stop in old if stop.key not in new_keys)
    return on, off


def _answered_keys(case: Case) -> Iterator[str]:
    for place in places():
        group, rows, _field = place.partition(".*.")
        numbers = range(1, len(case.fact(group)) + 1) if rows else (None,)
        for number in numbers:
            key = in_row(place, number)
            if case.fact(key) is not None:
                yield key


def _child_in_words(child: int | None, case: Case) -> str:
    if child is None or known(case.children.how_many) == 1:
        return _("your child")
    names = _ordinals()
    if child <= len(names):
        return names[child - 1]
    return _("your child number {number}").format(number=child)


def _ordinals() -> tuple[str, ...]:
    return (
        _("your first child"),
        _("your second child"),
        _("your third child"),
        _("your fourth child"),
        _("your fifth child"),
        _("your sixth child"),
        _("your seventh child"),
        _("your eighth child"),
        _("your ninth child"),
        _("your tenth child"),
    )
