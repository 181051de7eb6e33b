"""Links, pipes and files of others, put in every place where a command writes or removes something.

Somebody else may be able to write to the folder. Nothing that such a name leads to is read, written or
emptied, nothing waits for it, and the case itself stays whole.
"""

import os
import signal
from collections.abc import Iterator
from pathlib import Path

import pytest
from typer.testing import CliRunner

from firstpaper.casefile import CaseFile, OpenCase, load
from firstpaper.casefile.sealing import Cost
from firstpaper.cli.app import app
from tests.cli.every_command import set_out
from tests.cli.person import ON, facts_of

DIARY = b"%PDF-1.7 my diary, Okafor, and nobody's business"
PASSPHRASE = "marble otter seven violins"
PLACES = (
    "home.case.lock",
    "home.case.copies",
    "home.case.copies/000001",
    "home.case.copies/000099",
    "home.case.copies/unfinished",
    "home.case.damaged",
    "home.case.yours",
    "home.case.erasing",
    ".case-00000000-00",
    "home.pdf",
    "home.html",
    "home.ics",
)
KINDS = ("link", "second name", "pipe", "folder", "of another account")
COMMANDS = {
    "change": ["change", "home.case", "court.branch", "--on", ON],
    "packet": ["packet", "home.case", "--html", "home.html", "--on", ON],
    "dates": ["dates", "home.case", "--ics", "home.ics", "--on", ON],
    "undo": ["undo", "home.case"],
    "seal": ["seal", "home.case", "--passphrase-from", "words"],
    "erase": ["erase", "home.case", "--yes"],
}
SECONDS = 60


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """A folder with a case that was saved a few times, beside a diary in another one."""
    (tmp_path / "diary").mkdir()
    (tmp_path / "diary" / "diary.txt").write_bytes(DIARY)
    here = tmp_path / "work"
    here.mkdir()
    set_out(here, CaseFile(facts_of("plain-childless-divorce")))
    (here / "words").write_text(PASSPHRASE)
    with OpenCase(here / "home.case") as opened:
        for branch in ("One", "Two"):
            opened.keep(opened.file.with_case(opened.case.with_fact("court.branch", branch)))
    monkeypatch.chdir(here)
    monkeypatch.setattr("firstpaper.cli.result._leave_no_memory_image", lambda: None)
    monkeypatch.setattr("firstpaper.cli.result.signal.signal", lambda *_: None)
    monkeypatch.setattr("firstpaper.packet.Packet.pdf", lambda _packet: b"%PDF-1.7 drafted")  # only written
    monkeypatch.setattr(Cost.__init__, "__defaults__", (8 * 1024, 1, 1))
    usual = signal.getsignal(signal.SIGALRM)
    yield here
    signal.alarm(0)
    signal.signal(signal.SIGALRM, usual)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("place", PLACES)
def test_nothing_is_touched_that_a_name_leads_to(folder: Path, place: str, kind: str) -> None:
    if kind == "of another account" and os.geteuid():
        pytest.skip("needs another account")
    diary = folder.parent / "diary" / "diary.txt"
    for command, words in COMMANDS.items():
        put(folder / place, kind, diary)
        signal.alarm(SECONDS)  # a pipe that is waited for ends the test
        done = CliRunner().invoke(app, words, input="Annex\n")
        signal.alarm(0)
        assert "fault of its own" not in done.output, command
        assert diary.read_bytes() == DIARY, command
        assert sorted(one.name for one in diary.parent.iterdir()) == ["diary.txt"], command
        if command != "erase":
            load(folder / "home.case", [PASSPHRASE])


def put(place: Path, kind: str, diary: Path) -> None:
    """Put something strange in a place, where nothing of the kind is yet."""
    if place.is_symlink() or place.is_fifo() or (place.is_file() and place.stat().st_nlink > 1):
        return
    if not place.parent.is_dir():
        return
    if place.is_dir():
        place.rename(place.with_name(f"moved-{os.urandom(4).hex()}"))
    place.unlink(missing_ok=True)
    if kind == "link":
        place.symlink_to(diary.parent if place.suffix == ".copies" else diary)
    elif kind == "second name":
        place.hardlink_to(diary)
    elif kind == "pipe":
        os.mkfifo(place)
    elif kind == "folder":
        place.mkdir()
    else:
        place.write_bytes(b"")
        os.chown(place, 12345, 12345)
