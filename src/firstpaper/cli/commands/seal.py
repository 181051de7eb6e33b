"""`firstpaper seal`: lock the case file with a passphrase, or give it another one."""

from pathlib import Path

from firstpaper.cli.options import HOME, HomeArgument, JsonOption
from firstpaper.cli.passphrases import PassphraseOption, Passphrases, new_seal
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _


def seal(
    case: HomeArgument = HOME, passphrase_from: PassphraseOption = None, as_json: JsonOption = False
) -> None:
    """Lock the case file with a passphrase."""
    deliver("seal", as_json, lambda terminal: _seal(terminal, case, Passphrases(terminal, passphrase_from)))


def _seal(terminal: Terminal, path: Path, passphrases: Passphrases) -> Result:
    from firstpaper.casefile import OpenCase

    with OpenCase(path, passphrases=passphrases.tries(path)) as opened:
        if opened.sealed:
            terminal.say(_("This file is locked already. You can give it another passphrase."))
        chosen = passphrases.choose(opened.case)
        if chosen:
            opened.seal_with(new_seal(chosen))
        sealed = opened.sealed
    text = _said(path) if chosen else _("Nothing was changed.")
    return Result(data={"sealed": sealed}, text=text)


def _said(path: Path) -> str:
    from firstpaper.cli.output import drafts_beside

    locked = _("{path} is locked now, and so are its copies. Every command will ask for the passphrase.")
    lines = [locked.format(path=path)]
    if drafts := drafts_beside(path):
        names = "\n".join(f"  - {one}" for one in drafts)
        lines.append(_("These papers were drafted before, and they are not locked:") + "\n" + names)
    lines.append(
        _(
            "What was saved before in the open may still be found on the disk by somebody who knows how. No "
            "program can promise to wipe a modern disk."
        )
    )
    return "\n\n".join(lines)
