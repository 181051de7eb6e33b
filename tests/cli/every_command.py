"""Each command in one table: ways to use it and a way in which it fails, on a folder that `set_out` has made.

In it `new.case` amends `home.case`, `listed.case` has a debt listed too, `letter` is a sheet of a clinic, and
`words` is to be a file with a passphrase. Tests that must hold for every command run through this table. A
command that is not in it fails them.
"""

from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

import typer

from firstpaper.blanks.here import confirm_here
from firstpaper.blanks.mapping import written as map_written
from firstpaper.casefile import CaseFile
from firstpaper.cli.app import app
from firstpaper.facts import Case
from firstpaper.facts.choices import DebtKind
from firstpaper.forms.filing import maker
from firstpaper.intake import standing
from firstpaper.packet.own_sheets import LISTS, WORDS
from tests.blanks.worked import Worked, worked
from tests.cli.person import ON

COMMANDS: dict[str, list[str]] = {
    "ask": ["ask", "home.case", "--on", ON],
    "change": ["change", "home.case", "court.branch=Annex", "--on", ON],
    "change many": ["change", "home.case", "listed.case", "court.branch=Annex", "--on", ON],
    "enter": ["enter", "home.case", "more.yaml", "--on", ON],
    "enter --dry-run": ["enter", "home.case", "more.yaml", "--dry-run", "--on", ON],
    "enter into many": ["enter", "home.case", "listed.case", "more.yaml", "--on", ON],
    "show": ["show", "home.case", "--topic", "court", "--on", ON],
    "check": ["check", "home.case", "--on", ON],
    "check many": ["check", "home.case", "listed.case", "--on", ON],
    "items": ["items", "home.case", "--on", ON],
    "packet": ["packet", "home.case", "--html", "home.html", "--on", ON],
    "packet of many": ["packet", "home.case", "listed.case", "--on", ON],
    "packet --amends": ["packet", "new.case", "--amends", "home.case", "--html", "new.html", "--on", ON],
    "packet --sheet": ["packet", "home.case", "--sheet", "letter", "--html", "home.html", "--on", ON],
    "filled packet": ["packet", "home.case", "--blanks", ".", "--flat", "--on", ON],
    "blank": ["blank", "FL-110.pdf"],
    "compare": ["compare", "home.case", "filled.pdf", "--blanks", ".", "--on", ON],
    "schedule": ["schedule", "home.case", "add", "asset", "kind=cash", "words=Cash", "--on", ON],
    "schedule --list": ["schedule", "home.case", "--list", "--on", ON],
    "money": ["money", "listed.case", "--html", "listed.html", "--on", ON],
    "record": ["record", "home.case", "filed", "day=11/25/2026", "number=26FL001234", "--on", ON],
    "record --list": ["record", "home.case", "--list", "--on", ON],
    "dates": ["dates", "home.case", "--ics", "home.ics", "--on", ON],
    "amend": ["amend", "home.case", "newer.case"],
    "undo": ["undo", "home.case"],
    "seal": ["seal", "home.case", "--passphrase-from", "words"],
    "unseal": ["unseal", "home.case"],
    "shelf": ["shelf", "--names", "--on", ON],
    "shelf --find": ["shelf", "--find", "Doe", "--ics", "shelf.ics", "--csv", "shelf.csv", "--on", ON],
    "erase": ["erase", "home.case", "--yes"],
    "paper": ["paper", "home.case"],
    "why": ["why", "safety.address", "home.case", "--on", ON],
    "guide": ["guide", "FL-100", "home.case", "--html", "guide.html", "--on", ON],
    "guide after": ["guide", "after", "home.case", "--on", ON],
    "why ITEM": ["why", "2a", "home.case", "--on", ON],
    "law": ["law", "--on", ON],
    "demo": ["demo", "-o", "demo.pdf", "--on", ON],
    "uninstall": ["uninstall"],
}

