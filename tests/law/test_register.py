"""The register: a rule is found by its path, is silent outside its days, and never fails in silence."""

import subprocess
import sys
from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from enum import StrEnum
from pathlib import Path
from types import UnionType
from typing import Annotated, Any, Union, get_args, get_origin

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from pydantic import BaseModel

import firstpaper.law.rules
from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.children import Child
from firstpaper.facts.record import CalendarId
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.facts.text import LastFour
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight, safety_first
from firstpaper.law.register import Check, Rule, all_rules, findings

TODAY = date(2026, 11, 25)
RULES = Path(firstpaper.law.rules.__file__).parent
GENERATE_ONLY: dict[str, Any] = {  # a household is too large to be made smaller step by step
    "deadline": None,
    "phases": [Phase.generate],
    "suppress_health_check": list(HealthCheck),
}
HEAVY = Found(Outcome.NOT_MET, Weight.STOP, "Stop.")
LIGHT = Found(Outcome.MET, Weight.GOOD_TO_KNOW, "Good to know.", certainty=Certainty.UNCONFIRMED)


def a_rule(check: Check, **changes: Any) -> Rule:
    shape: dict[str, Any] = {
        "id": "topic.name",
        "title": "A rule",
        "check": check,
        "authority": ("Fam. Code 2320",),
        "narrowed": Certainty.STATUTE,
        "since": date(2020, 1, 1),
        "until": None,
        "not_modelled": "Much.",
    }
    return Rule(**{**shape, **changes})


def says(found: Any) -> Check:
    return lambda case, on: found


def test_a_crashing_rule_is_reported_as_could_not_be_checked() -> None:
    def broken(case: Case, on: date) -> Found:
        raise ZeroDivisionError("a name that nobody should see: Maria Soto")

    (finding,) = a_rule(broken).apply(Case(), TODAY)

    assert finding.outcome is Outcome.NOT_CHECKED
    assert finding.weight is Weight.GET_ADVICE
    assert finding.says == "This program could not check: A rule."
    assert "ZeroDivisionError" in finding.do
    assert "Maria" not in finding.says + finding.do
    assert finding.authority == ("Fam. Code 2320",)


def test_a_rule_that_crashes_halfway_is_reported_and_its_findings_are_not_lost_in_silence() -> None:
    def broken(case: Case, on: date) -> Any:
        yield LIGHT
        raise KeyError("key")

    assert Outcome.NOT_CHECKED in {finding.outcome for finding in a_rule(broken).apply(Case(), TODAY)}


@pytest.mark.parametrize(
    ("on", "heard"),
    [
        (date(2019, 12, 31), False),
        (date(2020, 1, 1), True),
        (date(2026, 12, 31), True),
        (date(2027, 1, 1), False),
    ],
)
def test_a_rule_is_heard_from_its_first_to_its_last_day_and_silent_outside(on: date, heard: bool) -> None:
    assert bool(a_rule(says(LIGHT), until=date(2026, 12, 31)).apply(Case(), on)) is heard


def test_nothing_one_or_several_findings_are_stamped_with_their_rule() -> None:
    assert a_rule(says(None)).apply(Case(), TODAY) == ()
    assert a_rule(says([])).apply(Case(), TODAY) == ()
    heavy, light = a_rule(says([HEAVY, LIGHT])).apply(Case(), TODAY)
    assert (heavy.id, heavy.title, heavy.not_modelled) == ("topic.name", "A rule", "Much.")
    assert heavy.certainty is Certainty.STATUTE
    assert light.certainty is Certainty.UNCONFIRMED


def test_findings_come_heaviest_first_after_those_of_safety() -> None:
    case = FULL.with_fact("dates.married_on", "1999-06-14").with_fact("dates.registered_on", "2040")

    weights = [finding.weight for finding in findings(case, TODAY) if not safety_first(finding)]

    assert weights == sorted(weights, key=lambda weight: weight.order)
    assert weights[0] is Weight.STOP
    assert weights[-1] is Weight.GOOD_TO_KNOW


def test_only_the_rules_called_by_name_are_run() -> None:
    found = findings(FULL, TODAY, ids=["residence.state", "marriage.length", "no.such_rule"])

    assert {finding.id for finding in found} == {"residence.state", "marriage.length"}


def test_the_id_of_a_rule_is_its_path_and_every_file_holds_one() -> None:
    paths = [
        path.relative_to(RULES).with_suffix("")
        for path in RULES.rglob("*.py")
        if not path.stem.startswith("_")
    ]

    assert sorted(".".join(path.parts) for path in paths) == list(all_rules())
    for rule in all_rules().values():
        assert rule.id.rpartition(".")[2] == rule.check.__name__


@pytest.mark.parametrize("rule", tuple(all_rules().values()), ids=lambda rule: rule.id)
def test_a_rule_is_silent_the_day_before_its_law_began_and_runs_on_its_first_day(rule: Rule) -> None:
    for case in (Case(), UNKNOWN, FULL):
        assert rule.apply(case, rule.since - timedelta(days=1)) == ()
        assert Outcome.NOT_CHECKED not in {finding.outcome for finding in rule.apply(case, rule.since)}


def _case_of(fact: Callable[[Any], st.SearchStrategy[Any]]) -> st.SearchStrategy[Case]:
    return _facts_of(Case, fact).map(Case.model_validate)


