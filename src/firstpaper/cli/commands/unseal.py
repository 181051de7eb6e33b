"""`firstpaper unseal`: take the passphrase off the case file."""

from pathlib import Path

from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.options import HOME, HomeArgument, JsonOption
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _


def unseal(
    case: HomeArgument = HOME, passphrase_from: PassphraseOption = None, as_json: JsonOption = False
) -> None:
    """Take the passphrase off the case file."""
    deliver("unseal", as_json, lambda terminal: _unseal(terminal, case, passphrase_from))


def _unseal(terminal: Terminal, path: Path, passphrase_from: str | None) -> Result:

    with Passphrases(terminal, passphrase_from).opening(path) as opened:
        if not opened.sealed:
            return Result(
                data={"sealed": False}, text=_("This file has no passphrase, so nothing was changed.")
            )
        opened.seal_with(None)
    return Result(
        data={"sealed": False},
        text=_("{path} is open now. Whoever can use this account can read it.").format(path=path),
    )
