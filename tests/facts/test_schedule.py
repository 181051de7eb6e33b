"""What is owned and owed: rows of their own kind, exact money, and no whole account number."""

import json
from decimal import Decimal
from typing import Any

import pytest
from pydantic import ValidationError

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.choices import Acquired, AssetKind, ContributionFor, DebtKind, Proposal, TitleForm, Who
from firstpaper.facts.schedule import MOST_LISTED, Asset, Contribution, Debt
from firstpaper.intake import AnswerRefused, put, standing
from firstpaper.intake.engine import set_aside
from firstpaper.intake.kinds import places

TOLD: dict[str, Any] = {
    "schedule.agreement": False,
    "asset.1.kind": AssetKind.REAL_ESTATE,
    "asset.1.words": "House in Fresno",
    "asset.1.acquired_on": Day(2013, 4),
    "asset.1.how": Acquired.BOUGHT,
    "asset.1.title": TitleForm.JOINT,
    "asset.1.value": Decimal("420000.00"),
    "asset.1.house.price": Decimal("300000.50"),
    "asset.1.contributions": (
        Contribution(by=Who.PETITIONER, amount=Decimal(60000), toward=ContributionFor.DOWN_PAYMENT),
    ),
    "asset.3.kind": DONT_KNOW,
    "asset.3.last_four": "0937",
    "debt.2.kind": DebtKind.CREDIT_CARD,
    "debt.2.proposal": Proposal.HALF_EACH,
    "income.petitioner_net": Decimal("1800.25"),
    "income.time_with_petitioner": Decimal("33.5"),
}


@pytest.fixture(scope="module")
def told() -> Case:
    case = Case().with_fact("matter.kind", "dissolution")
    for key, value in TOLD.items():
        case = case.with_fact(key, value)
    return case


def test_what_is_put_in_comes_out(told: Case) -> None:
    assert {key: told.fact(key) for key in TOLD} == TOLD


def test_a_later_row_makes_room_with_rows_of_its_own_kind() -> None:
    case = Case().with_fact("asset.3.words", "Piano").with_fact("debt.2.words", "Card")
    assert case.asset == (Asset(), Asset(), Asset(words="Piano"))
    assert case.debt == (Debt(), Debt(words="Card"))
    assert case.child == ()


def test_a_schedule_survives_a_file_and_its_money_is_written_as_text(told: Case) -> None:
    text = told.model_dump_json(exclude_unset=True)
    assert Case.model_validate_json(text) == told
    assert json.loads(text)["asset"][0]["house"] == {"price": "300000.50"}


def test_what_is_listed_always_stands(told: Case) -> None:
    kept = standing(told)
    assert (kept.schedule, kept.asset, kept.debt) == (told.schedule, told.asset, told.debt)
    assert kept.income == told.income
    assert set_aside(told) == ()


def test_the_interview_asks_for_nothing_that_is_listed() -> None:
    assert not [key for key in places() if key.startswith(("asset", "debt", "schedule", "income"))]
    assert put(Case(), "asset.1.words", "Piano").asset == (Asset(words="Piano"),)
    with pytest.raises(AnswerRefused):
        put(Case(), "asset.100.words", "Piano")


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        ("4821", "4821"),
        (" XXXX4821 ", "4821"),
        ("**** 4821", "4821"),
        ("…4821", "4821"),
        ("ending 4821", "4821"),
        ("ending in 0937", "0937"),
    ],
)
def test_the_last_four_digits_are_kept(typed: str, kept: str) -> None:
    assert Case().with_fact("debt.1.last_four", typed).debt[0].last_four == kept


@pytest.mark.parametrize(
    ("typed", "code"),
    [
        ("12345", "long_number"),
        ("4111 1111 1111 1111", "long_number"),
        ("4111-1111-1111-XXXX", "long_number"),
        ("x12x345", "long_number"),
        ("1\u200d2345", "long_number"),
        ("821", "not_last_four"),
        ("٤٨٢١", "not_last_four"),
        ("abcd", "not_last_four"),
        ("", "not_last_four"),
    ],
)
def test_more_or_less_than_four_digits_is_refused_and_never_cut(typed: str, code: str) -> None:
    with pytest.raises(ValidationError) as refused:
        Case().with_fact("asset.1.last_four", typed)
    assert code in {str(error.get("ctx", {}).get("error")) for error in refused.value.errors()}


@pytest.mark.parametrize("words", ["Savings 4111111111111111", "Card of 123-45-6789"])
def test_a_secret_number_is_refused_in_the_words_too(words: str) -> None:
    with pytest.raises(ValidationError):
        Case().with_fact("asset.1.words", words)


@pytest.mark.parametrize(
    ("written", "amount"),
    [
        ("1250", "1250"),
        ("1,250.50", "1250.50"),
        ("$1,250", "1250"),
        ("$ 0.5", "0.50"),
        (12, "12"),
        (Decimal("0.07"), "0.07"),
    ],
)
def test_money_is_read_as_people_write_it(written: object, amount: str) -> None:
    assert Case().with_fact("asset.1.value", written).asset[0].value == Decimal(amount)


@pytest.mark.parametrize(
    "amount",
    [
        "-1",
        "$-1",
        "\u22121",
        "(5)",
        "0.001",
        "1000000000",
        "1,25",
        "1.250,50",
        "1e5",
        "NaN",
        "Infinity",
        "much",
        "",
        True,
        0.5,
        0.1 + 0.2,
        Decimal("NaN"),
        Decimal("0.001"),
        Decimal(-1),
    ],
)
def test_money_is_exact_and_in_bounds(amount: object) -> None:
    for key in ("asset.1.value", "debt.1.owed", "income.respondent_net", "asset.1.house.price"):
        with pytest.raises(ValidationError):
            Case().with_fact(key, amount)


@pytest.mark.parametrize("percent", ["100.01", "-1", "33.333", "NaN"])
def test_a_percent_is_a_percent(percent: str) -> None:
    with pytest.raises(ValidationError):
        Case().with_fact("income.time_with_petitioner", percent)


def test_a_file_with_more_rows_than_keys_can_name_is_refused() -> None:
    rows = [{"words": "Spoon"}] * (MOST_LISTED + 1)
    assert len(Case.model_validate({"asset": rows[1:]}).asset) == MOST_LISTED
    with pytest.raises(ValidationError):
        Case.model_validate({"asset": rows})


@pytest.mark.parametrize("key", ["asset.100.words", "asset.0.words", "asset.1.color", "debt.one.words"])
def test_an_unknown_key_is_an_error(key: str) -> None:
    with pytest.raises(KeyError):
        Case().with_fact(key, "x")
    with pytest.raises(KeyError):
        Case().with_fact("asset.1.words", "Piano").with_fact("debt.1.words", "Card").fact(key)
