"""`firstpaper shelf`: stages, days, their order, files that cannot be read, and nothing written."""

import os
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from icalendar import Calendar

from firstpaper.casefile import CaseFile
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.casefile.upgrades import SCHEMA
from firstpaper.cli import processes
from firstpaper.cli.files import shelf as shelves
from firstpaper.cli.files.shelf import Stage, shelf
from firstpaper.facts import Case
from tests.cli.person import Ran, entered, facts_of, flat

Run = Callable[..., Ran]
ON = date(2026, 11, 30)
PLAIN = "plain-childless-divorce"


def told(case: Case, **facts: Any) -> Case:
    """The case with more facts; two underscores in a name stand for a dot."""
    for name, value in facts.items():
        case = case.with_fact(name.replace("__", "."), value)
    return case


def put(folder: Path, name: str, case: Case) -> Path:
    path = folder / name
    CaseFile(case).save(path)
    return path


def only(folder: Path, case: Case, on: date = ON) -> shelves.Shelved:
    """How one case stands."""
    put(folder, "one.case", case)
    cases, unread = shelf(folder, on)
    assert unread == []
    return cases[0]


@pytest.fixture(scope="module")
def plain() -> Case:
    return facts_of(PLAIN)


# --- stages ---------------------------------------------------------------------------------------


def test_a_case_with_open_questions_says_how_many(plain: Case, tmp_path: Path) -> None:
    one = only(tmp_path, told(plain, petitioner__phone=None, court__branch=None))
    assert (one.stage, one.open_questions) == (Stage.QUESTIONS_OPEN, 2)


def test_an_answered_case_is_ready_to_draft_and_a_drafted_one_to_file(plain: Case, tmp_path: Path) -> None:
    assert only(tmp_path, plain).stage is Stage.READY_TO_DRAFT
    (tmp_path / "one.pdf").write_bytes(b"%PDF-1.7 drafted")
    assert shelf(tmp_path, ON)[0][0].stage is Stage.READY_TO_FILE
    saved = (tmp_path / "one.case").stat().st_mtime
    os.utime(tmp_path / "one.pdf", (saved - 60, saved - 60))
    assert shelf(tmp_path, ON)[0][0].stage is Stage.READY_TO_DRAFT


def test_a_pdf_by_name_alone_or_of_another_case_is_no_draft(plain: Case, tmp_path: Path) -> None:
    (tmp_path / "other.pdf").write_bytes(b"%PDF-1.7")
    (tmp_path / "one.pdf").write_bytes(b"a shopping list")
    assert only(tmp_path, plain).stage is Stage.READY_TO_DRAFT


def test_a_case_that_must_not_be_filed_yet_is_stopped_until_its_safe_day(tmp_path: Path) -> None:
    """Fam. Code 2320(a): three months in the county from September 16, 2026, and a day to be safe."""
    case = facts_of("two-children-moved-county")
    one = only(tmp_path, case)
    assert (one.stage, one.stops) == (Stage.STOPPED, 1)
    assert one.next is not None
    assert (one.next.day, one.next.key) == (date(2026, 12, 17), "residence.same_spouse")
    after = only(tmp_path, case, date(2026, 12, 17))
    assert (after.stage, after.stops, after.next) == (Stage.READY_TO_DRAFT, 0, None)


def test_a_stop_shows_also_while_questions_are_open(tmp_path: Path) -> None:
    case = facts_of("two-children-moved-county").with_fact("petitioner.phone", None)
    one = only(tmp_path, case)
    assert (one.stage, one.open_questions, one.stops) == (Stage.QUESTIONS_OPEN, 1, 1)


FILED = {"record__filed_on": "2026-09-01"}
SERVED = FILED | {"record__service__method": "personal", "record__service__served_on": "2026-09-14"}


def test_events_that_were_recorded_move_a_case_on(plain: Case, tmp_path: Path) -> None:
    on = date(2026, 10, 20)
    steps = [
        (FILED, Stage.FILED),
        (SERVED, Stage.SERVED),
        (SERVED | {"record__response_filed_on": "2026-10-01"}, Stage.ANSWERED),
        (SERVED | {"record__default_asked_on": "2026-10-19"}, Stage.DEFAULT_ASKED),
    ]
    for facts, stage in steps:
        one = only(tmp_path, told(plain, **facts), on)
        assert (one.stage, one.stops) == (stage, None)


