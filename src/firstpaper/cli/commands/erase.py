"""`firstpaper erase`: remove the case file and everything of it that lies beside it."""

from collections.abc import Sequence
from pathlib import Path
from typing import Annotated

import typer

from firstpaper.cli.options import HOME, HomeArgument, JsonOption
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

YesOption = Annotated[
    bool, typer.Option("--yes", help=_("Remove it without asking first. It cannot be brought back."))
]


class NotConfirmed(UserError):
    """Nothing was removed, because there is nobody here to ask.

    Removing cannot be taken back. Type the command yourself in a terminal window, or add --yes.
    """

    code = "not_confirmed"


def erase(case: HomeArgument = HOME, yes: YesOption = False, as_json: JsonOption = False) -> None:
    """Remove the case file, its copies and its drafts."""
    deliver("erase", as_json, lambda terminal: _erase(terminal, case, yes))


def _erase(terminal: Terminal, path: Path, yes: bool) -> Result:
    from firstpaper.casefile import Lock
    from firstpaper.casefile.belongings import belongings, finish_removing, remove_all
    from firstpaper.casefile.errors import CaseFileMissing
    from firstpaper.cli.files.output import drafts_beside

    with Lock(path):
        finish_removing(path)
        found = [*belongings(path), *drafts_beside(path)]
        if not found:
            raise CaseFileMissing(path=path)
        if not yes and not _confirmed(terminal, found):
            return Result(data={"removed": [], "left": []}, text=_("Nothing was removed."))
        left = remove_all(path, found)
    removed = [one for one in found if one not in left]
    return Result(
        data={"removed": list(map(str, removed)), "left": list(map(str, left))},
        text="\n\n".join([*_named(_("Removed:"), removed), *_named(_left(), left), no_promise()]),
        exit=Exit.STOPS if left else Exit.FINE,
    )


def _left() -> str:
    return _("These could not be removed. Close the programs that have them open, and try again:")


def _confirmed(terminal: Terminal, found: Sequence[Path]) -> bool:
    if not terminal.interactive:
        raise NotConfirmed
    terminal.say(*_named(_("This will be removed, and nobody can bring it back:"), found))
    typed = terminal.read(_("Type erase to remove it, or just Enter to change nothing: "))
    terminal.line()
    return typed.strip().casefold() in ("erase", _("erase"))


def _named(words: str, paths: Sequence[Path]) -> list[str]:
    return ["\n".join([words, *(f"  - {one}" for one in paths)])] if paths else []


def no_promise() -> str:
    """What no program can promise about a file that was removed."""
    return _(
        "No program can promise that nothing is left. A modern disk may keep old bytes where nobody can "
        "overwrite them. Backups, shared clouds, the trash, lists of recent files and prints stay. "
        "So do papers you saved under another name or in another folder. Your terminal may remember "
        "the commands you typed, with the name of the file."
    )
