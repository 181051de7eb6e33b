"""Removing a file so that its content is gone too, as far as a program can see to that.

The bytes are overwritten once, the overwriting reaches the disk, the name is replaced by a random one, and
then the file is removed. On a plain magnetic disk that is enough. Flash storage, journals, snapshots and
backups may still hold the old bytes, and nothing a program does can promise otherwise.
"""

import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import BinaryIO

_AT_A_TIME = 1 << 20


def wipe(path: Path) -> None:
    """Overwrite and remove a file; a link is removed and what it leads to is left alone.

    Raises OSError where the file cannot be removed. A file that cannot be overwritten is still removed.
    """
    if not path.is_symlink():
        with suppress(OSError), path.open("r+b") as file:
            if os.fstat(file.fileno()).st_nlink == 1:
                _overwrite(file)
    nameless = path.with_name(f".case-{os.urandom(8).hex()}")
    with suppress(OSError):
        path = path.rename(nameless)
    path.unlink()


@contextmanager
def wiping_what_is_replaced(path: Path) -> Iterator[None]:
    """Overwrite the bytes of the file at `path` after another file took its place inside the block.

    Nothing is overwritten where the block fails, or where the old bytes still have a name somewhere.
    """
    try:
        old = path.open("r+b") if os.name == "posix" else None
    except OSError:
        old = None
    try:
        yield
        if old and os.fstat(old.fileno()).st_nlink == 0:
            with suppress(OSError):
                _overwrite(old)
    finally:
        if old:
            old.close()


def _overwrite(file: BinaryIO) -> None:
    left = os.fstat(file.fileno()).st_size
    file.seek(0)
    while left > 0:
        left -= file.write(bytes(min(left, _AT_A_TIME)))
    file.flush()
    os.fsync(file.fileno())
