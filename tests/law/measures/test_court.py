"""The court of a case: its closures reach every count, and there is one way to them."""

from datetime import date, timedelta
from pathlib import Path

from hypothesis import given
from hypothesis import strategies as st

import firstpaper
from firstpaper.facts import Case, Day
from firstpaper.facts.record import Closure
from firstpaper.law.figure import court_calendar
from firstpaper.law.measures.court import calendar_of, closed_days
from firstpaper.law.measures.due import due_at_court, due_elsewhere, months_after

ONE_DAY = timedelta(days=1)
SOURCE = Path(firstpaper.__file__).parent
DAYS = st.dates(date(2015, 1, 1), date(2040, 11, 30))


def closed(*days: date) -> Case:
    return Case().with_fact("record.court_closed", tuple(Closure(first=Day.of(day)) for day in days))


def test_the_court_of_a_case_is_reached_in_one_way() -> None:
    """A count that took the plain calendar would pass over a closure that a person told us of."""
    asking = [path for path in SOURCE.rglob("*.py") if "court_calendar(" in path.read_text("utf-8")]
    assert {path.relative_to(SOURCE).as_posix() for path in asking} == {
        "law/figure.py",
        "law/measures/court.py",
    }


def test_a_case_without_closures_has_the_plain_calendar() -> None:
    assert calendar_of(Case()) is court_calendar()


@given(DAYS, st.sets(st.integers(0, 20), max_size=12))
def test_a_closure_never_moves_a_day_back_and_never_onto_a_closed_day(start: date, after: set[int]) -> None:
    case = closed(*(start + number * ONE_DAY for number in after))
    plain, moved = due_at_court(Case(), months_after(start, 0)), due_at_court(case, months_after(start, 0))
    calendar = calendar_of(case)
    assert due_elsewhere(months_after(start, 0)) == plain
    assert moved.target == plain.target == start
    assert moved.rolled >= plain.rolled
    assert calendar.is_court_day(moved.rolled)
    assert calendar.roll_forward(moved.rolled).day == moved.rolled
    between = (start + number * ONE_DAY for number in range((moved.rolled - start).days))
    assert not any(calendar.is_court_day(day) for day in between)


@given(DAYS, st.integers(0, 30))
def test_a_closure_has_every_day_from_its_first_to_its_last(first: date, more: int) -> None:
    last = first + more * ONE_DAY
    days = list(closed_days(Closure(first=Day.of(first), last=Day.of(last))))
    assert days[0] == first
    assert days[-1] == last
    assert len(days) == more + 1


def test_no_closure_of_one_case_reaches_another() -> None:
    assert not calendar_of(closed(date(2026, 11, 25))).is_court_day(date(2026, 11, 25))
    assert calendar_of(Case()).is_court_day(date(2026, 11, 25))
    assert calendar_of(closed(date(2026, 11, 24))).is_court_day(date(2026, 11, 25))
