"""The page on the court's own forms is followed, from the blank to the proof-reading, on a drawn blank."""

import subprocess
import sys
from datetime import date
from pathlib import Path

from firstpaper.forms.edition import edition_for
from tests.blanks.drawn_blanks import Family, drawn
from tests.cli.person import ON, written
from tests.docs.test_tutorial import BLOCK, matches

PAGE = Path(__file__).parents[2] / "docs" / "how-to" / "fill-the-courts-own-forms.md"


def run(command: str, folder: Path) -> str:
    done = subprocess.run(
        [sys.executable, "-m", *command.split()],
        cwd=folder,
        capture_output=True,
        text=True,
        check=False,
        input="yes\n" * 60,
    )
    return " ".join(done.stdout.split())


def test_the_page_does_what_it_says(tmp_path: Path) -> None:
    written(tmp_path, "plain-childless-divorce").rename(tmp_path / "mine.case")
    (tmp_path / "blanks").mkdir()
    one = drawn(edition_for("FL-110", date.fromisoformat(ON)), Family.FULL, seed=4)
    (tmp_path / "blanks" / "FL-110.pdf").write_bytes(one.pdf)
    ran = 0
    for block in BLOCK.finditer(PAGE.read_text("utf-8")):
        command, _line, shown = block["text"].removeprefix("$ ").partition("\n")
        printed = run(command, tmp_path)
        assert matches(" ".join(shown.split()), printed), (
            f"{command}\n--- shown\n{shown}\n--- printed\n{printed}"
        )
        ran += 1
    assert ran == 4
    assert (tmp_path / "mine-FL-110.pdf").stat().st_mode & 0o077 == 0
