"""Months, ages and spans: properties, the refusals, and the steps a person reads."""

from datetime import date, timedelta

import pytest
from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.counting import (
    MissingDay,
    add_months,
    age_on,
    anniversary,
    whole_months_between,
    years_and_months,
)

days = st.dates(date(1900, 1, 1), date(2100, 12, 31))
months = st.integers(-1200, 1200)
choices = st.sampled_from(MissingDay)


@given(day=days, count=months)
def test_months_agree_with_a_second_library(day: date, count: int) -> None:
    """python-dateutil moves a missing day to the last day of the month, silently."""
    expected = day + relativedelta(months=count)
    assert add_months(day, count, missing_day=MissingDay.LAST_DAY_OF_MONTH) == expected


@given(day=days, count=months)
def test_the_two_choices_differ_by_a_day_or_not_at_all(day: date, count: int) -> None:
    last = add_months(day, count, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    first = add_months(day, count, missing_day=MissingDay.FIRST_OF_NEXT_MONTH)
    assert first - last == timedelta(days=0 if last.day == day.day else 1)


@given(one=days, other=days, count=months, missing_day=choices)
def test_adding_months_keeps_the_order_of_days(
    one: date, other: date, count: int, missing_day: MissingDay
) -> None:
    earlier, later = sorted((one, other))
    reached = [add_months(day, count, missing_day=missing_day) for day in (earlier, later)]
    assert reached == sorted(reached)


@given(start=days, count=st.integers(0, 1200), missing_day=choices)
def test_whole_months_undo_added_months(start: date, count: int, missing_day: MissingDay) -> None:
    end = add_months(start, count, missing_day=missing_day)
    assert whole_months_between(start, end, missing_day=missing_day) == count


@given(one=days, other=days, missing_day=choices)
def test_whole_months_are_the_most_that_fit(one: date, other: date, missing_day: MissingDay) -> None:
    start, end = sorted((one, other))
    count = whole_months_between(start, end, missing_day=missing_day)
    assert add_months(start, count, missing_day=missing_day) <= end
    assert add_months(start, count + 1, missing_day=missing_day) > end


@given(born=days, years=st.integers(0, 120))
def test_somebody_grows_older_on_each_anniversary_and_not_before(born: date, years: int) -> None:
    birthday = anniversary(born, years)
    assert age_on(born, birthday) == years
    if years:
        assert age_on(born, birthday - timedelta(days=1)) == years - 1


@given(one=days, other=days)
def test_a_span_says_in_months_what_it_says_in_years(one: date, other: date) -> None:
    start, end = sorted((one, other))
    span = years_and_months(start, end)
    assert 0 <= span.months < 12
    assert anniversary(start, span.years) <= end < anniversary(start, span.years + 1)
    assert span.total_months == whole_months_between(start, end, missing_day=MissingDay.LAST_DAY_OF_MONTH)


def test_an_end_before_the_start_is_refused() -> None:
    with pytest.raises(ValueError, match="the end 2026-01-01 is before the start 2026-01-02"):
        whole_months_between(date(2026, 1, 2), date(2026, 1, 1), missing_day=MissingDay.LAST_DAY_OF_MONTH)


@pytest.mark.parametrize(
    ("start", "end", "words"),
    [
        (date(2016, 6, 1), date(2026, 5, 31), "9 years and 11 months"),
        (date(2016, 6, 1), date(2026, 6, 1), "10 years"),
        (date(2025, 6, 1), date(2026, 7, 2), "1 year and 1 month"),
        (date(2026, 6, 1), date(2026, 7, 1), "1 month"),
        (date(2026, 6, 1), date(2026, 6, 1), "0 months"),
    ],
)
def test_a_span_in_words(start: date, end: date, words: str) -> None:
    assert str(years_and_months(start, end)) == words


def test_the_steps_of_an_ordinary_span() -> None:
    assert years_and_months(date(2016, 6, 1), date(2026, 5, 31)).steps == (
        "Wed, Jun 1, 2016 plus 9 years and 11 months is Fri, May 1, 2026.",
        "One more month would be Mon, Jun 1, 2026. That is after Sun, May 31, 2026.",
    )


def test_the_steps_of_a_span_shorter_than_a_month() -> None:
    assert years_and_months(date(2026, 6, 1), date(2026, 6, 15)).steps == (
        "One more month would be Wed, Jul 1, 2026. That is after Mon, Jun 15, 2026.",
    )


def test_the_steps_say_when_our_convention_decides() -> None:
    assert years_and_months(date(2016, 2, 29), date(2026, 2, 28)).steps == (
        "Mon, Feb 29, 2016 plus 10 years is Sat, Feb 28, 2026.",
        "February 2026 has no day 29, so we use its last day.",
        "The law does not say which day to use. A court may count one month less.",
        "One more month would be Sun, Mar 29, 2026. That is after Sat, Feb 28, 2026.",
    )


def test_the_steps_do_not_blame_the_convention_when_it_changes_nothing() -> None:
    assert years_and_months(date(2016, 2, 29), date(2026, 3, 5)).steps == (
        "Mon, Feb 29, 2016 plus 10 years is Sat, Feb 28, 2026.",
        "February 2026 has no day 29, so we use its last day.",
        "One more month would be Sun, Mar 29, 2026. That is after Thu, Mar 5, 2026.",
    )


def test_the_month_to_come_ends_on_the_last_day_of_a_month_too_short() -> None:
    steps = years_and_months(date(2026, 1, 31), date(2026, 2, 10)).steps
    assert steps[-1] == "One more month would be Sat, Feb 28, 2026. That is after Tue, Feb 10, 2026."
