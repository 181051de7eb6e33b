"""Amounts of money: plain dollars, or dollars and cents; never guessed."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.money import in_dollars
from firstpaper.intake.reading import read_answer
from firstpaper.intake.reading.amounts import read_amount
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.spoken import echo
from tests.intake.small_bank import TODAY, question

CENTS = st.integers(0, 99_999_999_999).map(lambda cents: Decimal(cents) / 100)

READ = {
    "2450": "2450",
    "$2450": "2450",
    "$ 2,450": "2450",
    "2,450.75": "2450.75",
    "2450.5": "2450.5",
    "2,450 dollars": "2450",
    "about 2,450 dollars": "2450",
    "approx. $2450": "2450",
    "$2,450 a month": "2450",
    "2450 dollars per month": "2450",
    "2450/month": "2450",
    "2450 dólares al mes": "2450",
    "2450.": "2450",
    "0": "0",
    "none": "0",
    "Nothing.": "0",
    "nada": "0",
    "1,234,567.89": "1234567.89",
    "999999999": "999999999",
}
REFUSED = {
    "300 a week": "for one month",
    "30000 a year": "for one month",
    "20 an hour": "for one month",
    "300 por semana": "for one month",
    "1.200,50": "amount in dollars",
    "12,34": "amount in dollars",
    "1,2345": "amount in dollars",
    "-5": "amount in dollars",
    "2450.123": "amount in dollars",
    "2k": "amount in dollars",
    "a lot": "amount in dollars",
    "2450 or 2500": "amount in dollars",
    "$": "amount in dollars",
    "1000000000": "more than can be right",
}


@pytest.mark.parametrize(("typed", "amount"), READ.items(), ids=READ)
def test_an_amount_is_read(typed: str, amount: str) -> None:
    assert read_amount(typed) == Decimal(amount)


@pytest.mark.parametrize(("typed", "why"), REFUSED.items(), ids=REFUSED)
def test_what_is_no_plain_amount_is_refused_with_what_to_type(typed: str, why: str) -> None:
    with pytest.raises(AnswerRefused) as refused:
        read_amount(typed)
    assert why in refused.value.message


@given(CENTS)
def test_an_amount_said_back_reads_as_the_same_amount(amount: Decimal) -> None:
    assert read_answer(question("waiver.income"), echo("waiver.income", amount), TODAY) == amount


@pytest.mark.parametrize(
    ("amount", "words"),
    [("0", "$0"), ("6000", "$6,000"), ("4553.34", "$4,553.34"), ("2450.5", "$2,450.50"), ("0.01", "$0.01")],
)
def test_an_amount_in_words(amount: str, words: str) -> None:
    assert in_dollars(Decimal(amount)) == words


def test_nothing_is_an_amount_and_not_an_empty_answer() -> None:
    assert read_answer(question("summary.debts"), "none", TODAY) == Decimal(0)
    assert read_answer(question("summary.debts"), "don't know", TODAY) is DONT_KNOW


@pytest.mark.parametrize("amount", ["-0.01", "1.005", "10000000000", "NaN", "Infinity"])
def test_a_fact_holds_no_debt_below_zero_no_part_of_a_cent_and_nothing_without_end(amount: str) -> None:
    with pytest.raises(ValidationError):
        Case().with_fact("summary.debts", amount)


def test_an_amount_survives_a_file_to_the_cent() -> None:
    case = Case().with_fact("waiver.income", Decimal("4553.34"))
    assert Case.model_validate_json(case.model_dump_json()).waiver.income == Decimal("4553.34")
