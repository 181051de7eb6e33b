"""`firstpaper undo`: take back the last saved answer, or mend a damaged file from its last whole copy."""

from pathlib import Path

from firstpaper.cli.clock import today
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.options import HOME, HomeArgument, JsonOption
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _


def undo(
    case: HomeArgument = HOME, passphrase_from: PassphraseOption = None, as_json: JsonOption = False
) -> None:
    """Take back the last answer, or mend a damaged case file."""
    deliver("undo", as_json, lambda terminal: _undo(terminal, case, Passphrases(terminal, passphrase_from)))


def _undo(terminal: Terminal, path: Path, passphrases: Passphrases) -> Result:
    from firstpaper.casefile import bring_back
    from firstpaper.casefile.errors import CopyKept
    from firstpaper.cli.talk.going_back import take_back

    try:
        with passphrases.opening(path) as opened:
            keys, said = take_back(opened)
            return Result(
                data={"changed": list(keys), "mended": False},
                text=f"{said}\n\n{next_line(opened.case, path, today())}",
            )
    except CopyKept as kept:
        terminal.say(kept.message)
        bring_back(path)
    return Result(
        data={"changed": [], "mended": True},
        text=to_type(_("The copy is in place now. To go on from it, type:"), "ask", path),
    )