FAILS: dict[str, tuple[list[str], str]] = {
    "ask": (["ask", "letter.txt"], "not_a_case_file"),
    "change": (["change", "home.case", "petitioner.shoe_size"], "nothing_to_change"),
    "enter": (["enter", "home.case", "letter.txt"], "facts_refused"),
    "show": (["show", "home.case", "--topic", "shoes"], "no_such_topic"),
    "amend": (["amend", "gone.case", "newer.case"], "case_file_missing"),
    "check": (["check", "gone.case"], "case_file_missing"),
    "items": (["items", "damaged.case"], "case_file_damaged"),
    "blank": (["blank", "letter.txt"], "blank_not_a_pdf"),
    "compare": (["compare", "home.case", "filled.pdf", "--blanks", "nowhere"], "no_blank"),
    "schedule": (["schedule", "home.case", "add", "boat", "value=5"], "nothing_to_list"),
    "record": (["record", "home.case", "filed", "day=2031-01-01", "--on", ON], "detail_refused"),
    "dates": (["dates", "home.case", "--ics", "letter.txt"], "not_our_output"),
    "undo": (["undo", "gone.case"], "case_file_missing"),
    "seal": (["seal", "home.case"], "passphrase_needed"),
    "unseal": (["unseal", "letter.txt"], "not_a_case_file"),
    "erase": (["erase", "home.case"], "not_confirmed"),
    "packet": (["packet", "home.case", "-o", "letter.txt"], "not_our_output"),
    "money": (["money", "home.case"], "no_money_told"),
    "shelf": (["shelf", "nowhere"], "no_such_folder"),
    "paper": (["paper", "--facts", "letter.txt"], "facts_there"),
    "why": (["why", "residence.stat"], "no_such_page"),
    "guide": (["guide", "FL-999"], "no_such_guide"),
    "law": (["law", "--on", "soon"], "not_a_day"),
    "demo": (["demo", "nobody"], "no_such_household"),
    "uninstall": (["uninstall", "nowhere"], "no_such_folder"),
}
"""A way in which each command fails on what `set_out_wrong` adds to the folder, and the code of the error."""

WITHOUT_PASSPHRASE = {
    "erase": "removes a file that nobody can open any more, too",
    "blank": "opens no case file",
    "law": "opens no case file",
    "demo": "opens no case file",
    "uninstall": "opens no case file",
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
    CaseFile(with_debt(file.case), file.passed).save(folder / "listed.case")
    (folder / "more.yaml").write_text("court.branch: Annex\n", "utf-8")
    set_out_blank(folder, file.case)
    (folder / "letter").write_text("<h1>Ours</h1>\n" + everything_put_in(), "utf-8")


def set_out_wrong(folder: Path) -> None:
    """Put into the folder what no command can use."""
    (folder / "letter.txt").write_text("Dear court,\n", "utf-8")
    (folder / "damaged.case").write_text('{"firstpaper": {"schema": 1}, "facts": ', "utf-8")


def set_out_blank(folder: Path, case: Case) -> None:
    """Put a drawn blank there, with its map, confirmed in that folder, and a filled copy of it."""
    done = _summons_of(case)
    (folder / "FL-110.pdf").write_bytes(done.drawn.pdf)
    (folder / "filled.pdf").write_bytes(done.pdf)
    (folder / "FL-110.map.yaml").write_text(map_written(done.map), "utf-8")
    confirm_here(folder / "FL-110.map.yaml", "A. Helper", ON)


@cache
def _summons_of(case: Case) -> Worked:
    return worked(maker("FL-110")(standing(case), date.fromisoformat(ON))[0])


@cache
def everything_put_in() -> str:
    """Every word and list that a sheet of a clinic can show."""
    words = [f"<p>{name}: {{{{ {name} }}}}</p>" for name in WORDS]
    lists = [f"<p>{{% for one in {name} %}}{{{{ one }}}}; {{% endfor %}}</p>" for name in LISTS]
    return "\n".join([*words, *lists])


def with_debt(case: Case) -> Case:
    """The case with a debt listed, so that there is something to say about money."""
    return case.with_fact("debt.1.kind", DebtKind.CREDIT_CARD).with_fact("debt.1.words", "Store card")


def _click() -> Any:
    return typer.main.get_command(app)
