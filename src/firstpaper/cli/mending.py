"""Going back: to the last whole copy of a damaged file, or to how things stood before the last answer."""

from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.casefile import OpenCase
    from firstpaper.casefile.errors import CopyKept
    from firstpaper.facts import Case


def goes_on_from_copy(terminal: Terminal, path: Path, kept: "CopyKept") -> bool:
    """Offer to put the last whole copy in place, and do it where the person says yes."""
    if not terminal.interactive:
        return False
    from firstpaper.casefile import bring_back

    terminal.say(kept.message)
    typed = terminal.read(_("Go on from that copy now? Type yes, or just Enter to change nothing: "))
    terminal.line()
    if typed.strip().casefold() not in ("yes", _("yes")):
        return False
    bring_back(path)
    return True


def take_back(opened: "OpenCase") -> tuple[tuple[str, ...], str]:
    """Undo the last saved change: the keys of the answers that changed, and what to say about it."""
    before = opened.file
    after = opened.undo()
    if after is None:
        return (), _("There is nothing left to take back. Only the last few answers are kept for that.")
    keys = tuple(_changed(before.case, after.case))
    if not keys:
        return (), _("Taken back: the question you skipped is open again.")
    lines = [_("Taken back. These answers are again what they were before:"), *_questions(before.case, keys)]
    return keys, "\n".join(lines)


def _changed(before: "Case", after: "Case") -> Iterator[str]:
    from firstpaper.intake import asked

    keys = dict.fromkeys(one.key for case in (before, after) for one in asked(case))
    return (key for key in keys if before.fact(key) != after.fact(key))


def _questions(case: "Case", keys: tuple[str, ...]) -> Iterator[str]:
    """The questions alone: an answer that somebody took back is not shown once more."""
    from firstpaper.intake import asking

    return (f"  - {one.ask}" for key in keys if (one := asking(key, case)))
