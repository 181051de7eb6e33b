"""Every invented household gets exactly the items, findings and words that were read and agreed."""

import pytest

from firstpaper.intake import asked, standing
from firstpaper.law.finding import Outcome
from tests.each import one_by_one
from tests.households.golden import EXPECTED, HOUSEHOLDS, Household, followed, households, packet, texts

ALL = households()
FOLLOWED = followed()


@one_by_one([*ALL, *FOLLOWED])
def test_items_findings_and_words_are_as_agreed(one: Household) -> None:
    for name, text in texts(one).items():
        agreed = (one.expected / name).read_text("utf-8")
        assert text == agreed, f"{name} differs: read it, then run python tests/households/golden.py"


@one_by_one(ALL)
def test_no_rule_crashes(one: Household) -> None:
    found = packet(one).brief.findings
    assert found
    assert [each.id for each in found if each.outcome is Outcome.NOT_CHECKED] == []


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
