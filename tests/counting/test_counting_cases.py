"""Every worked date of the case tables in `cases/`.

A table names its authority, the count it checks (a function below) and its cases: what is given,
and what is expected. A new case is a new entry; a new count is a new function here.
"""

from collections.abc import Callable
from datetime import date, timedelta
from functools import partial
from pathlib import Path
from typing import Any

import pytest
import yaml

from firstpaper.counting import (
    Counted,
    MissingDay,
    ResidenceBand,
    add_months,
    age_on,
    count_back,
    days_after,
    residence_window,
    statutory_days,
    years_and_months,
)
from firstpaper.law.figure import court_calendar

ONE_DAY = timedelta(days=1)
TABLES = {
    path.stem: yaml.safe_load(path.read_text("utf-8")) for path in Path(__file__).parent.glob("cases/*.yaml")
}
CASES = [
    pytest.param(table["count"], case["given"], case["expect"], id=f"{stem}: {name}")
    for stem, table in sorted(TABLES.items())
    for name, case in table.get("cases", {}).items()
]


def residence(since: date, months: int, days: int) -> dict[str, Any]:
    window = residence_window(since, months=months, days=days)
    assert window.band(window.calendar_day - ONE_DAY) is ResidenceBand.NOT_MET
    assert window.band(window.calendar_day) is ResidenceBand.CLOSE
    assert window.band(window.safe_day - ONE_DAY) is ResidenceBand.CLOSE
    assert window.band(window.safe_day) is ResidenceBand.MET
    return {
        "calendar_day": window.calendar_day,
        "statutory_day": window.statutory_day,
        "safe_day": window.safe_day,
        "real_days": (window.calendar_day - since).days,
        "court_day": court_calendar().next_court_day_on_or_after(window.safe_day).day,
    }


def waiting(start: date, months: int, days: int) -> dict[str, Any]:
    """The marriage ends no earlier than the day after the six months; nothing moves that day."""
    window = residence_window(start, months=months, days=days)
    return {
        "expired": window.calendar_day,
        "earliest": window.calendar_day + ONE_DAY,
        "longer_of": window.safe_day,
    }


def length(start: date, end: date) -> dict[str, Any]:
    span = years_and_months(start, end)
    return {"years": span.years, "months": span.months, "by_convention": span.by_convention}


def periods(start: date, days: list[int]) -> dict[str, Any]:
    counted = Counted(start, ())
    for number in days:
        counted = counted.then(partial(days_after, count=number))
    calendar = court_calendar()
    rolled = calendar.roll_forward(counted.day)
    skipped = [counted.day + number * ONE_DAY for number in range((rolled.day - counted.day).days)]
    closed = [calendar.closed_because(day) for day in skipped]
    assert len(rolled.steps) == len(skipped) + 1
    return {"last_day": counted.day, "court_day": rolled.day, "closed": closed}


def months_on(start: date, months: int) -> dict[str, Any]:
    last_day = add_months(start, months, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    return {"last_day": last_day, "court_day": court_calendar().roll_forward(last_day).day}


def court_days(start: date, court_days: int) -> dict[str, Any]:
    calendar = court_calendar()
    if court_days < 0:
        return {"day": calendar.count_back_court_days(start, -court_days).day}
    return {"day": calendar.add_court_days(start, court_days).day}


COUNTS: dict[str, Callable[..., dict[str, Any]]] = {
    "residence_window": residence,
    "waiting": waiting,
    "years_and_months": length,
    "periods": periods,
    "months": months_on,
    "court_days": court_days,
    "back": lambda start, days: {"day": count_back(start, days).day},
    "age": lambda born, day: {"age": age_on(born, day)},
    "statutory_days": lambda start, days: {"day": statutory_days(start, days)},
    "missing_day": lambda start, months, missing_day: {
        "day": add_months(start, months, missing_day=MissingDay[missing_day])
    },
}


@pytest.mark.parametrize(("count", "given", "expected"), CASES)
def test_a_worked_date(count: str, given: dict[str, Any], expected: dict[str, Any]) -> None:
    assert COUNTS[count](**given) == expected


def test_every_table_names_its_authority() -> None:
    assert [stem for stem, table in TABLES.items() if not table["authority"].strip()] == []


YEARS = [
    pytest.param(year, listed["days"], id=f"{stem}: {year}")
    for stem in ("published_court_holidays", "computed_court_holidays")
    for year, listed in TABLES[stem]["years"].items()
]


@pytest.mark.parametrize(("year", "days"), YEARS)
def test_a_courts_list_of_holidays(year: int, days: list[str]) -> None:
    assert list(court_calendar().holidays(year)) == [date.fromisoformat(f"{year}-{day}") for day in days]


def test_every_published_list_names_its_court() -> None:
    assert all(listed["read_from"] for listed in TABLES["published_court_holidays"]["years"].values())
