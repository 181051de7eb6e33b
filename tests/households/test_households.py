"""Every invented household gets exactly the items, findings and words that were read and agreed."""

import pytest

from firstpaper.intake import asked, standing
from tests.households.golden import EXPECTED, HOUSEHOLDS, Household, followed, households, texts

ALL = households()
FOLLOWED = followed()


@pytest.mark.parametrize("household", [*ALL, *FOLLOWED], ids=str)
def test_items_findings_and_words_are_as_agreed(household: Household) -> None:
    for name, text in texts(household).items():
        agreed = (household.expected / name).read_text("utf-8")
        assert text == agreed, f"{name} differs: read it, then run python tests/households/golden.py"


@pytest.mark.parametrize("household", ALL, ids=str)
def test_no_rule_crashes(household: Household) -> None:
    assert "could_not_be_checked" not in texts(household)["findings.txt"]


def test_every_household_is_worked_out() -> None:
    assert {household.name for household in ALL} == {path.stem for path in HOUSEHOLDS.glob("*.yaml")}


def test_no_agreed_file_is_left_over() -> None:
    assert {path.name for path in EXPECTED.iterdir()} == {
        household.expected.name for household in (*ALL, *FOLLOWED)
    }


@pytest.mark.parametrize(
    ("name", "most"), [("plain-childless-divorce", 45), ("two-children-moved-county", 70)]
)
def test_the_interview_stays_short(name: str, most: int) -> None:
    case = next(household.case for household in ALL if household.name == name)
    assert len(list(asked(standing(case)))) <= most
