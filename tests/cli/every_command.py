"""One way to use each command on a folder with `home.case`, `new.case`, `more.yaml` and `words` in it.

`new.case` amends `home.case`; `words` is a file with a passphrase. Tests that must hold for every command run
through this table, and a command that is not in it fails them.
"""

from pathlib import Path
from typing import Any

import typer

from firstpaper.casefile import CaseFile
from firstpaper.cli.app import app
from tests.cli.person import ON

COMMANDS: dict[str, list[str]] = {
    "ask": ["ask", "home.case", "--on", ON],
    "change": ["change", "home.case", "court.branch", "--on", ON],
    "enter": ["enter", "home.case", "more.yaml", "--on", ON],
    "check": ["check", "home.case", "--on", ON],
    "items": ["items", "home.case", "--on", ON],
    "packet": ["packet", "home.case", "--html", "home.html", "--on", ON],
    "packet --amends": ["packet", "new.case", "--amends", "home.case", "--html", "new.html", "--on", ON],
    "record": ["record", "home.case", "filed", "day=11/25/2026", "number=26FL001234", "--on", ON],
    "record --list": ["record", "home.case", "--list", "--on", ON],
    "dates": ["dates", "home.case", "--ics", "home.ics", "--on", ON],
    "amend": ["amend", "home.case", "newer.case"],
    "undo": ["undo", "home.case"],
    "seal": ["seal", "home.case", "--passphrase-from", "words"],
    "unseal": ["unseal", "home.case"],
    "shelf": ["shelf", "--names", "--on", ON],
    "erase": ["erase", "home.case", "--yes"],
    "paper": ["paper"],
    "why": ["why", "safety.address"],
    "law": ["law", "--on", ON],
    "demo": ["demo", "-o", "demo.pdf", "--on", ON],
}

WITHOUT_PASSPHRASE = {
    "erase": "removes a file that nobody can open any more, too",
    "paper": "opens no case file",
    "why": "opens no case file",
    "law": "opens no case file",
    "demo": "opens no case file",
}


def names() -> set[str]:
    """The names of all commands there are."""
    return set(_click().commands)


def options(command: str) -> set[str]:
    """The options of a command, such as "--json"."""
    return {option for parameter in _click().commands[command].params for option in parameter.opts}


def opening() -> dict[str, list[str]]:
    """The ways to use the commands that open a case file."""
    return {way: words for way, words in COMMANDS.items() if words[0] not in WITHOUT_PASSPHRASE}


def set_out(folder: Path, file: CaseFile) -> None:
    """Put into the folder what the commands of the table use."""
    file.save(folder / "home.case")
    amended = file.case.with_fact("matter.amended", True)
    CaseFile(amended, file.passed).save(folder / "new.case")
    (folder / "more.yaml").write_text("court.branch: Annex\n", "utf-8")


def _click() -> Any:
    return typer.main.get_command(app)
