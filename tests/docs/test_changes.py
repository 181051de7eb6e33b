"""The files of changes become the changelog, and the changelog tells of the version that the program is."""

import re
import runpy
import shutil
from pathlib import Path
from typing import Any

import pytest

from firstpaper import __version__
from tests.each import for_each
from tests.words.reading import grade

ROOT = Path(__file__).parents[2]
CHANGES: dict[str, Any] = runpy.run_path(str(ROOT / ".ci" / "changes"))
LOG = (ROOT / "docs" / "changelog.md").read_text("utf-8")
HARDEST = 9.0


def test_the_newest_version_of_the_changelog_is_the_programs() -> None:
    assert re.findall(r"^## ([\d.]+) \(\d{4}-\d\d-\d\d\)$", LOG, re.MULTILINE)[0] == __version__
    assert f'version = "{__version__}"' in (ROOT / "pyproject.toml").read_text("utf-8")


def test_it_reads_easily_and_speaks_of_no_issue() -> None:
    told = [
        line.removeprefix("- ") for line in LOG.replace("\n  ", " ").splitlines() if line.startswith("- ")
    ]
    assert len(told) > 30
    assert grade(told) <= HARDEST
    assert not re.search(r"#\d", LOG)


def test_every_waiting_change_is_well_formed() -> None:
    assert {path.name: fault for path in CHANGES["waiting"]() if (fault := CHANGES["fault"](path))} == {}


@for_each(
    [
        ("shelf.desk.md", "The shelf names the county.\n", ""),
        ("shelf.md", "The shelf names the county.", "NAME.TOPIC.md"),
        ("shelf.cupboard.md", "The shelf names the county.", "NAME.TOPIC.md"),
        ("Shelf.desk.md", "The shelf names the county.", "NAME.TOPIC.md"),
        ("shelf.desk.md", "", "one paragraph"),
        ("shelf.desk.md", "One.\n\nTwo.", "one paragraph"),
        ("shelf.desk.md", "- The shelf names the county.", "one paragraph"),
        ("shelf.desk.md", "The shelf names the county", "whole sentences"),
        ("shelf.desk.md", "One. Two. Three. Four.", "whole sentences"),
        ("shelf.desk.md", "The shelf names the county, see #12.", "issue"),
    ]
)
def test_what_is_wrong_with_a_change_is_said(name: str, text: str, says: str) -> None:
    class Written:
        def read_text(self, _encoding: str) -> str:
            return text

    written = Written()
    written.name = name  # type: ignore[attr-defined]
    found = CHANGES["fault"](written)
    assert says in found
    assert bool(says) == bool(found)


def test_a_version_is_told_by_topic_above_the_older_ones_and_its_files_are_gone(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shutil.copytree(ROOT / "docs" / "changes", tmp_path / "docs" / "changes")
    (tmp_path / ".ci").mkdir()
    shutil.copy(ROOT / ".ci" / "changes", tmp_path / ".ci")
    (tmp_path / "docs" / "changelog.md").write_text(
        "# What has changed\n\n<!-- the next version goes here -->\n\n## 0.1.0 (2026-11-26)\n", "utf-8"
    )
    here = tmp_path / "docs" / "changes"
    for path in here.glob("*.*.md"):
        path.unlink()
    (here / "b.law.md").write_text("Two.\n", "utf-8")
    (here / "a.desk.md").write_text("One\nline more.\n", "utf-8")
    made = runpy.run_path(str(tmp_path / ".ci" / "changes"))
    assert made["main"]("0.2.0", "2026-11-28") == 0
    assert (tmp_path / "docs" / "changelog.md").read_text("utf-8") == (
        "# What has changed\n\n<!-- the next version goes here -->\n\n## 0.2.0 (2026-11-28)\n\n"
        "### The law\n\n- Two.\n\n### Many cases at once\n\n- One\n  line more.\n\n## 0.1.0 (2026-11-26)\n"
    )
    assert [path.name for path in here.iterdir()] == ["README.md"]
    (here / "bad.md").write_text("x", "utf-8")
    assert made["main"]("0.3.0", "2026-11-29") == 1
    assert "bad.md: its name is not" in capsys.readouterr().out
