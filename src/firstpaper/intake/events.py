"""What can happen in a case after the filing, as data: each event with what is asked about it.

The events lie in `events/NN-name.yaml`, in the format of the question bank; the keys are those of
`facts.record`. Nothing here is asked in the interview: a person records an event when it happens, or
corrects it. Pure, as the engine of the questions is: a case in, a case out.
"""

from collections.abc import Iterator, Mapping
from datetime import date
from functools import cache
from operator import itemgetter
from pathlib import Path
from typing import Any

from firstpaper.facts import Case, Day, known
from firstpaper.facts.record import Closure
from firstpaper.former_names import Named, called_now
from firstpaper.intake.engine import Asked, asking, with_value
from firstpaper.intake.kinds import AnswerKind, recorded_places
from firstpaper.intake.loading import Bank
from firstpaper.intake.predicates import OF_EVENTS
from firstpaper.intake.question import Topic
from firstpaper.intake.spoken import echo
from firstpaper.locale import _

FOLDER = Path(__file__).parent / "events"

TOLD_WITH: Mapping[str, str] = {"filed": "fee"}
"""Events that happen at the same counter, so that the second is asked about with the first."""

OF_STEPS = frozenset({"fee"})
"""Events whose days are those of single steps, each told by its own name: none is the day of the event."""

METHOD = "record.service.method"
_COUNTED_BY_METHOD = (
    "record.service.served_by",
    "record.service.server_age",
    "record.service.served_on",
    "record.service.mailed_on",
    "record.service.acknowledged_on",
    "record.service.acknowledgment_back_on",
    "record.service.first_published_on",
    "record.service.first_posted_on",
    "record.service.complete_on",
)
"""Facts that mean something else, or nothing, once the way of service is another one."""

CLOSED = "record.court_closed"

_IN_BRACKETS = (AnswerKind.CHOICE, AnswerKind.CLOSURES)
"""Kinds of answer that say of an event on one line how it went, or on which days."""


@cache
def events() -> Bank:
    """The events that come with the program, in the order they usually happen."""
    return Bank(FOLDER, OF_EVENTS, recorded_places)


def asking_anything(key: str, case: Case) -> Asked | None:
    """The question behind the fact at `key`, told or recorded; None where nothing asks it."""
    found = events().find(key)
    return Asked(found[1], key, found[0], None, case) if found else asking(key, case)


def event(name: str) -> Topic | None:
    """The event of that name, or of one that it had before."""
    named = {topic.name: topic for topic in events().topics}
    return named.get(name) or named.get(called_now(Named.EVENT, name))


def told_with(topic: Topic) -> tuple[Topic, ...]:
    """The event, and the one that is asked about with it."""
    also = event(TOLD_WITH.get(topic.name, ""))
    return (topic, also) if also else (topic,)


def details(topic: Topic, case: Case) -> tuple[Asked, ...]:
    """What is asked about an event in this case, in order."""
    return tuple(
        Asked(question, question.key, topic, None, case)
        for question in topic.questions
        if question.applies is None or question.applies(case)
    )


def happened_already(topic: Topic, case: Case) -> tuple[Asked, ...]:
    """The details of an event that were recorded."""
    return tuple(one for one in details(topic, case) if case.fact(one.key) is not None)


def as_they_happened(case: Case) -> tuple[Topic, ...]:
    """The events by their first day; one without a day stays behind the one it usually follows."""
    keyed, before = [], date.min
    for topic in events().topics:
        facts = (known(case.fact(one.key)) for one in happened_already(topic, case))
        before = min((told.earliest for told in facts if isinstance(told, Day)), default=before)
        keyed.append((before, topic))
    return tuple(topic for _first, topic in sorted(keyed, key=itemgetter(0)))


def in_short(topic: Topic, case: Case) -> str:
    """An event on one line: its day, its title, how it went, and its other days; empty where not told."""
    told = happened_already(topic, case)
    if not told:
        return ""
    days = [one for one in told if isinstance(case.fact(one.key), Day)]
    ways = (one for one in told if one.kind in _IN_BRACKETS)
    how = next((f" ({echo(one, case.fact(one.key))})" for one in ways), "")
    own = 0 if topic.name in OF_STEPS else 1
    day = "".join(f"{echo(one, case.fact(one.key))}: " for one in days[:own])
    more = (f"; {one.short}: {echo(one, case.fact(one.key))}" for one in days[own:])
    return f"{day}{_(topic.title)}{how}{''.join(more)}"


def with_detail(case: Case, key: str, value: Any) -> Case:
    """The case with one detail recorded, and without the details that do not go with it.

    Closures of the court are told as they come: a new one stands beside those told before, and takes the
    place of one that began on the same day. Raises AnswerRefused where the value does not fit.
    """
    if key == CLOSED and isinstance(value, tuple):
        value = _with_those_before(case, value)
    if key == METHOD and value != case.fact(METHOD):
        for counted in _COUNTED_BY_METHOD:
            case = _without(case, counted)
    return _settled(with_value(case, key, value))


def without_event(case: Case, topic: Topic) -> Case:
    """The case as if the event had not been recorded, and without the details that hung on it."""
    for question in topic.questions:
        case = _without(case, question.key)
    return _settled(case)


def recorded(case: Case) -> dict[str, Any]:
    """Every detail that was recorded, by key."""
    found = ((key, case.fact(key)) for key in _keys())
    return {key: value for key, value in found if value is not None}


def _with_those_before(case: Case, closures: tuple[Closure, ...]) -> tuple[Closure, ...]:
    told_anew = {one.first for one in closures}
    before = known(case.record.court_closed) or ()
    return (*(one for one in before if one.first not in told_anew), *closures)


def _settled(case: Case) -> Case:
    """The case without details that nothing asks for in it; taking one out can unsettle the next."""
    while loose := [key for key in _not_asked(case) if case.fact(key) is not None]:
        for key in loose:
            case = _without(case, key)
    return case


def _not_asked(case: Case) -> Iterator[str]:
    for topic in events().topics:
        asked = {one.key for one in details(topic, case)}
        yield from (question.key for question in topic.questions if question.key not in asked)


def _keys() -> Iterator[str]:
    return (question.key for topic in events().topics for question in topic.questions)


def _without(case: Case, key: str) -> Case:
    return case if case.fact(key) is None else case.with_fact(key, None)
