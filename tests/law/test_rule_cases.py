"""Runs every rule against its cases, and checks that every rule has them."""

import json
from collections.abc import Mapping
from datetime import date, timedelta
from typing import Any

import pytest

from firstpaper.facts import Case
from firstpaper.law.finding import Finding, Outcome
from firstpaper.law.register import Rule, all_rules
from tests.each import for_each
from tests.law.rule_cases import CASE_FILES, CASES, RULE_CASES, CaseFile, RuleCase

FEWEST_CASES = 4
EXPECTABLE = {
    "outcome",
    "weight",
    "certainty",
    "says",
    "do",
    "steps",
    "silent_on",
    "facts",
    "dates",
    "values",
    "cite",
}


@pytest.mark.parametrize("one", RULE_CASES, ids=str)
def test_the_rule_says_what_the_case_expects(one: RuleCase) -> None:
    found = all_rules()[one.rule].apply(one.case, one.on)

    for finding in found:
        _check_shape(finding, one.case)
    assert len(found) == len(one.expect), [(str(each.outcome), each.says) for each in found]
    for finding, expected in zip(found, one.expect, strict=True):
        _check(finding, expected)


@for_each(all_rules().values(), lambda rule: rule.id)
def test_a_rule_can_be_checked_on_its_first_day(rule: Rule) -> None:
    for one in RULE_CASES:
        if one.rule == rule.id and one.on >= rule.since:
            moved = Case.model_validate(_moved(dict(one.facts), one.on - rule.since))
            found = rule.apply(moved, rule.since)
            assert all(each.outcome is not Outcome.NOT_CHECKED for each in found), one.name


def _moved(facts: Any, back: timedelta) -> Any:
    """The facts with all whole days so much earlier."""
    if isinstance(facts, Mapping):
        return {key: _moved(value, back) for key, value in facts.items()}
    if isinstance(facts, list):
        return [_moved(each, back) for each in facts]
    return facts - back if isinstance(facts, date) else facts


def _check(finding: Finding, expected: Mapping[str, Any]) -> None:
    assert expected.keys() <= EXPECTABLE, f"cannot expect {sorted(expected.keys() - EXPECTABLE)}"
    for name in ("outcome", "weight", "certainty"):
        assert getattr(finding, name) == expected.get(name, getattr(finding, name)), (name, finding.says)
    for name, text in (("says", finding.says), ("do", finding.do), ("steps", "\n".join(finding.steps))):
        for words in _list(expected.get(name, [])):
            assert words in text if words else not text, name
    for words in _list(expected.get("silent_on", [])):
        assert words not in "\n".join((finding.says, finding.do, *finding.steps)), words
    assert set(expected.get("facts", ())) <= set(finding.facts)
    assert set(_list(expected.get("cite", []))) <= set(finding.authority)
    for name, day in expected.get("dates", {}).items():
        assert finding.dates.get(name) == day, name
    for name, value in expected.get("values", {}).items():
        assert finding.values.get(name) == value, name


def _check_shape(finding: Finding, case: Case) -> None:
    """What holds for every finding, whatever the rule."""
    assert finding.outcome is not Outcome.NOT_CHECKED, finding.do
    assert finding.says.endswith((".", "?", ")")), finding.says
    assert not finding.do or finding.do.endswith((".", "?", ")")), finding.do
    for text in (finding.says, finding.do, *finding.steps):
        assert not {"{", "}"} & set(text), f"an unfilled placeholder: {text}"
    for key in finding.facts:
        case.fact(key)  # KeyError for a key nobody knows
    assert all(type(day) is date for day in finding.dates.values())
    json.dumps(dict(finding.values))


def _list(words: str | list[str]) -> list[str]:
    return [words] if isinstance(words, str) else words


def test_every_rule_has_a_case_file_at_the_mirrored_path() -> None:
    assert {each.rule for each in CASE_FILES} == set(all_rules())


@pytest.mark.parametrize("one", CASE_FILES, ids=str)
def test_a_case_file_is_complete(one: CaseFile) -> None:
    names = [case.name for case in one.cases]

    assert ".".join(one.path.relative_to(CASES).with_suffix("").parts) == one.rule
    assert one.source.strip(), "name the outside source of the expectations"
    assert len(names) >= FEWEST_CASES
    assert len(set(names)) == len(names), "two cases have the same name"
    assert all(len(name.split()) >= 3 for name in names), "a case name is a whole phrase"


@pytest.mark.parametrize("one", tuple(all_rules().values()), ids=lambda one: one.id)
def test_a_rule_has_a_page_a_statement_and_an_authority(one: Rule) -> None:
    assert one.title
    assert one.authority
    assert all(each.strip() for each in one.authority)
    assert one.statement.endswith(".")
    assert len(one.page.split("\n\n")) >= 2, "the page explains the rule after stating it"
    assert one.page.startswith(f"{one.statement}\n\n")
    assert one.not_modelled, "say what the rule leaves out"
    assert one.checked_on >= one.since, "nobody can have checked a law before it began"
