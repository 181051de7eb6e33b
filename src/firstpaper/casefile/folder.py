"""A folder held open while we work in it, and names in it that lead nowhere else.

Somebody else may be able to write to the same folder. So every name is opened without following a link and
looked at after it is open: a plain file, with this one name, of this account. And the folder is held by its
handle, so that nobody can put another one in its place while we write, rename and remove.
"""

import errno
import os
import stat
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from functools import partial
from pathlib import Path
from types import TracebackType
from typing import Any, BinaryIO, Self

OWNER_ONLY = 0o600

_HANDLES = os.open in os.supports_dir_fd and hasattr(os, "O_DIRECTORY")
"""Whether this system lets a program work inside a folder that it holds open."""
_UNNAMED = getattr(os, "O_TMPFILE", 0)
_NO_LINK = getattr(os, "O_NOFOLLOW", 0)
_PLAIN = _NO_LINK | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0)
_AT_A_TIME = 1 << 20


class StrangeFile(OSError):
    """A name that is not a plain file of our own: a link, a pipe, a file with a second name or owner."""


class Folder:
    """The folder at `path`, inside a `with` block.

    With `own`, StrangeFile is raised for a link and for a folder of another account.
    """

    def __init__(self, path: Path, *, own: bool = False) -> None:
        self.path = path
        self._own = own
        self._handle: int | None = None
        self._owner = -1

    def __enter__(self) -> Self:
        if self._own and self.path.is_symlink():
            raise StrangeFile(f"{self.path.name} is a link")
        if _HANDLES:
            self._handle = self._opened()
        told = self.path.stat() if self._handle is None else os.fstat(self._handle)
        self._owner = told.st_uid
        if self._own and not (_is_mine(told) or told.st_uid == self.path.parent.stat().st_uid):
            self.__exit__(None, None, None)
            raise StrangeFile(f"{self.path.name} belongs to another account")
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        if self._handle is not None:
            os.close(self._handle)
            self._handle = None

    def _opened(self) -> int:
        """A handle to the folder; where its list may not be read, one that is good for what lies inside."""
        flags = os.O_DIRECTORY | (_NO_LINK if self._own else 0)
        try:
            return os.open(self.path, flags | os.O_RDONLY)
        except PermissionError:
            return os.open(self.path, flags | getattr(os, "O_PATH", os.O_RDONLY))

    def names(self) -> list[str]:
        """What is in the folder."""
        return os.listdir(self.path if self._handle is None else self._handle)  # noqa: PTH208

    def create(self, name: str, data: bytes) -> None:
        """Write a file that was not there before, for its owner alone, and bring it to the disk."""
        handle = self._open(name, os.O_WRONLY | os.O_CREAT | os.O_EXCL)
        with os.fdopen(handle, "wb") as file:
            _write_through(file, data)

    @contextmanager
    def create_unnamed(self, name: str, data: bytes) -> Iterator[Callable[[], None]]:
        """The same for a file that has no name until what is yielded gives it one; nothing else of it stays.

        Killed before that, nothing is left in the folder. Where the system or the disk knows no file without
        a name, it has the name from the start.
        """
        handle = self._open_unnamed()
        try:
            if handle is None:
                self.create(name, data)
            else:
                with os.fdopen(handle, "wb", closefd=False) as file:
                    _write_through(file, data)
            yield partial(self._give_name, handle, name, data)
        finally:
            if handle is not None:
                _let_go(handle)
            with suppress(OSError):
                self.wipe(name, name)

    def open_or_create(self, name: str) -> tuple[int, bool]:
        """A handle to read and write a plain file of our own, and whether it was not there before."""
        with suppress(FileExistsError):
            return self._open(name, os.O_RDWR | os.O_CREAT | os.O_EXCL), True
        return self.open_own(name, os.O_RDWR), False

    def open_own(self, name: str, flags: int) -> int:
        """A handle to a plain file of our own.

        Raises StrangeFile for anything else of that name, and FileNotFoundError for a file that lost its name
        while it was opened: whoever had it removed it just then.
        """
        if not stat.S_ISREG(os.stat(*self._at(name), follow_symlinks=False, **self._inside()).st_mode):
            raise StrangeFile(f"{name} is no plain file")
        handle = self._open(name, flags)
        told = os.fstat(handle)
        if stat.S_ISREG(told.st_mode) and told.st_nlink == 1 and self._is_ours(told):
            return handle
        os.close(handle)
        if not told.st_nlink:
            raise FileNotFoundError(errno.ENOENT, os.strerror(errno.ENOENT), name)
        raise StrangeFile(f"{name} is no plain file of this account")

    def read(self, name: str, most: int) -> bytes:
        """Up to `most` bytes of a plain file of our own."""
        with os.fdopen(self.open_own(name, os.O_RDONLY), "rb") as file:
            return file.read(most)

    def replace(self, name: str, by: str) -> None:
        """Put the file `by` in the place of `name`, in one step."""
        if self._handle is None:
            (self.path / by).replace(self.path / name)
        else:
            os.replace(by, name, src_dir_fd=self._handle, dst_dir_fd=self._handle)

    def remove(self, name: str) -> None:
        """Take a name away. What a link leads to is left alone."""
        os.unlink(*self._at(name), **self._inside())

    def wipe(self, name: str, nameless: str) -> None:
        """Overwrite a plain file of our own, call it `nameless`, and remove it; else only the name goes.

        Raises OSError where the name cannot be removed. A file that cannot be overwritten is still removed.
        """
        with suppress(OSError), os.fdopen(self.open_own(name, os.O_RDWR), "r+b") as file:
            overwrite(file.fileno())
        if nameless != name:
            with suppress(OSError):
                self.replace(nameless, by=name)
                name = nameless
        self.remove(name)

    def to_disk(self) -> None:
        """Make new names themselves reach the disk. Some systems have no way to ask for that."""
        if self._handle is not None:
            with suppress(OSError):
                os.fsync(self._handle)

    def _open_unnamed(self) -> int | None:
        if _UNNAMED and self._handle is not None:
            with suppress(OSError):
                return os.open(".", _UNNAMED | os.O_WRONLY, OWNER_ONLY, dir_fd=self._handle)
        return None

    def _give_name(self, handle: int | None, name: str, data: bytes) -> None:
        if handle is None:
            return
        try:
            os.link(f"/proc/self/fd/{handle}", name, dst_dir_fd=self._handle, follow_symlinks=True)
        except OSError:
            self.create(name, data)

    def _open(self, name: str, flags: int) -> int:
        return os.open(*self._at(name), flags | _PLAIN, OWNER_ONLY, **self._inside())

    def _at(self, name: str) -> tuple[str]:
        return (name if self._handle is not None else str(self.path / name),)

    def _inside(self) -> dict[str, Any]:
        return {"dir_fd": self._handle} if self._handle is not None else {}

    def _is_ours(self, told: os.stat_result) -> bool:
        """Ours, or as everything in the folder is: a memory stick gives all its files to one account."""
        return _is_mine(told) or told.st_uid == self._owner


def _write_through(file: BinaryIO, data: bytes) -> None:
    file.write(data)
    file.flush()
    os.fsync(file.fileno())


def _let_go(handle: int) -> None:
    """Close a file that had no name, its bytes overwritten where it never got one."""
    with suppress(OSError):
        if not os.fstat(handle).st_nlink:
            overwrite(handle)
    os.close(handle)


def overwrite(handle: int) -> None:
    """Put zeros in the place of every byte of an open file, and bring them to the disk."""
    left = os.fstat(handle).st_size
    os.lseek(handle, 0, os.SEEK_SET)
    while left > 0:
        left -= os.write(handle, bytes(min(left, _AT_A_TIME)))
    os.fsync(handle)


def _is_mine(told: os.stat_result) -> bool:
    return os.name != "posix" or told.st_uid == os.geteuid()
