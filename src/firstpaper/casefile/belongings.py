"""Everything on the disk that belongs to one case file, to show it before removing it."""

from pathlib import Path

from firstpaper.casefile.copies import Copies
from firstpaper.casefile.erasing import wipe
from firstpaper.casefile.errors import CaseFileMissing, NotACaseFile
from firstpaper.casefile.opened import set_aside
from firstpaper.casefile.reading import read_case_file
from firstpaper.casefile.saving import real, rests


def belongings(path: Path) -> list[Path]:
    """The case file at `path`, the folder of its copies, a damaged file kept aside, rests of killed saves.

    No passphrase is needed. Raises NotACaseFile where a file of another kind has that name.
    """
    copies, aside = Copies(path), set_aside(path)
    beside = [
        *([copies.folder] if copies.newest_first() else []),
        *([aside] if _is_file(aside) else []),
        *rests(path),
    ]
    if not path.is_symlink():
        beside = [path.with_name(one.name) for one in beside]
    return [*_itself(path, bool(beside)), *beside]


def remove(path: Path) -> bool:
    """Remove one belonging, its bytes overwritten first; whether it is gone."""
    try:
        if path.is_dir() and not path.is_symlink():
            Copies.in_folder(path).clear()
        else:
            wipe(path)
    except OSError:
        return False
    return not path.exists()


def _is_file(path: Path) -> bool:
    try:
        return path.is_file()
    except OSError:  # a name too long for this system
        return False


def _itself(path: Path, has_copies: bool) -> list[Path]:
    """The case file, and where it is a link, also what that leads to."""
    try:
        read_case_file(path)
    except CaseFileMissing:
        return []
    except NotACaseFile:
        if not has_copies or not path.is_file():  # a file that was damaged from its first byte has copies
            raise
    return [path, real(path)] if path.is_symlink() else [path]
