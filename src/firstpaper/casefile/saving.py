"""Writing a file so that a crash, a full disk or a pulled stick leaves the old one whole.

The new bytes go to a file without a name, where the system knows such, and reach the disk before that file
gets a temporary name and takes the place of the old one, in one step. Files are for their owner alone.
"""

import errno
import os
import zlib
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from functools import partial
from pathlib import Path

from firstpaper.casefile.errors import DiskFull, FolderMissing, FolderReadOnly, SaveFailed
from firstpaper.casefile.folder import Folder
from firstpaper.errors import UserError

ASIDE, MINE = ".damaged", ".yours"
"""Ends the name of a damaged file kept aside, and of what was not saved over another program's change."""

_NO_ROOM = frozenset({errno.ENOSPC, errno.EDQUOT, errno.EFBIG})
_NOT_ALLOWED = frozenset({errno.EACCES, errno.EPERM, errno.EROFS})
_GONE = frozenset({errno.ENOENT, errno.ENOTDIR, errno.ESTALE})


def save(path: Path, data: bytes) -> None:
    """Replace the file at `path` by `data`, or leave it exactly as it was and raise a UserError."""
    with replacement(path, data) as take_its_place:
        take_its_place()


@contextmanager
def replacement(path: Path, data: bytes) -> Iterator[Callable[[], None]]:
    """New content for the file at `path`, on the disk already. What is yielded puts it in its place.

    Where the block ends before, nothing of it stays, and the file is as it was.
    """
    target = real(path)
    temporary = nameless(target.name)
    try:
        with Folder(target.parent) as folder, folder.create_unnamed(temporary, data) as give_name:
            yield partial(_take_the_place, folder, target.name, temporary, give_name)
    except OSError as error:
        raise explained(error, path) from error


def sweep(path: Path) -> None:
    """Wipe what a killed save or a killed removal left behind. Files of other cases are not touched."""
    with suppress(OSError, UserError), Folder(real(path).parent) as folder:
        for left in rests(path):
            with suppress(OSError):
                folder.wipe(left.name, left.name)


def rests(path: Path) -> list[Path]:
    """What a killed save of this file, or a killed removal of what belongs to it, left behind."""
    target = real(path)
    starts = tuple(_prefix(target.name + ending) for ending in ("", ASIDE, MINE))
    with suppress(OSError):
        return sorted(one for one in target.parent.iterdir() if one.name.startswith(starts))
    return []


def real(path: Path) -> Path:
    """The file itself behind links and short names. Raises FolderMissing where the folder has gone."""
    try:
        return Path(os.path.realpath(path))
    except OSError as error:
        raise FolderMissing(folder=path.parent) from error


def nameless(name: str) -> str:
    """A fresh temporary name for a file: known again as its rest, and without the name in it."""
    return _prefix(name) + os.urandom(8).hex()


def _prefix(name: str) -> str:
    return f".case-{zlib.crc32(os.fsencode(name)):08x}-"


def _take_the_place(folder: Folder, name: str, temporary: str, give_name: Callable[[], None]) -> None:
    give_name()
    folder.replace(name, by=temporary)
    folder.to_disk()


def explained(error: OSError, path: Path) -> UserError:
    """What the system said while the file at `path` was being saved, in words for a person."""
    folder = real(path).parent
    if error.errno in _NO_ROOM:
        return DiskFull(path=path)
    if error.errno in _NOT_ALLOWED:
        return FolderReadOnly(folder=folder)
    if error.errno in _GONE:
        return FolderMissing(folder=folder)
    return SaveFailed(path=path, reason=error.strerror or str(error) or type(error).__name__)
