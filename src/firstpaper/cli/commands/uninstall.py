"""`firstpaper uninstall`: how to remove the program, and what of a case stays on the disk without it."""

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.hints import command, line_of
from firstpaper.cli.options import CASE_ENDING, JsonOption
from firstpaper.cli.result import Result, deliver
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.cli.installed import Installed

FoldersArgument = Annotated[
    list[Path] | None,
    typer.Argument(
        metavar="[FOLDER]...",
        help=_("Where your case files lie, with the folders below. Without one: this folder."),
        show_default=False,
    ),
]


def uninstall(folders: FoldersArgument = None, as_json: JsonOption = False) -> None:
    """Say how to remove the program, and which case files stay. It removes nothing itself."""
    deliver("uninstall", as_json, lambda _terminal: _uninstall(folders or [Path()]))


def _uninstall(folders: Sequence[Path]) -> Result:
    from firstpaper.cli.installed import installed, tab_key_files

    cases = [case for folder in folders for case in _cases_in(folder)]
    program, tab = installed(), tab_key_files()
    data = {
        "how": program.how,
        "place": str(program.place),
        "command": list(program.command),
        "tab_key_files": list(map(str, tab)),
        "cases": list(map(str, cases)),
    }
    return Result(data=data, text="\n\n".join([*_stays(cases), *_program(program), *_beside(tab)]))


def _cases_in(folder: Path) -> list[Path]:
    """The case files there, by their names: nothing is opened."""
    from firstpaper.cli.commands.shelf import NoSuchFolder
    from firstpaper.cli.files.shelf import files_in

    try:
        return [path for path in files_in(folder, deep=True) if path.suffix == CASE_ENDING]
    except OSError as error:
        raise NoSuchFolder(folder=folder, reason=error.strerror or type(error).__name__) from error


def _stays(cases: Sequence[Path]) -> Iterator[str]:
    """What is not removed with the program, and how to erase it first."""
    from firstpaper.cli.commands.erase import no_promise

    yield _(
        "1. YOUR CASES. Without the program, your case files stay on the disk. So do their copies and the "
        "papers you drafted. Nothing but this program opens a locked case file."
    )
    if cases:
        head = _("To erase a case with its copies and the papers beside it, type this first:")
        yield "\n".join([head, *(f"  {command('erase', case)}" for case in cases)])
    else:
        yield _("No case file was found here. To look in another folder, type its name after the command.")
    yield no_promise()


def _program(program: "Installed") -> Iterator[str]:
    """How to remove the program."""
    from firstpaper.cli.installed import How, own_environment

    yield _("2. THE PROGRAM. It lies in {place}.").format(place=program.place)
    if program.how is How.FOLDER:
        yield _("Remove that folder. Nothing of the program lies anywhere else.")
        return
    yield "\n".join([_("To remove it, type:"), f"  {line_of(*program.command)}"])
    environment = own_environment()
    if program.how is How.PIP and environment:
        yield _(
            "What it runs on stays in {folder}. If you made that folder for this program alone, remove it "
            "whole."
        ).format(folder=environment)


def _beside(tab: Sequence[Path]) -> Iterator[str]:
    """What else of it is on the disk."""
    if tab:
        head = _(
            "The Tab key was set in these files. Remove them, and in a file of your shell the line alone:"
        )
        yield "\n".join([head, *(f"  - {path}" for path in tab)])
    yield _("It keeps no settings, no list of recent files and no log. Nothing was removed now.")
