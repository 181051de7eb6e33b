"""The lock: one writer at a time, and a crash locks nobody out."""

import errno
import json
import os
import platform
import subprocess
import sys
from itertools import pairwise
from pathlib import Path

import pytest

from firstpaper.casefile import Lock
from firstpaper.casefile.errors import CaseFileInUse, DiskFull, FolderMissing, LockLost, StrangeLock


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


HOLDS = """
import sys
from itertools import pairwise
from pathlib import Path
from firstpaper.casefile import Lock
with Lock(Path(sys.argv[1])):
    print("held", flush=True)
    sys.stdin.read()
"""


def holder(path: Path) -> subprocess.Popen[bytes]:
    process = subprocess.Popen(
        [sys.executable, "-c", HOLDS, path], stdin=subprocess.PIPE, stdout=subprocess.PIPE
    )
    assert process.stdout is not None
    assert process.stdout.readline() == b"held\n"
    return process


def test_a_second_writer_is_refused_and_the_first_keeps_the_lock(path: Path) -> None:
    with holder(path) as first:
        with pytest.raises(CaseFileInUse, match=rf"(?s)process {first.pid} on .*delete the file .*lock"):
            Lock(path).__enter__()
        assert Lock(path).file.exists()
        first.communicate()
    assert not Lock(path).file.exists()
    with Lock(path) as lock:
        assert not lock.recovered


def test_a_lock_left_by_a_crash_is_taken_over_and_said(path: Path) -> None:
    with holder(path) as first:
        first.kill()
        first.wait()
        assert Lock(path).file.exists()
        with Lock(path) as lock:
            assert lock.recovered
            lock.check()
    assert not lock.file.exists()


def test_a_process_number_given_out_again_is_not_mistaken_for_the_writer(path: Path) -> None:
    old = {"process": os.getpid(), "started": "1", "host": platform.node()}
    Lock(path).file.write_text(json.dumps(old))
    with Lock(path) as lock:
        assert lock.recovered


def test_a_writer_on_another_computer_is_never_taken_for_dead(path: Path) -> None:
    other = {"process": 2**22 + 1, "started": "1", "host": "front-desk"}
    Lock(path).file.write_text(json.dumps(other))
    with pytest.raises(CaseFileInUse, match="front-desk"), Lock(path):
        pass
    assert json.loads(Lock(path).file.read_text()) == other


@pytest.mark.parametrize("content", ["", '{"proc', '{"process": 1}', '{"process": []}'])
def test_a_lock_nobody_can_read_is_taken_over(path: Path, content: str) -> None:
    Lock(path).file.write_text(content)
    with Lock(path) as lock:
        assert lock.recovered


@pytest.mark.parametrize("content", ["Dear diary", "[]", "null", '{"process"' + " " * 2000])
def test_a_text_of_ones_own_under_that_name_is_left_alone(path: Path, content: str) -> None:
    Lock(path).file.write_text(content)
    with pytest.raises(StrangeLock, match="left alone"), Lock(path):
        pass
    assert Lock(path).file.read_text() == content


@pytest.mark.parametrize("kind", ["link", "dangling", "second name", "pipe", "folder"])
def test_what_leads_elsewhere_under_that_name_is_left_alone(path: Path, tmp_path: Path, kind: str) -> None:
    diary, lock = tmp_path / "diary.txt", Lock(path).file
    diary.write_text("")
    {
        "link": lambda: lock.symlink_to(diary),
        "dangling": lambda: lock.symlink_to(tmp_path / "new.txt"),
        "second name": lambda: lock.hardlink_to(diary),
        "pipe": lambda: os.mkfifo(lock),
        "folder": lock.mkdir,
    }[kind]()
    with pytest.raises(StrangeLock), Lock(path):
        pass
    assert diary.read_text() == ""
    assert os.path.lexists(lock)
    assert not (tmp_path / "new.txt").exists()


@pytest.mark.skipif(os.name != "posix" or os.geteuid() != 0, reason="needs another account")
def test_a_lock_of_another_account_is_left_alone(path: Path) -> None:
    lock = Lock(path).file
    lock.write_text("")
    os.chown(lock, 12345, 12345)
    with pytest.raises(StrangeLock, match="another account"), Lock(path):
        pass