def test_an_event_that_is_still_to_come_does_not_count(plain: Case, tmp_path: Path) -> None:
    case = told(plain, **SERVED)
    assert only(tmp_path, case, date(2026, 8, 31)).stage in (Stage.STOPPED, Stage.READY_TO_DRAFT)
    assert only(tmp_path, case, date(2026, 9, 13)).stage is Stage.FILED
    assert only(tmp_path, case, date(2026, 9, 14)).stage is Stage.SERVED


def test_an_amended_petition_is_drafted_while_its_case_runs(tmp_path: Path) -> None:
    case = facts_of("amended-petition")
    one = only(tmp_path, case)
    assert one.stage in (Stage.READY_TO_DRAFT, Stage.STOPPED)
    assert "disclosure.petitioner" in [each.key for each in one.missed]
    assert only(tmp_path, told(case, record__amended_on="2026-11-20")).stage not in (
        Stage.READY_TO_DRAFT,
        Stage.STOPPED,
    )


# --- days -----------------------------------------------------------------------------------------


def test_disclosure_is_due_60_days_after_the_filing_and_moves_off_a_saturday(
    plain: Case, tmp_path: Path
) -> None:
    """Fam. Code 2104(f): 60 days from September 1, 2026 end on Saturday, October 31 (Code Civ. Proc. 12a)."""
    case = told(plain, **FILED)
    before = only(tmp_path, case, date(2026, 10, 30)).next
    assert before is not None
    assert (before.day, before.key) == (date(2026, 10, 31), "disclosure.petitioner")
    moved = only(tmp_path, case, date(2026, 11, 1))
    assert moved.next is not None
    assert (moved.next.day, moved.missed) == (date(2026, 11, 2), ())
    late = only(tmp_path, case, date(2026, 11, 3))
    assert [(one.day, one.key) for one in late.missed] == [(date(2026, 10, 31), "disclosure.petitioner")]
    done = only(tmp_path, told(case, record__disclosure_served_on="2026-10-20"), date(2026, 11, 3))
    assert done.missed == ()


def test_a_response_is_due_30_days_after_service_and_then_a_default_is_possible(
    plain: Case, tmp_path: Path
) -> None:
    """Fam. Code 2020: 30 days from September 14, 2026 end on Wednesday, October 14."""
    case = told(plain, record__disclosure_served_on="2026-09-02", **SERVED)
    waiting = only(tmp_path, case, date(2026, 10, 14))
    assert waiting.next is not None
    assert (waiting.next.day, waiting.next.key, waiting.next.who) == (
        date(2026, 10, 14),
        "response.petition",
        "respondent",
    )
    late = only(tmp_path, case, date(2026, 10, 20))
    assert late.missed == ()  # it is the other side who missed the day
    assert [(one.day, one.key) for one in late.possible] == [(date(2026, 10, 15), "response.default_from")]


def test_the_last_day_of_a_nullity_is_told_before_the_filing(tmp_path: Path) -> None:
    case = facts_of("nullity-for-force")
    assert case.dates.married_on.year == 2022  # type: ignore[union-attr]
    found = only(tmp_path, case)
    assert found.next is not None
    assert (found.next.key, found.next.meaning) == ("nullity.last_day", "last_day")
    later = only(tmp_path, case, date(2027, 11, 30))
    assert [one.key for one in later.missed] == ["nullity.last_day"]


def test_what_is_due_first_comes_first_and_then_what_is_furthest(plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "a-begun.case", told(plain, petitioner__phone=None, petitioner__email=None))
    put(tmp_path, "b-nearly.case", told(plain, petitioner__phone=None))
    put(tmp_path, "c-ready.case", plain)
    put(tmp_path, "d-soon.case", facts_of("two-children-moved-county"))
    put(tmp_path, "e-late.case", told(plain, **FILED))
    put(tmp_path, "f-later.case", facts_of("nullity-under-age-by-the-spouse"))
    cases, _unread = shelf(tmp_path, ON)
    assert [one.file[0] for one in cases] == ["e", "d", "f", "c", "b", "a"]


# --- what a person reads --------------------------------------------------------------------------


