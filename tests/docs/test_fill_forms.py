"""The page on the court's own forms is followed, from the blank to the proof-reading, on a drawn blank."""

from datetime import date
from pathlib import Path

from firstpaper.forms.edition import edition_for
from tests.blanks.drawn_blanks import Family, drawn
from tests.cli.person import ON, flat, written
from tests.docs.page import DOCS, check_shown, commands, run

PAGE = DOCS / "how-to" / "fill-the-courts-own-forms.md"


def test_the_page_does_what_it_says(tmp_path: Path) -> None:
    written(tmp_path, "plain-childless-divorce").rename(tmp_path / "mine.case")
    (tmp_path / "blanks").mkdir()
    one = drawn(edition_for("FL-110", date.fromisoformat(ON)), Family.FULL, seed=4)
    (tmp_path / "blanks" / "FL-110.pdf").write_bytes(one.pdf)
    ran = 0
    for command, shown in commands(PAGE):
        printed = run(command, tmp_path, typed="yes\n" * 60).out
        check_shown(command, flat(shown), flat(printed))
        ran += 1
    assert ran == 4
    assert (tmp_path / "mine-FL-110.pdf").stat().st_mode & 0o077 == 0
