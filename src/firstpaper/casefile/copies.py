"""The last few saves of a case file, each a whole case file of its own, in a folder beside it.

Every save is also kept here, sealed or plain as the case file is. So a damaged file can be mended without
losing an answer, and the last answers can be taken back. The folder has the name of the case file with
".copies" after it; it is not hidden, so that a person who moves or deletes the case file sees it too.
A copy that cannot be written spoils nothing: the case file itself is already safe by then.
"""

import os
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path
from typing import Self

from firstpaper.casefile.erasing import wipe
from firstpaper.casefile.saving import OWNER_ONLY, real

KEPT = 10
ENDING = ".copies"
UNFINISHED = "unfinished"
"""A copy that is being written, so that a killed process leaves no half one among the copies."""

_DIGITS = 6


class Copies:
    """The copies of the case file at `path`."""

    def __init__(self, path: Path) -> None:
        target = real(path)
        self.folder = target.with_name(target.name + ENDING)

    @classmethod
    def in_folder(cls, folder: Path) -> Self:
        """The copies in a folder that is named as one."""
        return cls(folder.with_name(folder.name.removesuffix(ENDING)))

    def newest_first(self) -> list[Path]:
        """The copies there are."""
        with suppress(OSError):
            if self.folder.is_symlink():
                return []
            names = (one for one in self.folder.iterdir() if _is_number(one.name) and not one.is_symlink())
            return sorted(names, reverse=True)
        return []

    def add(self, data: bytes) -> None:
        """Keep one more save, and let go of the oldest."""
        with suppress(OSError):
            self.folder.mkdir(mode=0o700, exist_ok=True)
            if self.folder.is_symlink():
                return
            kept = self.newest_first()
            number = int(kept[0].name) + 1 if kept else 1
            unfinished = self.folder / UNFINISHED
            unfinished.unlink(missing_ok=True)
            _write_new(unfinished, data)
            unfinished.replace(self.folder / f"{number:0{_DIGITS}}")
            drop(kept[KEPT - 1 :])

    def include(self, path: Path) -> None:
        """Keep the file as it is now, where the newest copy does not hold it, so that it can come back."""
        with suppress(OSError):
            data = path.read_bytes()
            kept = self.newest_first()
            if not kept or kept[0].read_bytes() != data:
                self.add(data)

    def clear(self) -> None:
        """Remove every copy and the folder; what else somebody put there stays."""
        for copy in (*self.newest_first(), self.folder / UNFINISHED):
            with suppress(OSError):
                wipe(copy)
        with suppress(OSError):
            self.folder.rmdir()


def drop(copies: Iterable[Path]) -> None:
    """Let go of some copies."""
    for copy in copies:
        with suppress(OSError):
            copy.unlink(missing_ok=True)


def _is_number(name: str) -> bool:
    return len(name) == _DIGITS and name.isascii() and name.isdecimal()


def _write_new(path: Path, data: bytes) -> None:
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, OWNER_ONLY)
    with os.fdopen(handle, "wb") as file:
        file.write(data)