def test_the_list_says_how_each_stands_and_when_it_is_due(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "26-014.case", told(plain, **FILED))
    put(tmp_path, "26-015.case", told(plain, petitioner__phone=None))
    text = flat(run("shelf", "--paragraphs", "--on", "2026-10-30").out)
    assert text.startswith("2 case files on Friday, October 30, 2026. What is due first is at the top.")
    assert (
        "1. 26-014.case Fresno Filed. The papers are still to be served. Sat, Oct 31, 2026 (in 1 day): "
        in text
    )
    assert "2. 26-015.case Fresno 1 question is open." in text
    late = flat(run("shelf", "--paragraphs", "--on", "2026-11-03").out)
    assert "Overdue since Sat, Oct 31, 2026: Serve the declaration of disclosure" in late


def test_nobody_is_named_unless_asked_for(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "1.case", told(plain, respondent__name=None))
    for more in ((), ("--json",)):
        ran = run("shelf", *more, "--on", str(ON))
        assert "Okafor" not in ran.out + ran.err
    assert "Dana Marie Okafor and no name yet" in flat(
        run("shelf", "--paragraphs", "--names", "--on", str(ON)).out
    )
    (case,) = run("shelf", "--names", "--json", "--on", str(ON)).envelope["data"]["cases"]
    assert (case["petitioner"], case["respondent"]) == ("Dana Marie Okafor", None)


def test_programs_get_the_common_envelope(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "1.case", told(plain, **SERVED))
    envelope = run("shelf", "--json", "--on", "2026-10-20").envelope
    assert (envelope["firstpaper"], envelope["command"], envelope["exit"]) == (1, "shelf", 0)
    assert envelope["errors"] == []
    (case,) = envelope["data"]["cases"]
    assert list(case) == [
        "file",
        "case_number",
        "county",
        "stage",
        "ended",
        "replaced_by",
        "open_questions",
        "stops",
        "missed",
        "possible",
        "next",
        "dates",
    ]
    assert case["county"] == "Fresno"
    assert [one["key"] for one in case["dates"]][:2] == ["response.petition", "response.default_from"]
    assert (case["file"], case["stage"]) == ("1.case", "served")
    assert case["next"] == {
        "day": "2026-10-31",
        "key": "disclosure.petitioner",
        "title": "Serve the declaration of disclosure on the other side",
        "who": "petitioner",
        "meaning": "last_day",
    }
    assert [one["key"] for one in case["possible"]] == ["response.default_from"]


def test_another_folder_can_be_named_and_a_missing_one_is_told(run: Run, plain: Case, tmp_path: Path) -> None:
    (tmp_path / "clinic").mkdir()
    put(tmp_path / "clinic", "1.case", plain)
    assert "1. 1.case" in run("shelf", "--paragraphs", "clinic", "--on", str(ON)).out
    assert flat(run("shelf", "--paragraphs").out) == "There is no case file here to show."
    for name in ("nowhere", "clinic/1.case"):
        ran = run("shelf", name)
        assert ran.exit == 2
        assert "cannot be looked into" in ran.said


def test_a_day_before_the_law_here_is_refused_in_words(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "1.case", plain)
    assert run("shelf", "--on", "tomorrow").exit == 2


def test_names_of_files_and_people_cannot_reach_the_terminal(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "\x1b[2Jx.case", plain)
    (tmp_path / "\x1b]0;y.case").write_bytes(b"{")
    ran = run("shelf", "--paragraphs", "--on", str(ON))  # the runner itself refuses an escape
    assert "x.case" in ran.out
    assert "y.case" in ran.out


# --- files that cannot be read --------------------------------------------------------------------


