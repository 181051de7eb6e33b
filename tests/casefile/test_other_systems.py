"""Case files on a system that lacks what Linux has, and in moments that come once in a thousand times."""

import errno
import os
import socket
from hashlib import sha256
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from firstpaper.casefile import CaseFile, Lock, OpenCase, bring_back, load, lock
from firstpaper.casefile.belongings import belongings, finish_removing, remove_all
from firstpaper.casefile.beside import held_against_its_copies
from firstpaper.casefile.copies import Copies
from firstpaper.casefile.document import mark_of
from firstpaper.casefile.erasing import wiping_what_is_replaced
from firstpaper.casefile.errors import (
    CaseFileDamaged,
    CaseFileInUse,
    CaseFileUnreadable,
    DiskFull,
    FolderMissing,
    NotACaseFile,
)
from firstpaper.casefile.folder import Folder, StrangeFile
from firstpaper.casefile.reading import read_case_file
from firstpaper.casefile.saving import rests, save
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.casefile.upgrades import _moved
from firstpaper.errors import UserError
from firstpaper.facts import Case

ANA, BEA = (CaseFile(Case().with_fact("petitioner.name", name)) for name in ("Ana", "Bea"))


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


@pytest.fixture
def plain_system(monkeypatch: pytest.MonkeyPatch) -> None:
    """A system that holds no folder open, knows no file without a name and no lock of its own."""
    monkeypatch.setattr("firstpaper.casefile.folder._HANDLES", False)
    monkeypatch.setattr("firstpaper.casefile.folder._UNNAMED", 0)
    monkeypatch.setattr("firstpaper.casefile.lock.fcntl", None)


@pytest.mark.usefixtures("plain_system")
def test_a_case_is_saved_copied_taken_back_and_erased_there_too(path: Path) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.keep(ANA)
        opened.keep(BEA)
        assert (opened.recovered, opened.alone) == (False, False)
        assert opened.undo() == ANA
    assert load(path) == ANA
    assert remove_all(path, belongings(path)) == []
    assert [one.name for one in path.parent.iterdir()] == []


@pytest.mark.usefixtures("plain_system")
def test_the_lock_file_alone_keeps_a_second_writer_out(path: Path) -> None:
    with Lock(path), pytest.raises(CaseFileInUse), Lock(path):
        pass
    with Lock(path) as again:
        assert not again.recovered


