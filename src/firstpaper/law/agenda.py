"""The dates of a case as a person keeps them: what lies ahead, what is done, what starts later.

`deadlines` gives the dates that are open. Here they stand beside those that something has ended, and
those that wait for something to happen first.
"""

from collections.abc import Iterator, Mapping, Set
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import FeeState, FinalDisclosure, ServiceMethod
from firstpaper.facts.record import Service
from firstpaper.law.deadline import Deadline, DeadlineKind, Event, Meaning
from firstpaper.law.deadline_register import all_deadlines, deadlines
from firstpaper.law.measures import fees, service
from firstpaper.law.measures.once import once_a_case
from firstpaper.law.measures.record import begins_on, day, filed_on, happened, joint, responded, took_part
from firstpaper.locale import _


class State(StrEnum):
    """How a date stands on the day we look from."""

    AHEAD = "ahead"
    POSSIBLE = "possible"
    """A first day that has come: what it opens can be done."""
    MISSED = "missed"
    PASSED = "passed"
    """A day of the court that has passed."""
    DONE = "done"
    NOT_NEEDED = "not_needed"
    """Something else has ended it."""


@dataclass(frozen=True, slots=True)
class Entry:
    """One date with how it stands. `done_on` is the day on which it was done, where that is known."""

    deadline: Deadline
    state: State
    done_on: date | None = None

    @property
    def open(self) -> bool:
        """Whether there is still something to do or to wait for."""
        return self.state in (State.AHEAD, State.POSSIBLE, State.MISSED)


@dataclass(frozen=True, slots=True)
class Later:
    """A date that does not run yet. `starts` says what it waits for: "once the papers are served".

    `example` is the date as it would be if that happened on the day we look from, or that of the filing
    where it is still to come.
    """

    starts: str
    example: Deadline


@dataclass(frozen=True, slots=True)
class Agenda:
    """All dates of a case on one day.

    `filed_on` is the day it was filed; `planned` says that nothing was filed yet and the dates hang on a
    filing on the day `begins`: the day we look from, or the first one after it that is right for a filing.
    Where neither holds, the day of the filing is not known well enough.
    """

    on: date
    filed_on: date | None
    planned: bool
    begins: date | None
    entries: tuple[Entry, ...]
    later: tuple[Later, ...]

    @property
    def ahead(self) -> tuple[Entry, ...]:
        """What is still open, in its order."""
        return tuple(one for one in self.entries if one.open)

    @property
    def ended(self) -> tuple[Entry, ...]:
        """What is done, passed or no longer needed, in its order."""
        return tuple(one for one in self.entries if not one.open)


@once_a_case
def agenda(case: Case, on: date) -> Agenda:
    """The dates of a case as they stand on the day `on`."""
    filed, begins = filed_on(case, on), begins_on(case, on)
    open_now = deadlines(case, on)
    entries = [Entry(one, _state(one, on)) for one in open_now]
    entries += _ended(case, on, {one.id for one in open_now})
    entries += _waiver_by_silence(case, on)
    taken = {one.deadline.key for one in entries}
    later = {one.example.key: one for one in _later(case, on) if one.example.key not in taken}
    return Agenda(
        on=on,
        filed_on=filed,
        planned=filed is None and begins is not None,
        begins=begins,
        entries=tuple(sorted(entries, key=lambda one: (one.deadline.target, one.deadline.key))),
        later=tuple(sorted(later.values(), key=lambda one: (one.example.target, one.example.key))),
    )


def _state(one: Deadline, on: date) -> State:
    if one.missed(on):
        return State.MISSED
    if one.meaning is Meaning.FIRST_DAY and one.target <= on:
        return State.POSSIBLE
    return State.AHEAD


# --- what something has ended ----------------------------------------------------------------------

SERVICE = "record.service"


def _ended(case: Case, on: date, open_now: Set[str]) -> Iterator[Entry]:
    """The dates that would be open, had nothing been recorded that ends them."""
    seen = case.model_copy(update={"record": happened(case, on)})
    for kind in all_deadlines().values():
        told = [key for key in (*kind.needless_by, kind.done_by) if key and _is_told(case, key)]
        if not told:
            continue
        for one in kind.counted(_supposing(case, dict.fromkeys(told)), on):
            if one.id not in open_now:
                yield _how_it_ended(one, seen, on)


def _is_told(case: Case, key: str) -> bool:
    return case.fact(key) not in (None, Service.nothing())


def _how_it_ended(one: Deadline, seen: Case, on: date) -> Entry:
    doing = one.kind.done_by
    if doing and _was_done(seen, on, doing):
        return Entry(one, State.DONE, _done_on(seen, on, doing))
    return Entry(one, State.NOT_NEEDED)


