"""What lies open on the disk beside a locked case file: named, with the offer to erase it."""

from collections.abc import Sequence
from pathlib import Path

from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _, _n


def left_open(path: Path) -> list[Path]:
    """What belongs to a locked case file and can be read without its passphrase, as it lies there now."""
    from firstpaper.casefile.belongings import belongings
    from firstpaper.cli.files.output import drafts_beside

    found = [one for one in belongings(path) if not one.is_dir() and not is_locked(one)]
    return [*found, *_open_copies(path), *(one for one in drafts_beside(path) if one not in found)]


def offer_to_erase(terminal: Terminal, found: Sequence[Path]) -> list[Path]:
    """Name these files, and remove them where the person says so. Those that stay."""
    if not found or not terminal.interactive:
        return list(found)
    from firstpaper.casefile.belongings import remove

    terminal.say(not_locked(found))
    typed = terminal.read(_("Type erase to remove them now, or just Enter to keep them: "))
    terminal.line()
    if typed.strip().casefold() not in ("erase", _("erase")):
        return list(found)
    return [one for one in found if not remove(one)]


def not_locked(found: Sequence[Path]) -> str:
    """The files by name, and that anybody can read them."""
    names = "\n".join(f"  - {one}" for one in found)
    return _("These are not locked. Whoever finds them can read them:") + "\n" + names


def tidied_words(count: int) -> str:
    """What to say of copies that lay open, or with another lock, beside a locked file."""
    return _n(
        "{count} copy beside it did not open with its passphrase. It was wiped.",
        "{count} copies beside it did not open with its passphrase. They were wiped.",
        count,
    ).format(count=count)


def is_copy(path: Path) -> bool:
    """Whether this is one of the copies of the last saves."""
    from firstpaper.casefile.copies import ENDING

    return path.parent.name.endswith(ENDING)


def _open_copies(path: Path) -> list[Path]:
    from firstpaper.casefile.copies import Copies

    return [copy for copy in Copies(path).newest_first() if not is_locked(copy)]


def is_locked(path: Path) -> bool:
    """Whether a file opens only with a passphrase."""
    from firstpaper.casefile.reading import SEALED

    try:
        with path.open("rb") as file:
            return file.read(len(SEALED)) == SEALED
    except OSError:
        return False
