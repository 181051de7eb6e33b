"""A folder that knows no locks is told of by every command that writes to a case in it, and once."""

import errno
from pathlib import Path

import pytest
from typer.testing import CliRunner

from firstpaper.casefile import CaseFile
from firstpaper.cli.app import app
from tests.cli.every_command import COMMANDS, set_out
from tests.cli.person import facts_of

WRITING = ("ask", "change", "enter", "schedule", "record", "dates", "amend", "undo", "seal", "unseal")
SAID = "cannot keep two windows apart"


def no_locks(*_args: object) -> None:
    raise OSError(errno.ENOLCK, "no locks here")


@pytest.mark.parametrize("command", WRITING)
@pytest.mark.parametrize("locks", [True, False])
def test_a_folder_without_locks_is_told_of_once(
    command: str, locks: bool, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    set_out(tmp_path, CaseFile(facts_of("plain-childless-divorce").with_fact("court.branch", None)))
    (tmp_path / "words").write_text("marble otter seven violins\n" * 3)
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr("firstpaper.cli.result._leave_no_memory_image", lambda: None)
    monkeypatch.setattr("signal.signal", lambda *_: None)
    if not locks:
        monkeypatch.setattr("fcntl.flock", no_locks)
    done = CliRunner().invoke(app, COMMANDS[command], input="\n")
    assert " ".join(done.output.split()).count(SAID) == (0 if locks else 1)
