"""Every command that the program tells a person to type runs as it is printed, in the folder where it was."""

import json
import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from typer.testing import CliRunner

from firstpaper.casefile import CaseFile
from firstpaper.cli.app import app
from tests.cli.every_command import COMMANDS, set_out
from tests.cli.person import HOUSEHOLDS, ON, entered
from tests.stopped import stopped_cases

HINT = re.compile(
    r"firstpaper(?P<words> [a-z]+(?: (?:--?[a-z]+|[\w-]*[./][\w./-]*|\d{4}-\d\d-\d\d|[a-z]+(?=\n|$)))*)",
    re.MULTILINE,
)
"""A command with its options, its files and keys, and at the end of a line also a word, as an event."""

NEEDS_A_PERSON = {"action_needed", "answer_needed", "not_confirmed", "not_told", "passphrase_needed"}
"""What a command says that asks, where nobody is there to be asked."""

INTERRUPTED = 130
"""Where it asks, and nobody answers."""

READ_OF_EACH = (["check", "home.case", "--all"], ["check", "home.case"], ["dates", "home.case"], ["shelf"])


def told(output: str) -> Iterator[tuple[str, ...]]:
    """The commands in some output, without the bare names that stand for a command in a sentence."""
    for found in HINT.finditer(output.replace("\u00a0", " ")):
        words = found["words"].split()
        if len(words) > 1:
            yield tuple(word.rstrip(".") for word in words)


def failure(words: tuple[str, ...]) -> str:
    """What is wrong with a command as it is printed; empty where it runs, or only wants a person."""
    done = CliRunner().invoke(app, [*words, "--json"] if "--help" not in words else list(words))
    if done.exit_code in (0, 1, INTERRUPTED):
        return ""
    try:
        codes = {error["code"] for error in json.loads(done.stdout)["errors"]}
    except ValueError:
        return done.output
    return "" if codes and codes <= NEEDS_A_PERSON else str(codes)


class Folder:
    """A folder in which commands are run, and what they told to type, tried once each on a copy."""

    def __init__(self, path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        self._path = path
        self._go = monkeypatch.chdir
        self._tried: set[tuple[str, ...]] = set()

    def broken(self, words: list[str]) -> Iterator[str]:
        """Run a command; every command it tells to type that does not run, and why."""
        self._go(self._path)
        output = CliRunner().invoke(app, words).output
        for hint in told(output):
            if hint not in self._tried:
                self._tried.add(hint)
                yield from self._tried_out(hint, words)

    def _tried_out(self, hint: tuple[str, ...], words: list[str]) -> Iterator[str]:
        copy = self._path.with_name("copy")
        shutil.copytree(self._path, copy)
        self._go(copy)
        if why := failure(hint):
            yield f"{' '.join(words)} tells to type {' '.join(hint)}: {why}"
        self._go(self._path)
        shutil.rmtree(copy)


def test_what_the_commands_that_read_a_case_tell_to_type_runs_for_every_household(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "here").mkdir()
    folder = Folder(tmp_path / "here", monkeypatch)
    wrong = []
    for household in sorted(HOUSEHOLDS.glob("*.yaml")):
        CaseFile(entered(household.stem)).save(tmp_path / "here" / "home.case")
        for words in READ_OF_EACH:
            wrong += folder.broken(words if words[0] == "shelf" else [*words, "--on", ON])
    assert wrong == []


def test_what_a_stopped_case_tells_to_type_runs(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "here").mkdir()
    folder = Folder(tmp_path / "here", monkeypatch)
    wrong = []
    for one in stopped_cases():
        CaseFile(one.case).save(tmp_path / "here" / "home.case")
        wrong += folder.broken(["check", "home.case", "--on", one.on.isoformat()])
    assert wrong == []


@pytest.mark.parametrize("way", COMMANDS)
def test_what_every_command_tells_to_type_runs(
    way: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    here = tmp_path / "here"
    here.mkdir()
    set_out(here, CaseFile(entered("plain-childless-divorce")))
    (here / "words").write_text("correct horse battery staple\n")
    folder = Folder(here, monkeypatch)
    name = COMMANDS[way][0]
    tried = [["--help"], [name, "--help"], COMMANDS[way]]
    assert [wrong for words in tried for wrong in folder.broken(words)] == []


def test_commands_are_found_where_they_are_told() -> None:
    said = (
        "To go on, type:\n  firstpaper record home.case served\nSee firstpaper check.\nfirstpaper why a.b\n"
    )
    assert list(told(said)) == [("record", "home.case", "served"), ("why", "a.b")]


@pytest.mark.parametrize("way", ["undo", "amend", "items", "money", "schedule", "check", "dates", "change"])
def test_a_command_ends_with_the_next_step(way: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    set_out(tmp_path, CaseFile(entered("plain-childless-divorce")))
    monkeypatch.chdir(tmp_path)
    CliRunner().invoke(app, ["change", "home.case", "court.branch=Annex"])
    words = ["change", "home.case", "court.branch=Main"] if way == "change" else COMMANDS[way]
    said = CliRunner().invoke(app, words).output
    assert re.search(r"^Next: .*(\n\S.*)*\n  firstpaper ", said, re.MULTILINE), said[-400:]
