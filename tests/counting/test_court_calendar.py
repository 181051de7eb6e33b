"""Court days: against a second library, as properties, and in words."""

from collections.abc import Callable
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.counting import (
    Counted,
    CourtCalendar,
    DayAfter,
    FixedDay,
    HolidayRule,
    NthWeekday,
    YearlyDay,
    observed_on,
)
from firstpaper.law.figure import court_calendar

ONE_DAY = timedelta(days=1)
FIRST, LAST = date(2015, 1, 1), date(2040, 12, 31)
CALENDAR = court_calendar()
days = st.dates(FIRST, LAST - timedelta(days=400))
counts = st.integers(0, 60)
HOLIDAYS = np.array([day for year in range(2014, 2042) for day in CALENDAR.holidays(year)], "datetime64[D]")


def test_rolling_agrees_with_a_second_library_on_every_day() -> None:
    """numpy's business days, given the same holidays, roll as Code Civ. Proc. 12a does."""
    every = [FIRST + number * ONE_DAY for number in range((LAST - FIRST).days + 1)]
    expected = np.busday_offset(np.array(every, "datetime64[D]"), 0, roll="forward", holidays=HOLIDAYS)
    assert [CALENDAR.roll_forward(day).day for day in every] == expected.tolist()


@given(day=days, count=counts)
def test_court_days_agree_with_a_second_library(day: date, count: int) -> None:
    on = np.busday_offset(day, count, roll="backward", holidays=HOLIDAYS).item()
    back = np.busday_offset(day, -count, roll="forward", holidays=HOLIDAYS).item()
    assert CALENDAR.add_court_days(day, count).day == (on if count else day)
    assert CALENDAR.count_back_court_days(day, count).day == (back if count else day)


@given(day=days)
def test_rolling_is_never_earlier_and_stays_put_the_second_time(day: date) -> None:
    rolled = CALENDAR.roll_forward(day).day
    assert day <= rolled
    assert CALENDAR.is_court_day(rolled)
    assert CALENDAR.roll_forward(rolled).day == rolled
    assert not any(CALENDAR.is_court_day(day + number * ONE_DAY) for number in range((rolled - day).days))


@given(day=days)
def test_rolling_keeps_the_order_of_days(day: date) -> None:
    assert CALENDAR.roll_forward(day).day <= CALENDAR.roll_forward(day + ONE_DAY).day


@given(day=days, count=counts)
def test_counting_court_days_back_undoes_counting_on(day: date, count: int) -> None:
    start = CALENDAR.roll_forward(day).day
    assert CALENDAR.count_back_court_days(CALENDAR.add_court_days(start, count).day, count).day == start


@given(day=st.dates(FIRST, LAST))
def test_a_day_is_closed_for_a_reason_or_open(day: date) -> None:
    assert (CALENDAR.closed_because(day) is None) == CALENDAR.is_court_day(day)


def test_no_two_holidays_are_kept_on_one_day() -> None:
    """Otherwise a year would have fewer closed days than holidays."""
    for year in range(2015, 2041):
        own = [day for day in CALENDAR.holidays(year) if (day.month, day.day) != (12, 31)]
        moved_out = date(year, 1, 1).weekday() == 5
        expected = 13 if year < 2023 else 14
        assert len(own) == expected - moved_out


