"""Bytes of a file that may be anything: bounded, and looked at before they are taken for a case file."""

from pathlib import Path

from firstpaper.casefile.errors import CaseFileMissing, CaseFileUnreadable, NotACaseFile
from firstpaper.casefile.sealing import is_sealed

MARK = "firstpaper"
LARGEST = 10_000_000
"""Bytes. A household's answers take a few thousand; more than this is some other file."""

_OPENING = 200
"""Bytes in which a case file has said what it is."""


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
