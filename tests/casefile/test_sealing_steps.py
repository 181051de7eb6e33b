"""A file is sealed, opened or given another passphrase, and cut off at every step of it.

At no moment may a sealed file lie beside a copy that its key does not open.
"""

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile, OpenCase, load
from firstpaper.casefile.belongings import belongings
from firstpaper.casefile.copies import Copies
from firstpaper.casefile.errors import ChangedMeanwhile, CopiesStay, CopyKept
from firstpaper.casefile.reading import is_sealed
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.facts import Case

QUICK = Cost(memory_kib=8 * 1024, passes=1, lanes=1)
OLD, NEW = "marble otter", "seven violins"
STEPS = ("os.open", "os.replace", "os.unlink", "os.fsync", "os.write", "os.rmdir", "os.mkdir")


class Cut(BaseException):
    """The process ends here."""


@contextmanager
def cut_at(step: int) -> Iterator[list[int]]:
    """End at the given step that changes files, before it is done; and at every one after it."""
    patch, count = pytest.MonkeyPatch(), [0]
    for name in STEPS:
        patch.setattr(name, _counting(getattr(os, name.removeprefix("os.")), count, step))
    try:
        yield count
    finally:
        patch.undo()


def _counting(real: Callable[..., object], count: list[int], step: int) -> Callable[..., object]:
    def counted(*args: object, **kwargs: object) -> object:
        count[0] += 1
        if count[0] > step:
            raise Cut
        return real(*args, **kwargs)

    return counted


def called(name: str) -> CaseFile:
    return CaseFile(Case().with_fact("petitioner.name", name))


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


def saved(path: Path, seal: Seal | None, *names: str) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.seal_with(seal)
        for name in names:
            opened.keep(called(name))


@pytest.mark.parametrize("before", [None, OLD])
@pytest.mark.parametrize("after", [None, NEW])
def test_cut_off_at_any_step_no_open_copy_lies_beside_a_sealed_file(
    tmp_path: Path, before: str | None, after: str | None
) -> None:
    old = Seal.new(before, QUICK) if before else None
    new = Seal.new(after, QUICK) if after else None
    step, done = 0, False
    while not done:
        path = tmp_path / str(step) / "home.case"
        path.parent.mkdir()
        saved(path, old, "Ana", "Bea", "Cleo")
        done = cut_off(path, before, new, step)
        check_beside(path, [seal for seal in (old, new) if seal])
        passphrases = [one for one in (before, after) if one]
        assert load(path, passphrases).case.petitioner.name == "Cleo"
        with OpenCase(path, passphrases=passphrases):
            pass
        assert {one.name for one in path.parent.iterdir()} <= {"home.case", "home.case.copies"}
        step += 1
    assert step > 10


def cut_off(path: Path, before: str | None, new: Seal | None, step: int) -> bool:
    """Give the file another seal, cut off after so many steps; whether it was done before that."""
    opened = OpenCase(path, passphrases=[before] if before else [])
    opened.__enter__()
    try:
        with cut_at(step):
            opened.seal_with(new)
    except Cut:
        return False
    finally:
        opened.__exit__(None, None, None)
    return True


def check_beside(path: Path, seals: list[Seal]) -> None:
    """Each copy opens with the key of the file, or is as open as the file."""
    data = path.read_bytes()
    for copy in Copies(path).newest_first():
        held = copy.read_bytes()
        if held.strip(b"\0"):  # wiped already, and only its name still there
            assert is_sealed(held) == is_sealed(data)
            assert not is_sealed(data) or [s.opens(held) for s in seals] == [s.opens(data) for s in seals]


def test_copies_that_cannot_be_removed_keep_the_file_as_it_was(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    saved(path, None, "Ana", "Bea")
    before = path.read_bytes()
    monkeypatch.setattr("firstpaper.casefile.copies.Copies.clear", lambda self: self.newest_first())
    with OpenCase(path) as opened, pytest.raises(CopiesStay, match="left as it was"):
        opened.seal_with(Seal.new(NEW, QUICK))
    assert path.read_bytes() == before


def test_open_copies_left_beside_a_sealed_file_are_wiped_at_its_next_opening(path: Path) -> None:
    saved(path, Seal.new(NEW, QUICK), "Ana", "Bea")
    (Copies(path).folder / "000007").write_bytes(called("Zoe").to_json().encode())
    with OpenCase(path, passphrases=[NEW]) as opened:
        assert opened.tidied == 1
    (Copies(path).folder / "000008").write_bytes(called("Zoe").to_json().encode())
    load(path, [NEW])
    assert all(is_sealed(copy.read_bytes()) for copy in Copies(path).newest_first())


def test_an_older_sealed_file_put_back_is_told_and_undo_brings_the_newest(path: Path) -> None:
    saved(path, Seal.new(NEW, QUICK), "Ana", "Bea", "Cleo")
    newest, oldest = Copies(path).newest_first()[0], Copies(path).newest_first()[-1]
    path.write_bytes(oldest.read_bytes())
    for opening in (lambda: load(path, [NEW]), lambda: OpenCase(path, passphrases=[NEW]).__enter__()):
        with pytest.raises(CopyKept, match="older than its copies"):
            opening()
    assert newest.exists()


def test_another_case_under_the_name_is_told_also_with_the_same_key(path: Path, tmp_path: Path) -> None:
    seal, other = Seal.new(NEW, QUICK), tmp_path / "other.case"
    saved(path, seal, "Ana")
    saved(other, seal, "Zoe")
    path.write_bytes(other.read_bytes())
    with pytest.raises(CopyKept, match="another case"):
        load(path, [NEW])
    path.write_bytes(called("Zoe").to_json().encode())
    with pytest.raises(CopyKept, match="not locked, but its copies are"):
        load(path)
    path.write_bytes(Seal.new(NEW, QUICK).close(called("Zoe").to_json().encode()))
    with pytest.raises(CopyKept, match="another passphrase"):
        load(path, [NEW])


def test_a_copy_of_another_case_is_never_brought_back(path: Path, tmp_path: Path) -> None:
    seal, other = Seal.new(NEW, QUICK), tmp_path / "other.case"
    saved(path, seal, "Ana")
    saved(other, seal, "Zoe")
    with OpenCase(path, passphrases=[NEW]) as opened:
        (Copies(path).folder / "000009").write_bytes(other.read_bytes())
        assert opened.undo() is None
    with OpenCase(path, passphrases=[NEW]) as opened:
        assert opened.tidied == 1


@pytest.mark.parametrize("how", ["changed", "removed"])
@pytest.mark.parametrize("seal", [None, Seal.new(NEW, QUICK)], ids=["plain", "sealed"])
def test_a_change_by_another_program_is_not_overwritten(path: Path, how: str, seal: Seal | None) -> None:
    saved(path, seal, "Ana")
    with OpenCase(path, passphrases=[NEW]) as opened:
        opened.keep(called("Bea"))
        data = path.read_bytes()
        path.unlink() if how == "removed" else path.write_bytes(data + b"\n")
        with pytest.raises(ChangedMeanwhile, match="Nothing was overwritten"):
            opened.keep(called("Cleo"))
    assert (path.read_bytes() if path.exists() else b"") == (b"" if how == "removed" else data + b"\n")
    mine = path.with_name("home.case.yours")
    assert load(mine, [NEW]).case.petitioner.name == "Cleo"
    assert is_sealed(mine.read_bytes()) == (seal is not None)
    assert mine in belongings(path)
