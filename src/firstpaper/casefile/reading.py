"""Bytes of a file that may be anything: bounded, and looked at before they are taken for a case file."""

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
        if path.exists() and not path.is_file():
            raise NotACaseFile(path=path)
        with path.open("rb") as file:
            opening = file.read(_OPENING)
            data = opening + file.read(LARGEST) if _begins_as_ours(opening) else b""
    except FileNotFoundError as error:
        raise CaseFileMissing(path=path) from error
    except OSError as error:
        raise CaseFileUnreadable(path=path, reason=error.strerror or type(error).__name__) from error
    if not data or len(data) > LARGEST:
        raise NotACaseFile(path=path)
    return data


def _begins_as_ours(opening: bytes) -> bool:
    if is_sealed(opening):
        return True
    words = "".join(opening.decode(errors="replace").removeprefix("\ufeff").split())
    return words.startswith('{"' + MARK + '":')
