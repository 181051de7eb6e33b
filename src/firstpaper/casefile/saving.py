"""Writing a file so that a crash, a full disk or a pulled stick leaves the old one whole.

The new bytes go to a temporary file in the same folder and reach the disk before the temporary file
takes the place of the old one, in one step. Files are readable by their owner alone.
"""

import errno
import os
import zlib
from contextlib import suppress
from pathlib import Path

from firstpaper.casefile.errors import DiskFull, FolderMissing, FolderReadOnly, SaveFailed
from firstpaper.errors import UserError

OWNER_ONLY = 0o600

_NO_ROOM = frozenset({errno.ENOSPC, errno.EDQUOT, errno.EFBIG})
_NOT_ALLOWED = frozenset({errno.EACCES, errno.EPERM, errno.EROFS})
_GONE = frozenset({errno.ENOENT, errno.ENOTDIR, errno.ESTALE})


def save(path: Path, data: bytes) -> None:
    """Replace the file at `path` by `data`, or leave it exactly as it was and raise a UserError."""
    target = real(path)
    temporary = target.with_name(_prefix(target) + os.urandom(8).hex())
    try:
        _write_to_disk(temporary, data)
        temporary.replace(target)
        _sync_folder(target.parent)
    except OSError as error:
        raise explained(error, path) from error
    finally:
        with suppress(OSError):
            temporary.unlink(missing_ok=True)


def sweep(path: Path) -> None:
    """Remove what a killed save of this file left behind. Files of other cases are not touched."""
    with suppress(OSError):
        for left in rests(path):
            left.unlink(missing_ok=True)


def rests(path: Path) -> list[Path]:
    """What a killed save of this file left behind."""
    target = real(path)
    with suppress(OSError):
        return sorted(target.parent.glob(_prefix(target) + "*"))
    return []


def real(path: Path) -> Path:
    """The file itself behind links and short names. Raises FolderMissing where the folder has gone."""
    try:
        return Path(os.path.realpath(path))
    except OSError as error:
        raise FolderMissing(folder=path.parent) from error


def _prefix(target: Path) -> str:
    """Start of the temporary names of one file: short, and without the file's own name in it."""
    return f".case-{zlib.crc32(os.fsencode(target.name)):08x}-"


def _write_to_disk(path: Path, data: bytes) -> None:
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, OWNER_ONLY)
    with os.fdopen(handle, "wb") as file:
        file.write(data)
        file.flush()
        os.fsync(file.fileno())


def _sync_folder(folder: Path) -> None:
    """Make the new name itself reach the disk. Some systems have no way to ask for that."""
    with suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def explained(error: OSError, path: Path) -> UserError:
    """What the system said while the file at `path` was being saved, in words for a person."""
    folder = real(path).parent
    if error.errno in _NO_ROOM:
        return DiskFull(path=path)
    if error.errno in _NOT_ALLOWED:
        return FolderReadOnly(folder=folder)
    if error.errno in _GONE:
        return FolderMissing(folder=folder)
    return SaveFailed(path=path, reason=error.strerror or type(error).__name__)
