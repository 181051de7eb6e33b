"""One writer at a time: a small file beside the case file says who has it open.

The system's own file lock on that file decides, where it has one: of many processes exactly one gets it,
and it is let go with the process, however that ends. So a lock file left behind by a crash is told from a
living one without guessing. What is written in the file names the process and the computer: for the message,
for writers on other computers that share the folder, and for systems without such a lock. It says nothing
about the people in the case.

Somebody else may be able to write to the same folder, and may have put a link or a pipe there under the name
of the lock file. So only a plain file of our own is written to, and only one that is empty or a lock. (A lock
library was tried for this, filelock 4.3. It follows no link, but it takes a pipe, a text and a file with a
second name for its lock, and it cannot say who has it or whether the last one crashed.)
"""

import errno
import json
import os
import platform
import time
from contextlib import suppress
from pathlib import Path
from types import TracebackType
from typing import NamedTuple, Self

from firstpaper.casefile.errors import CaseFileInUse, FolderMissing, LockLost, StrangeLock
from firstpaper.casefile.folder import Folder, StrangeFile
from firstpaper.casefile.saving import explained, real

try:
    import fcntl
except ImportError:  # Windows
    fcntl = None  # type: ignore[assignment]

_BEING_WRITTEN = 0.05
"""Seconds that another process may need to write its name into a new lock file."""

_HELD = frozenset({errno.EWOULDBLOCK, errno.EAGAIN})
"""What the system says of a lock that somebody else has. Anything else is said of locks as such."""

_BEGINS, _LONGEST = b'{"process"', 1000


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

    Raises CaseFileInUse where another writer has it, StrangeLock where something else has its name. A lock
    left by a crash is taken over, and `recovered` says so. `alone` says that the folder knows no locks, so
    that the lock file is all that keeps two writers apart.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self.file = _lock_file(path)
        self.recovered = self.alone = False
        self._holder = Holder.here()
        self._handle: int | None = None

    def __enter__(self) -> Self:
        while not self._taken():
            pass  # the lock file went away between opening and locking it
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        if self.ours:
            self._remove()
        self._close()

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

    def _taken(self) -> bool:
        """Whether the lock file is ours now; CaseFileInUse where another living writer has it."""
        created = self._open()
        try:
            locked = _locked(self._handle)
            self.alone = locked is None and fcntl is not None
            if locked is False:
                raise self._in_use(_read(self.file) or _read_again(self.file) or self._holder)
            if locked and not _is_the_same(self._handle, self.file):
                self._close()
                return False
            if not created:
                self._refuse_a_living_writer(certainly_gone_here=bool(locked))
            self._write()
        except BaseException:
            self._close()
            raise
        if not locked:
            self._close()
        return True

    def _open(self) -> bool:
        """Open the lock file; whether it was not there before."""
        try:
            with Folder(self.file.parent) as folder:
                self._handle, created = folder.open_or_create(self.file.name)
        except FileNotFoundError as error:
            if self.file.parent.is_dir():  # the writer before removed it just now
                return self._open()
            raise explained(error, self.path) from error
        except StrangeFile as error:
            raise StrangeLock(path=self.path, lock=self.file) from error
        except OSError as error:
            raise explained(error, self.path) from error
        if not created and not _is_a_lock(self._handle):
            self._close()
            raise StrangeLock(path=self.path, lock=self.file)
        return created

    def _refuse_a_living_writer(self, *, certainly_gone_here: bool) -> None:
        """Take over what a crash left; a writer on another computer is never taken for dead."""
        holder = _read(self.file)
        if holder is None and not certainly_gone_here:
            holder = _read_again(self.file)
        here = holder is not None and holder.host == self._holder.host
        if holder is not None and not (here and certainly_gone_here) and not holder.gone:
            raise self._in_use(holder)
        self.recovered = True

    def _write(self) -> None:
        assert self._handle is not None
        try:
            os.ftruncate(self._handle, 0)
            with os.fdopen(os.dup(self._handle), "w", encoding="utf-8") as file:
                json.dump(self._holder._asdict(), file)
        except OSError as error:
            self._remove()
            raise explained(error, self.path) from error

    def _remove(self) -> None:
        with suppress(OSError), Folder(self.file.parent) as folder:
            folder.remove(self.file.name)

    def _close(self) -> None:
        if self._handle is not None:
            os.close(self._handle)
            self._handle = None

    def _in_use(self, holder: Holder) -> CaseFileInUse:
        return CaseFileInUse(path=self.path, process=holder.process, host=holder.host, lock=self.file)


def _lock_file(path: Path) -> Path:
    target = real(path)
    return target.with_name(target.name + ".lock")


def _locked(handle: int | None) -> bool | None:
    """Whether the system's lock on an open file is ours now; None where the system has no such lock."""
    if fcntl is None or handle is None:
        return None
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        return False if error.errno in _HELD else None
    return True


def _is_the_same(handle: int | None, file: Path) -> bool:
    """Whether an open file still has its name: the writer before may have removed it meanwhile."""
    with suppress(FileNotFoundError):
        return handle is not None and os.path.samestat(os.fstat(handle), file.lstat())
    return False


def _is_a_lock(handle: int) -> bool:
    """Whether an open file is empty or holds what a lock file of ours does, also one cut short."""
    held = os.read(handle, _LONGEST + 1)
    os.lseek(handle, 0, os.SEEK_SET)
    return len(held) <= _LONGEST and (held.startswith(_BEGINS) or _BEGINS.startswith(held))


def _read(file: Path) -> Holder | None:
    """Who is written in a lock file; None where there is none, or none that can be read."""
    try:
        with Folder(file.parent) as folder:
            return Holder(**json.loads(folder.read(file.name, _LONGEST)))
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
