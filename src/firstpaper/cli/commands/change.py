"""`firstpaper change`: give one answer again, or all answers of a topic."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.commands.ask import sit
from firstpaper.cli.options import CaseArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case

WhatArgument = Annotated[
    str,
    typer.Argument(
        metavar="ANSWER",
        help=_("The name of an answer, such as petitioner.phone, or of a topic, such as court."),
        show_default=False,
    ),
]


class NothingToChange(UserError):
    """There is no question or topic called {what} in this case.

    Close to it: {close}. To see your answers and pick one from a list, type: firstpaper ask {path} and
    then: change
    """

    code = "nothing_to_change"


def change(
    case: CaseArgument,
    what: WhatArgument,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Change one answer, or go through a topic again."""
    deliver("change", as_json, lambda terminal: _change(terminal, case, what, on, passphrase_from))


def _change(terminal: Terminal, path: Path, what: str, on: str | None, passphrase_from: str | None) -> Result:
    from firstpaper.casefile import OpenCase
    from firstpaper.cli.interview import Interview

    day = filing_day(on)
    with OpenCase(path, passphrases=Passphrases(terminal, passphrase_from).tries(path)) as opened:
        keys = _keys(opened.case, what.strip().lower())
        if not keys:
            raise NothingToChange(what=what, close=_close(opened.case, what), path=path)
        interview = Interview(terminal, opened, day)
        return sit(terminal, opened, lambda: interview.run_through(keys))


def _keys(case: "Case", what: str) -> list[str]:
    """The questions meant by a key or by the name of a topic, as far as they apply now."""
    from firstpaper.intake import asked

    return [one.key for one in asked(case) if what in (one.key, one.topic.name)]


def _close(case: "Case", what: str) -> str:
    from firstpaper.cli.suggesting import closest
    from firstpaper.intake import asked

    names = [name for one in asked(case) for name in (one.key, one.topic.name)]
    return closest(what, names)
