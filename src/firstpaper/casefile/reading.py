"""Bytes of a file that may be anything: bounded, and looked at before they are taken for a case file."""

import errno
import os
import stat
from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.casefile.errors import CaseFileMissing, CaseFileUnreadable, NotACaseFile

if TYPE_CHECKING:
    from firstpaper.casefile.sealing import Seal

MARK = "firstpaper"
SEALED = b'{"sealed":'
"""How a sealed file begins."""

LARGEST = 10_000_000
"""Bytes. A household's answers take a few thousand; more than this is some other file."""

_NO_FILE = frozenset({errno.ENXIO, errno.EOPNOTSUPP})
"""What the system says where a socket is opened."""

_OPENING = 200
"""Bytes in which a case file has said what it is."""


def content_of(path: Path, passphrases: Iterable[str] = ()) -> "tuple[bytes, Seal | None]":
    """The document in the case file at `path`, and its seal where it is a sealed one."""
    data = read_case_file(path)
    if not is_sealed(data):
        return data, None
    from firstpaper.casefile.sealing import unseal  # noqa: PLC0415  (only where a sealed file is met)

    return unseal(path, data, passphrases)


def is_sealed(data: bytes) -> bool:
    """Whether a file begins as a sealed one does."""
    return data.startswith(SEALED)


def read_case_file(path: Path) -> bytes:
    """The bytes of the case file at `path`, plain or sealed. Raises a UserError where it is none."""
    try:
        with open(path, "rb", opener=_without_waiting) as file:
            if not stat.S_ISREG(os.fstat(file.fileno()).st_mode):
                raise NotACaseFile(path=path)
            opening = file.read(_OPENING)
            data = opening + file.read(LARGEST) if _begins_as_ours(opening) else b""
    except FileNotFoundError as error:
        raise CaseFileMissing(path=path) from error
    except IsADirectoryError as error:
        raise NotACaseFile(path=path) from error
    except OSError as error:
        if error.errno in _NO_FILE:
            raise NotACaseFile(path=path) from error
        raise CaseFileUnreadable(path=path, reason=error.strerror or type(error).__name__) from error
    if not data or len(data) > LARGEST:
        raise NotACaseFile(path=path)
    return data


def _without_waiting(path: str, flags: int) -> int:
    """Open a file so that a pipe of that name cannot keep us waiting."""
    return os.open(path, flags | getattr(os, "O_NONBLOCK", 0))


def _begins_as_ours(opening: bytes) -> bool:
    if is_sealed(opening):
        return True
    words = "".join(opening.decode(errors="replace").removeprefix("\ufeff").split())
    return words.startswith('{"' + MARK + '":')
