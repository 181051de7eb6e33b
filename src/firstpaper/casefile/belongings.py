"""Everything on the disk that belongs to one case file, to show it before removing it."""

import json
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path

from firstpaper.casefile.copies import Copies
from firstpaper.casefile.erasing import wipe
from firstpaper.casefile.errors import CaseFileMissing, NotACaseFile
from firstpaper.casefile.folder import Folder
from firstpaper.casefile.reading import read_case_file
from firstpaper.casefile.saving import ASIDE, MINE, real, rests, save

ERASING = ".erasing"
"""Ends the name of the note that a removal has begun, and of what. It is the last to go."""
_LONGEST_NOTE, _MOST_KEPT = 100_000, 50


def belongings(path: Path) -> list[Path]:
    """The case file at `path`, the folder of its copies, what was kept aside, rests of killed saves.

    No passphrase is needed. Raises NotACaseFile where a file of another kind has that name.
    """
    copies = Copies(path)
    beside = [
        *([copies.folder] if copies.newest_first() else []),
        *(one for one in (set_aside(path), *kept_from_others(path)) if _is_file(one)),
        *rests(path),
    ]
    if not path.is_symlink():
        beside = [path.with_name(one.name) for one in beside]
    return [*_itself(path, bool(beside)), *beside]


def set_aside(path: Path, ending: str = ASIDE) -> Path:
    """Where a damaged case file is kept when a copy takes its place, or another with that ending."""
    target = real(path)
    return target.with_name(target.name + ending)


def kept_from_others(path: Path) -> list[Path]:
    """Where an answer is kept that was not saved, because another program had changed the file."""
    return [set_aside(path, MINE + number) for number in ("", *(f"-{n}" for n in range(2, _MOST_KEPT)))]


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


def remove_all(path: Path, found: Iterable[Path]) -> list[Path]:
    """Remove all of this; what is left. A removal that is cut off is finished by the next command."""
    wanted = list(found)
    note = set_aside(path, ERASING)
    with suppress(Exception):  # a full disk must not keep anybody from erasing
        save(note, json.dumps([one.name for one in wanted if one.parent == path.parent]).encode())
    left = [one for one in wanted if not remove(one)]
    remove(note)
    return left


def finish_removing(path: Path) -> bool:
    """Finish a removal that was cut off; whether there was one. Only what is named after the case goes."""
    note = set_aside(path, ERASING)
    if not _is_file(note):
        return False
    with suppress(OSError, ValueError), Folder(note.parent) as folder:
        names = json.loads(folder.read(note.name, _LONGEST_NOTE))
        for name in names if isinstance(names, list) else []:
            if isinstance(name, str) and _is_named_after(name, path):
                remove(path.with_name(name))
    remove(note)
    return True


def _is_named_after(name: str, path: Path) -> bool:
    return "/" not in name and "\\" not in name and name.startswith((path.stem, ".case-"))


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
