"""The six months that must pass before a marriage can end (Fam. Code 2339).

No opinion was found on how its six months are counted. Two readings are kept apart: calendar
months, and the longer of calendar months and 182 days (Gov. Code 6803, 6804; Gonzales v. County of
Los Angeles (1988) 199 Cal.App.3d 601; Jimenez v. Chavez (2023) 97 Cal.App.5th 50). Nothing has to
be done on the last day, so a closed court does not move it.
"""

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting import (
    Counted,
    count_back,
    day_after,
    days_after,
    short_date,
    statutory_days,
)
from firstpaper.facts import Case
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.law.figure import figure
from firstpaper.law.measures.due import Due, due_at_the_clerk, months_after
from firstpaper.law.measures.record import appeared_on, day, filed_on, happened, joint
from firstpaper.law.measures.service import service_complete
from firstpaper.locale import _


class Starts(StrEnum):
    """What starts the six months."""

    SERVICE = "service"
    APPEARANCE = "appearance"
    JOINT_FILING = "joint_filing"


class Clock(NamedTuple):
    """The day from which the six months run, and why."""

    start: date
    why: Starts
    steps: tuple[str, ...]


class EarliestEnd(NamedTuple):
    """The first day on which a marriage can end.

    `expires` is the last of the six months. `day` is the day after it, by calendar months;
    `longer_day` is the day after the longer of calendar months and `longer_days` statutory days. A
    judge picks the day.
    """

    start: date
    expires: date
    day: date
    longer_day: date
    longer_days: int
    steps: tuple[str, ...]


def has_waiting(case: Case) -> bool:
    """Whether six months must pass: for ending a marriage or partnership, not for separation or nullity."""
    return kind_of(case) is Kind.DISSOLUTION


def clock(case: Case, on: date) -> Clock | None:
    """Service or appearance, whichever is first; the filing, for a joint petition, also a revoked one."""
    if joint(case):
        filed = filed_on(case, on)
        return Clock(filed, Starts.JOINT_FILING, (_joint_step(filed),)) if filed else None
    served, appeared = service_complete(case, on), appeared_on(case, on)
    if appeared is not None and (served is None or appeared < served.day):
        return Clock(appeared, Starts.APPEARANCE, (_appeared_step(appeared),))
    return Clock(served.day, Starts.SERVICE, served.steps) if served else None


def earliest_end(start: date) -> EarliestEnd:
    """The first day on which a marriage can end whose six months run from `start`, by both readings."""
    months: int = figure("waiting.months", start).value
    days: int = figure("residence.half_year_days", start).value
    expires = months_after(start, months)
    counted = statutory_days(start, days)
    first, longer = day_after(expires.day), day_after(max(expires.day, counted))
    steps = (*expires.steps, _next_step(first))
    if longer > first:
        also = _("{date}: the day after {days} days, as a court may count half a year")
        steps = (*steps, also.format(date=short_date(longer), days=days))
    return EarliestEnd(start, expires.day, first, longer, days, steps)


def credited_end(case: Case, on: date) -> Counted | None:
    """The first day with the time of a revoked summary case taken off (Fam. Code 2342).

    The days from the joint filing to the revocation are taken off the calendar months. How the two
    are to be mixed is not stated: a day to ask the court about. None where the credit is not open,
    because the regular case began too late or the facts are missing.
    """
    record = happened(case, on)
    joint_filed, revoked = day(record.summary_filed_on), day(record.summary_revoked_on)
    begun, running, until = filed_on(case, on), clock(case, on), summary_credit_until(case, on)
    if not (joint_filed and revoked and begun and running and until):
        return None
    if not joint_filed <= revoked <= begun <= until.rolled:
        return None
    credit = (revoked - joint_filed).days
    months: int = figure("waiting.months", running.start).value
    expires = months_after(running.start, months).then(lambda end: count_back(end, credit))
    first = day_after(expires.day)
    return Counted(first, (*expires.steps, _next_step(first)))


def summary_credit_until(case: Case, on: date) -> Due | None:
    """The last day to begin a regular case and keep the time of a revoked summary case (2342)."""
    revoked = day(happened(case, on).summary_revoked_on)
    if revoked is None:
        return None
    return due_at_the_clerk(
        case, days_after(revoked, figure("summary_dissolution.credit_days", revoked).value)
    )


def _joint_step(filed: date) -> str:
    return _("{date}: the joint petition was filed").format(date=short_date(filed))


def _appeared_step(appeared: date) -> str:
    return _("{date}: the other side took part, before service was complete").format(
        date=short_date(appeared)
    )


def _next_step(first: date) -> str:
    return _("{date}: the day after").format(date=short_date(first))
