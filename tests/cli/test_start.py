"""What a command loads: nothing it does not need, so that the first words come at once."""

import subprocess
import sys
from pathlib import Path

import pytest

from tests.cli.person import environment

LIST_MODULES = """
import atexit, sys
from pathlib import Path
def note():
    Path("loaded").write_text(" ".join(sys.modules))
atexit.register(note)
from firstpaper.cli import main
main()
"""
DRAWING = {"reportlab", "pypdf", "jinja2", "PIL"}
CASE = {"pydantic", "yaml"}


def loaded(folder: Path, *arguments: str) -> set[str]:
    """The top-level modules that a command has loaded when it ends."""
    return {name.partition(".")[0] for name in modules_of(folder, *arguments)}


def modules_of(folder: Path, *arguments: str) -> set[str]:
    """All modules that a command has loaded when it ends."""
    command = [sys.executable, "-c", LIST_MODULES, *arguments]
    subprocess.run(command, cwd=folder, env=environment(), capture_output=True, check=False, timeout=60)
    return set((folder / "loaded").read_text().split())


def test_help_and_version_load_no_case_no_law_and_nothing_to_draw_with(tmp_path: Path) -> None:
    for argument in ("--help", "--version"):
        assert not loaded(tmp_path, argument) & (CASE | DRAWING | {"rich"})


@pytest.mark.parametrize("command", ["ask", "check", "items"])
def test_a_command_that_draws_nothing_loads_nothing_to_draw_with(
    tmp_path: Path, home: Path, command: str
) -> None:
    modules = loaded(tmp_path, command, "home.case")
    assert modules >= CASE
    assert not modules & (DRAWING | {"rich"})


def test_nothing_loads_a_way_out_of_the_computer(tmp_path: Path, home: Path) -> None:
    modules = loaded(tmp_path, "ask", "home.case") | loaded(tmp_path, "check", "home.case")
    assert not modules & {"requests", "httpx", "aiohttp", "ssl", "ftplib", "smtplib"}


def test_a_read_along_of_no_case_loads_nothing_that_works_on_cases(tmp_path: Path) -> None:
    modules = modules_of(tmp_path, "guide", "FL-100")
    assert "firstpaper.packet.guide" in modules
    works_on_cases = (
        "firstpaper.facts.case",
        "firstpaper.casefile.document",
        "firstpaper.intake",
        "firstpaper.law.rules",
    )
    assert {name for name in modules if name.startswith(works_on_cases)} == set()