@pytest.mark.parametrize("number", [errno.EPERM, errno.EIO, errno.EACCES, errno.EBADF, errno.ENOLCK])
def test_a_folder_that_knows_no_locks_is_said_and_worked_in(
    path: Path, monkeypatch: pytest.MonkeyPatch, number: int
) -> None:
    def no_locks(*_args: object) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr("fcntl.flock", no_locks)
    with Lock(path) as lock:
        assert lock.alone
        with pytest.raises(CaseFileInUse), Lock(path):
            pass
    assert not lock.file.exists()


def test_a_writer_whose_lock_was_taken_stops_before_saving_and_leaves_the_new_lock(path: Path) -> None:
    with Lock(path) as lock:
        lock.check()
        lock.file.write_text(json.dumps({"process": 1, "started": "1", "host": "x"}))
        with pytest.raises(LockLost):
            lock.check()
    assert lock.file.exists()


def test_the_lock_is_let_go_when_the_work_fails(path: Path) -> None:
    with pytest.raises(ZeroDivisionError), Lock(path) as lock:
        raise ZeroDivisionError
    assert not lock.file.exists()


def test_a_lock_that_its_writer_removes_while_it_is_opened_is_nothing_strange(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    waiting = Lock(path)
    waiting.file.write_text(json.dumps({"process": 1, "started": "1", "host": platform.node()}))
    opening, removed = os.open, list[str]()

    def opened(name: str, *args: int, **inside: int) -> int:
        handle = opening(name, *args, **inside)
        if str(name).endswith(waiting.file.name) and not removed:
            waiting.file.unlink()
            removed.append(name)
        return handle

    monkeypatch.setattr("os.open", opened)
    with waiting:
        assert removed
        waiting.check()


def test_a_missing_folder_is_told(path: Path) -> None:
    with pytest.raises(FolderMissing), Lock(path.parent / "gone" / "home.case"):
        pass


def test_a_full_disk_is_told_and_no_lock_is_left(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_args: object, **_kwargs: object) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patched:
        patched.setattr("json.dump", full)
        with pytest.raises(DiskFull), Lock(path):
            pass
    assert not Lock(path).file.exists()


def test_two_names_of_one_file_share_one_lock(path: Path, tmp_path: Path) -> None:
    path.write_text("")
    link = tmp_path / "link.case"
    link.symlink_to(path)
    with holder(path) as first:
        with pytest.raises(CaseFileInUse), Lock(link):
            pass
        first.communicate()


def test_the_lock_is_for_its_owner_alone(path: Path) -> None:
    with Lock(path) as lock:
        assert lock.file.stat().st_mode & 0o777 == 0o600


ONE_OF_MANY = """
import sys, time
from itertools import pairwise
from pathlib import Path
from firstpaper.casefile import Lock
from firstpaper.errors import UserError
sys.stdin.readline()
try:
    with Lock(Path(sys.argv[1])) as lock:
        began = time.monotonic()
        time.sleep(0.05)
        lock.check()
        print(began, time.monotonic())
except UserError as error:
    print(error.code)
"""


def test_of_many_that_meet_a_stale_lock_at_once_no_two_have_it_together(path: Path) -> None:
    for _round in range(3):
        stale = {"process": os.getpid(), "started": "1", "host": platform.node()}
        Lock(path).file.write_text(json.dumps(stale))
        many = [
            subprocess.Popen(
                [sys.executable, "-c", ONE_OF_MANY, path],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                text=True,
            )
            for _one in range(5)
        ]
        for one in many:
            assert one.stdin
            one.stdin.write("go\n")
            one.stdin.flush()
        said = [one.communicate()[0].strip() for one in many]
        held = sorted(tuple(map(float, words.split())) for words in said if " " in words)
        assert held
        assert set(said) - {words for words in said if " " in words} <= {"case_file_in_use"}
        assert all(one[1] <= other[0] for one, other in pairwise(held))
        assert not Lock(path).file.exists()


def test_a_system_without_file_locks_still_keeps_writers_apart(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("firstpaper.casefile.lock.fcntl", None)
    with Lock(path), pytest.raises(CaseFileInUse), Lock(path):
        pass
    assert not Lock(path).file.exists()
    Lock(path).file.write_text(json.dumps({"process": os.getpid(), "started": "1", "host": platform.node()}))
    with Lock(path) as lock:
        assert lock.recovered
