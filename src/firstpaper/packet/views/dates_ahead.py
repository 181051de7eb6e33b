"""Dates ahead: one page to hang up or put away, by month, with boxes to tick."""

from collections.abc import Iterator, Sequence
from datetime import date
from itertools import groupby
from typing import NamedTuple

from firstpaper.counting import days_after, month_name, short_date, spell_date
from firstpaper.facts import Case
from firstpaper.intake.events import as_they_happened, in_short
from firstpaper.law.agenda import Agenda, Entry, State
from firstpaper.law.deadline import Actor, Deadline
from firstpaper.law.measures.record import case_number, day
from firstpaper.law.measures.service import service_complete, waits_for_receipt
from firstpaper.law.words import moved_to, not_confirmed, spaced
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.either_way import dates_either_way
from firstpaper.packet.views.sheet import Sheet

YEARS_AHEAD_FROM_DAYS = 400
"""From how far ahead dates stand together at the end, so that the page stays one page."""


class Line(NamedTuple):
    """One date: its day in words, what a closed court makes of it, what it is, who acts, and a remark."""

    day: str
    moved: str
    title: str
    who: str
    remark: str = ""


class Group(NamedTuple):
    """Dates that stand together: those of one month, of the years ahead, or that wait for one thing."""

    name: str
    lines: tuple[Line, ...]


class Past(NamedTuple):
    """What happened, in words; not yet done where it still waits for something to count."""

    words: str
    done: bool = True


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One sheet; none where no date can be counted at all."""
    found = dates_either_way(brief)
    if not found.entries and not found.later:
        return
    yield Sheet(
        template="dates-ahead.html",
        title=_("Dates ahead"),
        running=_("Dates ahead"),
        purpose=_("Tick each date when it is done. Keep the page where only you see it."),
        values={
            "on": found.begins or brief.on if found.planned else brief.on,
            "planned": found.planned,
            "case_number": case_number(brief.case),
            "happened": tuple(_happened(brief)),
            "months": tuple(_months(found)),
            "later": tuple(_later(found)),
            "hide": brief.others_look,
        },
    )


def _happened(brief: Brief) -> Iterator[Past]:
    """The events that were recorded, each with its day, and the day on which service was complete."""
    told = (in_short(topic, brief.case) for topic in as_they_happened(brief.case))
    yield from (Past(words) for words in told if words)
    complete = service_complete(brief.case, brief.on)
    if complete and complete.day <= brief.on and complete.day not in _days_of_service(brief.case):
        waits = waits_for_receipt(brief.case, brief.on)
        words = (
            _("{day}: Service counts from this day, if the signed receipt comes back")
            if waits
            else _("{day}: Service was complete")
        )
        yield Past(words.format(day=spell_date(complete.day)), done=not waits)


def _days_of_service(case: Case) -> set[date | None]:
    """The days that the event of the service names itself."""
    told = case.record.service
    return {day(told.served_on), day(told.acknowledged_on), day(told.complete_on)}


def _months(found: Agenda) -> Iterator[Group]:
    near_until = days_after(found.on, YEARS_AHEAD_FROM_DAYS).day
    near = [one for one in found.ahead if one.deadline.target <= near_until]
    for (year, _month), group in groupby(near, key=lambda one: _month_of(one.deadline.target)):
        together = tuple(group)
        name = _("{month} {year}").format(month=month_name(together[0].deadline.target), year=year)
        yield Group(name, _lines(together))
    if far := [one for one in found.ahead if one.deadline.target > near_until]:
        yield Group(_("Years ahead"), _lines(far))


def _month_of(day: date) -> tuple[int, int]:
    return day.year, day.month


def _lines(entries: Sequence[Entry]) -> tuple[Line, ...]:
    return tuple(_line(one.deadline, _remark(one)) for one in entries)


def _line(deadline: Deadline, remark: str = "") -> Line:
    moved = moved_to(deadline.dated.due, short_date)
    return Line(short_date(deadline.target), moved, deadline.title, _who(deadline.who), remark)


def _remark(one: Entry) -> str:
    stands = {
        State.MISSED: _("This day has passed. {words}").format(words=one.deadline.if_missed),
        State.POSSIBLE: _("This day has come."),
    }.get(one.state, "")
    also = "" if one.state is State.MISSED else one.deadline.dated.also
    return spaced((stands, also, not_confirmed(one.deadline.certainty)))


def _who(who: Actor) -> str:
    """Who has to act, where it is not the one who holds the page."""
    return {
        Actor.PETITIONER: "",
        Actor.RESPONDENT: _("(for the other side)"),
        Actor.EITHER: _("(the one who has to answer)"),
        Actor.BOTH: _("(both of you)"),
        Actor.COURT: "",
    }[who]


_MAY_NEVER_COME = frozenset({"service.acknowledgment", "fees.waiver_denied"})


def _later(found: Agenda) -> Iterator[Group]:
    """What waits for something that is to happen. What may never come has its place on other sheets."""
    waiting: dict[str, list[Line]] = {}
    for one in found.later:
        if one.example.key in _MAY_NEVER_COME:
            continue
        line = Line("", "", one.example.title, _who(one.example.who))
        waiting.setdefault(one.starts, []).append(line)
    yield from (Group(starts[:1].upper() + starts[1:], tuple(lines)) for starts, lines in waiting.items())
