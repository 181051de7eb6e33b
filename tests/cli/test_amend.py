"""Beginning an amended petition, and holding it against the earlier one."""

import json
from collections.abc import Callable
from pathlib import Path

from firstpaper.casefile import CaseFile
from firstpaper.intake.differing import differences
from tests.cli.person import Ran

Run = Callable[..., Ran]


def test_a_new_case_file_is_begun_and_the_answers_of_the_earlier_one_stay(run: Run, home: Path) -> None:
    before = CaseFile.load(home).case
    ran = run("amend", "home.case", "new.case", "--json")
    assert ran.exit == 0
    assert "matter.case_number" in json.loads(ran.out)["data"]["open_questions"]
    assert differences(before, CaseFile.load(home).case) == ()
    assert CaseFile.load(home).case.record.amended_in == "new.case"
    assert CaseFile.load(home.with_name("new.case")).case.matter.amended is True


def test_a_name_that_is_taken_is_refused(run: Run, home: Path) -> None:
    before = home.read_bytes()
    ran = run("amend", "home.case", "home.case")
    assert ran.exit == 2
    assert "a name that is not taken" in " ".join(ran.said.split())
    assert home.read_bytes() == before


def test_the_packet_shows_what_changes(run: Run, home: Path) -> None:
    run("amend", "home.case", "new.case")
    ran = run("packet", "new.case", "--amends", "home.case", "--html", "new.html", "--on", "2026-11-30")
    assert ran.exit in (0, 1)
    assert "What changes in the amended petition" in home.with_name("new.html").read_text("utf-8")


def test_a_first_petition_has_no_earlier_one(run: Run, home: Path) -> None:
    ran = run("packet", "home.case", "--amends", "home.case")
    assert ran.exit == 2
    assert "not marked as an amended petition" in " ".join(ran.said.split())
    assert not home.with_suffix(".pdf").exists()
