"""Days outside what the law here knows end in a sentence, on every command: said by --on or by the clock."""

import json
from datetime import date
from pathlib import Path

import pytest
from typer.testing import CliRunner

from firstpaper.casefile import CaseFile
from firstpaper.cli import clock
from firstpaper.cli.app import app
from firstpaper.cli.clock import LAST_CHECK, clock_words
from firstpaper.law.figure import all_figures
from tests.cli.every_command import COMMANDS, set_out
from tests.cli.person import facts_of

DAYS = (
    "0001-01-01",
    "1970-01-01",
    "1999-12-31",
    "2010-06-01",
    "2025-02-28",
    "2075-12-31",
    "2150-01-01",
    "9999-12-31",
)
WITH_DAY = {name: [*words[: words.index("--on")]] for name, words in COMMANDS.items() if "--on" in words}


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    set_out(tmp_path, CaseFile(facts_of("plain-childless-divorce")))
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr("firstpaper.cli.result._leave_no_memory_image", lambda: None)
    monkeypatch.setattr("signal.signal", lambda *_: None)
    return tmp_path


def ran(*words: str) -> dict[str, object]:
    """The envelope of a command that was run in this process."""
    done = CliRunner().invoke(app, [*words, "--json"], input="\n")
    envelope = done.stdout[done.stdout.index("{") :]
    return json.loads(envelope)  # type: ignore[no-any-return]


def codes(envelope: dict[str, object]) -> set[str]:
    return {one["code"] for one in envelope["errors"]}  # type: ignore[attr-defined]


@pytest.mark.parametrize("day", DAYS)
def test_every_command_ends_in_a_sentence_for_every_day_given(folder: Path, day: str) -> None:
    for words in WITH_DAY.values():
        found = codes(ran(*words, "--on", day))
        assert found <= {
            "no_law_for_day",
            "day_out_of_reach",
            "not_a_day",
            "nothing_for_calendar",
            "detail_refused",
            "household_is_later",
        }, words
        if not 2000 <= int(day[:4]) <= 2075:
            assert found == {"day_out_of_reach"}, words


@pytest.mark.parametrize("day", ["0001-01-01", "1970-01-01", "2025-02-28", "9999-12-31"])
def test_and_so_it_does_whatever_the_clock_says(
    folder: Path, day: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    for module in ("options", "clock", "result"):
        monkeypatch.setattr(f"firstpaper.cli.{module}.today", lambda: date.fromisoformat(day))
    for words in (*WITH_DAY.values(), ["paper"]):
        assert "program_fault" not in codes(ran(*words)), words


def test_a_clock_before_the_last_check_of_the_law_is_said() -> None:
    assert "clock is wrong" in clock_words(date(1970, 1, 1)).replace("so the ", "")
    assert clock_words(LAST_CHECK) == clock_words(date(2030, 1, 1)) == ""
    assert clock.today() >= LAST_CHECK
    assert max(value.checked_on for one in all_figures() for value in one.values) >= LAST_CHECK


@pytest.mark.parametrize(
    ("household", "wanted", "plain"),
    [
        ("address-must-stay-hidden", [], True),
        ("address-must-stay-hidden", ["--full-titles"], False),
        ("plain-childless-divorce", [], False),
        ("plain-childless-divorce", ["--plain-titles"], True),
    ],
)
def test_a_calendar_says_nothing_by_itself_where_danger_was_told(
    folder: Path, household: str, wanted: list[str], plain: bool
) -> None:
    CaseFile(facts_of(household)).save(folder / "home.case")
    ran("dates", "home.case", "--ics", "dates.ics", *wanted, "--on", "2026-11-25")
    titles = [line for line in (folder / "dates.ics").read_text().splitlines() if line.startswith("SUMMARY")]
    assert titles
    assert ({line == "SUMMARY:Reminder" for line in titles} == {True}) is plain


def test_an_invented_story_is_not_drafted_for_a_day_before_it_happens(folder: Path) -> None:
    assert codes(ran("demo", "--on", "2025-06-01")) == {"household_is_later"}
    assert not codes(ran("demo", "-o", "demo.pdf", "--on", "2026-11-30"))
