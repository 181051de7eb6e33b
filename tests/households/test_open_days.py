"""Whatever day the program names for going to the court, the court is open on it."""

from datetime import date

import pytest
from hypothesis import given, settings

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.intake import standing
from firstpaper.law.agenda import agenda
from firstpaper.law.deadline import Actor, Deadline, Meaning
from firstpaper.law.finding import Finding
from firstpaper.law.measures.court import calendar_of, holidays_only
from firstpaper.law.measures.record import judged_on
from firstpaper.law.register import findings
from tests.any_case import typed_case
from tests.households.golden import Household, followed, households

DONE_ELSEWHERE = {"support.serve_in_time", "disclosure.final"}
"""Papers are handed over, on any day; neither is moved."""
COURT_DAYS = ("first_court_day", "last_court_day", "default_from_court_day")
FILES_FROM = ("safe_day", "wait_until", "first_court_day")
GOES_TODAY = ("Go to the clerk", "go to the clerk early")
MORE_DAYS = (date(2026, 12, 25), date(2026, 12, 31), date(2027, 1, 2), date(2027, 2, 11), date(2027, 2, 14))


def _days() -> list[tuple[Household, date]]:
    every = [(one, one.on) for one in (*households(), *followed())]
    return every + [(one, on) for one in households()[::2] for on in MORE_DAYS]


@pytest.mark.parametrize(("household", "on"), _days(), ids=str)
def test_every_day_named_for_the_court_is_an_open_day(household: Household, on: date) -> None:
    _all_open(standing(household.case), on)


def _all_open(case: Case, on: date) -> None:
    court = calendar_of(case)
    for found in findings(case, on):
        for name in set(COURT_DAYS) & set(found.dates):
            assert court.is_court_day(found.dates[name]), (found.id, name)
        if any(words in found.do for words in GOES_TODAY):
            assert court.is_court_day(judged_on(case, on)), (found.id, found.do)
        _says_when_the_court_opens(found, case)
    whole = agenda(case, on)
    for one in (*(each.deadline for each in whole.entries), *(each.example for each in whole.later)):
        _check(one, case)


def _says_when_the_court_opens(found: Finding, case: Case) -> None:
    """A day from which somebody may file, if it is named and closed, never stands without the open one."""
    said = f"{found.says} {found.do}"
    for name in set(FILES_FROM) & set(found.dates):
        day = found.dates[name]
        if spell_date(day) in said:
            assert spell_date(calendar_of(case).next_court_day_on_or_after(day).day) in said, (found.id, said)


@pytest.mark.parametrize("on", MORE_DAYS, ids=str)
@given(typed_case())
@settings(max_examples=12, deadline=None)
def test_every_day_named_for_the_court_is_an_open_day_in_any_case(on: date, told: Case) -> None:
    _all_open(standing(told), on)


def _check(one: Deadline, case: Case) -> None:
    if one.meaning is Meaning.FIRST_DAY and one.who is Actor.PETITIONER:
        assert calendar_of(case).is_court_day(one.target), one.id
    if one.meaning is Meaning.LAST_DAY and one.key not in DONE_ELSEWHERE:
        assert holidays_only().is_court_day(one.rolled), one.id
