"""The arguments and options that several commands share, and how they are read."""

import re
from datetime import date
from pathlib import Path
from typing import Annotated

import typer

from firstpaper.cli.clock import today
from firstpaper.errors import UserError
from firstpaper.locale import _

HOME = Path("home.case")
"""The case file where none is named. The name says nothing to somebody who sees it."""

CaseArgument = Annotated[
    Path, typer.Argument(metavar="CASE", help=_("The case file, such as home.case."), show_default=False)
]
HomeArgument = Annotated[
    Path,
    typer.Argument(
        metavar="CASE",
        help=_("The case file. Without it: home.case in this folder. Choose a name that tells nothing."),
        show_default=False,
    ),
]
OnOption = Annotated[
    str | None,
    typer.Option(
        "--on", metavar="DATE", help=_("The day you plan to file, as 2026-11-30. Without it: today.")
    ),
]
JsonOption = Annotated[bool, typer.Option("--json", help=_("Give the result as JSON, for other programs."))]


class NotADay(UserError):
    """The day after --on could not be read.

    The law is looked up for the day you plan to file, so it must be a whole date. Write the year, the
    month and the day, like this: --on 2026-11-30
    """

    code = "not_a_day"


def filing_day(text: str | None) -> date:
    """The day a command works for: the one given, or today."""
    if text is None:
        return today()
    if not re.fullmatch(r"\d{4}-\d{2}-\d{2}", text.strip()):
        raise NotADay
    try:
        return date.fromisoformat(text.strip())
    except ValueError as error:
        raise NotADay from error
