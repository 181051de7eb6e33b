"""A case written as a file of facts, and read back: the same case, whatever was told in it."""

from datetime import date

import pytest
from hypothesis import given, settings

from firstpaper.facts import Case
from firstpaper.intake import facts_from
from firstpaper.intake.differing import differences
from firstpaper.intake.writing import facts_text
from tests.any_case import typed_case
from tests.cli.person import HOUSEHOLDS, entered

LATER = date(2026, 11, 30)


def read_back(case: Case) -> Case:
    again, problems = facts_from(facts_text(case), LATER)
    assert problems == ()
    return again


@settings(max_examples=40, deadline=None)
@given(typed_case())
def test_what_is_written_reads_back_as_the_same_case(case: Case) -> None:
    left = [one for one in differences(case, read_back(case)) if not one.key.startswith("record.")]
    assert left == []


@pytest.mark.parametrize("household", sorted(path.stem for path in HOUSEHOLDS.glob("*.yaml"))[::4])
def test_every_household_reads_back_as_itself(household: str) -> None:
    case = entered(household)
    left = [one for one in differences(case, read_back(case)) if not one.key.startswith("record.")]
    assert left == []


@pytest.mark.parametrize(
    "words",
    [
        "none",
        "don't know",
        "= 5",
        "yes",
        "null",
        "~",
        "a: b # c",
        '"quoted"',
        "'",
        "- x",
        "Ünïcode\u2019s",
        "?",
        "[a]",
    ],
)
def test_words_that_mean_something_to_a_reader_stay_words(words: str) -> None:
    case = Case().with_fact("court.branch", words).with_fact("requests.other", f"{words}\n\nMore: {words}")
    assert differences(case, read_back(case)) == ()
