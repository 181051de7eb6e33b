"""The last saves beside a case file: they mend damage, take answers back, and get in nobody's way."""

import stat
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile, OpenCase, bring_back, load
from firstpaper.casefile.copies import KEPT, Copies
from firstpaper.casefile.errors import CaseFileDamaged, CaseFileMissing, CopyKept, NotACaseFile
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.facts import Case

QUICK = Cost(memory_kib=8 * 1024, passes=1, lanes=1)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


def called(name: str) -> CaseFile:
    return CaseFile(Case().with_fact("petitioner.name", name))


def listed(folder: Path) -> list[str]:
    return sorted(one.name for one in folder.iterdir())


def saved(path: Path, *names: str) -> Path:
    with OpenCase(path, begin=True) as opened:
        for name in names:
            opened.keep(called(name))
    return path


def name_in(file: CaseFile) -> object:
    return file.case.petitioner.name


def test_every_save_is_kept_once_more_and_the_oldest_let_go(path: Path) -> None:
    saved(path, *(f"Ana {number}" for number in range(KEPT + 5)))
    kept = Copies(path).newest_first()
    assert [name_in(CaseFile.load(copy)) for copy in kept] == [f"Ana {n}" for n in range(KEPT + 4, 4, -1)]
    assert stat.S_IMODE(kept[0].stat().st_mode) == 0o600
    assert stat.S_IMODE(kept[0].parent.stat().st_mode) == 0o700


@pytest.mark.parametrize(
    ("damage", "why"),
    [
        (lambda whole: whole[:-9], "it breaks off"),
        (lambda whole: b"", "no case file any more"),
        (lambda whole: bytes(len(whole)), "no case file any more"),
        (lambda whole: whole.replace(b'"schema": ', b'"schema": -'), "does not say how"),
        (None, "not there any more"),
    ],
)
def test_a_damaged_file_loses_no_answer(path: Path, damage: object, why: str) -> None:
    saved(path, "Ana", "Bea")
    broken = damage(path.read_bytes()) if callable(damage) else None
    path.unlink() if broken is None else path.write_bytes(broken)
    for begin in (False, True):
        with pytest.raises(CopyKept, match=f"(?s){why}.*firstpaper undo"), OpenCase(path, begin=begin):
            pass
    with pytest.raises(CopyKept):
        load(path)
    assert (path.read_bytes() if path.exists() else None) == broken

    bring_back(path)
    assert name_in(load(path)) == "Bea"
    aside = path.with_name("home.case.damaged")
    assert (aside.read_bytes() if aside.exists() else None) == broken


def test_a_copy_that_is_damaged_too_is_passed_over(path: Path) -> None:
    saved(path, "Ana", "Bea", "Cleo")
    for one in (path, *Copies(path).newest_first()[:2]):
        one.write_bytes(one.read_bytes()[:-3])
    bring_back(path)
    assert name_in(load(path)) == "Ana"


def test_where_no_copy_is_whole_the_damage_is_told_as_it_is(path: Path) -> None:
    saved(path, "Ana")
    for one in (path, *Copies(path).newest_first()):
        one.write_bytes(one.read_bytes()[:-3])
    with pytest.raises(CaseFileDamaged):
        load(path)
    with pytest.raises(CaseFileMissing):
        bring_back(path)


def test_a_sealed_file_is_mended_without_its_passphrase(path: Path) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.seal_with(Seal.new("otter", QUICK))
        opened.keep(called("Ana"))
        opened.keep(called("Bea"))
    path.write_bytes(path.read_bytes()[:-1])
    with pytest.raises(CopyKept):
        load(path, ["otter"])
    bring_back(path)
    assert name_in(load(path, ["otter"])) == "Bea"


def test_a_crash_before_the_copy_was_made_loses_nothing(path: Path) -> None:
    saved(path, "Ana", "Bea")
    Copies(path).newest_first()[0].unlink()
    with OpenCase(path) as opened:
        assert name_in(opened.file) == "Bea"
        assert name_in(opened.undo() or CaseFile()) == "Ana"


# --- taking back ------------------------------------------------------------------------------------


def test_answers_are_taken_back_one_after_the_other(path: Path) -> None:
    saved(path, "Ana", "Bea", "Cleo")
    with OpenCase(path) as opened:
        for name in ("Bea", "Ana"):
            assert name_in(opened.undo() or CaseFile()) == name
            assert name_in(opened.file) == name_in(CaseFile.load(path)) == name
        assert opened.undo() is None
        assert name_in(CaseFile.load(path)) == "Ana"
        opened.keep(called("Dora"))
        assert name_in(opened.undo() or CaseFile()) == "Ana"


def test_a_save_that_changed_nothing_is_no_step(path: Path) -> None:
    saved(path, "Ana", "Bea", "Bea", "Bea")
    with OpenCase(path) as opened:
        assert name_in(opened.undo() or CaseFile()) == "Ana"


def test_a_sealed_case_is_taken_back_sealed(path: Path) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.seal_with(Seal.new("otter", QUICK))
        opened.keep(called("Ana"))
        opened.keep(called("Bea"))
    with OpenCase(path, passphrases=["otter"]) as opened:
        assert name_in(opened.undo() or CaseFile()) == "Ana"
    assert b"Ana" not in path.read_bytes()
    assert name_in(load(path, ["otter"])) == "Ana"


def test_a_copy_from_another_hand_is_not_taken(path: Path) -> None:
    saved(path, "Ana")
    folder = Copies(path).folder
    (folder / "000002").write_text("gibberish")
    (folder / "000003").write_bytes(Seal.new("x", QUICK).close(called("Eve").to_json().encode()))
    (folder / "000004").symlink_to(path)
    (folder / "notes.txt").write_text("mine")
    with OpenCase(path) as opened:
        assert opened.undo() is None


# --- in nobody's way --------------------------------------------------------------------------------


def test_a_case_begun_and_forgotten_leaves_nothing(path: Path) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.keep(called("Ana"))
        opened.forget()
    assert list(path.parent.iterdir()) == []


def test_what_somebody_put_beside_the_copies_stays(path: Path) -> None:
    saved(path, "Ana")
    (Copies(path).folder / "notes.txt").write_text("mine")
    Copies(path).clear()
    assert listed(Copies(path).folder) == ["notes.txt"]


@pytest.mark.parametrize("blocked", ["file", "link"])
def test_where_no_copy_can_be_kept_the_save_still_stands(path: Path, blocked: str, tmp_path: Path) -> None:
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    folder = Copies(path).folder
    folder.symlink_to(elsewhere) if blocked == "link" else folder.write_text("in the way")
    saved(path, "Ana", "Bea")
    assert name_in(load(path)) == "Bea"
    assert list(elsewhere.iterdir()) == []


def test_a_name_too_long_for_a_copy_folder_is_no_trouble(tmp_path: Path) -> None:
    path = tmp_path / ("n" * 250)
    saved(path, "Ana")
    assert name_in(load(path)) == "Ana"


def test_a_folder_in_place_of_the_file_is_not_touched(path: Path) -> None:
    path.mkdir()
    with pytest.raises(NotACaseFile):
        load(path)
