"""The safe save: whatever breaks, and wherever, the file is the old one or the new one, whole."""

import errno
import os
import resource
import subprocess
import sys
import time
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile, OpenCase, save, sweep
from firstpaper.casefile.errors import DiskFull, FolderMissing, FolderReadOnly, SaveFailed
from firstpaper.errors import UserError
from firstpaper.facts import Case

OLD = b"old and whole"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    (tmp_path / "home.case").write_bytes(OLD)
    return tmp_path / "home.case"


def names(folder: Path) -> list[str]:
    return sorted(one.name for one in folder.iterdir())


def failing(number: int):
    def fail(*_args: object, **_kwargs: object) -> None:
        raise OSError(number, os.strerror(number))

    return fail


@pytest.mark.parametrize("step", ["os.open", "os.fdopen", "os.fsync", "os.replace"])
@pytest.mark.parametrize(
    ("number", "told"),
    [
        (errno.ENOSPC, DiskFull),
        (errno.EDQUOT, DiskFull),
        (errno.EROFS, FolderReadOnly),
        (errno.EACCES, FolderReadOnly),
        (errno.ENOENT, FolderMissing),
        (errno.EIO, SaveFailed),
    ],
)
def test_a_failure_at_any_step_leaves_the_old_file_and_no_rest(
    path: Path, monkeypatch: pytest.MonkeyPatch, step: str, number: int, told: type[UserError]
) -> None:
    with monkeypatch.context() as patched:
        patched.setattr(step, failing(number))
        with pytest.raises(told):
            save(path, b"new")
    assert path.read_bytes() == OLD
    assert names(path.parent) == ["home.case"]


def test_an_interruption_before_the_last_step_leaves_the_old_file(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def interrupted(*_args: object, **_kwargs: object) -> None:
        raise KeyboardInterrupt

    with monkeypatch.context() as patched:
        patched.setattr("os.replace", interrupted)
        with pytest.raises(KeyboardInterrupt):
            save(path, b"new")
    assert path.read_bytes() == OLD
    assert names(path.parent) == ["home.case"]


def test_a_folder_whose_list_may_not_be_read_does_not_spoil_the_save(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = os.open

    def no_folders(name: str | Path, flags: int, mode: int = 0o777, **folder: int) -> int:
        if Path(name).is_dir() and not flags & os.O_PATH:
            raise PermissionError(errno.EACCES, "no")
        return real(name, flags, mode, **folder)

    monkeypatch.setattr("os.open", no_folders)
    save(path, b"new")
    assert path.read_bytes() == b"new"


def test_the_data_reaches_the_disk_before_it_takes_the_name_and_the_folder_after(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    steps: list[str] = []
    fsync, replace = os.fsync, os.replace

    def noted_fsync(handle: int) -> None:
        steps.append("folder" if Path(f"/proc/self/fd/{handle}").is_dir() else "file")
        fsync(handle)

    def noted_replace(*names: str, **folders: int) -> None:
        steps.append("replace")
        replace(*names, **folders)

    monkeypatch.setattr("os.fsync", noted_fsync)
    monkeypatch.setattr("os.replace", noted_replace)
    save(path, b"new")
    assert steps == ["file", "replace", "folder"]


def test_a_full_disk_is_told_and_the_old_file_stays(path: Path) -> None:
    """A file size limit makes the system itself refuse the write, as a full disk does."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (1000, hard))
    try:
        with pytest.raises(DiskFull, match="no room left"):
            save(path, b"x" * 5000)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))
    assert path.read_bytes() == OLD
    assert names(path.parent) == ["home.case"]


def test_a_folder_that_has_gone_is_told(tmp_path: Path) -> None:
    with pytest.raises(FolderMissing, match="USB stick"):
        save(tmp_path / "stick" / "home.case", b"new")
    (tmp_path / "file").write_bytes(b"")
    with pytest.raises(FolderMissing):
        save(tmp_path / "file" / "home.case", b"new")


def test_a_working_folder_that_was_deleted_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "gone").mkdir()
    monkeypatch.chdir(tmp_path / "gone")
    (tmp_path / "gone").rmdir()
    for attempt in (lambda: save(Path("home.case"), b"new"), lambda: OpenCase(Path("home.case"), begin=True)):
        with pytest.raises(FolderMissing):
            attempt()


def test_a_link_to_the_case_file_stays_a_link(path: Path, tmp_path: Path) -> None:
    link = tmp_path / "link.case"
    link.symlink_to(path)
    save(link, b"new")
    assert link.is_symlink()
    assert path.read_bytes() == b"new"


def test_the_sweep_takes_only_the_rests_of_this_file(path: Path) -> None:
    rest = path.with_name(".case-" + "0" * 8 + "-ab")
    save(path, b"new")
    prefix = _temporary_prefix(path)
    ours, theirs = path.with_name(prefix + "abc"), rest
    ours.write_bytes(b"half")
    theirs.write_bytes(b"being written by another window")
    sweep(path)
    assert names(path.parent) == sorted([theirs.name, path.name])


def _temporary_prefix(path: Path) -> str:
    """The start of the temporary name, seen from outside: by making the last step fail."""
    seen: list[str] = []
    patch = pytest.MonkeyPatch()
    patch.setattr("os.replace", lambda name, _target, **_: seen.append(name))
    save(path, b"x")
    patch.undo()
    return seen[0].rpartition("-")[0] + "-"


def test_a_temporary_name_does_not_carry_the_name_of_the_case(path: Path) -> None:
    assert "home" not in _temporary_prefix(path)


SAVES_FOREVER = """
import sys
from pathlib import Path
from firstpaper.casefile import CaseFile
from firstpaper.facts import Case
path = Path(sys.argv[1])
for turn in range(10**9):
    CaseFile(Case().with_fact("petitioner.name", "N" * (turn % 200 + 1))).save(path)
    if turn == 3:
        print("saving", flush=True)
"""


def test_a_process_killed_in_the_middle_of_saves_never_leaves_a_broken_file(tmp_path: Path) -> None:
    path = tmp_path / "home.case"
    for turn in range(8):
        with subprocess.Popen([sys.executable, "-c", SAVES_FOREVER, path], stdout=subprocess.PIPE) as process:
            assert process.stdout is not None
            process.stdout.readline()
            time.sleep(0.002 * turn)
            process.kill()
        assert isinstance(CaseFile.load(path).case, Case)
    sweep(path)
    assert names(tmp_path) == ["home.case"]
