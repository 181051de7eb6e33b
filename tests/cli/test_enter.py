"""Facts entered into one case and into many: what changes is shown, other people are never put in unseen."""

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile
from tests.cli.person import HOUSEHOLDS, ON, Ran, Sitting, flat, written

Run = Callable[..., Ran]
OTHERS = HOUSEHOLDS / "two-children-moved-county.yaml"


def put(folder: Path, text: str, name: str = "facts.yaml") -> None:
    (folder / name).write_text(text, "utf-8")


def test_what_is_replaced_is_shown_old_and_new(run: Run, home: Path, tmp_path: Path) -> None:
    put(tmp_path, "court.branch: Annex\n")
    ran = run("enter", "home.case", "facts.yaml", "--on", ON)
    assert "court.branch: Annex (was: Family Courthouse)" in flat(ran.out)
    put(tmp_path, "court.branch: North\n")
    changed = run("enter", "home.case", "facts.yaml", "--json").envelope["data"]["changed"]
    assert changed == [{"key": "court.branch", "before": "Annex", "after": "North"}]


def test_a_dry_run_shows_the_same_and_saves_nothing(run: Run, home: Path, tmp_path: Path) -> None:
    before = home.read_bytes()
    put(tmp_path, "court.branch: Annex\n")
    ran = run("enter", "home.case", "facts.yaml", "--dry-run")
    assert "1 answer would change. Nothing was saved." in ran.out
    assert "court.branch: Annex (was: Family Courthouse)" in flat(ran.out)
    assert run("enter", "new.case", "facts.yaml", "--dry-run").exit == 0
    assert home.read_bytes() == before
    assert sorted(one.name for one in tmp_path.iterdir()) == ["facts.yaml", "home.case"]


def test_other_people_are_put_into_a_case_only_on_purpose(run: Run, home: Path) -> None:
    before = home.read_bytes()
    ran = run("enter", "home.case", OTHERS, "--on", ON)
    assert ran.exit == 2
    assert "petitioner.name, respondent.name" in ran.said
    assert "Okafor" not in ran.said
    assert home.read_bytes() == before
    assert run("enter", "home.case", OTHERS, "--replace", "--on", ON).exit == 0
    assert CaseFile.load(home).case.petitioner.name != "Dana Marie Okafor"


def test_a_person_at_the_terminal_is_asked_about_other_people(home: Path, tmp_path: Path) -> None:
    put(tmp_path, "petitioner.name: Dana M. Okafor\n")
    for typed, name in (("", "Dana Marie Okafor"), ("replace", "Dana M. Okafor")):
        sitting = Sitting(home, "enter", "home.case", "facts.yaml", "--on", ON)
        shown = sitting.wait("just Enter to save nothing: ")
        assert "petitioner.name: Dana M. Okafor (was: Dana Marie Okafor)" in shown
        sitting.child.sendline(typed)
        assert sitting.end() == 0
        assert CaseFile.load(home).case.petitioner.name == name


def test_the_same_name_in_other_letters_is_the_same_person(run: Run, home: Path, tmp_path: Path) -> None:
    put(tmp_path, "petitioner.name: DANA MARIE OKAFOR\n")
    assert run("enter", "home.case", "facts.yaml", "--on", ON).exit == 0


def test_one_file_of_facts_goes_into_many_cases_a_line_each(run: Run, tmp_path: Path) -> None:
    for number, name in enumerate(("plain-childless-divorce", "two-children-moved-county"), 1):
        written(tmp_path, name).rename(tmp_path / f"{number}.case")
    (tmp_path / "3.case").write_text("no case")
    put(tmp_path, "court.branch: Annex\n")
    ran = run("enter", "1.case", "2.case", "3.case", "4.case", "facts.yaml", "--on", ON)
    assert ran.exit == 2
    lines = [line for line in ran.out.splitlines() if ".case: " in line]
    assert [line.partition(":")[0] for line in lines] == ["1.case", "2.case", "3.case", "4.case"]
    assert "4 case files. 2 were left as they were." in flat(ran.out)
    assert not (tmp_path / "4.case").exists()
    for number in (1, 2):
        assert CaseFile.load(tmp_path / f"{number}.case").case.court.branch == "Annex"
    data = json.loads(run("enter", "1.case", "2.case", "facts.yaml", "--json").out)["data"]
    assert [(one["file"], one["exit"]) for one in data["cases"]] == [("1.case", 0), ("2.case", 0)]


