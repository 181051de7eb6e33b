"""An explained item in one case: what was told, what goes there, which rules speak, what a later day changes.

Nothing is worked out here a second time. What goes there is what the form itself answers, and what another
day changes is what the form answers for that day.
"""

from collections.abc import Iterable, Iterator
from contextlib import suppress
from datetime import date
from typing import NamedTuple

from firstpaper.counting import day_after
from firstpaper.counting.days import ONE_DAY
from firstpaper.facts import Case
from firstpaper.forms.answer import ItemAnswer
from firstpaper.forms.edition import NoEditionError
from firstpaper.forms.explained_copies import Copy, copies_of
from firstpaper.forms.explanation import Explanation
from firstpaper.forms.filing import maker
from firstpaper.forms.filled import FilledForm
from firstpaper.intake import Asked, asked
from firstpaper.law.figure_file import FigureNotInForce
from firstpaper.law.finding import Finding
from firstpaper.law.measures.court import calendar_of
from firstpaper.law.register import findings

AHEAD_DAYS = 400
"""How far ahead another filing day is tried. Ours, not the law's."""
MOST_DAYS = 3
"""How many of those days are told."""


class Later(NamedTuple):
    """What goes in the item instead, for a filing on the day `on` or later."""

    on: date
    items: tuple[ItemAnswer, ...]


class InCase(NamedTuple):
    """How an explained item stands in a case.

    `copies` are the copies of its form with what goes there, none where the case does not use the form.
    `told` and `unanswered` are the questions that it rests on, with an answer and without.
    """

    copies: tuple[Copy, ...]
    told: tuple[Asked, ...]
    unanswered: tuple[Asked, ...]
    findings: tuple[Finding, ...]
    later: tuple[Later, ...]


def in_case(one: Explanation, case: Case, on: date) -> InCase:
    """The item in the standing facts of a case, for a filing on the day `on`."""
    copies = copies_of(one, _filled(one.form, case, on))
    resting_on = [each for each in asked(case) if each.question.key in one.questions]
    found = findings(case, on, one.rules)
    return InCase(
        copies=copies,
        told=tuple(each for each in resting_on if case.fact(each.key) is not None),
        unanswered=tuple(each for each in resting_on if case.fact(each.key) is None),
        findings=found,
        later=tuple(_later(one, case, on, copies, found)) if copies else (),
    )


def _filled(form: str, case: Case, on: date) -> tuple[FilledForm, ...]:
    """The copies that the case uses; an added page such as FL-105(A) comes with the form it is added to."""
    return maker(form.partition("(")[0])(case, on)


def _later(
    one: Explanation, case: Case, on: date, copies: tuple[Copy, ...], found: Iterable[Finding]
) -> Iterator[Later]:
    """The days on which something else goes there, each held against the day before it."""
    before, told = _answers(copies), 0
    for day in _days_to_try(one, case, on, found):
        with suppress(NoEditionError, FigureNotInForce):
            now = _answers(copies_of(one, _filled(one.form, case, day)))
            new = tuple(each for name, each in now.items() if _differs(each, before.get(name)))
            before = now
            if new and told < MOST_DAYS:
                told += 1
                yield Later(day, new)


def _days_to_try(one: Explanation, case: Case, on: date, found: Iterable[Finding]) -> list[date]:
    """The days that the rules and the law behind the item name, each moved on to a day of the court."""
    named = {day for each in found for day in each.dates.values()}
    days = {*named, *(day + ONE_DAY for day in named), *(change.since for change in one.changes)}
    last, court = day_after(on, AHEAD_DAYS), calendar_of(case)
    return sorted({court.next_court_day_on_or_after(day).day for day in days if on < day <= last})


def _answers(copies: tuple[Copy, ...]) -> dict[tuple[str, str], ItemAnswer]:
    return {(form.use, each.concept): each for form, items in copies for each in items}


def _differs(now: ItemAnswer, before: ItemAnswer | None) -> bool:
    return before is None or (now.action, now.value) != (before.action, before.value)
