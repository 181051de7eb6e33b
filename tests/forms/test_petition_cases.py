"""Runs every part of the petition against its cases, and checks that every box was seen both ways.

One YAML file a part, `parts/<part>.yaml`: the `source` of what it expects (outside the project, or
"common practice, no source"), facts shared by the cases as `base`, and the `cases`. A case has a
`name` that is a whole phrase, the filing day `on`, `facts` laid over the base, and what to `expect` of
some concepts: `mark`, `blank`, `sign`, `write TEXT`, `open KEY` (empty, because that fact is
missing), or a mapping that may also name `because`, `authority`, `continues` and `open`.

Facts here are standing facts; "don't know" is an answer, and an empty value is "not asked".
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

import pytest
import yaml

from firstpaper.facts import Case
from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import ItemKind, edition_for
from firstpaper.forms.fl100.form import PARTS
from tests.forms.petition import petition

FILES = Path(__file__).parent / "parts"
FILE_KEYS = {"part", "source", "base", "cases"}
CASE_KEYS = {"name", "on", "facts", "expect"}
MARKABLE = {ItemKind.BOX}
WRITABLE = {ItemKind.TEXT, ItemKind.DATE, ItemKind.NUMBER}
NEVER_FILLED = {
    "cap.bar",
    "cap.firm",
    "cap.fax",
    "cap.court_mailing",
    "signing.date",
    "signing.attorney.date",
    "signing.attorney.name",
}
NEVER_EMPTY = {"cap.for"}


@dataclass(frozen=True)
class PartCase:
    """One household, one filing day, and what some items of the petition should say."""

    part: str
    name: str
    on: date
    case: Case
    expect: Mapping[str, Any]

    def __str__(self) -> str:
        return f"{self.part}: {self.name}"


class _Loader(yaml.CSafeLoader):
    """Reads `on` as the word it is; YAML 1.1 takes it for a yes."""


_Loader.yaml_implicit_resolvers = {
    first: [(tag, pattern) for tag, pattern in found if first not in "oO" or not tag.endswith(":bool")]
    for first, found in yaml.CSafeLoader.yaml_implicit_resolvers.items()
}


def laid_over(base: Any, facts: Any) -> Any:
    """The base with the facts laid over it, mapping by mapping; lists are replaced whole."""
    if not isinstance(base, Mapping) or not isinstance(facts, Mapping):
        return facts
    shared = {key: laid_over(base[key], facts[key]) for key in base.keys() & facts.keys()}
    return {**base, **facts, **shared}


def read(path: Path) -> Iterator[PartCase]:
    raw = yaml.load(path.read_text(encoding="utf-8"), _Loader)
    assert raw.keys() <= FILE_KEYS
    assert raw["part"] == path.stem
    assert raw["source"]
    for one in raw["cases"]:
        assert one.keys() <= CASE_KEYS, one
        facts = laid_over(raw.get("base") or {}, one.get("facts") or {})
        yield PartCase(raw["part"], one["name"], one["on"], Case.model_validate(facts), one["expect"])


CASES = tuple(case for path in sorted(FILES.glob("*.yaml")) for case in read(path))


@pytest.mark.parametrize("one", CASES, ids=str)
def test_the_petition_says_what_the_case_expects(one: PartCase) -> None:
    answers = {answer.concept: answer for answer in petition(one.case, one.on)}

    for concept, expected in one.expect.items():
        check(answers[concept], expected)


def check(answer: ItemAnswer, expected: Any) -> None:
    wanted = shape(expected)
    told = f"{answer.concept}: {answer}"
    assert answer.action == wanted.get("do", answer.action), told
    assert answer.value == str(wanted.get("value", answer.value)), told
    assert answer.continues == wanted.get("continues", answer.continues), told
    assert answer.open_key == wanted.get("open", ""), told
    assert wanted.get("because", "") in answer.because, told
    assert answer.authority == wanted.get("authority", answer.authority), told


def shape(expected: Any) -> Mapping[str, Any]:
    if isinstance(expected, Mapping):
        return {**shape(expected["is"]), **{key: value for key, value in expected.items() if key != "is"}}
    action, _space, rest = str(expected).partition(" ")
    if action == "write":
        return {"do": Action.WRITE, "value": rest}
    if action == "open":
        return {"do": Action.BLANK, "value": "", "open": rest}
    return {"do": Action(action), "value": ""}


def test_every_part_has_a_case_file_and_every_case_file_a_part() -> None:
    parts = {part.__name__.rpartition(".")[2] for part in PARTS}
    assert {path.stem for path in FILES.glob("*.yaml")} == parts


def seen(concept: str) -> set[Action]:
    return {shape(one.expect[concept])["do"] for one in CASES if concept in one.expect}


CONCEPTS = {item.concept: item.kind for item in edition_for("FL-100", date(2026, 12, 1)).items}


@pytest.mark.parametrize("concept", [c for c, kind in CONCEPTS.items() if kind in MARKABLE])
def test_every_box_is_seen_marked_and_empty(concept: str) -> None:
    assert seen(concept) == {Action.MARK, Action.BLANK}


@pytest.mark.parametrize("concept", [c for c, kind in CONCEPTS.items() if kind in WRITABLE])
def test_every_line_is_seen_written_and_empty(concept: str) -> None:
    expected = {Action.WRITE, Action.BLANK}
    if concept in NEVER_FILLED:
        expected = {Action.SIGN} if concept == "signing.date" else {Action.BLANK}
    if concept in NEVER_EMPTY:
        expected = {Action.WRITE}
    assert seen(concept) == expected


@pytest.mark.parametrize("concept", [c for c, kind in CONCEPTS.items() if kind not in MARKABLE | WRITABLE])
def test_every_statement_and_signature_is_seen(concept: str) -> None:
    wanted = Action.SIGN if concept == "signing.petitioner" else Action.BLANK
    assert seen(concept) == {wanted}