def test_files_that_cannot_be_read_are_listed_with_what_to_do(run: Run, plain: Case, tmp_path: Path) -> None:
    whole = put(tmp_path, "whole.case", plain).read_text("utf-8")
    (tmp_path / "broken.case").write_text(whole[:400], "utf-8")
    (tmp_path / "newer.case").write_text(whole.replace(f'"schema": {SCHEMA}', '"schema": 99'), "utf-8")
    (tmp_path / "empty.case").touch()
    quick = Cost(memory_kib=8 * 1024, passes=1, lanes=1)
    sealed = Seal.new("otter lamp seven", quick).close(whole.encode())
    (tmp_path / "sealed one").write_bytes(sealed)
    (tmp_path / "cut.case").write_bytes(sealed[:-3])
    ran = run("shelf", "--paragraphs", "--on", str(ON))
    assert ran.exit == 0
    text = flat(ran.out)
    assert text.startswith("1 case file on Monday, November 30, 2026. 5 files could not be looked into")
    assert "1. whole.case" in text
    assert "- broken.case The case file broken.case is damaged" in text
    assert "- newer.case The case file newer.case was saved by a newer Firstpaper" in text
    assert "- empty.case This is no case file, although its name says so." in text
    assert "- sealed one It is locked with a passphrase." in text
    assert "firstpaper check 'sealed one'" in text
    assert "- cut.case" in text
    codes = {one["file"]: one["code"] for one in run("shelf", "--json").envelope["data"]["unread"]}
    assert codes == {
        "broken.case": "case_file_damaged",
        "newer.case": "case_file_too_new",
        "empty.case": "not_a_case_file",
        "sealed one": "case_file_sealed",
        "cut.case": "case_file_damaged",
    }


def test_what_is_no_case_file_is_passed_over_in_silence(plain: Case, tmp_path: Path) -> None:
    one = put(tmp_path, "no ending", plain)
    (tmp_path / "notes.txt").write_text("{'a': 1}")
    (tmp_path / "one.pdf").write_bytes(b"%PDF-1.7")
    (tmp_path / "one.case.lock").write_text("{}")
    (tmp_path / ".case-0000-1234").write_bytes(one.read_bytes())
    (tmp_path / "no ending.damaged").write_text(one.read_text("utf-8")[:300], "utf-8")
    (tmp_path / "no ending.copies").mkdir()
    put(tmp_path / "no ending.copies", "000001", plain)
    os.mkfifo(tmp_path / "pipe.case")
    cases, unread = shelf(tmp_path, ON)
    assert [case.file for case in cases] == ["no ending"]
    assert unread == []


def test_a_damaged_file_points_to_its_copy(plain: Case, tmp_path: Path) -> None:
    (tmp_path / "1.case.copies").mkdir()
    put(tmp_path / "1.case.copies", "000001", plain)
    (tmp_path / "1.case").write_text('{"firstpaper": {', "utf-8")
    _cases, (one,) = shelf(tmp_path, ON)
    assert one.error.code == "copy_kept"
    assert "firstpaper undo" in one.error.message