def _facts_of(
    model: type[BaseModel], fact: Callable[[Any], st.SearchStrategy[Any]]
) -> st.SearchStrategy[dict[str, Any]]:
    """The facts of a model, each from `fact`, which is given the kind of value that is asked for."""
    fields = {name: _field(field.annotation, fact) for name, field in model.model_fields.items()}
    return st.fixed_dictionaries(fields)


def _field(kind: Any, fact: Callable[[Any], st.SearchStrategy[Any]]) -> st.SearchStrategy[Any]:
    if isinstance(kind, type) and issubclass(kind, BaseModel):
        return _facts_of(kind, fact)
    if get_origin(kind) is tuple:  # the children, and what is owned and owed
        return st.lists(_field(get_args(kind)[0], fact), max_size=3)
    kinds = [each for each in get_args(kind) if each not in (type(None), type(DONT_KNOW))]
    return fact(kinds[0])


def _value(kind: Any) -> st.SearchStrategy[Any]:
    """Any value of a kind of fact."""
    origin = get_origin(kind)
    if kind == LastFour:
        return st.just("4821")
    if kind == CalendarId:
        return st.just("abcdefghijklmnopqrst")
    if origin is Annotated and get_args(kind)[0] is not str:
        return _value(get_args(kind)[0])
    if origin is Annotated or kind is str:
        return st.sampled_from(["Fresno", "Alameda", "San Francisco"])  # fit for a person and for a county
    if origin is tuple:
        unique = isinstance(get_args(kind)[0], type) and issubclass(get_args(kind)[0], StrEnum)
        return st.lists(_value(get_args(kind)[0]), max_size=3, unique_by=str if unique else None)
    if origin in (Union, UnionType):
        return st.one_of(*(_value(each) for each in get_args(kind) if each is not type(None)))
    if kind is bool:
        return st.booleans()
    if kind in (int, Decimal):
        return st.integers(1, 12)  # as no answer to a number is less than one
    if kind is Day:
        return st.builds(_day, st.dates(date(1975, 1, 1), date(2028, 1, 1)), st.integers(0, 5))
    if issubclass(kind, StrEnum):
        return st.sampled_from(list(kind))
    if issubclass(kind, BaseModel):
        fields = {name: _value(field.annotation) for name, field in kind.model_fields.items()}
        return st.fixed_dictionaries(fields)
    return st.from_type(kind)


def _day(day: date, shape: int) -> str:
    return {0: f"{day.year}", 1: f"{day:%Y-%m}", 2: f"{day}?"}.get(shape, str(day))


def _told(kind: Any) -> st.SearchStrategy[Any]:
    return st.one_of(_value(kind), _value(kind), st.none(), st.just(DONT_KNOW))


def _all_unknown(model: type[BaseModel]) -> dict[str, Any]:
    """Every fact of the model asked, and not known to the person."""
    kinds = {name: field.annotation for name, field in model.model_fields.items()}
    return {
        name: _all_unknown(kind) if isinstance(kind, type) and issubclass(kind, BaseModel) else DONT_KNOW
        for name, kind in kinds.items()
        if get_origin(kind) is not tuple
    }


ROWS = {"child": Child, "asset": Asset, "debt": Debt}
UNKNOWN = Case.model_validate(
    {**_all_unknown(Case), **{name: [_all_unknown(row)] for name, row in ROWS.items()}}
)
FULL = Case.model_validate(
    {
        "matter": {"kind": "dissolution", "unions": ["marriage"]},
        "court": {"county": "Fresno"},
        "dates": {
            "married_on": "1990-06-14",
            "separation_told_on": "1993-02-03",
            "separation_acted_on": "1993-02-03",
        },
        "residence": {
            "petitioner": {"lives": "this_county", "state_since": "1985-05-01", "county_since": "1993-12-01"},
            "respondent": {"lives": "this_county", "state_since": "1993-11-01", "county_since": "1993-11-01"},
        },
    }
)


@settings(max_examples=150, **GENERATE_ONLY)
@given(_case_of(_told))
def test_no_rule_crashes_whatever_was_told(case: Case) -> None:
    not_checked = [finding for finding in findings(case, TODAY) if finding.outcome is Outcome.NOT_CHECKED]

    assert not not_checked, [(finding.id, finding.do) for finding in not_checked]


@settings(max_examples=25, **GENERATE_ONLY)
@given(_case_of(_told), st.dates(date(2000, 1, 1), date(2030, 1, 1)))
def test_the_same_case_and_day_give_the_same_findings(case: Case, on: date) -> None:
    assert findings(case, on) == findings(case, on)


def test_safety_is_heard_before_what_stops_the_filing() -> None:
    facts = {"safety": {"dangers": ["afraid"]}, "dates": {"married_on": "2040-01-01"}}
    found = findings(Case.model_validate(facts), TODAY)
    assert Weight.STOP in {one.weight for one in found}
    safety = [safety_first(one) for one in found]
    assert safety[0]
    assert safety == sorted(safety, reverse=True)


def test_a_rule_named_before_any_was_loaded_is_found() -> None:
    code = (
        "from datetime import date; from firstpaper.facts import Case; "
        "from firstpaper.law.register import findings; "
        "print([one.id for one in findings(Case(), date(2026, 11, 25), ['safety.danger', 'no.such_rule'])])"
    )
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert ran.stdout.strip() == "['safety.danger']"
