"""One writer at a time: a small file beside the case file says who has it open.

The lock file is made in one step that only one process can win. It names the process and the moment
that process started, so a lock left behind by a crash is told apart from a living one, even where
the process number has been given out again. It says nothing about the people in the case.
"""

import json
import os
import platform
import time
from contextlib import suppress
from pathlib import Path
from types import TracebackType
from typing import NamedTuple, Self

from firstpaper.casefile.errors import CaseFileInUse, FolderMissing, LockLost
from firstpaper.casefile.saving import OWNER_ONLY, explained, real

_BEING_WRITTEN = 0.05
"""Seconds that another process may need to write its name into a new lock file."""


class Holder(NamedTuple):
    """Who holds a lock: the process, the moment it started where the system tells, the computer."""

    process: int
    started: str
    host: str

    @classmethod
    def here(cls) -> Self:
        """This process."""
        process = os.getpid()
        return cls(process, _start_of(process), platform.node())

    @property
    def gone(self) -> bool:
        """Whether that process certainly runs no more. A process of another computer is never "gone"."""
        if self.host != platform.node():
            return False
        return not _alive(self.process) or _start_of(self.process) != self.started


class Lock:
    """The lock of one case file, held inside a `with` block.

    Raises CaseFileInUse where another writer has it. A lock left by a crash is taken over, and
    `recovered` says so.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self.file = _lock_file(path)
        self.recovered = False
        self._holder = Holder.here()

    def __enter__(self) -> Self:
        if not self._create():
            holder = _read(self.file) or _read_again(self.file)
            if holder is not None and not holder.gone:
                raise self._in_use(holder)
            self.file.unlink(missing_ok=True)
            self.recovered = True
            if not self._create():
                raise self._in_use(_read(self.file) or self._holder)
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        if self.ours:
            with suppress(OSError):
                self.file.unlink(missing_ok=True)

    @property
    def ours(self) -> bool:
        """Whether this process still holds the lock."""
        return _read(self.file) == self._holder

    def check(self) -> None:
        """Raise LockLost where another process has taken the lock over. Called before every save."""
        if not self.file.parent.is_dir():
            raise FolderMissing(folder=self.file.parent)
        if not self.ours:
            raise LockLost(path=self.path)

    def _create(self) -> bool:
        try:
            handle = os.open(self.file, os.O_WRONLY | os.O_CREAT | os.O_EXCL, OWNER_ONLY)
        except FileExistsError:
            return False
        except OSError as error:
            raise explained(error, self.path) from error
        try:
            with os.fdopen(handle, "w", encoding="utf-8") as file:
                json.dump(self._holder._asdict(), file)
        except OSError as error:
            self.file.unlink(missing_ok=True)
            raise explained(error, self.path) from error
        return True

    def _in_use(self, holder: Holder) -> CaseFileInUse:
        return CaseFileInUse(path=self.path, process=holder.process, host=holder.host, lock=self.file)


def _lock_file(path: Path) -> Path:
    target = real(path)
    return target.with_name(target.name + ".lock")


def _read(file: Path) -> Holder | None:
    """Who is written in a lock file; None where there is none, or none that can be read."""
    try:
        return Holder(**json.loads(file.read_text(encoding="utf-8")))
    except (OSError, ValueError, TypeError):
        return None


def _read_again(file: Path) -> Holder | None:
    """A lock file may be empty for the moment between its making and its writing."""
    time.sleep(_BEING_WRITTEN)
    return _read(file)


def _alive(process: int) -> bool:
    """Whether a process runs. Where asking is not possible without harm, it is taken to run."""
    if os.name == "nt":
        return True
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except OSError:
        return True
    return True


def _start_of(process: int) -> str:
    """When a process started, in the system's own count; empty where the system does not tell."""
    try:
        stat = Path(f"/proc/{process}/stat").read_text(encoding="utf-8")
    except OSError:
        return ""
    return stat.rpartition(")")[2].split()[19]
