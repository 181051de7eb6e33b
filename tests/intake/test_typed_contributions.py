"""Separate money put into a thing, a share in percent, and how many of something, as people type them."""

from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.choices import ContributionFor, Who
from firstpaper.facts.schedule import Contribution
from firstpaper.intake.reading import read_answer
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.spoken import echo
from tests.intake.small_bank import TODAY, question

NAMED = Case().with_fact("petitioner.name", "Maria Soto").with_fact("respondent.name", "Daniel Reyes")
KEY = "asset.1.contributions"
DOWN, LOAN, WORK = ContributionFor.DOWN_PAYMENT, ContributionFor.PRINCIPAL, ContributionFor.IMPROVEMENT
ME, OTHER = Who.PETITIONER, Who.RESPONDENT


def read(typed: str, case: Case = NAMED, key: str = KEY) -> Any:
    return read_answer(question(key, case), typed, TODAY)


@pytest.mark.parametrize(
    ("typed", "by", "amount", "toward", "traced"),
    [
        ("me, $20,000, down payment, papers", ME, 20_000, DOWN, True),
        ("Maria: $20,000 for the down payment, no papers", ME, 20_000, DOWN, False),
        ("maria soto 20000 down payment", ME, 20_000, DOWN, None),
        ("Daniel, 1,500.50, on the loan, don't know", OTHER, "1500.50", LOAN, DONT_KNOW),
        ("my wife, $900, improvements with papers", OTHER, 900, WORK, True),
        ("respondent, 5, principal, not traced", OTHER, 5, LOAN, False),
        ("by my husband $ 700 as a deposit", OTHER, 700, DOWN, None),
        ("both of us, $10, mortgage", Who.BOTH, 10, LOAN, None),
    ],
)
def test_a_payment_is_read_in_many_words(
    typed: str, by: Who, amount: Any, toward: ContributionFor, traced: Any
) -> None:
    assert read(typed) == (Contribution(by=by, amount=Decimal(amount), toward=toward, traced=traced),)


def test_several_payments_come_one_a_line() -> None:
    found = read("me, $20,000, down payment, papers\nDaniel, $500, loan; me, 10, improvement")
    assert [(one.by, one.amount) for one in found] == [(ME, 20_000), (OTHER, 500), (ME, 10)]
    assert read("none") == ()


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("$20,000, down payment", "who paid, how much, what for"),
        ("Rosa, $20,000, down payment", "who paid, how much, what for"),
        ("me, down payment", "who paid, how much, what for"),
        ("me, $20,000", "who paid, how much, what for"),
        ("me, $20,000, a boat", "who paid, how much, what for"),
        ("me, $20,000, loan, papers, more", "who paid, how much, what for"),
        ("me, $20,000, loan, perhaps", "papers, no papers, or don't know"),
        ("me, $20,000, loan\nme, $5", "Line 2"),
        ("me, 1.2.3, loan", "who paid, how much, what for"),
        ("me, $9999999999, loan", "check the amount"),
    ],
)
def test_a_payment_that_is_not_clear_is_refused_in_words(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        read(typed)


def test_a_first_name_that_both_have_is_nobodys() -> None:
    same = NAMED.with_fact("respondent.name", "Maria Reyes")
    with pytest.raises(AnswerRefused):
        read("Maria, $20,000, loan", same)
    assert read("Maria Reyes, $20,000, loan", same)[0].by is OTHER


NAMES = st.sampled_from(["Maria Soto", "Soto, Maria", "Wife", "X 3 Soto", "me", "Both", "José Núñez"])


@given(
    st.lists(
        st.builds(
            Contribution,
            by=st.sampled_from(Who),
            amount=st.decimals(0, 999_999_999, places=2),
            toward=st.sampled_from(ContributionFor),
            traced=st.sampled_from([True, False, DONT_KNOW, None]),
        ),
        min_size=1,
        max_size=4,
    ),
    NAMES,
    NAMES,
)
def test_what_is_said_back_reads_as_the_same_payments(
    paid: list[Contribution], petitioner: str, respondent: str
) -> None:
    case = Case().with_fact("petitioner.name", petitioner).with_fact("respondent.name", respondent)
    assert read(echo(question(KEY, case), tuple(paid)), case) == tuple(paid)


@pytest.mark.parametrize(
    ("typed", "share"),
    [("35", "35"), ("33.5%", "33.5"), ("half", "50"), ("0", "0"), ("100 percent", "100"), ("none", "0")],
)
def test_a_share_is_read(typed: str, share: str) -> None:
    assert read(typed, key="income.time_with_petitioner") == Decimal(share)


@pytest.mark.parametrize("typed", ["101", "-5", "a third", "33.333", "35 days", "1e2", ""])
def test_a_share_beyond_the_whole_is_refused(typed: str) -> None:
    with pytest.raises(AnswerRefused):
        read(typed, key="income.time_with_petitioner")


@given(st.decimals(0, 100, places=2))
def test_a_share_is_said_back_as_it_is_read(share: Decimal) -> None:
    asked = question("income.time_with_petitioner")
    assert read_answer(asked, echo(asked, share), TODAY) == share


@pytest.mark.parametrize(
    ("key", "typed", "count"),
    [
        ("asset.1.used_after_months", "8 months", 8),
        ("asset.1.used_after_months", "none", 0),
        ("asset.1.used_after_months", "two", 2),
        ("asset.1.shares", "1,000 shares", 1000),
        ("asset.1.shares", "100000", 100_000),
    ],
)
def test_how_many_is_read(key: str, typed: str, count: int) -> None:
    assert read(typed, key=key) == count


@pytest.mark.parametrize("typed", ["1201", "-1", "1.5", "eight and a half", "1,00", "9" * 12])
def test_how_many_is_a_whole_number_in_bounds(typed: str) -> None:
    with pytest.raises(AnswerRefused):
        read(typed, key="asset.1.used_after_months")
