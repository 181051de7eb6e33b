"""The three states of a fact: not asked, not known, told."""

from collections.abc import Iterator
from typing import Any, get_args

import pytest
from pydantic import TypeAdapter, ValidationError, create_model

from firstpaper.facts import DONT_KNOW, Case, DontKnow, known
from firstpaper.facts.choices import Kind
from firstpaper.facts.model import Facts
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


def models(above: type[Facts] = Facts) -> Iterator[type[Facts]]:
    for model in above.__subclasses__():
        yield model
        yield from models(model)


def test_every_fact_that_may_be_unknown_keeps_that_apart_from_words() -> None:
    fields = {
        f"{model.__name__}.{name}": field
        for model in models()
        for name, field in model.model_fields.items()
        if DontKnow in get_args(field.annotation)
    }
    assert len(fields) > 200
    for name, field in fields.items():
        one: Any = create_model("One", fact=(field.annotation, field))
        assert one(fact="don't know").fact is DONT_KNOW, name
        assert one(fact=DONT_KNOW).fact is DONT_KNOW, name
        assert one(fact=None).fact is None, name


def test_no_is_not_taken_for_not_knowing() -> None:
    told: TypeAdapter[Any] = TypeAdapter(Told[bool])
    assert told.validate_python(False) is False
    with pytest.raises(ValidationError):
        told.validate_python("perhaps")
