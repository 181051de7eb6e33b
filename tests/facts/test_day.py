"""A day whole or in part, in the notation of ISO 8601-2:2019, extended date-time format, level 1.

The forms tried are those the standard defines: a reduced precision date (`2016-06`, `2016`) and the
qualifier `?` for "uncertain" at the end.
"""

from calendar import monthrange
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from firstpaper.facts import Day
from firstpaper.facts.day import FIRST_YEAR, LAST_YEAR

whole_days = st.dates(date(FIRST_YEAR, 1, 1), date(LAST_YEAR, 12, 31))


@st.composite
def days(draw: st.DrawFn) -> Day:
    day, parts, unsure = draw(whole_days), draw(st.integers(1, 3)), draw(st.booleans())
    return Day(
        day.year, day.month if parts > 1 else None, day.day if parts > 2 else None, unsure
    )  # fmt: skip


@given(days())
def test_what_is_written_reads_back(day: Day) -> None:
    assert Day.parse(str(day)) == day


@given(days())
def test_earliest_and_latest_hold_the_day_between_them(day: Day) -> None:
    assert day.earliest <= day.latest
    assert day.earliest.year == day.latest.year == day.year
    if day.whole:
        assert day.earliest == day.latest == day.whole
    elif day.month:
        assert (day.earliest.day, day.latest.day) == (1, monthrange(day.year, day.month)[1])
    else:
        assert (day.earliest, day.latest) == (date(day.year, 1, 1), date(day.year, 12, 31))


@given(days())
def test_only_a_whole_day_without_doubt_is_sure(day: Day) -> None:
    assert day.sure == (None if day.unsure else day.whole)
    assert (day.whole is None) is (day.day is None)


@pytest.mark.parametrize("year", [0, 1, FIRST_YEAR - 1, LAST_YEAR + 1, 9999])
def test_a_year_that_nobody_lives_in_is_no_day(year: int) -> None:
    for text in (f"{year:04}", f"{year:04}-12", f"{year:04}-12-31?"):
        with pytest.raises(ValueError, match=r"year|day"):
            Day.parse(text)


@given(whole_days, st.booleans())
def test_a_date_becomes_a_whole_day(on: date, unsure: bool) -> None:
    day = Day.of(on, unsure=unsure)
    assert day.whole == on
    assert day.unsure is unsure


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("2016-06-14", Day(2016, 6, 14)),
        ("2016-06", Day(2016, 6)),
        ("2016", Day(2016)),
        ("2016?", Day(2016, unsure=True)),
        ("2016-06-14?", Day(2016, 6, 14, unsure=True)),
        (" 2016-02-29 ", Day(2016, 2, 29)),
    ],
)
def test_notation(text: str, day: Day) -> None:
    assert Day.parse(text) == day


@pytest.mark.parametrize(
    "text",
    [
        "",
        "2016-02-30",
        "2015-02-29",
        "2016-13",
        "2016-00",
        "2016-00-05",
        "2016-06-00",
        "0000",
        "16-06-14",
        "2016-6-14",
        "6/14/2016",
        "2016-06-14??",
        "?",
        "2016-06-14T00:00",
        "2016~",
        "20166",
    ],
)
def test_anything_else_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        Day.parse(text)


def test_a_day_without_its_month_is_no_day() -> None:
    with pytest.raises(ValueError, match="without its month"):
        Day(2016, day=5)


def test_a_refusal_does_not_repeat_a_long_text() -> None:
    with pytest.raises(ValueError, match="not a day") as refused:
        Day.parse("x" * 5000)
    assert len(str(refused.value)) < 120


def test_in_a_model_a_day_is_its_notation() -> None:
    adapter = TypeAdapter(Day)
    assert (
        adapter.validate_python(date(2016, 6, 14))
        == adapter.validate_python("2016-06-14")
        == Day(2016, 6, 14)
    )
    assert adapter.dump_json(Day(2016, 6, unsure=True)) == b'"2016-06?"'
    for wrong in (20160614, True, None, ["2016"]):
        with pytest.raises(ValidationError):
            adapter.validate_python(wrong)
