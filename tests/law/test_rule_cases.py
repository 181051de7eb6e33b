"""Runs every rule against its cases, and checks that every rule has them.

One YAML file a rule, at the path that mirrors the rule's own: `rules/<topic>/<name>.yaml`. A file
has the `rule`, the `source` its expectations were taken from (outside the project), facts shared by
the cases as `base`, and the `cases`. A case has a `name` that is a whole phrase, the filing day
`on`, `facts` laid over the base, and what to `expect`: `nothing`, one finding, or a list of findings
in the rule's own order. A finding is matched by what is named: `outcome`, `weight`, `certainty`,
parts of `says`, `do` and `steps`, and some of its `facts`, `dates` and `values`.

Facts here are standing facts. An empty value takes a fact of the base away; a partial day or a year
is quoted ("2016"); "don't know" is an answer.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

import pytest
import yaml

from firstpaper.facts import Case
from firstpaper.law.finding import Finding, Outcome
from firstpaper.law.register import Rule, all_rules

CASES = Path(__file__).parent / "rules"
FEWEST_CASES = 4
FILE_KEYS = {"rule", "source", "base", "cases"}
CASE_KEYS = {"name", "on", "facts", "expect", "source"}
EXPECTABLE = {"outcome", "weight", "certainty", "says", "do", "steps", "facts", "dates", "values"}


@dataclass(frozen=True)
class RuleCase:
    """One household, one filing day, and what the rule should say."""

    rule: str
    name: str
    on: date
    facts: Mapping[str, Any]
    expect: tuple[Mapping[str, Any], ...]

    @property
    def case(self) -> Case:
        return Case.model_validate(self.facts)

    def __str__(self) -> str:
        return f"{self.rule}: {self.name}"


@dataclass(frozen=True)
class CaseFile:
    """All cases of one rule, and the outside source of what they expect."""

    path: Path
    rule: str
    source: str
    cases: tuple[RuleCase, ...]

    def __str__(self) -> str:
        return self.path.relative_to(CASES).as_posix()


def laid_over(base: Any, facts: Any) -> Any:
    """The base with the facts laid over it, mapping by mapping; lists are replaced whole."""
    if not isinstance(base, Mapping) or not isinstance(facts, Mapping):
        return facts
    shared = {key: laid_over(base[key], facts[key]) for key in base.keys() & facts.keys()}
    return {**base, **facts, **shared}


class _Loader(yaml.CSafeLoader):
    """Reads `on` as the word it is; YAML 1.1 takes it for a yes."""


_Loader.yaml_implicit_resolvers = {
    first: [(tag, pattern) for tag, pattern in found if first not in "oO" or not tag.endswith(":bool")]
    for first, found in yaml.CSafeLoader.yaml_implicit_resolvers.items()
}


def _read(path: Path) -> CaseFile:
    raw = yaml.load(path.read_text(encoding="utf-8"), _Loader)
    _only(path, raw, FILE_KEYS)
    return CaseFile(path, raw["rule"], raw["source"], tuple(_case(path, raw, each) for each in raw["cases"]))


def _case(path: Path, raw: Mapping[str, Any], one: Mapping[str, Any]) -> RuleCase:
    _only(path, one, CASE_KEYS)
    facts = laid_over(raw.get("base") or {}, one.get("facts") or {})
    expect = one["expect"]
    found = [] if expect == "nothing" else [expect] if isinstance(expect, Mapping) else expect
    return RuleCase(raw["rule"], one["name"], one["on"], facts, tuple(found))


def _only(path: Path, shape: Mapping[str, Any], allowed: set[str]) -> None:
    unknown = shape.keys() - allowed
    assert not unknown, f"{path.name}: nothing is known by the name {sorted(unknown)}"


CASE_FILES = tuple(_read(path) for path in sorted(CASES.rglob("*.yaml")))


RULE_CASES = tuple(case for each in CASE_FILES for case in each.cases)


@pytest.mark.parametrize("one", RULE_CASES, ids=str)
def test_the_rule_says_what_the_case_expects(one: RuleCase) -> None:
    found = all_rules()[one.rule].apply(one.case, one.on)

    for finding in found:
        _check_shape(finding, one.case)
    assert len(found) == len(one.expect), [(str(each.outcome), each.says) for each in found]
    for finding, expected in zip(found, one.expect, strict=True):
        _check(finding, expected)


def _check(finding: Finding, expected: Mapping[str, Any]) -> None:
    assert expected.keys() <= EXPECTABLE, f"cannot expect {sorted(expected.keys() - EXPECTABLE)}"
    for name in ("outcome", "weight", "certainty"):
        assert getattr(finding, name) == expected.get(name, getattr(finding, name)), (name, finding.says)
    for name, text in (("says", finding.says), ("do", finding.do), ("steps", "\n".join(finding.steps))):
        for words in _list(expected.get(name, [])):
            assert words in text, name
    assert set(expected.get("facts", ())) <= set(finding.facts)
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
