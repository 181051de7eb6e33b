"""Every date of a case through its life, and that the register holds each of them whole.

One YAML file a date, at the path that mirrors its own: `deadlines/<topic>/<key>.yaml`. A case has a `name`
that is a whole phrase, the day `on` we look from, `facts` laid over the base, and what to `expect`:
`nothing`, one date, or a list of them. `state` is that of the agenda, or `later` for a date that waits for
something, with parts of what it waits for as `starts`. `title` and `if_missed` are parts of the words.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

import pytest
import yaml

from firstpaper.facts import Case
from firstpaper.law import deadline_register
from firstpaper.law.agenda import Entry, Later, agenda
from firstpaper.law.deadline import Chart, DeadlineKind
from firstpaper.law.deadline_register import all_deadlines, deadline
from firstpaper.law.register import all_rules
from tests.law.rule_cases import _Loader, laid_over

CASES = Path(__file__).parent / "deadlines"
FEWEST_CASES = 4
WORDS = ("title", "if_missed", "starts")
EXPECTABLE = {
    *WORDS,
    "state",
    "done_on",
    "part",
    "target",
    "rolled",
    "who",
    "certainty",
    "planned",
}


@dataclass(frozen=True)
class DateCase:
    """One household, one day, and how the date should stand."""

    key: str
    name: str
    on: date
    facts: Mapping[str, Any]
    expect: tuple[Mapping[str, Any], ...]

    def __str__(self) -> str:
        return f"{self.key}: {self.name}"


def _read(path: Path) -> tuple[DateCase, ...]:
    raw = yaml.load(path.read_text(encoding="utf-8"), _Loader)
    assert raw.keys() == {"deadline", "source", "base", "cases"}, path
    assert raw["source"].strip(), path
    assert ".".join(path.relative_to(CASES).with_suffix("").parts) == raw["deadline"]
    return tuple(_case(raw, one) for one in raw["cases"])


def _case(raw: Mapping[str, Any], one: Mapping[str, Any]) -> DateCase:
    expect = one["expect"]
    found = [] if expect == "nothing" else [expect] if isinstance(expect, Mapping) else expect
    return DateCase(
        raw["deadline"], one["name"], one["on"], laid_over(raw["base"], one["facts"]), tuple(found)
    )


FILES = {path: _read(path) for path in sorted(CASES.rglob("*.yaml"))}


@pytest.mark.parametrize("one", [case for cases in FILES.values() for case in cases], ids=str)
def test_the_date_stands_as_the_case_expects(one: DateCase) -> None:
    found = sorted(_of(one), key=lambda each: str(each["part"]))
    assert len(found) == len(one.expect), found
    for seen, expected in zip(found, one.expect, strict=True):
        assert expected.keys() <= EXPECTABLE
        for name, value in expected.items():
            if name in WORDS:
                assert value in seen[name], name
            else:
                assert seen[name] == value, name


def _of(one: DateCase) -> Iterator[dict[str, Any]]:
    whole = agenda(Case.model_validate(one.facts), one.on)
    for each in (*whole.entries, *whole.later):
        found = each.deadline if isinstance(each, Entry) else each.example
        if found.key == one.key:
            seen = {name: getattr(found, name) for name in EXPECTABLE if hasattr(found, name)}
            state = each.state if isinstance(each, Entry) else "later"
            yield {**seen, **_when(each), "state": state, "part": found.dated.part}


def _when(each: Entry | Later) -> dict[str, Any]:
    return {"done_on": each.done_on} if isinstance(each, Entry) else {"starts": each.starts}


def test_every_date_has_a_case_file_at_the_mirrored_path() -> None:
    assert {cases[0].key for cases in FILES.values()} == set(all_deadlines())


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(CASES).as_posix())
def test_a_case_file_has_enough_cases_with_names_of_their_own(path: Path) -> None:
    names = [one.name for one in FILES[path]]
    assert len(names) >= FEWEST_CASES
    assert len(set(names)) == len(names)


@pytest.mark.parametrize("kind", all_deadlines().values(), ids=lambda one: one.key)
def test_a_date_rests_on_its_rule_and_nothing_else(kind: DeadlineKind) -> None:
    rule = all_rules()[kind.rule]
    assert set(kind.cite) <= set(rule.authority), "name only what its rule cites"
    assert kind.certainty is None or list(type(rule.certainty)).index(kind.certainty) > list(
        type(rule.certainty)
    ).index(rule.certainty), "a date is never surer than its rule"


def test_a_neutral_name_gives_nothing_away() -> None:
    telling = ("divorce", "marriage", "petition", "spouse", "child", "nullity", "default", "waiver")
    for kind in all_deadlines().values():
        assert not [word for word in telling if word in kind.neutral.lower()], kind.key


# --- what loading refuses -------------------------------------------------------------------------

WHOLE: Mapping[str, Any] = {"rule": "response.due", "if_missed": "Nothing follows.", "neutral": "a day"}


def _count(_case: Case, _on: date) -> None:
    return None


@pytest.mark.parametrize(
    ("title", "changed", "words"),
    [
        ("", {}, "a word is missing"),
        ("A day", {"neutral": " "}, "a word is missing"),
        ("A day", {"if_missed": ""}, "a word is missing"),
        ("A day", {"chart": Chart("A day", "It comes.")}, "names no day"),
        ("A day", {"rule": "response.nothing"}, "no rule response.nothing"),
        ("A day", {"done_by": "record.nothing_on"}, "no fact record.nothing_on"),
        ("A day", {"needless_by": ("nothing",)}, "no fact nothing"),
    ],
)
def test_a_date_with_a_hole_is_refused(title: str, changed: Mapping[str, Any], words: str) -> None:
    with pytest.raises(ValueError, match=words):
        deadline(title, **{**WHOLE, **changed})(_count)


def test_a_file_holds_one_date(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(deadline_register, "_DECLARED", {})
    deadline("A day", **WHOLE)(_count)
    with pytest.raises(ValueError, match="holds one date"):
        deadline("Another day", **WHOLE)(_count)


def test_a_file_without_a_date_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "response").mkdir()
    (tmp_path / "response" / "_owed.py").touch()
    (tmp_path / "response" / "__init__.py").touch()
    (tmp_path / "response" / "empty.py").touch()
    monkeypatch.setattr(deadline_register, "_ROOT", tmp_path)
    monkeypatch.setattr(deadline_register, "import_module", lambda _name: None)
    with pytest.raises(ValueError, match=r"response\.empty: the file declares no date"):
        all_deadlines.__wrapped__()
