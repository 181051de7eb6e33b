"""The page on safety and the script that prints its figures speak of the same things."""

import re
from pathlib import Path

from tests.hardening import FUZZED, PARTS

PAGE = (Path(__file__).parents[2] / "docs" / "explanation" / "safety.md").read_text("utf-8")
TESTED = PAGE.partition("## How it is tested")[2].partition("\n## ")[0]
FUZZING = TESTED.partition("- **fuzzing**:")[2].partition("\n\n")[0]
SAID_AS = {"answers": "typed answers", "facts": "files of facts"}


def test_the_page_names_the_parts_of_the_script_in_their_order() -> None:
    assert re.findall(r"^- \*\*([a-z]+)\*\*:", TESTED, re.MULTILINE) == list(PARTS)


def test_every_part_has_figures_and_the_run_has_a_day_and_a_machine() -> None:
    for part in re.split(r"^- \*\*", TESTED, flags=re.MULTILINE)[1:]:
        assert re.search(r"\d", part)
    assert re.search(r"\b20\d\d\b", TESTED)
    assert "Linux" in TESTED


def test_the_page_names_everything_that_is_fuzzed() -> None:
    said = " ".join(FUZZING.split())
    assert [name for name in FUZZED if SAID_AS.get(name, name) not in said] == []
