"""Every command of the page on keeping track is run, in its order, and prints what the page shows."""

from pathlib import Path

from firstpaper.intake.events import events
from tests.cli.person import written
from tests.docs.test_tutorial import BLOCK, matches, run

PAGE = Path(__file__).parents[2] / "docs" / "how-to" / "keep-track-after-filing.md"


def test_the_page_does_what_it_says(tmp_path: Path) -> None:
    written(tmp_path, "plain-childless-divorce").rename(tmp_path / "mine.case")
    commands = [
        block["text"].removeprefix("$ ").partition("\n") for block in BLOCK.finditer(PAGE.read_text("utf-8"))
    ]
    for command, _line, shown in commands:
        printed = run(command, tmp_path)
        assert matches(shown, printed), f"{command}\n--- shown\n{shown}\n--- printed\n{printed}"
    assert {one.name for one in tmp_path.iterdir()} >= {"dates.ics", "mine-later.pdf", "new.case", "new.pdf"}
    assert len(commands) == 15


def test_the_page_names_every_event_that_can_be_recorded() -> None:
    text = PAGE.read_text("utf-8")
    assert [topic.name for topic in events().topics if f"`{topic.name}`" not in text] == []