@pytest.mark.parametrize(
    ("day", "reason"),
    [
        (date(2026, 11, 25), None),
        (date(2026, 11, 28), "Saturday"),
        (date(2026, 11, 29), "Sunday"),
        (date(2026, 11, 26), "Thanksgiving Day"),
        (date(2026, 11, 27), "Day after Thanksgiving"),
        (date(2026, 7, 3), "Independence Day (observed)"),
        (date(2026, 7, 4), "Saturday"),
        (date(2027, 12, 31), "New Year's Day (observed)"),
        (date(2022, 1, 1), "Saturday"),
        # Names of March 31 by year: Stats. 2026, ch. 7.
        (date(2025, 3, 31), "Cesar Chavez Day"),
        (date(2026, 3, 31), "Farmworkers Day (Cesar Chavez Day)"),
        (date(2027, 3, 31), "Farmworkers Day"),
        # On each side of a change: Stats. 2021, ch. 283; the first Juneteenth the courts kept was in 2023.
        (date(2021, 10, 11), "Columbus Day"),
        (date(2022, 10, 10), None),
        (date(2021, 9, 24), None),
        (date(2022, 9, 23), "Native American Day"),
        (date(2022, 6, 20), None),
        (date(2023, 6, 19), "Juneteenth"),
        # State holidays on which courts are open: Code Civ. Proc. 135.
        (date(2026, 2, 17), None),
        (date(2026, 4, 24), None),
        (date(2026, 9, 9), None),
        (date(2026, 10, 12), None),
        (date(2026, 11, 9), None),
        (date(2027, 4, 14), None),
    ],
)
def test_why_the_court_is_closed(day: date, reason: str | None) -> None:
    assert CALENDAR.closed_because(day) == reason


def test_a_closure_for_a_whole_day_counts_as_a_holiday() -> None:
    """Code Civ. Proc. 12b."""
    calendar = court_calendar({date(2026, 11, 25): "power cut", date(2026, 11, 26): "power cut"})
    assert calendar.roll_forward(date(2026, 11, 25)).steps == (
        "Wed, Nov 25, 2026: court closed: power cut",
        "Thu, Nov 26, 2026: Thanksgiving Day",
        "Fri, Nov 27, 2026: Day after Thanksgiving",
        "Sat, Nov 28, 2026: the court is closed",
        "Sun, Nov 29, 2026: the court is closed",
        "Mon, Nov 30, 2026: the court is open",
    )
    assert CALENDAR.is_court_day(date(2026, 11, 25))


def test_a_closure_without_a_reason_is_a_closure() -> None:
    assert court_calendar({date(2026, 11, 25): ""}).closed_because(date(2026, 11, 25)) == "court closed"


def test_the_same_closures_give_the_same_calendar() -> None:
    closures = {date(2026, 11, 25): "Power cut"}
    assert court_calendar(closures) is court_calendar(dict(closures))
    assert court_calendar() is CALENDAR


def test_a_day_that_does_not_move_says_so() -> None:
    assert CALENDAR.roll_forward(date(2026, 11, 25)).steps == ("Wed, Nov 25, 2026: the court is open",)


def test_the_steps_of_court_days() -> None:
    assert CALENDAR.add_court_days(date(2026, 11, 25), 1).steps == (
        "Wed, Nov 25, 2026: the starting day, not counted",
        "Thu, Nov 26, 2026: Thanksgiving Day",
        "Fri, Nov 27, 2026: Day after Thanksgiving",
        "Sat, Nov 28, 2026: the court is closed",
        "Sun, Nov 29, 2026: the court is closed",
        "Mon, Nov 30, 2026: court day 1",
    )


@pytest.mark.parametrize("day", [date(2014, 7, 4), date(2041, 7, 4)])
def test_a_year_we_have_not_worked_out_is_said_to_be_unchecked(day: date) -> None:
    counted = CALENDAR.roll_forward(day)
    assert counted.steps[-1] == (
        f"We have not checked the court holidays of {day.year}. Ask the court about this date."
    )
    assert not CALENDAR.covers(day)


def test_the_caution_names_only_the_years_not_worked_out() -> None:
    assert (
        CALENDAR.add_court_days(date(2040, 12, 28), 3)
        .steps[-1]
        .startswith("We have not checked the court holidays of 2041.")
    )
    assert CALENDAR.roll_forward(date(2040, 12, 30)).steps == (
        "Sun, Dec 30, 2040: the court is closed",
        "Mon, Dec 31, 2040: the court is open",
    )


def test_a_calendar_without_limits_checks_every_year() -> None:
    calendar = CourtCalendar([HolidayRule("Independence Day", FixedDay(7, 4))])
    assert calendar.covers(date(1776, 7, 4))
    assert calendar.roll_forward(date(1996, 7, 4)).steps == (
        "Thu, Jul 4, 1996: Independence Day",
        "Fri, Jul 5, 1996: the court is open",
    )


