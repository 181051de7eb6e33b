"""The day at a clinic runs as its page says: forty cases, and again with every file locked."""

import json
import shutil
from collections.abc import Collection
from itertools import cycle, islice
from pathlib import Path

import pexpect
from icalendar import Calendar

from firstpaper.casefile import CaseFile
from firstpaper.casefile.reading import is_sealed
from tests.cli import ready
from tests.cli.person import HOUSEHOLDS, Ran, environment, run_in
from tests.docs.page import DOCS, check_shown, commands, words_of

PAGE = DOCS / "how-to" / "use-it-in-a-clinic.md"
PASSPHRASE = "marble otter seven violins"
ASKED = "Passphrase for"
CASES = 40
TALL = 2000
SLOW = 400
"""Seconds that the slowest command may take on a busy computer."""


def set_out(folder: Path, left_out: Collection[int] = ()) -> None:
    """Put files of facts into a folder, the clinic's own facts, and nothing else."""
    (folder / "intake").mkdir()
    (folder / "cases").mkdir()
    households = sorted(HOUSEHOLDS.glob("*.yaml"))
    for number, path in enumerate(islice(cycle(households), CASES), 1):
        if number not in left_out:
            shutil.copy(path, folder / "intake" / f"26-{number:03}.yaml")
    (folder / "clinic.yaml").write_text("court.county: Fresno\n", "utf-8")


def at_a_terminal(command: str, folder: Path, answers: dict[str, str]) -> str:
    """What a command prints for a person at a terminal who answers what it asks."""
    child = ready.Forked(words_of(command, folder), folder, environment(), (TALL, 90), timeout=SLOW)
    heard = ""
    while (found := child.expect_exact([*answers, pexpect.EOF])) < len(answers):
        heard += child.before
        child.sendline([*answers.values()][found])
    heard += child.before
    child.close()
    return heard.replace("\r\n", "\n")


def check_the_day(clinic: Path, more: list[str]) -> None:
    """What the day left: ten cases changed, three ended, one calendar, a packet for each of the others."""
    files = sorted((clinic / "cases").glob("*.case"))
    assert len(files) == len([*(clinic / "intake").iterdir()])
    ran: Ran = run_in(clinic, "shelf", "cases", "--ended", "--json", "--on", "2026-11-25", *more)
    shelf = json.loads(ran.out)["data"]["cases"]
    assert len(shelf) == len(files)
    assert [one["file"] for one in shelf if one["stage"] == "ended"] == [
        f"26-0{n}.case" for n in (38, 39, 40)
    ]
    assert len(list((clinic / "cases").glob("*.pdf"))) == len(files) - 3
    calendar = Calendar.from_ical((clinic / "all.ics").read_bytes())
    titles = [str(event["SUMMARY"]) for event in calendar.walk("VEVENT")]
    assert titles
    assert all(title.startswith("26-0") for title in titles)


def test_the_day_goes_as_the_page_says(tmp_path: Path) -> None:
    clinic = tmp_path
    set_out(clinic)
    for command, shown in commands(PAGE):
        printed = at_a_terminal(command, clinic, {})
        check_shown(command, shown, printed)
    check_the_day(clinic, [])
    branches = [CaseFile.load(path).case.court.branch for path in sorted((clinic / "cases").glob("*.case"))]
    assert branches[:10] == ["Annex"] * 10
    assert branches[10:].count("Annex") == 0


def test_the_day_goes_the_same_with_every_file_locked(tmp_path: Path) -> None:
    """With those cases alone that the page names: each opening takes its time."""
    clinic = tmp_path
    set_out(clinic, range(11, 38))
    answers = {
        "New passphrase, or just Enter for none: ": PASSPHRASE,
        "The same once more: ": PASSPHRASE,
        ASKED: PASSPHRASE,
    }
    for command, _shown in commands(PAGE):
        sealed = command.replace("--each-into", "--seal --each-into")
        printed = at_a_terminal(sealed, clinic, answers)
        assert PASSPHRASE not in printed
        assert "locked with" not in printed, printed
    assert all(is_sealed(path.read_bytes()) for path in (clinic / "cases").glob("*.case"))
    here = [path for path in clinic.rglob("*") if path.is_file()]
    assert not [path for path in here if PASSPHRASE.encode() in path.read_bytes()]
    (clinic / "words").write_text(PASSPHRASE)
    check_the_day(clinic, ["--passphrase-from", "words"])
