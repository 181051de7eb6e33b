"""Imported in a process, it notes every place that is opened for writing there, in the file that NOTES names.

Such a process may reach no other: a connection or a program that is started is noted as forbidden.
"""

import os
import sys
from pathlib import Path

notes = Path(os.environ["NOTES"]).open("a", buffering=1, encoding="utf-8")  # noqa: SIM115 - never closed
opening = os.open
folders = {-1: ""}
"""The folders that were opened, by their handle."""
inside = -1
"""The handle of the folder in which something is being opened: the hook is not told."""


def opened(path: str, flags: int, mode: int = 0o777, *, dir_fd: int | None = None) -> int:
    """Open as the system does, and remember in which folder."""
    global inside  # noqa: PLW0603
    inside = -1 if dir_fd is None else dir_fd
    try:
        handle = opening(path, flags, mode, dir_fd=dir_fd)
    finally:
        inside = -1
    folders[handle] = os.fspath(path)
    return handle


def note(name: str | bytes, folder: int) -> None:
    """Write a place down."""
    notes.write(f"{Path(folders[folder], os.fsdecode(name)).absolute()}\n")


def watch(event: str, args: tuple[object, ...]) -> None:
    """Hear of what the process does, before it is done."""
    if event == "open" and args[0] is not None and not isinstance(args[0], int):
        if _to_write(str(args[1] or ""), int(args[2] or 0)):  # type: ignore[call-overload]
            note(args[0], inside)  # type: ignore[arg-type]
    elif event in {"os.rename", "os.link"}:
        note(args[1], args[3])  # type: ignore[arg-type]
    elif event == "os.symlink":
        note(args[1], args[2])  # type: ignore[arg-type]
    elif event == "os.mkdir":
        note(args[0], args[2])  # type: ignore[arg-type]
    elif event in {"socket.connect", "subprocess.Popen", "os.system"}:
        notes.write(f"FORBIDDEN {event}\n")


def _to_write(mode: str, flags: int) -> bool:
    nameless = getattr(os, "O_TMPFILE", -1)
    if flags & nameless == nameless:
        return False  # it has no name yet
    return any(letter in mode for letter in "wax+") or bool(flags & (os.O_WRONLY | os.O_RDWR | os.O_CREAT))


os.open = opened
os.supports_dir_fd.add(opened)
sys.addaudithook(watch)  # type: ignore[arg-type]
