"""Erasing, leaving, taking back and mending, as a person meets them."""

import stat
from collections.abc import Callable
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile
from tests.cli.person import ON, Ran, Sitting, flat, without

Run = Callable[..., Ran]
Begin = Callable[..., Sitting]

CLEARED = "\x1b[H\x1b[2J\x1b[3J"
ASKED = "or just Enter to change nothing: "


def names(folder: Path) -> list[str]:
    return sorted(one.name for one in folder.iterdir())


def heard_after(sitting: Sitting) -> str:
    """What stands on the screen after it was emptied."""
    return flat(sitting.heard.rpartition(CLEARED)[2])


# --- erase ------------------------------------------------------------------------------------------


def test_erase_shows_what_goes_and_removes_it_all(run: Run, home: Path, tmp_path: Path) -> None:
    run("packet", "home.case", "--html", "home.html", "--on", ON)
    (tmp_path / "facts.yaml").write_text("court.branch: Annex\n", "utf-8")
    run("enter", "home.case", "facts.yaml")
    (tmp_path / "home.txt").write_text("a letter of the same name")
    sitting = Sitting(home, "erase", "home.case")
    shown = sitting.wait(ASKED)
    for name in ("home.case", "home.case.copies", "home.pdf", "home.html"):
        assert f"- {name}" in shown
    sitting.child.sendline("erase")
    assert sitting.end() == 0
    assert "No program can promise that nothing is left." in flat(sitting.heard)
    assert names(tmp_path) == ["facts.yaml", "home.txt"]


def test_anything_but_the_word_changes_nothing(home: Path) -> None:
    run_before = names(home.parent)
    for typed in ("", "yes", "no", "erase it"):
        sitting = Sitting(home, "erase", "home.case")
        sitting.wait(ASKED)
        sitting.child.sendline(typed)
        assert sitting.end() == 0
        assert "Nothing was removed." in flat(sitting.heard)
    assert names(home.parent) == run_before


def test_a_pdf_of_the_same_name_that_is_no_pdf_stays(run: Run, home: Path) -> None:
    home.with_name("home.pdf").write_text("notes")
    assert run("erase", "home.case", "--yes").exit == 0
    assert names(home.parent) == ["home.pdf"]


def test_drafts_left_behind_by_a_file_deleted_by_hand_are_found(run: Run, home: Path) -> None:
    run("packet", "home.case", "--on", ON)
    home.unlink()
    assert run("erase", "home.case", "--yes").exit == 0
    assert names(home.parent) == []
    assert run("erase", "home.case", "--yes").exit == 2


