"""Reads the cases of the rules.

One YAML file a rule, at the path that mirrors the rule's own: `rules/<topic>/<name>.yaml`. A file
has the `rule`, the `source` its expectations were taken from (outside the project), facts shared by
the cases as `base`, and the `cases`. A case has a `name` that is a whole phrase, the filing day
`on`, `facts` laid over the base, and what to `expect`: `nothing`, one finding, or a list of findings
in the rule's own order. A finding is matched by what is named: `outcome`, `weight`, `certainty`,
parts of `says`, `do` and `steps` ("" for none at all), and some of its `facts`, `dates` and `values`,
and some of what it rests on as `cite`.

Facts here are standing facts. An empty value takes a fact of the base away; a partial day or a year
is quoted ("2016"); "don't know" is an answer.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

import yaml

from firstpaper.facts import Case

CASES = Path(__file__).parent / "rules"
FILE_KEYS = {"rule", "source", "base", "cases"}
CASE_KEYS = {"name", "on", "facts", "expect", "source"}


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
