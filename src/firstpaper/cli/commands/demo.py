"""`firstpaper demo`: draft the packet of an invented household, to see what comes out."""

from pathlib import Path
from typing import Annotated

import typer

from firstpaper.cli.commands.packet import PartOption, PdfOption
from firstpaper.cli.files.packet import Wanted
from firstpaper.cli.files.pdf import Files
from firstpaper.cli.options import HtmlOption, JsonOption, OnOption, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.errors import UserError
from firstpaper.locale import _

PLAIN = "plain-childless-divorce"


class HouseholdIsLater(UserError):
    """The story of the household {name} happens later than {day}, so no packet was drafted for that day.

    Choose a later day with --on, or leave --on out.
    """

    code = "household_is_later"


HouseholdArgument = Annotated[
    str, typer.Argument(metavar="HOUSEHOLD", help=_("Which household; see --list."))
]
ListOption = Annotated[bool, typer.Option("--list", help=_("List the households and make nothing."))]


def demo(
    household: HouseholdArgument = PLAIN,
    output: PdfOption = None,
    html: HtmlOption = None,
    part: PartOption = None,
    list_them: ListOption = False,
    on: OnOption = None,
    as_json: JsonOption = False,
) -> None:
    """Draft the packet of an invented household."""
    work = _list if list_them else lambda: _demo(household, output, html, part, on)
    deliver("demo", as_json, lambda _terminal: work())


def _list() -> Result:
    from firstpaper.cli.files.households import about, households

    known = {name: about(path) for name, path in households().items()}
    return Result(
        data={"households": known},
        text="\n".join(f"{name}\n  {words}" for name, words in known.items()),
    )


def _demo(name: str, output: Path | None, html: Path | None, part: Wanted | None, on: str | None) -> Result:
    from firstpaper.cli.files.facts import FactsFile, FactsRefused
    from firstpaper.cli.files.households import NoSuchHousehold, households
    from firstpaper.cli.files.packet import draft, wanted_now
    from firstpaper.counting import spell_date

    known = households()
    if name not in known:
        raise NoSuchHousehold(name=name)
    day = filing_day(on)
    try:
        case = FactsFile(known[name]).onto(None, day)
    except FactsRefused as refused:  # they are ours and whole, so only the day can be wrong
        raise HouseholdIsLater(name=name, day=spell_date(day)) from refused
    return draft(case, day, Files(output or Path(f"{name}.pdf"), html), part or wanted_now(case))
