"""Courthouses already typed: only for the same county, only from case files, and nothing else with them."""

from pathlib import Path

from firstpaper.casefile import CaseFile
from firstpaper.cli.files.courthouses import courthouses_nearby
from firstpaper.facts import DONT_KNOW, Case

DOWNTOWN = {"street": "1 Court Plaza", "city": "Lakeport", "state": "CA", "zip": "95453"}
NORTH = {"street": "9 North Road", "city": "Clearlake", "state": "CA", "zip": "95422"}


def written(folder: Path, name: str, county: object, address: object) -> None:
    CaseFile(Case().with_fact("court.county", county).with_fact("court.address", address)).save(folder / name)


def test_the_most_used_courthouse_of_the_county_comes_first(tmp_path: Path) -> None:
    written(tmp_path, "a.case", "Lake", NORTH)
    written(tmp_path, "b.case", "Lake", DOWNTOWN)
    written(tmp_path, "c.case", "lake", DOWNTOWN)
    written(tmp_path, "d.case", "Kern", {"street": "5 Elm", "city": "Bakersfield"})
    found = courthouses_nearby(tmp_path / "new.case", "Lake")
    assert [address.street for address in found] == ["1 Court Plaza", "9 North Road"]


def test_files_of_other_kinds_unknown_courts_and_the_case_itself_are_passed_over(tmp_path: Path) -> None:
    (tmp_path / "letter.txt").write_text("Dear court,")
    (tmp_path / "broken.case").write_text('{"firstpaper": ')
    (tmp_path / "folder").mkdir()
    written(tmp_path, "unknown.case", "Lake", DONT_KNOW)
    written(tmp_path, "nowhere.case", DONT_KNOW, DOWNTOWN)
    written(tmp_path, "self.case", "Lake", DOWNTOWN)
    assert courthouses_nearby(tmp_path / "self.case", "Lake") == ()


def test_a_folder_that_is_not_there_offers_nothing(tmp_path: Path) -> None:
    assert courthouses_nearby(tmp_path / "gone" / "a.case", "Lake") == ()


def test_looking_leaves_no_trace(tmp_path: Path) -> None:
    written(tmp_path, "a.case", "Lake", NORTH)
    courthouses_nearby(tmp_path / "new.case", "Lake")
    assert [one.name for one in tmp_path.iterdir()] == ["a.case"]
