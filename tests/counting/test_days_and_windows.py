"""Calendar days, statutory days and the residence window."""

from collections.abc import Callable
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.counting import (
    Counted,
    ResidenceBand,
    count_back,
    day_after,
    days_after,
    leaving_out,
    residence_window,
    statutory_days,
)

ONE_DAY = timedelta(days=1)
days = st.dates(date(1990, 1, 1), date(2060, 12, 31))
counts = st.integers(0, 2000)


def walked(day: date, count: int) -> date:
    """The statutory count done the slow way: one day at a time, February 29 left out."""
    left = count
    while left:
        day += ONE_DAY
        left -= (day.month, day.day) != (2, 29)
    return day


@given(day=days, count=counts)
def test_counting_back_undoes_counting_on(day: date, count: int) -> None:
    assert count_back(days_after(day, count).day, count).day == day


@given(day=days, count=counts)
def test_the_day_alone_is_the_one_the_counting_reaches(day: date, count: int) -> None:
    assert day_after(day, count) == days_after(day, count).day
    assert day_after(day) == days_after(day, 1).day


@given(day=days, count=counts)
def test_statutory_days_agree_with_walking(day: date, count: int) -> None:
    assert statutory_days(day, count) == walked(day, count)


@given(day=days, count=counts)
def test_statutory_days_never_go_back(day: date, count: int) -> None:
    assert statutory_days(day, count) <= statutory_days(day, count + 1)
    assert statutory_days(day, count) <= statutory_days(day + ONE_DAY, count)
    assert statutory_days(day, count) >= day + count * ONE_DAY


def test_the_residence_window_for_every_day_of_eight_years() -> None:
    """Day by day, against a count that shares no code: dates compared by their parts, days walked."""
    since = date(2022, 1, 1)
    while since < date(2030, 1, 1):
        for months, count in ((6, 182), (3, 91)):
            window = residence_window(since, months=months, days=count)
            calendar_day = since + ONE_DAY
            goal = since.year * 12 + since.month + months
            while (calendar_day.year * 12 + calendar_day.month, calendar_day.day) < (goal, since.day):
                if (calendar_day + ONE_DAY).year * 12 + (calendar_day + ONE_DAY).month > goal:
                    break
                calendar_day += ONE_DAY
            safe_day = max(calendar_day, walked(since, count)) + ONE_DAY
            assert (window.calendar_day, window.safe_day) == (calendar_day, safe_day)
        since += ONE_DAY


@given(since=days, wait=st.integers(0, 200))
def test_waiting_never_makes_residence_worse(since: date, wait: int) -> None:
    order = [ResidenceBand.NOT_MET, ResidenceBand.CLOSE, ResidenceBand.MET]
    window = residence_window(since, months=6, days=182)
    filing = since + wait * ONE_DAY
    assert order.index(window.band(filing)) <= order.index(window.band(filing + ONE_DAY))


@given(since=days)
def test_moving_in_later_never_opens_the_window_sooner(since: date) -> None:
    this, next_day = (residence_window(day, months=6, days=182) for day in (since, since + ONE_DAY))
    assert this.safe_day <= next_day.safe_day


def test_the_steps_of_a_residence_window() -> None:
    assert residence_window(date(2023, 8, 31), months=6, days=182).steps == (
        "Thu, Aug 31, 2023: the first day there, not counted",
        "Thu, Feb 29, 2024: 6 months later",
        "February 2024 has no day 31, so we use its last day.",
        "Fri, Mar 1, 2024: 182 days later",
        "By law, February 28 and 29 count as one day.",
        "Sat, Mar 2, 2024: the day after the later of the two",
    )


def test_the_steps_leave_out_what_did_not_happen() -> None:
    assert residence_window(date(2026, 1, 15), months=1, days=1).steps == (
        "Thu, Jan 15, 2026: the first day there, not counted",
        "Sun, Feb 15, 2026: 1 month later",
        "Fri, Jan 16, 2026: 1 day later",
        "Mon, Feb 16, 2026: the day after the later of the two",
    )


