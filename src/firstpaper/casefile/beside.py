"""A case file held against the copies beside it, so that one put in its place by somebody is known.

A sealed file says inside the seal which case it is and which save. Nothing outside it can be trusted to
remember that, but the copies can: they open with the same key. Who puts the copies back too is not found
out.
"""

from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.casefile.copies import Copies
from firstpaper.casefile.document import CaseFile, Mark, mark_of
from firstpaper.casefile.reading import is_sealed
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.casefile.sealing import Seal


def held_against_its_copies(path: Path, file: CaseFile, seal: "Seal | None") -> tuple[str, Path] | None:
    """Why the file is not the one that its copies belong to, and the newest of them; None if all is well."""
    held = _held(path)
    locked = [copy for copy, data in held.items() if is_sealed(data)]
    if not locked or (seal is None and len(locked) < len(held)):
        return None
    if seal is None:
        return _("it is not locked, but its copies are. Somebody may have put another file there"), locked[0]
    ours = [copy for copy in locked if seal.opens(held[copy])]
    if not ours:
        return _("its copies have another passphrase. Somebody may have put another file there"), locked[0]
    return _told({copy: _mark(copy, held[copy], seal) for copy in ours}, file.mark)


def strays(path: Path, file: CaseFile, seal: "Seal") -> list[Path]:
    """The copies that are not of this file: open ones, ones with another key, ones of another case."""
    return [copy for copy, data in _held(path).items() if _is_stray(copy, data, file, seal)]


def _told(marks: dict[Path, Mark | None], mine: Mark | None) -> tuple[str, Path] | None:
    """What the copies with this key tell of the file. Only what both say of themselves counts."""
    told = {copy: mark for copy, mark in marks.items() if mark}
    if mine is None or not told:
        return None
    same = {copy: mark for copy, mark in told.items() if mark.word == mine.word}
    if not same:
        return _("its copies are of another case. Somebody may have put another file there"), next(iter(told))
    copy, newest = next(iter(same.items()))
    if newest.save > mine.save:
        return _("it is older than its copies. Somebody may have put an old file there"), copy
    return None


def _is_stray(copy: Path, data: bytes, file: CaseFile, seal: "Seal") -> bool:
    if not seal.opens(data):
        return True
    mark = _mark(copy, data, seal)
    return bool(mark and file.mark and mark.word != file.mark.word)


def _mark(copy: Path, data: bytes, seal: "Seal") -> Mark | None:
    with suppress(UserError):
        return mark_of(seal.open(copy, data))
    return None


def _held(path: Path) -> dict[Path, bytes]:
    """The copies with their bytes, newest first; what cannot be read holds none."""
    copies, held = Copies(path), {}
    for copy in copies.newest_first():
        held[copy] = b""
        with suppress(OSError):
            held[copy] = copies.read(copy)
    return held
