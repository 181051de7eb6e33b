"""Every command of the page on keeping track is run, in its order, and prints what the page shows."""

from pathlib import Path

from firstpaper.intake.events import events
from tests.cli.person import written
from tests.docs.page import DOCS, check_shown, commands, run

PAGE = DOCS / "how-to" / "keep-track-after-filing.md"


def test_the_page_does_what_it_says(tmp_path: Path) -> None:
    written(tmp_path, "plain-childless-divorce").rename(tmp_path / "mine.case")
    shown_there = list(commands(PAGE))
    for command, shown in shown_there:
        done = run(command, tmp_path)
        check_shown(command, shown, done.out + done.err)
    assert {one.name for one in tmp_path.iterdir()} >= {"dates.ics", "mine-later.pdf", "new.case", "new.pdf"}
    assert len(shown_there) == 15


def test_the_page_names_every_event_that_can_be_recorded() -> None:
    text = PAGE.read_text("utf-8")
    assert [topic.name for topic in events().topics if f"`{topic.name}`" not in text] == []
