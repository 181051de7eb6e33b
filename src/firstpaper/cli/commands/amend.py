"""`firstpaper amend`: begin an amended petition from the case file of the petition it replaces."""

from dataclasses import replace
from pathlib import Path
from typing import Annotated

import typer

from firstpaper.cli.clock import today
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases, SealOption, lock_if_wanted
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.options import JsonOption
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

EarlierArgument = Annotated[
    Path,
    typer.Argument(metavar="EARLIER", help=_("The case file of the earlier petition."), show_default=False),
]
NewArgument = Annotated[
    Path, typer.Argument(metavar="NEW", help=_("The new case file to begin."), show_default=False)
]


class AlreadyThere(UserError):
    """There is a file at {path} already, so nothing was begun.

    An amended petition starts in a case file of its own, so that the answers of the earlier one stay. Give a
    name that is not taken.
    """

    code = "already_there"


def amend(
    earlier: EarlierArgument,
    new: NewArgument,
    seal: SealOption = False,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Begin an amended petition: every answer of the earlier one, in a new case file.

    Where the earlier file is locked, the new one is locked with the same passphrase.
    """

    def work(terminal: Terminal) -> Result:
        return _amend(earlier, new, seal, Passphrases(terminal, passphrase_from))

    deliver("amend", as_json, work)


def _amend(earlier: Path, new: Path, seal: bool, passphrases: Passphrases) -> Result:
    from firstpaper.cli.talk.review import still_open
    from firstpaper.facts.amending import begun_from, replaced_by

    if new.exists():
        raise AlreadyThere(path=new)
    with passphrases.opening(earlier) as first:
        case, same_seal = begun_from(first.case, earlier.name), first.seal
        with passphrases.opening(new, begin=True) as opened:
            if same_seal:
                opened.seal_with(same_seal)
            lock_if_wanted(opened, passphrases, seal)
            opened.keep(replace(opened.file.with_case(case), language=first.file.language))
        first.keep(first.file.with_case(replaced_by(first.case, new.name)))
    lines = [
        _("It is begun in {path}. All your answers are there.").format(path=new),
        *([_("It is locked with the same passphrase.")] if same_seal else []),
    ]
    what_to_type = [
        to_type(_("To change what is new, type:"), "change", new),
        to_type(_("Then, to see what is new, type:"), "packet", new, "--amends", earlier),
        next_line(case, new, today()),
    ]
    return Result(
        data={"open_questions": [one.key for one in still_open(case)]},
        text="\n\n".join([" ".join(lines), *what_to_type]),
    )
