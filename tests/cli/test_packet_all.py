"""The packets of many cases: each by itself, not twice, and never over the draft of another case."""

from collections.abc import Callable
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile
from firstpaper.cli.shapes import SHAPES
from tests.cli.person import ON, Ran, Sitting, facts_of, flat

Run = Callable[..., Ran]


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    folder = tmp_path / "clinic"
    folder.mkdir()
    for number, name in enumerate(("plain-childless-divorce", "two-children-moved-county"), 1):
        CaseFile(facts_of(name)).save(folder / f"{number}.case")
    (folder / "3.case").write_text("{")
    return folder


def test_one_failed_case_stops_no_other_and_done_work_is_not_redone(run: Run, clinic: Path) -> None:
    ran = run("packet", "--all", "clinic", "--on", ON, "--json")
    assert ran.exit == ran.envelope["exit"] == 2
    data = ran.envelope["data"]
    assert [(Path(one["file"]).name, one["exit"]) for one in data["cases"]] == [
        ("1.case", 0),
        ("2.case", 1),
        ("3.case", 2),
    ]
    assert (data["drafted"], data["kept"], data["failed"], data["stopped"]) == (2, 0, 1, 1)
    before = (clinic / "1.pdf").stat().st_mtime_ns
    run("change", "clinic/2.case", "court.branch=Annex", "--on", ON)
    again = run("packet", "--all", "clinic", "--on", ON, "--json").envelope["data"]
    assert (again["drafted"], again["kept"]) == (1, 1)
    for one in again["cases"][:2]:
        SHAPES["packet"].model_validate(one["data"])
    assert (clinic / "1.pdf").stat().st_mtime_ns == before
    other_day = run("packet", "clinic/1.case", "clinic/2.case", "--on", "2026-12-21", "--json")
    assert other_day.envelope["data"]["drafted"] == 2


def test_what_is_for_one_case_is_refused_for_many_and_an_empty_folder_is_told(
    run: Run, clinic: Path, tmp_path: Path
) -> None:
    assert "--output is for one case file" in run("packet", "--all", "clinic", "-o", "x.pdf").said
    (tmp_path / "none").mkdir()
    assert "There is no case file in none" in run("packet", "--all", "none").said
    assert list(clinic.glob("*.pdf")) == []


def test_a_file_of_another_kind_is_not_made_under_a_wrong_name(run: Run, home: Path, tmp_path: Path) -> None:
    ran = run("packet", "home.case", "-o", "out.docx", "--on", ON)
    assert ran.exit == 2
    assert "ends with .pdf" in ran.said
    assert not (tmp_path / "out.docx").exists()


def test_the_draft_of_another_case_is_replaced_only_on_purpose(run: Run, clinic: Path) -> None:
    run("packet", "clinic/1.case", "--on", ON)
    before = (clinic / "1.pdf").read_bytes()
    assert "is the draft of another case" in run("packet", "clinic/2.case", "-o", "clinic/1.pdf").said
    for typed, same in (("", True), ("replace", False)):
        sitting = Sitting(clinic / "2.case", "packet", "2.case", "-o", "1.pdf", "--on", ON)
        sitting.wait("just Enter to stop: ")
        sitting.child.sendline(typed)
        sitting.end()
        assert ((clinic / "1.pdf").read_bytes() == before) is same


def test_a_script_tells_a_complete_packet_from_one_with_open_questions(run: Run, home: Path) -> None:
    assert run("packet", "home.case", "--require-complete", "--on", ON, "--json").envelope["data"][
        "state"
    ] == ("complete")
    run("change", "home.case", "court.branch=", "--on", ON)
    ran = run("packet", "home.case", "--require-complete", "--on", ON, "--json")
    assert (ran.exit, ran.envelope["data"]["state"]) == (3, "open")
    assert run("packet", "home.case", "--on", ON).exit == 0
    assert "packet" in flat(run("packet", "--help").out)
