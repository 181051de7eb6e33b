"""Stretches of time, one a line: both days, or "since"; the rest is why."""

import pytest

from firstpaper.facts import Day
from firstpaper.facts.matter import Period
from firstpaper.intake.reading.periods import read_periods
from firstpaper.intake.refusals import AnswerRefused
from tests.intake.small_bank import TODAY


def period(start: str, end: str | None = None, why: str = "") -> Period:
    return Period(start=Day.parse(start), end=Day.parse(end) if end else None, why=why)


READ = {
    "3/1/2026 to 4/15/2026, work in Nevada": [period("2026-03-01", "2026-04-15", "work in Nevada")],
    "3/1/2026 to 4/15/2026 work in Nevada": [period("2026-03-01", "2026-04-15", "work in Nevada")],
    "from March 1, 2026 until April 15, 2026: work": [period("2026-03-01", "2026-04-15", "work")],
    "3/1/2026 - 4/15/2026": [period("2026-03-01", "2026-04-15")],
    "3/1/2026 – 4/15/2026": [period("2026-03-01", "2026-04-15")],
    "3-1-2026 to 4-15-2026": [period("2026-03-01", "2026-04-15")],
    "March 2025 to May 2025, to care for my mother": [period("2025-03", "2025-05", "to care for my mother")],
    "since 3/1/2026": [period("2026-03-01")],
    "Since March 1, 2026, at my sister's": [period("2026-03-01", None, "at my sister's")],
    "since about 2025, to work": [period("2025?", None, "to work")],
    "since 3/1/2026, to be near my son": [period("2026-03-01", None, "to be near my son")],
    "since 3/1/2026 to 4/15/2026": [period("2026-03-01", "2026-04-15")],
    "Sunday 3/1/2026 to Wednesday 4/15/2026": [period("2026-03-01", "2026-04-15")],
    "3/1/2026 to now": [period("2026-03-01")],
    "3/1/2026 until today, work": [period("2026-03-01", None, "work")],
    "about March 2025 to April 2025?, trip": [period("2025-03?", "2025-04?", "trip")],
    "3/1/2025 to 4/1/2025; 6/1/2025 to 7/1/2025": [
        period("2025-03-01", "2025-04-01"),
        period("2025-06-01", "2025-07-01"),
    ],
    "3/1/2025 to 4/1/2025, a\n\n6/1/2025 to 7/1/2025, b\n": [
        period("2025-03-01", "2025-04-01", "a"),
        period("2025-06-01", "2025-07-01", "b"),
    ],
    "3/1/2026 to 4/15/2026, <b>Reno & Sparks</b> 🎰": [
        period("2026-03-01", "2026-04-15", "<b>Reno & Sparks</b> 🎰")
    ],
}
REFUSED = {
    "3/1/2026": "both days on one line",
    "to 3/1/2026": "both days on one line",
    "work in Nevada": "both days on one line",
    "I went to Nevada": "could not be read",
    "since": "both days on one line",
    "since work": "could not be read",
    "since 3/1/2026 to 4/15/30": "four digits",
    "since 4/15/2026 to 3/1/2026": "before the start",
    "3/1/26 to 4/15/2026": "four digits",
    "3/1/2026 to 4/15/30": "four digits",
    "13/4/2026 to 5/1/2026": "April 13, 2026",
    "3/1/2026 to 2/30/2026": "There is no day 30",
    "4/15/2026 to 3/1/2026": "before the start",
    "12/1/2026 to 12/5/2026": "still to come",
    "since 12/1/2026": "still to come",
    "3/1/2026 to 4/15/2026, card 4111 1111 1111 1111": "last 4 digits",
    "3/1/2026 to 4/15/2026, " + "x" * 600: "in a few words",
    "3/1/2025 to 4/1/2025\nlater": "Line 2",
    "3/1/2025 to 4/1/2025\n" * 101: "more than 100",
}


@pytest.mark.parametrize(("typed", "periods"), READ.items())
def test_periods_are_read(typed: str, periods: list[Period]) -> None:
    assert read_periods(typed, TODAY, not_after_today=True) == tuple(periods)


@pytest.mark.parametrize(("typed", "says"), REFUSED.items())
def test_an_unclear_period_is_refused(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        read_periods(typed, TODAY, not_after_today=True)


def test_a_period_may_end_on_a_day_to_come() -> None:
    assert read_periods("11/1/2026 to 12/5/2026", TODAY, not_after_today=True)[0].end == Day(2026, 12, 5)
