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


FIRST_DAY, LAST_DAY = date(2000, 1, 1), date(2075, 12, 31)
"""The days for which a filing can be planned. Nothing is counted beyond what a lifetime may need."""


class ClockOutOfReach(UserError):
    """This computer's clock says {day}, so the day to count from is not known.

    The days of a case are counted from today, and a wrong day gives wrong papers. Nothing was changed. Set
    the clock right and try again, or say the day yourself, like this: --on 2026-11-30
    """

    code = "clock_out_of_reach"


class DayOutOfReach(UserError):
    """The day after --on is too far away: {day}.

    Nothing can be worked out for a filing on that day. Give the day you plan to file, between {first} and
    {last}, like this: --on 2026-11-30
    """

    code = "day_out_of_reach"


class NotADay(UserError):
    """The day after --on could not be read.

    The law is looked up for the day you plan to file, so it must be a whole date. Write the year, the
    month and the day, like this: --on 2026-11-30
    """

    code = "not_a_day"


def filing_day(text: str | None) -> date:
    """The day a command works for: the one given, or today."""
    if text is None:
        return _in_reach(today())
    if not re.fullmatch(r"\d{4}-\d{2}-\d{2}", text.strip()):
        raise NotADay
    try:
        day = date.fromisoformat(text.strip())
    except ValueError as error:
        raise NotADay from error
    if not FIRST_DAY <= day <= LAST_DAY:
        raise DayOutOfReach(day=day, first=FIRST_DAY, last=LAST_DAY)
    return day


def _in_reach(day: date) -> date:
    if not FIRST_DAY <= day <= LAST_DAY:
        raise ClockOutOfReach(day=day)
    return day