def _was_done(seen: Case, on: date, doing: str) -> bool:
    if doing == SERVICE:
        return service.surely_served(seen, on)
    return known(seen.fact(doing)) not in (None, FinalDisclosure.BOTH_WAIVED)


def _done_on(seen: Case, on: date, doing: str) -> date | None:
    if doing == SERVICE:
        complete = service.service_complete(seen, on)
        return complete.day if complete else None
    told = known(seen.fact(doing))
    return told.sure if isinstance(told, Day) else None


def _waiver_by_silence(case: Case, on: date) -> Iterator[Entry]:
    """The day by which the court had to act on a fee waiver, once it has passed in silence."""
    asked = day(happened(case, on).waiver_filed_on)
    if asked is not None:
        kind = all_deadlines()["fees.waiver_deemed"]
        yield from (Entry(one, State.PASSED) for one in kind.counted(case, asked) if one.target < on)


# --- what waits for something to happen --------------------------------------------------------------


class _Supposed(NamedTuple):
    """Something that may happen next: what is said of it, and its facts."""

    event: Event
    starts: str
    facts: Mapping[str, object]


def _later(case: Case, on: date) -> Iterator[Later]:
    begins = begins_on(case, on)
    if begins is None:
        return
    filing = {} if filed_on(case, on) else {"record.filed_on": Day.of(begins)}
    on = max(on, begins)
    for one in (*_of_fees(case, on), *_of_service(case, on), *_of_answers(case, on)):
        supposed = _supposing(case, {**filing, **one.facts})
        yield from (
            Later(one.starts, each) for kind in _waiting_for(one.event) for each in kind.counted(supposed, on)
        )


def _waiting_for(event: Event) -> Iterator[DeadlineKind]:
    return (kind for kind in all_deadlines().values() if kind.waits_for is event)


def _of_fees(case: Case, on: date) -> Iterator[_Supposed]:
    today, fee = Day.of(on), known(case.record.fee)
    to_be_asked = fee is None and fees.wants_waiver(case)
    if to_be_asked:
        yield _Supposed(
            Event.WAIVER_ASKED,
            _("once you ask for the fee waiver"),
            {"record.fee": FeeState.WAIVER_ASKED, "record.waiver_filed_on": today},
        )
    if fee is FeeState.WAIVER_ASKED or to_be_asked:
        yield _Supposed(
            Event.WAIVER_DENIED,
            _("if the fee waiver is denied"),
            {"record.fee": FeeState.WAIVER_DENIED, "record.waiver_denied_on": today},
        )


def _of_service(case: Case, on: date) -> Iterator[_Supposed]:
    if joint(case) or took_part(case, on) or service.service_complete(case, on) is not None:
        return
    today, how = Day.of(on), service.method(case)
    if how is None:
        by_hand = {_METHOD: ServiceMethod.PERSONAL, "record.service.served_on": today}
        yield _Supposed(Event.SERVED, _("once the papers are served"), by_hand)
        mailed = {_METHOD: ServiceMethod.ACKNOWLEDGMENT, "record.service.mailed_on": today}
        yield _Supposed(Event.MAILED_WITH_FORM, _("if mailed with form FL-117"), mailed)
    elif known(case.fact(service.start_key(how))) is None:
        back = {"record.service.acknowledgment_back_on": today}
        facts = {service.start_key(how): today, **(back if how is ServiceMethod.ACKNOWLEDGMENT else {})}
        yield _Supposed(Event.SERVED, _starts_with(how), facts)


def _starts_with(how: ServiceMethod) -> str:
    if how is ServiceMethod.ACKNOWLEDGMENT:
        return _("once form FL-117 is signed, if it comes back")
    if how is ServiceMethod.SUBSTITUTED:
        return _("once a copy is mailed to the same place")
    return _("once service is complete")


def _of_answers(case: Case, on: date) -> Iterator[_Supposed]:
    today, record = Day.of(on), case.record
    newer = known(record.revoked_on if joint(case) else record.amended_on)
    if newer is not None and known(record.amended_served_on) is None:
        yield _Supposed(
            Event.AMENDED_SERVED,
            _("once the amended paper is served"),
            {"record.amended_served_on": today},
        )
    if not joint(case) and not responded(case, on):
        yield _Supposed(
            Event.RESPONSE, _("once the other side responds"), {"record.response_filed_on": today}
        )


_METHOD = "record.service.method"


def _supposing(case: Case, facts: Mapping[str, object]) -> Case:
    """The case as if these facts had been recorded; None takes one out."""
    for key, value in facts.items():
        case = case.with_fact(key, Service.nothing() if key == SERVICE and value is None else value)
    return case
