"""`firstpaper seal`: lock the case file with a passphrase, or give it another one."""

from collections.abc import Sequence
from pathlib import Path

from firstpaper.cli.files.left_open import is_copy, left_open, not_locked, offer_to_erase, tidied_words
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases, new_seal
from firstpaper.cli.options import HOME, HomeArgument, JsonOption
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _


def seal(
    case: HomeArgument = HOME, passphrase_from: PassphraseOption = None, as_json: JsonOption = False
) -> None:
    """Lock the case file with a passphrase."""
    deliver("seal", as_json, lambda terminal: _seal(terminal, case, Passphrases(terminal, passphrase_from)))


def _seal(terminal: Terminal, path: Path, passphrases: Passphrases) -> Result:

    with passphrases.opening(path) as opened:
        if opened.sealed:
            terminal.say(_("This file is locked already. You can give it another passphrase."))
        if opened.tidied:
            terminal.say(tidied_words(opened.tidied))
        chosen = passphrases.choose(opened.case)
        if chosen:
            opened.seal_with(new_seal(chosen))
        sealed = opened.sealed
    found = left_open(path) if sealed else []
    stays = offer_to_erase(terminal, found)
    return Result(
        data={"sealed": sealed, "open": [str(one) for one in stays]},
        text=_said(path, stays, found) if chosen else _("Nothing was changed."),
    )


def _said(path: Path, stays: Sequence[Path], found: Sequence[Path]) -> str:
    lines = [_("{path} is locked now. Every command will ask for the passphrase.").format(path=path)]
    if not any(is_copy(one) for one in stays):
        lines[0] += " " + _("Its copies are locked too.")
    if stays:
        lines.append(not_locked(stays))
    elif found:
        lines.append(_("What lay open beside it was removed."))
    lines.append(
        _(
            "What was saved before in the open may still be found on the disk by somebody who knows how. No "
            "program can promise to wipe a modern disk."
        )
    )
    return "\n\n".join(lines)
