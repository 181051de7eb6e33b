"""Commands on many case files at once, and the words that stand before and after a case file."""

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile
from firstpaper.cli import options
from firstpaper.cli.options import NotADay, case_first, cases_first, filing_day
from tests.cli.person import ON, Ran, facts_of, flat

Run = Callable[..., Ran]


@pytest.fixture
def two(tmp_path: Path) -> Path:
    for number, name in enumerate(("plain-childless-divorce", "two-children-moved-county"), 1):
        CaseFile(facts_of(name)).save(tmp_path / f"{number}.case")
    return tmp_path


def test_one_fact_is_changed_in_many_cases_all_or_none_of_each(run: Run, two: Path) -> None:
    ran = run("change", "1.case", "2.case", "court.branch=Annex", "petitioner.phone=559-555-0100", "--on", ON)
    assert ran.exit == 0
    assert "1.case: changed: petitioner.phone, court.branch" in ran.out
    before = [(two / f"{number}.case").read_bytes() for number in (1, 2)]
    ran = run("change", "1.case", "2.case", "court.branch=North", "court.county=Atlantis", "--on", ON)
    assert ran.exit == 2
    assert "2 case files. 2 were left as they were." in flat(ran.out)
    assert [(two / f"{number}.case").read_bytes() for number in (1, 2)] == before


def test_many_cases_are_not_changed_in_a_conversation(run: Run, two: Path) -> None:
    assert "only with its new value" in run("change", "1.case", "2.case", "court.branch").said


def test_many_cases_are_checked_a_line_each_and_the_worst_decides(run: Run, two: Path) -> None:
    ran = run("check", "1.case", "2.case", "--on", ON)
    assert ran.exit == 1
    assert "1.case: complete, and nothing stops a filing" in ran.out
    assert "2.case: stopped by residence.same_spouse" in flat(ran.out)
    ran = run("check", "1.case", "2.case", "gone.case", "--on", ON, "--json")
    assert ran.exit == ran.envelope["exit"] == 2
    cases = ran.envelope["data"]["cases"]
    assert [(one["file"], one["exit"], one["data"].get("state")) for one in cases] == [
        ("1.case", 0, "complete"),
        ("2.case", 1, "stop"),
        ("gone.case", 2, None),
    ]
    assert cases[2]["errors"][0]["code"] == "case_file_missing"


def test_a_script_can_ask_for_a_complete_case(run: Run, two: Path) -> None:
    run("change", "1.case", "court.branch=", "--on", ON)
    assert run("check", "1.case", "--on", ON).exit == 0
    ran = run("check", "1.case", "--require-complete", "--on", ON, "--json")
    assert (ran.exit, ran.envelope["data"]["state"]) == (3, "open")
    assert run("check", "2.case", "--require-complete", "--on", ON).exit == 1


def test_one_default_path_everywhere(run: Run, home: Path) -> None:
    assert run("change", "court.branch=Annex").exit == 0
    assert run("schedule", "add", "asset", "kind=cash").exit == 0
    assert run("record", "filed", "day=11/25/2026", "--on", ON).exit == 0
    assert run("record", "--list").exit == 0
    case = CaseFile.load(home).case
    assert (case.court.branch, len(case.asset)) == ("Annex", 1)
    assert case.record.filed_on is not None


def test_several_things_are_changed_or_taken_out_at_once(run: Run, home: Path) -> None:
    for number in range(1, 8):
        run("schedule", "home.case", "add", "asset", "kind=cash", f"words=Box {number}")
    assert run("schedule", "home.case", "change", "asset", "3", "5", "7", "by=petitioner").exit == 0
    assert [one.by for one in CaseFile.load(home).case.asset] == [None, None, "petitioner"] + [
        None,
        "petitioner",
    ] * 2
    before = home.read_bytes()
    assert "no asset 9" in run("schedule", "home.case", "change", "asset", "3", "9", "by=respondent").said
    assert home.read_bytes() == before
    assert run("schedule", "home.case", "remove", "asset", "1", "2").exit == 0
    assert [one.words for one in CaseFile.load(home).case.asset] == [f"Box {n}" for n in range(3, 8)]


def test_words_that_name_a_case_stand_first(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "there").write_text("")

    def known(word: str) -> bool:
        return word in ("court", "a=b")

    assert cases_first(["a.case", "b.case", "court"], known) == ([Path("a.case"), Path("b.case")], ["court"])
    assert cases_first(["court"], known) == ([Path("home.case")], ["court"])
    assert cases_first(["gone", "there", "a=b"], known) == ([Path("gone"), Path("there")], ["a=b"])
    assert cases_first([], known) == ([Path("home.case")], [])
    assert case_first(["a.case", "b.case"], known) == (Path("a.case"), ["b.case"])
    assert case_first(["court"], known) == (Path("home.case"), ["court"])


def test_the_day_to_file_is_written_in_several_ways(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(options, "today", lambda: date(2026, 11, 28))
    for text in ("2026-11-30", "11/30/2026", " +2 "):
        assert filing_day(text) == date(2026, 11, 30)
    assert filing_day("Today") == filing_day(None) == date(2026, 11, 28)
    for text in ("2026-02-30", "30/11/2026", "12/1/2026", "soon", "", "-3", "+x"):
        with pytest.raises(NotADay):
            filing_day(text)
