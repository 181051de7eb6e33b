"""Disks that are full, folders that may not be written, files that may not be read, folders that go away."""

import os
import resource
import shutil
import subprocess
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.errors import UserError
from firstpaper.facts import Case

NOBODY = 65534
LONG = CaseFile(Case().with_fact("support.other", "A line of words. " * 250))
SHORT = CaseFile(Case().with_fact("petitioner.name", "Ana"))


def limited_at_every_size(folder: Path, step: int) -> dict[str, int]:
    """Let the system refuse to write beyond each size of file in turn: the old file or the new one, whole."""
    path = folder / "home.case"
    SHORT.save(path)
    size = len(LONG.to_json())
    refused = saved = 0
    for limit in range(0, size + step, step):
        SHORT.save(path)
        told = _in_a_process(lambda limit=limit: _kept(path, limit))
        now = CaseFile.load(path)
        assert now == (SHORT if told else LONG), "half a file"
        assert told in ("", "disk_full")
        refused += bool(told)
        saved += not told
        assert _names(folder) <= {"home.case", "home.case.copies", "home.case.lock"}
    assert refused
    assert saved
    return {"sizes tried": refused + saved, "told as a full disk": refused, "broken files": 0}


def filled_to_the_last_byte(folder: Path) -> dict[str, int] | None:
    """The same on a small disk of its own that is really full; None where this account may not mount one."""
    with _small_disk(folder / "disk") as disk:
        if disk is None:
            return None
        path = disk / "home.case"
        SHORT.save(path)
        told = 0
        for room in range(16, -1, -1):
            _fill(disk, leaving=room * 4096)
            code = _told(path)
            now = CaseFile.load(path)
            assert (code, now) in (("", LONG), ("disk_full", SHORT)), "half a file"
            told += code == "disk_full"
            if not code:
                _fill(disk, leaving=64 * 1024)
                SHORT.save(path)
        assert told
        return {"fillings": 17, "told as a full disk": told, "broken files": 0}


def without_permission() -> dict[str, str]:
    """What is told where the account may not write the folder, or may not read the file any more."""
    with TemporaryDirectory() as folder:
        return _without_permission(Path(folder))


def _without_permission(folder: Path) -> dict[str, str]:
    path = folder / "home.case"
    SHORT.save(path)
    os.chown(path, NOBODY, -1) if os.geteuid() == 0 else None
    before = path.read_bytes()
    folder.chmod(0o555)
    read_only = _in_a_process(lambda: _as_nobody(path))
    folder.chmod(0o777)
    path.chmod(0)
    unreadable = _in_a_process(lambda: _as_nobody(path))
    path.chmod(0o600)
    assert path.read_bytes() == before
    return {"read-only folder": read_only, "file without permission": unreadable}


def gone_meanwhile(folder: Path) -> str:
    """What is told where the folder goes away between two answers, as a stick that is pulled out."""
    stick = folder / "stick"
    stick.mkdir()
    path = stick / "home.case"
    with OpenCase(path, begin=True) as opened:
        opened.keep(SHORT)
        shutil.rmtree(stick)
        try:
            opened.keep(LONG)
        except UserError as error:
            assert opened.file == SHORT
            assert not stick.exists()
            return error.code
    return ""


def _kept(path: Path, limit: int) -> str:
    resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit))
    return _told(path)


def _as_nobody(path: Path) -> str:
    if os.geteuid() == 0:
        os.setegid(NOBODY)
        os.seteuid(NOBODY)
    return _told(path)


def _told(path: Path) -> str:
    try:
        with OpenCase(path) as opened:
            opened.keep(LONG)
    except UserError as error:
        return error.code
    return ""


def _in_a_process(work: Callable[[], str]) -> str:
    """The word that `work` ends with, in a process of its own that its limits die with."""
    reading, writing = os.pipe()
    child = os.fork()
    if not child:
        word = "crashed"
        try:
            word = work()
        finally:
            os.write(writing, word.encode())
            os._exit(0)
    os.close(writing)
    with os.fdopen(reading) as pipe:
        word = pipe.read()
    os.waitpid(child, 0)
    return word


@contextmanager
def _small_disk(folder: Path) -> Iterator[Path | None]:
    folder.mkdir()
    command = ["mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", folder]
    mounted = os.geteuid() == 0 and subprocess.run(command, capture_output=True, check=False).returncode == 0
    try:
        yield folder if mounted else None
    finally:
        if mounted:
            subprocess.run(["umount", "-l", folder], capture_output=True, check=False)


def _fill(disk: Path, *, leaving: int) -> None:
    filler = disk / "filler"
    filler.unlink(missing_ok=True)
    free = shutil.disk_usage(disk).free
    filler.write_bytes(bytes(max(0, free - leaving)))


def _names(folder: Path) -> set[str]:
    return {one.name for one in folder.iterdir()}