@pytest.mark.usefixtures("plain_system")
def test_a_lock_file_that_is_being_written_is_looked_at_again(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    other = Lock(path)
    other.file.write_text("")

    def written(_seconds: float) -> None:
        other.file.write_text('{"process": 1, "started": "1", "host": "front-desk"}')

    monkeypatch.setattr("firstpaper.casefile.lock.time.sleep", written)
    with pytest.raises(CaseFileInUse, match="front-desk"), Lock(path):
        pass


def test_no_process_is_asked_for_where_asking_would_end_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(lock, "os", SimpleNamespace(name="nt"))
    assert lock._alive(2**22 + 1)


@pytest.mark.parametrize(("fault", "alive"), [(ProcessLookupError, False), (PermissionError, True)])
def test_a_process_of_another_account_runs(
    monkeypatch: pytest.MonkeyPatch, fault: type[OSError], alive: bool
) -> None:
    def kill(_process: int, _signal: int) -> None:
        raise fault

    monkeypatch.setattr("firstpaper.casefile.lock.os.kill", kill)
    assert lock._alive(1) is alive


def test_a_lock_file_that_goes_while_it_is_opened_is_made_anew(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    faults: list[OSError] = [FileNotFoundError()]
    opens = Folder.open_or_create

    def open_or_create(folder: Folder, name: str) -> tuple[int, bool]:
        if faults:
            raise faults.pop()
        return opens(folder, name)

    monkeypatch.setattr(Folder, "open_or_create", open_or_create)
    with Lock(path) as held:
        assert held.ours
    faults.append(OSError(errno.ENOSPC, "full"))
    with pytest.raises(DiskFull), Lock(path):
        pass


def test_a_lock_file_that_was_removed_after_it_was_locked_is_no_lock(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    told = [False]
    same = lock._is_the_same

    def is_the_same(handle: int | None, file: Path) -> bool:
        return told.pop() if told else same(handle, file)

    monkeypatch.setattr(lock, "_is_the_same", is_the_same)
    with Lock(path) as held:
        assert held.ours
    assert not held.file.exists()
    handle = os.open(path, os.O_RDWR | os.O_CREAT)
    assert not same(handle, path.with_name("gone"))
    os.close(handle)


def test_a_folder_that_goes_is_told_before_a_save(path: Path) -> None:
    (path.parent / "here").mkdir()
    inside = path.parent / "here" / "home.case"
    with Lock(inside) as held:
        held.file.unlink()
        inside.parent.rmdir()
        with pytest.raises(FolderMissing):
            held.check()


@pytest.mark.skipif(bool(os.geteuid()), reason="needs another account")
def test_a_folder_of_another_account_is_not_held(path: Path) -> None:
    inside = path.parent / "copies"
    inside.mkdir()
    os.chown(inside, 12345, -1)
    with pytest.raises(StrangeFile, match="another account"), Folder(inside, own=True):
        pass


def test_a_file_is_made_anew_where_the_disk_gives_no_name_to_one_without(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def link(*_arguments: Any, **_more: Any) -> None:
        raise OSError(errno.EOPNOTSUPP, "no links")

    monkeypatch.setattr("firstpaper.casefile.folder.os.link", link)
    with Folder(path.parent) as folder, folder.create_unnamed("new", b"whole") as give_name:
        give_name()
        assert (path.parent / "new").read_bytes() == b"whole"


def test_a_removal_that_was_cut_off_is_finished_by_what_it_noted_and_takes_nothing_else(path: Path) -> None:
    note = path.with_name(f"{path.name}.erasing")
    for name in ("home.case", "home.pdf", "other.case"):
        (path.parent / name).write_bytes(b"x")
    note.write_text('["home.case", "home.pdf", "other.case", "../home.case", 7]')
    assert finish_removing(path)
    assert [one.name for one in path.parent.iterdir()] == ["other.case"]
    assert not finish_removing(path)
    note.write_text("{}")
    assert finish_removing(path)
    assert [one.name for one in path.parent.iterdir()] == ["other.case"]


def test_a_name_too_long_for_the_system_has_no_removal_to_finish(path: Path) -> None:
    assert not finish_removing(path.with_name("x" * 300))


def test_a_case_file_that_may_not_be_read_is_told_apart_from_no_case_file(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    ANA.save(path)

    def refused(*_arguments: Any, **_more: Any) -> int:
        raise PermissionError(errno.EACCES, "Permission denied")

    monkeypatch.setattr("firstpaper.casefile.reading.open", refused, raising=False)
    monkeypatch.setattr("firstpaper.casefile.reading.Path.open", refused)
    with pytest.raises(CaseFileUnreadable, match="Permission denied"):
        read_case_file(path)


def test_a_copy_that_cannot_be_read_holds_nothing(path: Path) -> None:
    assert Copies(path)._holds(path.with_name("gone")) is None


def test_a_folder_that_cannot_be_listed_has_no_rests(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refused(_folder: Path) -> None:
        raise PermissionError

    monkeypatch.setattr("firstpaper.casefile.saving.Path.iterdir", refused)
    assert rests(path) == []


def test_what_lay_in_place_of_a_damaged_file_must_be_put_aside(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.keep(ANA)
        opened.keep(BEA)
    path.write_bytes(b"")

    def full(_file: Path, _by: Path) -> None:
        raise OSError(errno.ENOSPC, "full")

    monkeypatch.setattr("firstpaper.casefile.opened.Path.replace", full)
    with pytest.raises(DiskFull):
        bring_back(path)
    assert path.read_bytes() == b""


def test_what_an_open_case_tells_of_itself(path: Path) -> None:
    with OpenCase(path, begin=True) as opened:
        assert opened.copies is None
        opened.keep(ANA)
        opened.keep(BEA)
        assert opened.copies == path.with_name("home.case.copies")
        assert opened.seal is None
        assert not opened.sealed
    with OpenCase(path) as again:
        again.forget()
    assert load(path) == BEA


def test_the_words_for_a_save_are_kept_with_it_and_no_longer_than_a_line_or_three(path: Path) -> None:
    ANA.after("entered from things.csv" + "x" * 400).save(path)
    assert load(path).last.startswith("entered from things.csv")
    assert len(load(path).last) == 300


def test_an_empty_file_is_no_case_file(path: Path) -> None:
    save(path, b"")
    with pytest.raises(NotACaseFile):
        read_case_file(path)


def test_a_note_of_a_removal_that_cannot_be_read_goes_and_takes_nothing_along(path: Path) -> None:
    ANA.save(path)
    path.with_name(f"{path.name}.erasing").write_bytes(b"home.case")
    assert finish_removing(path)
    assert [one.name for one in path.parent.iterdir()] == ["home.case"]


def test_a_system_that_does_not_tell_when_a_process_began_is_not_asked_again(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def refused(_file: Path, **_more: Any) -> str:
        raise FileNotFoundError

    monkeypatch.setattr("firstpaper.casefile.lock.Path.read_text", refused)
    assert lock._start_of(1) == ""


def test_a_name_that_leads_round_in_a_circle_is_no_case_file(path: Path) -> None:
    path.symlink_to(path.name)
    with pytest.raises(UserError):
        read_case_file(path)


@pytest.mark.parametrize(
    "document",
    [
        '{"firstpaper": {"schema": 1}, "facts": {"petitioner": {"other_names": ['
        + ",".join(['"x"'] * 2001)
        + "]}}}",
        '{"firstpaper": {"schema": 1}, "facts": ' + '{"x": ' * 14 + "1" + "}" * 15,
    ],
    ids=["longer", "deeper"],
)
def test_a_document_longer_or_deeper_than_any_of_ours_is_not_taken_apart(path: Path, document: str) -> None:
    path.write_text(document, "utf-8")
    with pytest.raises(CaseFileDamaged, match="not built like a case file"):
        load(path)


def test_a_document_that_is_none_says_nothing_of_itself() -> None:
    assert mark_of(b"[]") is None
    assert mark_of(b"{") is None


def test_what_was_replaced_keeps_its_bytes_where_they_still_have_a_name(path: Path) -> None:
    ANA.save(path)
    other = path.with_name("mine")
    before = path.read_bytes()
    with wiping_what_is_replaced(path):
        os.link(path, other)
        BEA.save(path)
    assert other.read_bytes() == before
    with wiping_what_is_replaced(path.with_name("gone")):
        pass
    assert load(path) == BEA


def test_a_socket_is_no_case_file(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(path.parent)  # the name of a socket may not be long
    with socket.socket(socket.AF_UNIX) as opened:
        opened.bind(path.name)
        with pytest.raises(NotACaseFile):
            read_case_file(path)


def test_a_file_damaged_from_its_first_byte_is_erased_with_its_copies(path: Path) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.keep(ANA)
        opened.keep(BEA)
    path.write_bytes(bytes(300))
    assert path in belongings(path)


def test_a_name_of_before_that_nobody_told_moves_nothing() -> None:
    facts = {"petitioner": {"name": "Ana"}, "court": "Fresno"}
    assert not _moved(facts, ["petitioner", "telephone"], ["petitioner", "phone"])
    assert not _moved(facts, ["court", "seat"], ["court", "branch"])
    assert facts == {"petitioner": {"name": "Ana"}, "court": "Fresno"}


def test_a_copy_that_was_changed_tells_nothing_of_a_locked_file(path: Path) -> None:
    seal = Seal.new("marble otter seven violins", Cost(memory_kib=8 * 1024, passes=1, lanes=1))
    with OpenCase(path, begin=True) as opened:
        opened.keep(ANA)
        opened.seal_with(seal)
        opened.keep(BEA)
        mine = opened.file
        assert held_against_its_copies(path, ANA, seal) is None  # it says nothing of itself
        (copy, *_others) = Copies(path).newest_first()
        changed = bytearray(copy.read_bytes())
        changed[-40] ^= 1
        copy.write_bytes(changed[:-32] + sha256(changed[:-32]).digest())
        assert held_against_its_copies(path, mine, seal) is None
        for one in Copies(path).newest_first():
            one.unlink()
        assert held_against_its_copies(path, mine, seal) is None