def test_a_file_that_is_open_in_another_window_is_not_erased(run: Run, sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    assert "open in another window" in run("erase", "home.case", "--yes").said
    assert home.exists()


# --- leave ------------------------------------------------------------------------------------------


def test_leaving_empties_the_screen_and_then_says_where_the_answers_are(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.type("review")
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert sitting.heard.count(CLEARED) == 1
    left = heard_after(sitting)
    assert "Your answers are saved in home.case." in left
    assert "Okafor" not in left


def afraid(home: Path) -> Path:
    """The same case, told by somebody who shares the computer and is afraid."""
    file = CaseFile.load(home)
    case = file.case.with_fact("safety.here", "shared_computer").with_fact("safety.dangers", ["afraid"])
    file.with_case(case.with_fact("waiver.wanted", False)).save(home)
    return home


def test_control_c_empties_the_screen_where_danger_was_told(sit: Begin, home: Path) -> None:
    without(afraid(home), "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.type("review")
    sitting.child.sendintr()
    assert sitting.end() == 130
    assert sitting.heard.count(CLEARED) == 1
    assert "Okafor" not in heard_after(sitting)


def test_the_last_answer_empties_the_screen_where_danger_was_told(sit: Begin, home: Path) -> None:
    without(afraid(home), "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.type("review")
    sitting.answer("none")
    assert sitting.end() == 0
    assert "Okafor" not in heard_after(sitting)
    assert "That was the last question." in heard_after(sitting)


def test_where_nobody_is_in_danger_the_screen_stays(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.answer("none")
    assert sitting.end() == 0
    assert CLEARED not in sitting.heard


LOCK_IT = "Type no, or just Enter for yes: "


def test_a_packet_that_tells_of_danger_is_offered_with_a_lock_and_says_how_to_remove_it(home: Path) -> None:
    sitting = Sitting(afraid(home), "packet", "home.case", "--on", ON)
    assert "Anybody who finds a PDF without a passphrase can open it." in sitting.wait(LOCK_IT)
    sitting.child.sendline("no")
    assert sitting.end() == 0
    assert "remove home.pdf and empty the trash" in flat(sitting.heard)
    assert home.with_name("home.pdf").read_bytes().startswith(b"%PDF")
    assert b"/Encrypt" not in home.with_name("home.pdf").read_bytes()


def test_just_enter_locks_the_packet_of_somebody_in_danger(home: Path) -> None:
    sitting = Sitting(afraid(home), "packet", "home.case", "--on", ON)
    sitting.wait(LOCK_IT)
    sitting.type("", then="for none: ")
    sitting.type("correct horse battery staple", then=": ")
    sitting.child.sendline("correct horse battery staple")
    assert sitting.end() == 0
    assert b"/Encrypt" in home.with_name("home.pdf").read_bytes()


def test_a_packet_without_danger_is_made_without_a_question(home: Path) -> None:
    sitting = Sitting(home, "packet", "home.case", "--on", ON)
    assert sitting.end() == 0
    assert "passphrase" not in sitting.heard


def test_somebody_who_is_not_safe_leaves_an_empty_screen_with_the_hotline(sit: Begin) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    sitting.child.sendline("3")
    assert sitting.end() == 0
    assert "1-800-799-7233" in heard_after(sitting)
    assert "Question" not in heard_after(sitting)


@pytest.mark.parametrize("terminal", ["dumb", "", "unknown"])
def test_a_terminal_that_knows_no_escapes_gets_none(sit: Begin, home: Path, terminal: str) -> None:
    without(home, "court.branch")
    sitting = sit(TERM=terminal)
    sitting.wait()
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert "\x1b" not in sitting.heard


def test_a_pipe_gets_no_escapes(run: Run, home: Path) -> None:
    without(home, "court.branch")
    assert run("ask", "home.case", "--on", ON, typed="leave\n").exit == 0


# --- undo -------------------------------------------------------------------------------------------


def test_the_word_takes_back_the_last_answers_and_asks_again(sit: Begin, home: Path) -> None:
    without(home, "court.branch", "court.address", "petitioner.phone")
    sitting = sit()
    sitting.wait()
    sitting.type("555-0100")
    sitting.child.sendline("9 Elm Road, Fresno, CA 93701")
    sitting.wait()
    assert sitting.file.case.court.address is not None
    back = sitting.type("undo")
    assert "Taken back." in back
    assert "courthouse" in back.split("Question")[-1]
    assert sitting.file.case.court.address is None
    assert "At what phone number" in sitting.type("undo").split("Question")[-1]
    assert sitting.file.case.petitioner.phone is None
    assert "nothing left to take back" in sitting.type("undo")


def test_a_skip_can_be_taken_back_too(sit: Begin, home: Path) -> None:
    without(home, "court.branch", "petitioner.phone")
    sitting = sit()
    sitting.wait()
    sitting.type("555-0100")
    sitting.type("skip")
    assert sitting.file.passed == ("court.branch",)
    assert "skipped is open again" in sitting.type("undo")
    assert sitting.file.passed == ()


def test_the_command_takes_back_what_a_file_of_facts_changed(run: Run, home: Path, tmp_path: Path) -> None:
    for branch in ("Annex", "North"):
        (tmp_path / "facts.yaml").write_text(f"court.branch: {branch}\n", "utf-8")
        run("enter", "home.case", "facts.yaml")
    ran = run("undo", "home.case", "--json")
    assert ran.envelope["data"] == {"changed": ["court.branch"], "mended": False}
    assert CaseFile.load(home).case.court.branch == "Annex"
    assert stat.S_IMODE(home.stat().st_mode) == 0o600


def test_the_command_names_the_event_it_takes_back(run: Run, home: Path) -> None:
    run("record", "home.case", "filed", "day=2026-11-30", "number=26FL00123", "--on", ON)
    run("record", "home.case", "--undo", "filed", "--on", ON)
    ran = run("undo", "home.case")
    assert "Taken back: what was taken out of the record (The petition was filed)." in flat(ran.out)
    assert "- What case number did the court give you?" in flat(ran.out)
    assert CaseFile.load(home).case.record.case_number == "26FL00123"
    again = run("undo", "home.case")
    assert "Taken back: what was recorded (The petition was filed)." in flat(again.out)
    assert CaseFile.load(home).case.record.case_number is None


# --- damage -----------------------------------------------------------------------------------------


def test_a_damaged_file_is_mended_where_the_person_says_yes(sit: Begin, home: Path, run: Run) -> None:
    run("change", "home.case", "court.branch", "--on", ON, typed="Annex\n")
    whole = home.read_bytes()
    home.write_bytes(whole[:200])
    sitting = sit()
    assert "it breaks off" in sitting.wait(ASKED)
    sitting.child.sendline("")
    assert sitting.end() == 2
    assert home.read_bytes() == whole[:200]

    without_a_person = run("ask", "home.case")
    assert without_a_person.exit == 2
    assert "firstpaper undo home.case" in without_a_person.said

    sitting = sit()
    sitting.wait(ASKED)
    sitting.child.sendline("yes")
    assert sitting.end() == 0
    assert home.read_bytes() == whole
    assert home.with_name("home.case.damaged").read_bytes() == whole[:200]


def test_undo_mends_a_damaged_file(run: Run, home: Path) -> None:
    run("change", "home.case", "court.branch", "--on", ON, typed="Annex\n")
    whole = home.read_bytes()
    home.write_bytes(b"")
    ran = run("undo", "home.case", "--json")
    assert ran.envelope["data"] == {"changed": [], "mended": True}
    assert home.read_bytes() == whole