def test_without_a_case_file_it_is_the_home_case_and_facts_may_be_piped_in(run: Run, tmp_path: Path) -> None:
    put(tmp_path, "court.branch: Annex\n")
    assert run("enter", "facts.yaml").exit == 0
    assert run("enter", "-", typed="court.county: Kern\n").exit == 0
    assert run("enter", "home.case", "-", typed="debt,kind,words\n,credit_card,Store\n").exit == 0
    case = CaseFile.load(tmp_path / "home.case").case
    assert (case.court.branch, case.court.county, case.debt[0].words) == ("Annex", "Kern", "Store")
    assert "no file of facts in this command" in run("enter", "home.case").said


def test_a_new_case_begins_with_the_defaults_of_a_clinic(run: Run, home: Path, tmp_path: Path) -> None:
    put(tmp_path, "court.county: Kern\ncourt.branch: Annex\n", "clinic.yaml")
    put(tmp_path, "court.branch: North\n")
    run("enter", "one.case", "facts.yaml", "--defaults", "clinic.yaml")
    run("enter", "two.case", "facts.yaml", FIRSTPAPER_DEFAULTS="clinic.yaml")
    run("enter", "home.case", "facts.yaml", FIRSTPAPER_DEFAULTS="clinic.yaml")
    run("enter", "three.case", "facts.yaml")
    told = {
        name: CaseFile.load(tmp_path / f"{name}.case").case.court for name in ("one", "two", "home", "three")
    }
    assert {name: court.branch for name, court in told.items()} == dict.fromkeys(told, "North")
    assert {name: court.county for name, court in told.items()} == {
        "one": "Kern",
        "two": "Kern",
        "home": "Fresno",
        "three": None,
    }


@pytest.mark.parametrize("encoding", ["utf-16", "utf-8-sig"])
def test_a_table_as_a_spreadsheet_saves_it_is_read(
    run: Run, home: Path, tmp_path: Path, encoding: str
) -> None:
    (tmp_path / "t.csv").write_bytes("asset\tkind\twords\n\tcash\tCaña\n".encode(encoding))
    assert run("enter", "home.case", "t.csv").exit == 0
    assert CaseFile.load(home).case.asset[0].words == "Caña"


def test_letters_that_cannot_be_told_for_sure_are_not_guessed(run: Run, home: Path, tmp_path: Path) -> None:
    (tmp_path / "t.csv").write_bytes("asset,kind,words\n,cash,Caña\n".encode("latin-1"))
    ran = run("enter", "home.case", "t.csv")
    assert ran.exit == 2
    assert "in a spreadsheet as CSV UTF-8" in ran.said


def test_undo_says_what_it_takes_back(run: Run, home: Path, tmp_path: Path) -> None:
    put(tmp_path, "asset,kind,words\n" + "".join(f",cash,Box {n}\n" for n in range(60)), "things.csv")
    put(tmp_path, "court.branch: Annex\n")
    run("enter", "home.case", "things.csv")
    run("enter", "home.case", "things.csv")
    run("enter", "home.case", "facts.yaml")
    assert "Taken back: what was entered from facts.yaml." in flat(run("undo", "home.case").out)
    assert "Taken back: 60 things, entered from things.csv." in run("undo", "home.case").out
    assert CaseFile.load(home).case.asset == ()


def test_dates_told_before_the_kind_of_case_are_not_called_unfit(run: Run, tmp_path: Path) -> None:
    put(tmp_path, "dates.married_on: 2012-06-02\n")
    ran = run("enter", "new.case", "facts.yaml")
    assert "do not fit" not in ran.out
    assert "count as soon as the kind of case is told: dates.married_on" in flat(ran.out)


def test_a_file_that_nobody_filled_in_begins_no_case(run: Run, tmp_path: Path) -> None:
    put(tmp_path, "# petitioner.name:\n")
    ran = run("enter", "new.case", "facts.yaml")
    assert ran.exit == 2
    assert "tells nothing yet" in ran.said
    assert not (tmp_path / "new.case").exists()


def test_each_file_of_facts_begins_a_case_and_a_bad_one_stops_no_other(run: Run, tmp_path: Path) -> None:
    (tmp_path / "cases").mkdir()
    put(tmp_path, "court.county: Kern\n", "26-1.yaml")
    put(tmp_path, "court.county: Atlantis\ndates.married_on: soon\n", "26-2.yaml")
    put(tmp_path, "court.county: Fresno\n", "26-3.yaml")
    ran = run("enter", "--each-into", "cases", "26-1.yaml", "26-2.yaml", "26-3.yaml")
    assert ran.exit == 2
    assert "2 lines in 26-2.yaml cannot be used" in flat(ran.out)
    assert "Line 1, court.county:" in ran.out
    assert "Line 2, dates.married_on:" in ran.out
    assert sorted(one.name for one in (tmp_path / "cases").glob("*.case")) == ["26-1.case", "26-3.case"]
    again = run("enter", "--each-into", "cases", "26-1.yaml", "26-3.yaml")
    assert "There is a case file at" in flat(again.out)
