"""Every command of the tutorial is run, and prints what the page shows."""

import re
import subprocess
import sys
from pathlib import Path

PAGE = Path(__file__).parents[2] / "docs" / "tutorial" / "first-packet.md"
BLOCK = re.compile(r"```(?P<kind>yaml|console)\n(?P<text>.*?)```", re.DOTALL)
MENDED = ("June 31 2017", "June 30 2017")


def run(command: str, folder: Path) -> str:
    arguments = command.removeprefix("firstpaper").split()
    done = subprocess.run(
        [sys.executable, "-m", "firstpaper", *arguments],
        cwd=folder,
        capture_output=True,
        text=True,
        check=False,
    )
    return done.stdout + done.stderr


def matches(shown: str, printed: str) -> bool:
    """Whether the output is as shown; "..." stands for anything."""
    pattern = ".*?".join(re.escape(part.strip()) for part in shown.split("..."))
    return re.match(rf"\s*{pattern}", printed, re.DOTALL) is not None


def test_the_tutorial_does_what_it_says(tmp_path: Path) -> None:
    facts = tmp_path / "facts.yaml"
    ran = 0
    for block in BLOCK.finditer(PAGE.read_text("utf-8")):
        if block["kind"] == "yaml":
            facts.write_text(block["text"], "utf-8")
            continue
        command, _, shown = block["text"].removeprefix("$ ").partition("\n")
        printed = run(command, tmp_path)
        assert matches(shown, printed), f"{command}\n--- shown\n{shown}\n--- printed\n{printed}"
        if "cannot be used" in printed:
            facts.write_text(facts.read_text("utf-8").replace(*MENDED), "utf-8")
        ran += 1
    assert ran == 7
    assert (tmp_path / "rosa.pdf").read_bytes().startswith(b"%PDF")
