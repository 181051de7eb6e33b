"""The offer to lock the case file, made when a safety answer says that others may find it.

It is made before that very answer is saved, so nothing that could give a person away is on the disk in the
open. Nobody is made to take it.
"""

from pathlib import Path

from firstpaper.casefile import OpenCase
from firstpaper.cli.files.passphrases import Passphrases, new_seal
from firstpaper.cli.hints import to_type
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import SafeHere
from firstpaper.locale import _


def offer_to_seal(terminal: Terminal, opened: OpenCase, after: Case) -> None:
    """Offer a passphrase where `after`, about to be saved, tells of a danger that was not told before."""
    if opened.sealed or not terminal.interactive or not _risks(after) - _risks(opened.case):
        return
    terminal.say(
        _(
            "Somebody else could open your case file. You can lock it with a passphrase now, before this "
            "answer is saved."
        )
    )
    chosen = Passphrases(terminal, None).choose(after)
    if not chosen:
        terminal.say(
            to_type(_("All right, the file stays as it is. To lock it later, type:"), "seal", opened.path)
        )
        return
    try:
        opened.seal_with(new_seal(chosen))
    except UserError as error:
        terminal.say(error.message)
    else:
        terminal.say(_("The case file is locked from now on. You will be asked for the passphrase."))


def offer_to_lock_draft(terminal: Terminal, case: Case) -> bool:
    """Whether a draft is to be locked: offered where others may find it, and taken unless refused."""
    if not terminal.interactive or not risky(case):
        return False
    terminal.say(
        _(
            "The packet tells of danger, or others use this computer. Anybody who finds a PDF without a "
            "passphrase can open it."
        )
    )
    typed = terminal.read(_("Lock it with a passphrase? Type no, or just Enter for yes: "))
    terminal.line()
    from firstpaper.intake.reading.choices import is_no

    return not is_no(typed)


def after_printing(case: Case, path: Path, pdf: Path) -> list[str]:
    """How to get rid of a draft that others must not find."""
    if not risky(case):
        return []
    words = _(
        "Once it is printed, remove {path} and empty the trash. To remove the case file and all its drafts, "
        "type:"
    )
    return [to_type(words.format(path=pdf), "erase", path)]


def risky(case: Case) -> bool:
    """Whether the safety answers say that somebody else may find the case file, or must not."""
    return bool(_risks(case))


def _risks(case: Case) -> frozenset[str]:
    shared = case.safety.here is DONT_KNOW or known(case.safety.here) is SafeHere.SHARED_COMPUTER
    return frozenset([*(known(case.safety.dangers) or ()), *(["shared"] if shared else [])])
