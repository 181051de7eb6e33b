"""Dates as people type them: read strictly, kept as partial or unsure as they were told."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Day
from firstpaper.intake.reading.dates import EARLIEST_YEAR, YEARS_AHEAD, read_day
from firstpaper.intake.refusals import AnswerRefused
from tests.intake.small_bank import TODAY

MARCH_14 = "2026-03-14"

READ = {
    "3/14/2026": MARCH_14,
    "03/14/2026": MARCH_14,
    "3-14-2026": MARCH_14,
    "3.14.2026": MARCH_14,
    "3 14 2026": MARCH_14,
    "3 / 14 / 2026": MARCH_14,
    " 3/14/2026. ": MARCH_14,
    "March 14 2026": MARCH_14,
    "march 14, 2026": MARCH_14,
    "MARCH 14 , 2026": MARCH_14,
    "Mar 14 2026": MARCH_14,
    "Mar. 14th, 2026": MARCH_14,
    "March 14th of 2026": MARCH_14,
    "14 March 2026": MARCH_14,
    "14-Mar-2026": MARCH_14,
    "the 14th of March, 2026": MARCH_14,
    "on March 14, 2026": MARCH_14,
    "14 de marzo de 2026": MARCH_14,
    "el 14 de marzo del 2026": MARCH_14,
    "2026-03-14": MARCH_14,
    "2026/3/14": MARCH_14,
    "Saturday, March 14, 2026": MARCH_14,
    "sat 3/14/2026": MARCH_14,
    "sábado, 14 de marzo de 2026": MARCH_14,
    "3\u201114\u20132026": MARCH_14,
    "３／１４／２０２６": MARCH_14,
    "٣/١٤/٢٠٢٦": MARCH_14,
    "3\u00a014\u202f2026": MARCH_14,
    "\u200b3/14/2026\u202e": MARCH_14,
    "March 2026": "2026-03",
    "March, 2026": "2026-03",
    "Sept. 2026": "2026-09",
    "in March 2026": "2026-03",
    "3/2026": "2026-03",
    "03-2026": "2026-03",
    "2026-03": "2026-03",
    "2016": "2016",
    "in the year 2016": "2016",
    "since 2016": "2016",
    "desde marzo de 2026": "2026-03",
    "today": "2026-11-25",
    "Yesterday": "2026-11-24",
    "4/13/26": "2026-04-13",
    "4/4/26": "2026-04-04",
    "March 14 '26": MARCH_14,
    "March 14 26": MARCH_14,
    "14 March 26": MARCH_14,
    "March '26": "2026-03",
    "three days ago": "2026-11-22",
    "last month": "2026-10",
    "last year": "2025",
    "2/29/2024": "2024-02-29",
    "1/1/1900": "1900-01-01",
    "12/31/2076": "2076-12-31",
}
UNSURE = {
    "about March 2026": "2026-03?",
    "around 3/14/2026": "2026-03-14?",
    "maybe in 2016": "2016?",
    "not sure, March 14 2026": "2026-03-14?",
    "I think on 3/14/2026": "2026-03-14?",
    "I think about 2016": "2016?",
    "3/14/2026?": "2026-03-14?",
    "2016 ?": "2016?",
    "March 2026 or so": "2026-03?",
    "2016, I think": "2016?",
    "approx. 2016": "2016?",
    "late August 2026": "2026-08?",
    "early 2016": "2016?",
    "mid-March 2026": "2026-03?",
    "the end of March 2026": "2026-03?",
    "mediados de marzo 2026": "2026-03?",
    "two weeks ago": "2026-11-11?",
    "two months ago": "2026-09?",
    "about 11 months ago": "2025-12?",
    "hace dos meses": "2026-09?",
    "a year ago": "2025?",
    "alrededor de marzo 2026": "2026-03?",
}
REFUSED = {
    "13/4/2026": "If you mean April 13, 2026, type: April 13 2026",
    "31/12/2019": "If you mean December 31, 2019, type: December 31 2019",
    "2026-13-04": "If you mean April 13, 2026",
    "13/14/2026": "type the month as a word",
    "30/2/2026": "type the month as a word",
    "0/5/2026": "no month 0",
    "13/2026": "no month 13",
    "4/5/26": "four digits",
    "4/13/30": "four digits",
    "March 14 30": "four digits",
    "14 March '30": "four digits",
    "March 26": "The year is missing",
    "3/14": "The year is missing",
    "14 March": "The year is missing",
    "Feb 30 2026": "that month has 28 days",
    "2/29/2026": "that month has 28 days",
    "2/29/2100": "too far ahead|that month has 28 days",
    "4/31/2026": "There is no day 31 in April 2026",
    "1/0/2026": "There is no day 0",
    "Friday, March 14, 2026": "Saturday, March 14, 2026 is right",
    "12/31/1899": "too long ago",
    "0000": "too long ago",
    "3/14/2077": "too far ahead",
    "9999": "too far ahead",
    "Marhc 14 2026": "month could not be read",
    "14": "could not be read",
    "March": "could not be read",
    "20260314": "could not be read",
    "3/14/2026/5": "could not be read",
    "3/14/-2026": "could not be read",
    "last week": "could not be read",
    "999 years ago": "could not be read",
    "ago": "could not be read",
    "two months": "could not be read",
    "2016 or 2017": "could not be read",
    "spring of 2016": "month could not be read",
    "3/1\u20444/2026": "could not be read",
    "<b>2016</b>": "could not be read",
    "2016-03-14T00:00:00": "could not be read",
    "": "could not be read",
    "?": "could not be read",
    "about": "could not be read",
    "💍 2016": "could not be read",
    "1" * 5000: "could not be read",
    "about " * 30 + "2016": "could not be read",
}


@pytest.mark.parametrize(("typed", "day"), READ.items())
def test_dates_are_read_as_typed(typed: str, day: str) -> None:
    assert read_day(typed, TODAY) == Day.parse(day)


@pytest.mark.parametrize(("typed", "day"), UNSURE.items())
def test_doubt_is_kept(typed: str, day: str) -> None:
    assert read_day(typed, TODAY) == Day.parse(day)


@pytest.mark.parametrize(("typed", "says"), REFUSED.items())
def test_what_is_not_clear_is_refused_with_what_to_type(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        read_day(typed, TODAY)


@pytest.mark.parametrize("typed", ["11/26/2026", "December 2026", "2027", "about 2030", "tomorrow"])
def test_a_day_to_come_is_refused_where_it_must_have_passed(typed: str) -> None:
    with pytest.raises(AnswerRefused, match=r"is still to come|could not be read"):
        read_day(typed, TODAY, not_after_today=True)


@pytest.mark.parametrize("typed", ["11/25/2026", "November 2026", "2026"])
def test_today_and_what_may_have_begun_already_is_taken(typed: str) -> None:
    assert read_day(typed, TODAY, not_after_today=True).earliest <= TODAY


@pytest.mark.parametrize(("typed", "day"), {"6/14/98": "1998-06-14", "6/30/27": "1927-06-30"}.items())
def test_a_year_of_two_digits_is_the_one_that_can_have_been(typed: str, day: str) -> None:
    assert read_day(typed, TODAY, not_after_today=True) == Day.parse(day)


def test_a_year_of_two_digits_is_refused_where_it_would_be_to_come_or_too_long_ago() -> None:
    with pytest.raises(AnswerRefused, match="four digits"):
        read_day("12/20/26", TODAY, not_after_today=True)


@given(st.dates(date(EARLIEST_YEAR, 1, 1), date(TODAY.year + YEARS_AHEAD, 12, 31)))
def test_every_day_is_read_the_same_in_every_form(day: date) -> None:
    forms = (
        f"{day.month}/{day.day}/{day.year}",
        f"{day:%m-%d-%Y}",
        f"{day:%B} {day.day}, {day.year}",
        f"{day:%b} {day.day} {day.year}",
        f"{day.day} {day:%B} {day.year}",
        f"{day:%A}, {day:%B} {day.day}, {day.year}",
        day.isoformat(),
    )
    assert {read_day(form, TODAY) for form in forms} == {Day.of(day)}


@given(st.integers(1, 99), st.integers(1, 99), st.integers(1900, 2060))
def test_month_and_day_never_change_places(first: int, second: int, year: int) -> None:
    try:
        day = read_day(f"{first}/{second}/{year}", TODAY)
    except AnswerRefused:
        return
    assert (day.month, day.day, day.year) == (first, second, year)