def test_a_fault_in_one_case_does_not_hide_the_others(
    plain: Case, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    put(tmp_path, "1.case", plain)
    put(tmp_path, "2.case", told(plain, petitioner__name="Somebody Else"))
    whole = shelves.stops

    def broken(case: Case, on: date) -> Any:
        if case.petitioner.name == "Somebody Else":
            raise ValueError(case.petitioner.name)
        return whole(case, on)

    monkeypatch.setattr(shelves, "stops", broken)
    (case,), (fault,) = shelf(tmp_path, ON)
    assert (case.file, fault.file) == ("1.case", "2.case")
    assert "ValueError" in fault.error.message
    assert "Somebody" not in fault.error.message


def test_nothing_is_written_and_no_lock_is_taken_or_minded(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "1.case", plain)
    (tmp_path / "2.case").write_text('{"firstpaper": {', "utf-8")
    (tmp_path / "1.case.lock").write_text('{"process": 1, "started": "", "host": "elsewhere"}')

    def state() -> list[tuple[str, bytes, int]]:
        return sorted((one.name, one.read_bytes(), one.stat().st_mtime_ns) for one in tmp_path.iterdir())

    before = state()
    tmp_path.chmod(0o555)
    try:
        assert run("shelf", "--paragraphs", "--on", str(ON)).exit == 0
    finally:
        tmp_path.chmod(0o755)
    assert state() == before


def test_an_entered_household_and_an_empty_case_can_stand_beside_each_other(tmp_path: Path) -> None:
    put(tmp_path, "empty.case", Case())
    put(tmp_path, "entered.case", entered(PLAIN))
    cases, unread = shelf(tmp_path, ON)
    assert unread == []
    assert [one.file for one in cases] == ["entered.case", "empty.case"]
    assert cases[1].open_questions > 10


# --- what is wanted of it -------------------------------------------------------------------------


def test_a_line_a_case_for_other_programs(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "1.case", told(plain, record__case_number="26FL001", **FILED))
    put(tmp_path, "2.case", told(plain, petitioner__phone=None))
    (tmp_path / "3.case").write_text("{")
    ran = run("shelf", "--on", "2026-11-03")
    first, second, third = ([*line.split("\t")] for line in ran.out.splitlines())
    assert first[:4] == ["1.case", "26FL001", "Fresno", "filed"]
    assert first[8] == "2026-10-31 Serve the declaration of disclosure on the other side"
    assert second[3:] == ["questions_open", "", "", "1", "0", ""]
    assert third[3] == "unread"
    assert ran.exit == 1  # a day was missed


def test_only_what_is_wanted_is_shown(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "filed.case", told(plain, **FILED))
    put(tmp_path, "kern.case", told(plain, court__county="Kern"))
    put(tmp_path, "stopped.case", facts_of("two-children-moved-county"))

    def files(*words: str, on: str = "2026-10-30") -> list[str]:
        return [line.partition("\t")[0] for line in run("shelf", *words, "--on", on).out.splitlines()]

    assert files("--due", "1") == ["filed.case"]
    assert files("--due", "0") == []
    assert files("--due", "0", on="2026-11-20") == ["filed.case"]  # what was missed is always due
    assert files("--county", "kern") == ["kern.case"]
    assert files("--stage", "filed", "--stage", "ready_to_draft") == ["filed.case", "kern.case"]
    assert files("--stops") == ["stopped.case"]
    assert "These are the stages: questions_open," in run("shelf", "--stage", "late").said


def test_every_day_due_is_told_not_only_the_next(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "1.case", told(plain, **SERVED))
    text = flat(run("shelf", "--paragraphs", "--due", "14", "--on", "2026-10-19").out)
    assert "Sat, Oct 31, 2026 (in 12 days): Serve the declaration of disclosure" in text
    text = flat(run("shelf", "--paragraphs", "--due", "20", "--on", "2026-10-12").out)
    assert "Wed, Oct 14, 2026 (in 2 days): Last day to file and serve a response (the other side)" in text
    assert "Sat, Oct 31, 2026 (in 19 days)" in text


def test_a_name_is_found_wherever_it_stands_also_in_ended_cases(
    run: Run, plain: Case, tmp_path: Path
) -> None:
    two = facts_of("two-children-moved-county")
    child, other = two.child[0].name, two.respondent.name
    put(tmp_path, "1.case", plain)
    put(tmp_path, "2.case", told(two, record__withdrawn_on="2026-10-01"))
    put(tmp_path, "3.case", told(plain, respondent__other_names=("Zoë Plum-Quist",)))
    for name, file, role in (
        (str(child).upper(), "2", "Child"),
        (other, "2", "Respondent"),
        ("plum", "3", ""),
    ):
        ran = run("shelf", "--find", name, "--on", str(ON))
        assert "stands in 1 case file:" in ran.out
        assert f"{file}.case\n  {role}" in ran.out
    (case,) = run("shelf", "--find", "quist", "--json").envelope["data"]["cases"]
    assert case["found"] == [{"role": "respondent", "name": "Zoë Plum-Quist"}]
    assert "stands in none" in run("shelf", "--find", "Nobody").out


def test_a_search_says_which_files_it_could_not_look_into(run: Run, plain: Case, tmp_path: Path) -> None:
    (tmp_path / "cut.case").write_text("{")
    assert "could not be looked into" in run("shelf", "--find", "Okafor").out


@pytest.mark.parametrize(
    "event", ["judgment", "dismissal", "withdrawn", "referred", "transferred", "reconciled"]
)
def test_an_ended_case_leaves_the_list(run: Run, plain: Case, tmp_path: Path, event: str) -> None:
    put(tmp_path, "1.case", told(plain, **FILED))
    assert run("record", "1.case", event, "day=2026-11-02", "--on", "2026-11-03").exit == 0
    ran = run("shelf", "--paragraphs", "--on", "2026-11-03")
    assert ran.exit == 0
    assert "1 more is ended or replaced" in flat(ran.out)
    shown = run("shelf", "--ended", "--json", "--on", "2026-11-03").envelope["data"]["cases"]
    assert [(one["stage"], one["ended"]) for one in shown] == [("ended", {"how": event, "day": "2026-11-02"})]
    assert shown[0]["dates"] == []
    before = run("shelf", "--json", "--on", "2026-11-01").envelope["data"]["cases"]
    assert [one["stage"] for one in before] == ["filed"]


def test_an_amended_case_takes_the_place_of_the_earlier_one(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "old.case", told(plain, **SERVED))
    assert run("amend", "old.case", "new.case").exit == 0
    assert [line.partition("\t")[0] for line in run("shelf").out.splitlines()] == ["new.case"]
    text = flat(run("shelf", "--ended", "--paragraphs").out)
    assert "old.case Fresno The petition is amended in new.case." in text
    assert CaseFile.load(tmp_path / "old.case").case.record.amended_in == "new.case"
    assert CaseFile.load(tmp_path / "new.case").case.record.amends == "old.case"
    (tmp_path / "new.case").unlink()
    assert [line.partition("\t")[0] for line in run("shelf").out.splitlines()] == ["old.case"]


def test_folders_below_are_looked_into_when_asked(run: Run, plain: Case, tmp_path: Path) -> None:
    (tmp_path / "a" / "b").mkdir(parents=True)
    (tmp_path / "a" / "x.case.copies").mkdir()
    put(tmp_path / "a" / "b", "deep.case", plain)
    put(tmp_path / "a" / "x.case.copies", "000001", plain)
    put(tmp_path, "top.case", plain)
    assert [line.partition("\t")[0] for line in run("shelf").out.splitlines()] == ["top.case"]
    deep = run("shelf", "--deep").out.splitlines()
    assert sorted(line.partition("\t")[0] for line in deep) == ["a/b/deep.case", "top.case"]
    assert len(run("shelf", ".", "a/b").out.splitlines()) == 2


def test_one_calendar_for_the_folder_each_entry_with_its_label(run: Run, plain: Case, tmp_path: Path) -> None:
    careful = told(plain, safety__dangers=("afraid",), **FILED)
    put(tmp_path, "26-01.case", told(plain, record__case_number="FL9", **FILED))
    put(tmp_path, "26-02.case", careful)
    ran = run("shelf", "--ics", "all.ics", "--label", "{file} {number}", "--on", "2026-10-20")
    assert ran.exit == 0
    calendar = Calendar.from_ical((tmp_path / "all.ics").read_bytes())
    titles = [str(event["SUMMARY"]) for event in calendar.walk("VEVENT")]
    assert "26-01 FL9: Court papers: list to hand over" in titles
    assert "26-02: Reminder" in titles
    assert not [title for title in titles if "Okafor" in title]
    assert len({str(event["UID"]) for event in calendar.walk("VEVENT")}) == len(titles)
    assert "cannot be used" in run("shelf", "--ics", "b.ics", "--label", "{petitioner}").said


def test_the_list_as_a_table_runs_no_formula(run: Run, plain: Case, tmp_path: Path) -> None:
    put(tmp_path, "=1+1.case", told(plain, **FILED))
    assert run("shelf", "--csv", "list.csv", "--names", "--on", "2026-11-03").exit == 1
    text = (tmp_path / "list.csv").read_text("utf-8-sig")
    assert text.splitlines()[0].startswith("file,case_number,county,stage,")
    assert text.splitlines()[1].startswith("'=1+1.case,,Fresno,filed,")
    assert "Dana Marie Okafor" in text


def test_many_processes_give_what_one_gives(
    plain: Case, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for number in range(6):
        put(tmp_path, f"{number}.case", told(plain, court__branch=f"Room {number}"))
    (tmp_path / "broken.case").write_text("{")
    alone = shelf(tmp_path, ON)
    monkeypatch.setattr(processes, "PAYS_FROM", 2)
    monkeypatch.setattr(processes, "cores", lambda: 2)
    heard: list[tuple[int, int]] = []
    together = shelf(tmp_path, ON, told=lambda done, count: heard.append((done, count)))
    assert together[0] == alone[0]
    assert [(one.file, one.error.message) for one in together[1]] == [
        (one.file, one.error.message) for one in alone[1]
    ]
    assert heard == [(done, 7) for done in range(1, 8)]
