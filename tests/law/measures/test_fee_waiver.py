"""The monthly limit of the fee waiver, to the cent.

Sources: the table printed on form FW-001 of 2023 (households of one to six, and each further person); federal
poverty guidelines of 2025 (90 Fed. Reg. 5917) and 2026 (91 Fed. Reg. 1797); those of 2024 from memory.
"""

from datetime import date
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts.choices import Benefit
from firstpaper.law.figure import FigureNotInForce, figure
from firstpaper.law.measures.fee_waiver import income_limit

DAYS = {2023: date(2023, 6, 1), 2024: date(2024, 6, 1), 2025: date(2025, 6, 1), 2026: date(2026, 11, 25)}
TABLE = {
    2023: ["2430.00", "3286.67", "4143.34", "5000.00", "5856.67", "6713.34"],
    2024: ["2510.00", "3406.67", "4303.34", "5200.00", "6096.67", "6993.34"],
    2025: ["2608.34", "3525.00", "4441.67", "5358.34", "6275.00", "7191.67", "8108.34", "9025.00"],
    2026: ["2660.00", "3606.67", "4553.34", "5500.00", "6446.67", "7393.34", "8340.00", "9286.67"],
}
EACH_MORE = {2023: 5140, 2024: 5380, 2025: 5500, 2026: 5680}
ROWS = [(year, people, limit) for year, row in TABLE.items() for people, limit in enumerate(row, 1)]


@pytest.mark.parametrize(("year", "people", "limit"), ROWS)
def test_the_limits_of_the_tables(year: int, people: int, limit: str) -> None:
    assert income_limit(people, DAYS[year]).monthly == Decimal(limit)


@given(st.sampled_from(list(DAYS)), st.integers(1, 30))
def test_the_limit_is_the_exact_amount_rounded_up_to_the_next_cent(year: int, people: int) -> None:
    limit = income_limit(people, DAYS[year])
    exact = Fraction(limit.guideline) * 2 / 12
    assert 0 <= Fraction(limit.monthly) - exact < Fraction(1, 100)
    assert limit.monthly.as_tuple().exponent == -2


@given(st.sampled_from(list(DAYS)), st.integers(1, 29))
def test_each_further_person_adds_one_step_to_the_guideline(year: int, people: int) -> None:
    less, more = (income_limit(count, DAYS[year]).guideline for count in (people, people + 1))
    assert more - less == EACH_MORE[year]


def test_the_guideline_changes_on_its_first_day() -> None:
    before, after = income_limit(1, date(2026, 1, 12)), income_limit(1, date(2026, 1, 13))
    assert (before.guideline, after.guideline) == (15650, 15960)
    assert (before.guideline_since, after.guideline_since) == (date(2025, 1, 15), date(2026, 1, 13))


def test_the_steps_can_be_followed_with_a_pencil() -> None:
    assert income_limit(3, DAYS[2026]).steps == (
        "Federal guideline of 2026 for 3: $27,320 a year",
        "200 percent of that: $54,640 a year",
        "By 12, rounded up to the cent: $4,553.34 a month",
    )


def test_a_household_of_nobody_and_a_day_without_a_guideline_are_refused() -> None:
    with pytest.raises(ValueError, match="one person"):
        income_limit(0, DAYS[2026])
    with pytest.raises(FigureNotInForce):
        income_limit(1, date(2023, 1, 18))


def test_every_benefit_of_the_law_can_be_told_and_no_other() -> None:
    named = {benefit["key"] for benefit in figure("fee_waiver.benefits", DAYS[2026]).value}
    assert named == set(Benefit)
