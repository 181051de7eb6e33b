"""The three states of a fact: not asked, not known, told."""

from typing import Any

import pytest
from pydantic import TypeAdapter, ValidationError

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Kind
from firstpaper.facts.told import Told


@pytest.mark.parametrize("value", [False, "", (), 0, Kind.NULLITY, "Maria"])
def test_a_value_is_known_even_where_it_is_empty_or_no(value: object) -> None:
    assert known(value) is value


@pytest.mark.parametrize("fact", [None, DONT_KNOW])
def test_nothing_is_known_where_nobody_asked_or_the_person_does_not_know(fact: Any) -> None:
    assert known(fact) is None


def test_not_knowing_is_not_the_same_as_not_asked_and_survives_a_file() -> None:
    case = Case().with_fact("matter.amended", DONT_KNOW)
    back = Case.model_validate_json(case.model_dump_json(exclude_unset=True))
    assert back.matter.amended is DONT_KNOW
    assert back.matter.other_case is None


def test_a_fact_file_says_dont_know_in_words() -> None:
    assert Case.model_validate({"matter": {"kind": "don't know"}}).matter.kind is DONT_KNOW


def test_no_is_not_taken_for_not_knowing() -> None:
    told: TypeAdapter[Any] = TypeAdapter(Told[bool])
    assert told.validate_python(False) is False
    with pytest.raises(ValidationError):
        told.validate_python("perhaps")
