"""The register: a rule is found by its path, is silent outside its days, and never fails in silence."""

import subprocess
import sys
from datetime import date, timedelta
from pathlib import Path
from typing import Any, get_origin

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import BaseModel

import firstpaper.law.rules
from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.children import Child
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight, safety_first
from firstpaper.law.register import Check, Rule, all_rules, findings, named_rule, rule_ids, stops
from tests.any_case import any_case

TODAY = date(2026, 11, 25)
RULES = Path(firstpaper.law.rules.__file__).parent
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


SEPARATED_BEFORE_THE_WEDDING = {
    "matter": {"kind": "dissolution", "unions": ["marriage"]},
    "court": {"county": "Fresno"},
    "dates": {
        "married_on": "2016-06-14",
        "separation_told_on": "2015-02-03",
        "separation_acted_on": "2015-02-03",
    },
    "residence": {"petitioner": {"lives": "other_state"}, "respondent": {"lives": "other_state"}},
}


@pytest.mark.parametrize("on", [TODAY, date(2026, 11, 26)], ids=["open", "Thanksgiving"])
@pytest.mark.parametrize("ids", [None, ["dates.order", "residence.state", "no.such_rule"]])
def test_what_stops_a_filing_is_what_the_findings_say_stops_it(on: date, ids: list[str] | None) -> None:
    case = Case.model_validate(SEPARATED_BEFORE_THE_WEDDING)

    stopping = [(identity, found.says) for identity, found in stops(case, on, ids)]
    among = [(one.id, one.says) for one in findings(case, on, ids) if one.weight is Weight.STOP]

    assert sorted(stopping) == sorted(among)
    assert "dates.order" in dict(stopping)


def test_nothing_stops_a_case_of_which_nothing_was_told() -> None:
    assert list(stops(Case(), TODAY)) == []


def test_the_id_of_a_rule_is_its_path_and_every_file_holds_one() -> None:
    paths = [
        path.relative_to(RULES).with_suffix("")
        for path in RULES.rglob("*.py")
        if not path.stem.startswith("_")
    ]

    assert sorted(".".join(path.parts) for path in paths) == list(all_rules())
    assert [one.id for one in map(named_rule, rule_ids()) if one] == list(all_rules())
    for rule in all_rules().values():
        assert rule.id.rpartition(".")[2] == rule.check.__name__


@pytest.mark.parametrize(
    "name", ["", ".", "residence", "residence._halves", "residence.__init__", "../register"]
)
def test_nothing_else_in_the_folder_goes_by_the_name_of_a_rule(name: str) -> None:
    assert named_rule(name) is None


@pytest.mark.parametrize("rule", tuple(all_rules().values()), ids=lambda rule: rule.id)
def test_a_rule_is_silent_the_day_before_its_law_began_and_runs_on_its_first_day(rule: Rule) -> None:
    for case in (Case(), UNKNOWN, FULL):
        assert rule.apply(case, rule.since - timedelta(days=1)) == ()
        assert Outcome.NOT_CHECKED not in {finding.outcome for finding in rule.apply(case, rule.since)}


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


@settings(max_examples=150)
@given(any_case())
def test_no_rule_crashes_whatever_was_told(case: Case) -> None:
    not_checked = [finding for finding in findings(case, TODAY) if finding.outcome is Outcome.NOT_CHECKED]

    assert not not_checked, [(finding.id, finding.do) for finding in not_checked]


@settings(max_examples=25)
@given(any_case(), st.dates(date(2000, 1, 1), date(2030, 1, 1)))
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
