"""Removing a file so that its content is gone too, as far as a program can see to that.

The bytes are overwritten once, the overwriting reaches the disk, the name is replaced by a random one, and
then the file is removed. On a plain magnetic disk that is enough. Flash storage, journals, snapshots and
backups may still hold the old bytes, and nothing a program does can promise otherwise.
"""

import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from firstpaper.casefile.folder import Folder, overwrite
from firstpaper.casefile.saving import nameless


def wipe(path: Path) -> None:
    """Overwrite and remove a file; a link is removed and what it leads to is left alone.

    Raises OSError where the file cannot be removed. A file that cannot be overwritten is still removed.
    """
    with Folder(path.parent) as folder:
        folder.wipe(path.name, nameless(path.name))


@contextmanager
def wiping_what_is_replaced(path: Path) -> Iterator[None]:
    """Overwrite the bytes of the file at `path` after another file took its place inside the block.

    Nothing is overwritten where the block fails, or where the old bytes still have a name somewhere.
    """
    old = _opened(path) if os.name == "posix" else None
    try:
        yield
        if old is not None and os.fstat(old).st_nlink == 0:
            with suppress(OSError):
                overwrite(old)
    finally:
        if old is not None:
            os.close(old)


def _opened(path: Path) -> int | None:
    with suppress(OSError), Folder(path.parent) as folder:
        return folder.open_own(path.name, os.O_RDWR)
    return None
