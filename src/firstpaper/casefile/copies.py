"""The last few saves of a case file, each a whole case file of its own, in a folder beside it.

Every save is also kept here, sealed or plain as the case file is. So a damaged file can be mended without
losing an answer, and the last answers can be taken back. The folder has the name of the case file with
".copies" after it; it is not hidden, so that a person who moves or deletes the case file sees it too.
A copy that cannot be written spoils nothing: the case file itself is already safe by then.
"""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Self

from firstpaper.casefile.folder import Folder
from firstpaper.casefile.reading import LARGEST
from firstpaper.casefile.saving import nameless, real

KEPT = 10
ENDING = ".copies"
UNFINISHED = "unfinished"
"""A copy that is being written, so that a killed process leaves no half one among the copies."""

_DIGITS, _MOST_DIGITS = 6, 12
_REST = ".case-"


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
        """The copies there are. A link, or a folder of another account, holds none."""
        with suppress(OSError), self._held() as folder:
            names = sorted(filter(_is_number, folder.names()), key=int, reverse=True)
            return [self.folder / name for name in names if not (self.folder / name).is_symlink()]
        return []

    def read(self, copy: Path) -> bytes:
        """The bytes of one copy. Raises OSError for what is no plain file of our own."""
        with self._held() as folder:
            return folder.read(copy.name, LARGEST + 1)

    def add(self, data: bytes) -> None:
        """Keep one more save, and let go of the oldest."""
        with suppress(OSError):
            self.folder.mkdir(mode=0o700, exist_ok=True)
            kept = self.newest_first()
            number = int(kept[0].name) + 1 if kept else 1
            with self._held() as folder:
                with suppress(FileNotFoundError):
                    folder.remove(UNFINISHED)
                folder.create(UNFINISHED, data)
                folder.replace(f"{number:0{_DIGITS}}", by=UNFINISHED)
            self.drop(kept[KEPT - 1 :])

    def include(self, path: Path) -> None:
        """Keep the file as it is now, where the newest copy does not hold it, so that it can come back."""
        with suppress(OSError):
            data = path.read_bytes()
            kept = self.newest_first()
            if not kept or self._holds(kept[0]) != data:
                self.add(data)

    def clear(self) -> list[Path]:
        """Remove every copy and the folder; what else somebody put there stays. The copies that stay."""
        self.sweep()
        self.wipe(self.newest_first())
        with suppress(OSError):
            self.folder.rmdir()
        return self.newest_first()

    def sweep(self) -> None:
        """Wipe what a killed save or a killed removal left among the copies."""
        with suppress(OSError), self._held() as folder:
            for name in folder.names():
                if name == UNFINISHED or name.startswith(_REST):
                    with suppress(OSError):
                        folder.wipe(name, nameless(name))

    def wipe(self, copies: Iterable[Path]) -> None:
        """Remove some copies, their bytes overwritten first."""
        with suppress(OSError), self._held() as folder:
            for copy in copies:
                with suppress(OSError):
                    folder.wipe(copy.name, nameless(copy.name))

    def drop(self, copies: Iterable[Path]) -> None:
        """Let go of some copies."""
        with suppress(OSError), self._held() as folder:
            for copy in copies:
                with suppress(OSError):
                    folder.remove(copy.name)

    def _holds(self, copy: Path) -> bytes | None:
        with suppress(OSError):
            return self.read(copy)
        return None

    @contextmanager
    def _held(self) -> Iterator[Folder]:
        with Folder(self.folder, own=True) as folder:
            yield folder


def _is_number(name: str) -> bool:
    return _DIGITS <= len(name) <= _MOST_DIGITS and name.isascii() and name.isdecimal()
