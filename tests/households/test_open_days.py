"""Whatever day the program names for going to the court, the court is open on it."""

from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.intake import standing
from firstpaper.law.agenda import agenda
from firstpaper.law.deadline import Actor, Deadline, Meaning
from firstpaper.law.measures.court import calendar_of, holidays_only
from firstpaper.law.register import findings
from tests.households.golden import Household, followed, households

DONE_ELSEWHERE = {"support.serve_in_time", "disclosure.final"}
"""Papers are handed over, on any day; neither is moved."""
COURT_DAYS = ("first_court_day", "last_court_day", "default_from_court_day")
GOES_TODAY = ("Go to the clerk", "go to the clerk early")
MORE_DAYS = (date(2026, 12, 25), date(2026, 12, 31), date(2027, 1, 2), date(2027, 2, 11), date(2027, 2, 14))


def _days() -> list[tuple[Household, date]]:
    every = [(one, one.on) for one in (*households(), *followed())]
    return every + [(one, on) for one in households()[::3] for on in MORE_DAYS]


@pytest.mark.parametrize(("household", "on"), _days(), ids=str)
def test_every_day_named_for_the_court_is_an_open_day(household: Household, on: date) -> None:
    case = standing(household.case)
    court = calendar_of(case)
    for found in findings(case, on):
        for name in set(COURT_DAYS) & set(found.dates):
            assert court.is_court_day(found.dates[name]), (found.id, name)
        if any(words in found.do for words in GOES_TODAY):
            assert court.is_court_day(on), (found.id, found.do)
    whole = agenda(case, on)
    for one in (*(each.deadline for each in whole.entries), *(each.example for each in whole.later)):
        _check(one, case)


def _check(one: Deadline, case: Case) -> None:
    if one.meaning is Meaning.FIRST_DAY and one.who is Actor.PETITIONER:
        assert calendar_of(case).is_court_day(one.target), one.id
    if one.meaning is Meaning.LAST_DAY and one.key not in DONE_ELSEWHERE:
        assert holidays_only().is_court_day(one.rolled), one.id