def test_holidays_come_in_order_whatever_the_order_of_the_rules() -> None:
    calendar = CourtCalendar(
        [HolidayRule("Christmas Day", FixedDay(12, 25)), HolidayRule("May 1", FixedDay(5, 1))]
    )
    assert list(calendar.holidays(2026)) == [date(2026, 5, 1), date(2026, 12, 25)]


@pytest.mark.parametrize("count", [CALENDAR.add_court_days, CALENDAR.count_back_court_days])
def test_a_negative_count_of_court_days_is_refused(count: Callable[[date, int], Counted]) -> None:
    with pytest.raises(ValueError, match="a count of days cannot be negative: -2"):
        count(date(2026, 1, 1), -2)


@pytest.mark.parametrize(
    ("rule", "year", "day"),
    [
        (NthWeekday(1, 0, 3), 2026, date(2026, 1, 19)),
        (NthWeekday(9, 4, 4), 2026, date(2026, 9, 25)),
        (NthWeekday(5, 0, -1), 2027, date(2027, 5, 31)),
        (NthWeekday(2, 5, -1), 2026, date(2026, 2, 28)),
        (DayAfter(NthWeekday(11, 3, 4)), 2023, date(2023, 11, 24)),
        (FixedDay(12, 25), 2026, date(2026, 12, 25)),
    ],
)
def test_a_day_that_comes_once_a_year(rule: YearlyDay, year: int, day: date) -> None:
    assert rule.in_year(year) == day


def test_a_fifth_weekday_is_refused() -> None:
    with pytest.raises(ValueError, match="not every month has weekday number 5"):
        NthWeekday(1, 0, 5)


@pytest.mark.parametrize(("month", "day"), [(13, 1), (2, 30), (2, 29)])
def test_a_day_not_in_every_year_is_refused(month: int, day: int) -> None:
    with pytest.raises(ValueError, match=f"not every year has a day {day} of month {month}"):
        FixedDay(month, day)


def test_a_rule_holds_from_its_first_day_to_its_last() -> None:
    rule = HolidayRule("Lincoln Day", FixedDay(2, 12), since=date(2020, 2, 12), until=date(2021, 2, 12))
    assert [rule.in_year(year) for year in (2019, 2020, 2021, 2022)] == [
        None,
        date(2020, 2, 12),
        date(2021, 2, 12),
        None,
    ]


@given(day=st.dates(FIRST, LAST))
def test_a_weekend_holiday_is_kept_on_the_nearest_weekday(day: date) -> None:
    """Cal. Rules of Court, rule 1.11."""
    kept = observed_on(day)
    assert kept.weekday() < 5
    assert (kept - day).days == {5: -1, 6: 1}.get(day.weekday(), 0)


@pytest.mark.parametrize("checked", [2022, 2023])
def test_a_count_over_new_year_is_cautious_about_the_year_that_was_not_checked(checked: int) -> None:
    """December 31, 2022 was a Saturday, and courts kept January 1, 2023 on the Monday."""
    calendar = CourtCalendar(
        [HolidayRule("New Year's Day", FixedDay(1, 1))], checked_years=range(checked, checked + 1)
    )
    (unchecked,) = {2022, 2023} - {checked}
    for counted in (
        calendar.roll_forward(date(2022, 12, 31)),
        calendar.add_court_days(date(2022, 12, 30), 1),
    ):
        assert counted.day == date(2023, 1, 3)
        assert [step for step in counted.steps if "not checked" in step] == [
            f"We have not checked the court holidays of {unchecked}. Ask the court about this date."
        ]


def test_a_holiday_moved_by_the_weekend_is_named_so_in_the_list_of_the_year() -> None:
    calendar = CourtCalendar([HolidayRule("Independence Day", FixedDay(7, 4))])
    assert calendar.holidays(2026) == {date(2026, 7, 3): "Independence Day (observed)"}
    assert calendar.holidays(2025) == {date(2025, 7, 4): "Independence Day"}
