"""Temporary support by one county's formula, the half-length yardstick, what is weighed, and taxes."""

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.choices import Who
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureNotInForce
from firstpaper.law.measures.child_support import Guideline, Incomes, child_support
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.spousal_support import (
    HalfLength,
    Temporary,
    factors,
    half_length,
    half_length_limits,
    temporary_support,
    temporary_support_for,
)
from firstpaper.law.measures.taxes import spousal_support_tax

ON = date(2026, 11, 25)
AMOUNTS = st.decimals(0, 30_000, places=2)


# One county's formula (Santa Clara County Superior Court, Local Family Rule 3, part C)


@pytest.mark.parametrize(
    ("payer", "receiver", "amount"),
    [("8000", "2000", "2200"), ("6000", "5000", "0"), ("5440", "2000", "1176")],
)
def test_forty_percent_less_half(payer: str, receiver: str, amount: str) -> None:
    assert temporary_support(Decimal(payer), Decimal(receiver), ON) == Decimal(amount)


def case(**facts: Any) -> Case:
    told: dict[str, Any] = {
        "court.county": "Santa Clara",
        "income.temporary_asked": True,
        "income.petitioner_net": "2000",
        "income.respondent_net": "7000",
        **{key.replace("__", "."): value for key, value in facts.items()},
    }
    found = Case()
    for key, value in told.items():
        found = found.with_fact(key, value)
    return found


def guideline(petitioner: int, respondent: int, time: int) -> Guideline:
    found = child_support(Incomes(Decimal(petitioner), Decimal(respondent), Decimal(time)), 1, ON)
    assert isinstance(found, Guideline)
    return found


def test_child_support_is_set_aside_first() -> None:
    """0.30 x (7,000 - 1,800) = 1,560 for one child; 0.40 x 5,440 - 0.50 x 2,000 = 1,176."""
    children = guideline(2000, 7000, 80)
    assert children.amount == 1560
    assert temporary_support_for(case(), ON, children) == Temporary(Who.RESPONDENT, Decimal(1176))


def test_without_children_the_whole_incomes_count() -> None:
    assert temporary_support_for(case(), ON, None) == Temporary(Who.RESPONDENT, Decimal(1800))
    even = case(income__respondent_net="2000")
    assert temporary_support_for(even, ON, None) == Temporary(None, Decimal(0))


@pytest.mark.parametrize(
    ("facts", "words"),
    [
        ({"income__temporary_asked": None}, "Nobody asked"),
        ({"income__temporary_asked": False}, "Nobody asked"),
        ({"court__county": "Fresno"}, "Santa Clara County only"),
        ({"court__county": None}, "Santa Clara County only"),
        ({"income__respondent_net": None}, "must be known"),
    ],
)
def test_it_is_off_unless_asked_for_in_that_county(facts: dict[str, Any], words: str) -> None:
    refused = temporary_support_for(case(**facts), ON, None)
    assert isinstance(refused, Refused)
    assert words in refused.why[0]


def test_a_range_of_child_support_leaves_it_open() -> None:
    assert isinstance(temporary_support_for(case(), ON, guideline(800, 1800, 80)), Refused)


@given(AMOUNTS, AMOUNTS)
def test_swapping_the_spouses_swaps_the_payer(one: Decimal, two: Decimal) -> None:
    here = temporary_support_for(case(income__petitioner_net=one, income__respondent_net=two), ON, None)
    there = temporary_support_for(case(income__petitioner_net=two, income__respondent_net=one), ON, None)
    assert isinstance(here, Temporary)
    assert isinstance(there, Temporary)
    assert here.amount == there.amount
    assert {here.payer, there.payer} in ({Who.PETITIONER, Who.RESPONDENT}, {None})


# Half of the length


def married(wedding: str | None, parted: str | None) -> Case:
    return Case.model_validate(
        {
            "matter": {"kind": "dissolution", "unions": ["marriage"]},
            "dates": {"married_on": wedding, "separation_told_on": parted, "separation_acted_on": parted},
        }
    )


@pytest.mark.parametrize(
    ("wedding", "parted", "months", "and_a_half"),
    [
        ("2018-03-01", "2024-09-01", 39, False),
        ("2018-03-01", "2024-10-01", 39, True),
        ("2014-06-15", "2024-06-14", 59, True),
    ],
)
def test_half_of_the_months(wedding: str, parted: str, months: int, and_a_half: bool) -> None:
    """Fam. Code 4320(l); 6 years and 6 months are 78 months."""
    found = half_length(married(wedding, parted), ON)
    assert isinstance(found, HalfLength)
    assert (found.months, found.and_a_half) == (months, and_a_half)
    assert "yardstick, not a rule" in half_length_limits()


def test_from_ten_years_on_there_is_no_yardstick() -> None:
    """Fam. Code 4336(b): ten years or more, from the wedding to the separation."""
    refused = half_length(married("2014-06-15", "2024-06-15"), ON)
    assert isinstance(refused, Refused)
    assert "10 years" in refused.why[0]


@pytest.mark.parametrize("unknown", [(None, "2024-06-15"), ("2014-06-15", None), ("2014", "2024-06-15")])
def test_without_both_days_there_is_no_yardstick(unknown: tuple[str | None, str | None]) -> None:
    assert isinstance(half_length(married(*unknown), ON), Refused)


def test_a_nullity_has_no_length() -> None:
    nullity = married("2018-03-01", "2024-09-01").with_fact("matter.kind", "nullity")
    assert isinstance(half_length(nullity, ON), Refused)


def test_before_the_text_as_read_there_is_no_yardstick() -> None:
    assert isinstance(half_length(married("2008-03-01", "2013-09-01"), date(2014, 12, 31)), Refused)


def test_what_is_weighed_follows_the_section() -> None:
    """Fam. Code 4320 has paragraphs (a) to (n), and (a) two of its own."""
    letters = [f"({letter})" for letter in "abcdefghijklmn"]
    assert [one.paragraph for one in factors()] == [letters[0], "(a)(1)", "(a)(2)", *letters[1:]]
    assert all(one.words.endswith(".") for one in factors())


# Taxes


def test_what_is_signed_from_2026_on_is_taxed_on_neither_return() -> None:
    found = spousal_support_tax(date(2026, 1, 1))
    assert "cannot take it off" in found.federal
    assert "cannot take it off" in found.california
    assert found.certainty is Certainty.SECONDARY


def test_what_was_signed_before_2026_is_taxed_in_california() -> None:
    found = spousal_support_tax(date(2025, 12, 31))
    assert "cannot take it off" in found.federal
    assert "the one who pays takes it off" in found.california


def test_before_2019_nothing_is_said() -> None:
    with pytest.raises(FigureNotInForce):
        spousal_support_tax(date(2018, 12, 31))