@pytest.mark.parametrize(
    ("count", "steps"),
    [
        (0, ("Mon, Oct 26, 2026: the starting day, not counted",)),
        (1, ("Mon, Oct 26, 2026: the starting day, not counted", "Tue, Oct 27, 2026: day 1")),
        (
            2,
            (
                "Mon, Oct 26, 2026: the starting day, not counted",
                "Tue, Oct 27, 2026: day 1",
                "Wed, Oct 28, 2026: day 2",
            ),
        ),
        (
            30,
            (
                "Mon, Oct 26, 2026: the starting day, not counted",
                "Tue, Oct 27, 2026: day 1",
                "Wed, Nov 25, 2026: day 30",
            ),
        ),
    ],
)
def test_the_steps_of_days_after(count: int, steps: tuple[str, ...]) -> None:
    assert days_after(date(2026, 10, 26), count).steps == steps


@pytest.mark.parametrize(
    ("count", "last_step"),
    [
        (0, "Tue, Dec 15, 2026: the starting day, not counted"),
        (1, "Mon, Dec 14, 2026: 1 day before"),
        (45, "Sat, Oct 31, 2026: 45 days before"),
    ],
)
def test_the_steps_of_counting_back(count: int, last_step: str) -> None:
    assert count_back(date(2026, 12, 15), count).steps[-1] == last_step


def test_counts_can_be_joined_with_their_steps() -> None:
    joined = days_after(date(2026, 10, 26), 1).then(lambda day: count_back(day, 1))
    assert joined == Counted(
        date(2026, 10, 26),
        (
            "Mon, Oct 26, 2026: the starting day, not counted",
            "Tue, Oct 27, 2026: day 1",
            "Tue, Oct 27, 2026: the starting day, not counted",
            "Mon, Oct 26, 2026: 1 day before",
        ),
    )


@pytest.mark.parametrize("count", [days_after, day_after, count_back, statutory_days])
def test_a_negative_count_is_refused(count: Callable[[date, int], object]) -> None:
    with pytest.raises(ValueError, match="a count of days cannot be negative: -1"):
        count(date(2026, 1, 1), -1)


spans = st.lists(
    st.tuples(st.integers(-50, 900), st.integers(0, 90)).map(lambda two: (two[0], two[0] + two[1])),
    max_size=4,
)


@given(start=days, length=st.integers(0, 800), told=spans)
def test_leaving_days_out_keeps_the_length_of_the_rest(
    start: date, length: int, told: list[tuple[int, int]]
) -> None:
    out = [(start + first * ONE_DAY, start + last * ONE_DAY) for first, last in told]
    end = start + length * ONE_DAY
    counted = leaving_out(start, end, out)
    within = [start + number * ONE_DAY for number in range(1, (counted.day - start).days + 1)]
    kept = [day for day in within if not any(first <= day <= last for first, last in out)]
    assert len(kept) == length
    assert counted.day >= end
    assert not within or within[-1] in kept or not length
    assert bool(counted.steps) is (counted.day > end)


def test_leaving_out_says_how_many_days_it_left_out() -> None:
    start, end = date(2026, 11, 25), date(2026, 12, 5)
    assert leaving_out(start, end, []) == Counted(end, ())
    one = leaving_out(start, end, [(date(2026, 11, 26), date(2026, 11, 26))])
    assert one == Counted(date(2026, 12, 6), ("Sun, Dec 6, 2026: 1 day is left out",))
    reaching = leaving_out(
        start, end, [(date(2026, 12, 5), date(2026, 12, 6)), (date(2026, 12, 7), date(2026, 12, 7))]
    )
    assert reaching == Counted(date(2026, 12, 8), ("Tue, Dec 8, 2026: 3 days are left out",))
    assert leaving_out(start, end, [(start, start), (date(2026, 12, 6), date(2027, 1, 6))]).day == end
