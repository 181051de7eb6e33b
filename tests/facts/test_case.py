"""One household's facts: read and replaced by key, frozen, and closed to keys nobody knows."""

import json
from collections.abc import Iterator
from copy import deepcopy
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import BaseModel, ValidationError

from firstpaper.cli.files.households import households
from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.case import row_model
from firstpaper.facts.choices import Kind, Union
from firstpaper.intake import facts_from

SAMPLES = (
    ("matter.kind", Kind.NULLITY),
    ("matter.unions", (Union.MARRIAGE, Union.PARTNERS_CALIFORNIA)),
    ("matter.amended", False),
    ("petitioner.name", "Maria Soto"),
    ("petitioner.other_names", ()),
    ("court.branch", ""),
    ("dates.married_on", Day(2012, 6)),
    ("residence.petitioner.state_since", Day(1990)),
    ("residence.exception.wedding_county", "Alameda"),
    ("children.how_many", 2),
    ("child.1.name", "Lucia"),
    ("child.3.born_on", Day(2014, 11, 2)),
    ("custody.plan", "Every\nother weekend"),
    ("respondent.mailing", DONT_KNOW),
    ("safety.dangers", DONT_KNOW),
)
samples = st.sampled_from(SAMPLES)


def leaves(model: type[BaseModel] = Case, prefix: str = "") -> Iterator[str]:
    for name, field in model.model_fields.items():
        row = row_model(model, name)
        inner = row or field.annotation
        if isinstance(inner, type) and issubclass(inner, BaseModel):
            yield from leaves(inner, f"{prefix}{name}." + ("1." if row else ""))
        else:
            yield prefix + name


def test_an_empty_case_has_been_told_nothing() -> None:
    assert {Case().fact(key) for key in leaves()} == {None}


@given(samples)
def test_a_fact_put_in_comes_out(sample: tuple[str, Any]) -> None:
    key, value = sample
    assert Case().with_fact(key, value).fact(key) == value


@given(samples, samples)
def test_a_fact_leaves_the_others_alone(first: tuple[str, Any], second: tuple[str, Any]) -> None:
    case = Case().with_fact(*first).with_fact(*second)
    told = {second[0]: second[1]} | ({} if first[0] == second[0] else {first[0]: first[1]})
    for key, value in SAMPLES:
        assert case.fact(key) == told.get(key), (key, value)


@given(st.lists(samples))
def test_a_case_survives_a_file(told: list[tuple[str, Any]]) -> None:
    case = Case()
    for key, value in told:
        case = case.with_fact(key, value)
    assert Case.model_validate_json(case.model_dump_json(exclude_unset=True)) == case
    assert Case.model_validate_json(case.model_dump_json()) == case


@given(samples)
def test_an_answer_can_be_taken_back(sample: tuple[str, Any]) -> None:
    key, value = sample
    assert Case().with_fact(key, value).with_fact(key, None).fact(key) is None


def test_putting_a_fact_in_changes_no_earlier_case() -> None:
    before = Case().with_fact("petitioner.name", "Maria")
    before.with_fact("petitioner.name", "Ana").with_fact("petitioner.phone", "559-555-0142")
    assert before.petitioner.name == "Maria"
    assert before.petitioner.phone is None
    with pytest.raises(ValidationError):
        before.petitioner.name = "Ana"  # type: ignore[misc]


def test_the_third_child_makes_room_for_the_first_two() -> None:
    case = Case().with_fact("child.3.name", "Ana")
    assert [child.name for child in case.child] == [None, None, "Ana"]
    assert case.fact("child.4.name") is None


@pytest.mark.parametrize(
    "key",
    [
        "",
        ".",
        "nobody",
        "petitioner.nickname",
        "petitioner.name.first",
        "petitioner..name",
        "child.0.name",
        "child.-1.name",
        "child.100.name",
        "child.one.name",
        "child.*.name",
        "child.1.nickname",
        "child.².name",
        "model_fields",
        "petitioner.__class__",
    ],
)
def test_an_unknown_key_is_an_error_to_read_and_to_write(key: str) -> None:
    case = Case().with_fact("child.1.name", "Lucia")
    with pytest.raises(KeyError):
        case.fact(key)
    with pytest.raises(KeyError):
        case.with_fact(key, "x")


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("matter.kind", "annulment"),
        ("matter.amended", "perhaps"),
        ("matter.unions", ["marriage", "friendship"]),
        ("dates.married_on", "2012-02-30"),
        ("petitioner.name", ""),
        ("petitioner.name", "123-45-6789"),
        ("petitioner.mailing", {"street": "1 Main Street"}),
        ("petitioner.mailing", {"street": "1 Main Street", "city": "Fresno", "planet": "Earth"}),
        ("dates.back_together", [{"end": "2024-06-15"}]),
        ("children.how_many", "many"),
        ("children.how_many", 0),
        ("waiver.household", 0),
        ("waiver.household", 31),
    ],
)
def test_a_value_that_does_not_fit_is_refused_and_loses_nothing(key: str, value: object) -> None:
    case = Case().with_fact("court.county", "Fresno")
    with pytest.raises(ValidationError):
        case.with_fact(key, value)
    assert case == Case().with_fact("court.county", "Fresno")


def test_a_misspelt_key_in_a_file_is_an_error() -> None:
    misspelt: list[dict[str, Any]] = [
        {"petitoner": {}},
        {"petitioner": {"nmae": "Maria"}},
        {"child": [{"age": 4}]},
    ]
    for facts in misspelt:
        with pytest.raises(ValidationError):
            Case.model_validate(facts)


def test_every_fact_is_empty_until_told() -> None:
    """No default decides anything: each fact of a new case is None."""
    keys = list(leaves())
    assert len(keys) == len(set(keys)) > 90
    assert all(Case().with_fact("child.1.name", None).fact(key) is None for key in keys)


def test_a_copy_of_facts_is_the_same_facts() -> None:
    case = Case.nothing().with_fact("petitioner.name", "Dana Okafor")
    assert deepcopy(case) is case
    assert Case().petitioner is Case().petitioner


@pytest.mark.parametrize("path", sorted(households().values()), ids=lambda path: path.stem)
def test_what_was_told_is_written_as_the_models_would_write_it(path: Path) -> None:
    case, _problems = facts_from(path.read_text("utf-8"), date(2026, 11, 30))
    assert case is not None
    models = case.model_dump(mode="json", exclude_unset=True)
    assert json.dumps(case.plain()) == json.dumps(models)


@pytest.mark.parametrize(("key", "value"), SAMPLES)
def test_a_value_of_ours_is_put_where_a_checked_one_would_be(key: str, value: Any) -> None:
    case = Case().with_fact("petitioner.name", "Dana Okafor")
    supposed, told = case.supposing(key, value), case.with_fact(key, value)
    assert supposed == told
    assert supposed.plain() == told.plain()


def test_several_values_at_once_are_put_as_one_after_the_other() -> None:
    case = one_by_one = (
        Case().with_fact("petitioner.name", "Dana Okafor").with_fact("dates.back_together", ())
    )
    answers = {key: value for key, value in SAMPLES if "child." not in key}
    for key, value in answers.items():
        one_by_one = one_by_one.supposing(key, value)
    at_once = case.supposing_all(answers)
    assert at_once == one_by_one
    assert at_once.plain() == one_by_one.plain()
    assert len({key.partition(".")[0] for key in answers}) > 3
    assert case.supposing_all({}) == case
