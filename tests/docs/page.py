"""The commands that a page of the documentation shows, run as a reader would type them."""

import re
import shlex
from collections.abc import Iterator
from pathlib import Path

from tests.cli.person import Ran, run_in

DOCS = Path(__file__).parents[2] / "docs"
BLOCK = re.compile(r"```(?P<kind>yaml|console|csv)\n(?P<text>.*?)```", re.DOTALL)


def commands(page: Path) -> Iterator[tuple[str, str]]:
    """Each command of a page, and what the page shows below it."""
    for kind, text in blocks(page):
        assert kind == "console", f"{page.name} shows a file too"
        yield command_in(text)


def blocks(page: Path) -> Iterator[tuple[str, str]]:
    """Each block of a page: the kind of it, and its text."""
    return ((block["kind"], block["text"]) for block in BLOCK.finditer(page.read_text("utf-8")))


def command_in(text: str) -> tuple[str, str]:
    """The command of a block, and what is shown below it."""
    command, _line, shown = text.removeprefix("$ ").partition("\n")
    return command, shown


def run(command: str, folder: Path, typed: str = "") -> Ran:
    """Run a command of a page in a folder."""
    return run_in(folder, *words_of(command, folder), typed=typed)


def words_of(command: str, folder: Path) -> list[str]:
    """What a shell hands to the program: its quotes taken off, its patterns of file names written out."""
    program, *words = shlex.split(command)
    assert program == "firstpaper", command
    return [one for word in words for one in _matching(word, folder)]


def _matching(word: str, folder: Path) -> list[str]:
    if not set("*?") & set(word):
        return [word]
    return sorted(str(path.relative_to(folder)) for path in folder.glob(word))


def check_shown(command: str, shown: str, printed: str) -> None:
    """Hold what a command printed to what the page shows of it."""
    assert matches(shown, printed), f"{command}\n--- shown\n{shown}\n--- printed\n{printed}"


def matches(shown: str, printed: str) -> bool:
    """Whether the output is as shown; "..." stands for anything."""
    pattern = ".*?".join(re.escape(part.strip()) for part in shown.split("..."))
    return re.match(rf"\s*{pattern}", printed, re.DOTALL) is not None
