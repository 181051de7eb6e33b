"""Erasing: everything of one case goes, its bytes first, and nothing of anybody else."""

from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile, OpenCase, bring_back
from firstpaper.casefile.belongings import belongings, remove
from firstpaper.casefile.erasing import wipe, wiping_what_is_replaced
from firstpaper.casefile.errors import NotACaseFile
from firstpaper.casefile.saving import save
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.facts import Case

SECRET = b"Zebulon Quartermain" * 100_000


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


def begun(path: Path) -> Path:
    with OpenCase(path, begin=True) as opened:
        opened.keep(CaseFile(Case().with_fact("petitioner.name", "Ana")))
        opened.keep(CaseFile(Case().with_fact("petitioner.name", "Bea")))
    return path


def listed(folder: Path) -> list[str]:
    return sorted(one.name for one in folder.iterdir())


def names(paths: list[Path]) -> list[str]:
    return [one.name for one in paths]


def test_the_bytes_are_overwritten_before_the_file_goes(tmp_path: Path) -> None:
    file = tmp_path / "draft"
    file.write_bytes(SECRET)
    with file.open("rb") as still_open:
        wipe(file)
        assert still_open.read() == bytes(len(SECRET))
    assert listed(tmp_path) == []


def test_a_file_with_another_name_elsewhere_keeps_its_bytes_there(tmp_path: Path) -> None:
    file, other = tmp_path / "draft", tmp_path / "mine"
    file.write_bytes(SECRET)
    other.hardlink_to(file)
    wipe(file)
    assert other.read_bytes() == SECRET


def test_a_link_goes_and_what_it_leads_to_stays(tmp_path: Path) -> None:
    file, link = tmp_path / "mine", tmp_path / "link"
    file.write_bytes(SECRET)
    link.symlink_to(file)
    wipe(link)
    assert listed(tmp_path) == ["mine"]
    assert file.read_bytes() == SECRET


def test_what_a_save_replaced_is_overwritten_unless_it_failed(tmp_path: Path) -> None:
    file = tmp_path / "home.case"
    file.write_bytes(SECRET)
    with file.open("rb") as still_open:
        with pytest.raises(ZeroDivisionError), wiping_what_is_replaced(file):
            raise ZeroDivisionError
        assert still_open.read() == SECRET
        still_open.seek(0)
        with wiping_what_is_replaced(file):
            save(file, b"new")
        assert still_open.read() == bytes(len(SECRET))
    assert file.read_bytes() == b"new"


def test_everything_of_a_case_is_found_and_goes(path: Path) -> None:
    begun(path).write_bytes(b"")
    bring_back(path)
    neighbour = begun(path.with_name("other.case"))
    (path.parent / "home.case.txt").write_text("mine")
    found = belongings(path)
    assert names(found) == ["home.case", "home.case.copies", "home.case.damaged"]
    assert all(map(remove, found))
    assert listed(path.parent) == ["home.case.txt", "other.case", "other.case.copies"]
    assert CaseFile.load(neighbour).case.petitioner.name == "Bea"


def test_the_rest_of_a_killed_save_goes_too(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    begun(path)
    with monkeypatch.context() as patched:
        patched.setattr("os.replace", lambda *_, **__: None)
        patched.setattr("os.unlink", lambda *_, **__: None)
        save(path, b"half")
    assert len(belongings(path)) == 3
    assert all(map(remove, belongings(path)))
    assert listed(path.parent) == []


def test_a_sealed_or_a_damaged_file_needs_no_passphrase_to_go(path: Path) -> None:
    path.write_bytes(Seal.new("otter", Cost(8 * 1024, 1, 1)).close(b"x")[:-1])
    assert all(map(remove, belongings(path)))
    assert listed(path.parent) == []


def test_a_file_of_another_kind_is_not_touched(path: Path) -> None:
    path.write_text("Dear Ana,")
    with pytest.raises(NotACaseFile):
        belongings(path)
    path.unlink()
    path.mkdir()
    with pytest.raises(NotACaseFile):
        belongings(path)
    assert belongings(path.with_name("gone.case")) == []


def test_a_link_goes_together_with_the_case_file_it_leads_to(path: Path, tmp_path: Path) -> None:
    begun(path)
    link = tmp_path / "link.case"
    link.symlink_to(path)
    assert all(map(remove, belongings(link)))
    assert listed(tmp_path) == []


def test_what_cannot_be_removed_is_told(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    begun(path)

    def refused(*_args: object, **_kwargs: object) -> None:
        raise PermissionError

    with monkeypatch.context() as patched:
        patched.setattr("os.unlink", refused)
        assert not remove(path)
