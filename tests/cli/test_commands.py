"""The commands in words: what a person reads, and what stays untouched when something is wrong."""

import os
import resource
import stat
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from firstpaper import __version__
from firstpaper.casefile import CaseFile
from firstpaper.facts import DONT_KNOW, Case
from firstpaper.intake import bank
from firstpaper.law.register import all_rules
from tests.cli.person import HOUSEHOLDS, ON, Ran, entered, flat, run_in, without

Run = Callable[..., Ran]
SECRETS = ("Okafor", "Alder Court", "555-0134", "Lewis", "93701")


def assert_nothing_personal(text: str) -> None:
    assert not [secret for secret in SECRETS if secret in text]


# --- help and version -------------------------------------------------------------------------------


def test_the_version_is_told(run: Run) -> None:
    assert run("--version").out == f"firstpaper {__version__}\n"


def test_help_names_every_command_in_whole_sentences(run: Run) -> None:
    text = run("--help").out
    for command in ("ask", "change", "enter", "check", "items", "packet", "why", "demo"):
        assert f"\n  {command} " in text
    assert "..." not in text.split("Commands:")[1]


@pytest.mark.parametrize(
    "arguments", [["nothing"], ["check"], ["ask", "a.case", "--loud"], ["check", "a", "b"]]
)
def test_a_line_that_is_no_command_is_exit_2_without_a_traceback(run: Run, arguments: list[str]) -> None:
    assert run(*arguments).exit == 2


@pytest.mark.parametrize("day", ["tomorrow", "2026-02-30", "30/11/2026", "2026-1", "", "\x1b[31m"])
def test_a_day_that_is_none_is_refused_with_an_example(run: Run, home: Path, day: str) -> None:
    ran = run("check", "home.case", "--on", day)
    assert ran.exit == 2
    assert "like this: --on 2026-11-30" in ran.said


def test_a_day_long_before_the_law_here_is_refused_in_words(run: Run, home: Path) -> None:
    ran = run("items", "home.case", "--on", "1970-01-01")
    assert ran.exit == 2
    assert "1970-01-01" in ran.said
    assert "between 2000-01-01 and 2075-12-31" in ran.said


# --- check, items, why ------------------------------------------------------------------------------


def test_check_says_what_stops_first_and_what_to_do(run: Run, home: Path) -> None:
    file = CaseFile.load(home)
    file.with_case(file.case.with_fact("dates.separation_told_on", "2019-03-03")).save(home)
    ran = run("check", "home.case", "--all", "--on", ON)
    assert ran.exit == 1
    text = flat(ran.out)
    assert text.startswith("Checked for a filing on Monday, November 30, 2026.")
    assert "thing stops a filing for now" in text or "things stop a filing for now" in text
    assert text.index("STOP: do not file like this") < text.index("GOOD TO KNOW")
    assert "What to do:" in text


MOST_LINES = 60


def test_a_check_of_a_plain_household_opens_and_closes_with_the_verdict(run: Run, home: Path) -> None:
    said = run("check", "home.case", "--on", ON).out
    assert len(said.splitlines()) <= MOST_LINES
    assert flat(said).count("Checked for a filing on Monday, November 30, 2026. Nothing here stops") == 2
    assert "firstpaper check home.case --all" in said
    assert said.rstrip().endswith("firstpaper packet home.case")
    assert "In detail:" not in said
    assert "In detail:" in run("check", "home.case", "--steps", "--on", ON).out


def test_a_check_for_a_day_on_which_the_court_is_closed_names_the_open_day(run: Run, home: Path) -> None:
    said = flat(run("check", "home.case", "--on", "2026-11-29").out)
    assert said.startswith(
        "Checked for a filing on Monday, November 30, 2026. The court is closed on Sunday,"
    )


def test_check_says_what_is_still_open(run: Run, home: Path) -> None:
    without(home, "petitioner.phone", "court.branch")
    assert "2 questions are not answered yet" in flat(run("check", "home.case", "--on", ON).out)


def test_items_show_what_to_write_exactly_and_where(run: Run, home: Path) -> None:
    text = run("items", "home.case", "--on", ON).out
    assert "WRITE: Dana Marie Okafor\n" in text
    assert "Page 1. " in text
    assert "MARK this box." in text
    assert "SIGN or date by hand" in text


def test_every_rule_has_a_page(run: Run) -> None:
    for rule in ("residence.state", "dates.separation", "marriage.length"):
        text = flat(run("why", rule).out)
        assert all_rules()[rule].title in text
        assert all(f"{one.cite}: {one.source.about}" in text for one in all_rules()[rule].sources)


def test_a_rule_shows_what_it_says_of_a_case_and_on_which_answers_it_rests(run: Run, home: Path) -> None:
    text = flat(run("why", "waiting.earliest_end", "home.case", "--on", ON).out)
    assert "IN THIS CASE, worked out for Monday, November 30, 2026" in text
    assert "1. Mon, Nov 30, 2026: the starting day, not counted" in text
    text = flat(run("why", "residence.state", "home.case", "--on", ON).out)
    rests = text.partition("It rests on these answers:")[2]
    assert "Since what day have you lived in California? 2009" in rests
    data = run("why", "residence.state", "home.case", "--on", ON, "--json").envelope["data"]
    assert [one["id"] for one in data["findings"]] == ["residence.state"]


def test_a_rule_that_does_not_apply_to_a_case_says_so(run: Run, home: Path) -> None:
    assert "The rule says nothing here." in flat(run("why", "nullity.last_day", "home.case", "--on", ON).out)


def test_a_question_shows_the_answer_of_a_case(run: Run, home: Path) -> None:
    assert "Your answer: Dana Marie Okafor" in flat(run("why", "petitioner.name", "home.case").out)
    assert "Your answer:" not in run("why", "petitioner.name").out


def test_a_question_explains_itself_by_its_key_also_for_a_child(run: Run) -> None:
    question = bank().question("child.2.born_on")
    assert question is not None
    assert flat(question.why).split("{")[0] in flat(run("why", "child.2.born_on").out)


@pytest.mark.parametrize(
    "name", ["residence.stat", "petitioner.nam", "", "\x1b]0;x\x07", "child.999.name", "x" * 5000]
)
def test_an_unknown_name_suggests_what_is_close(run: Run, name: str) -> None:
    ran = run("why", name)
    assert ran.exit == 2
    assert "Close to it:" in ran.said


def test_what_is_close_is_the_right_thing(run: Run, home: Path) -> None:
    assert "residence.state" in run("why", "residence.stat").said
    assert "petitioner.name" in run("change", "home.case", "petitioner.nam").said


# --- enter ------------------------------------------------------------------------------------------


def test_a_file_of_facts_is_taken_whole(run: Run, tmp_path: Path) -> None:
    ran = run("enter", "new.case", HOUSEHOLDS / "plain-childless-divorce.yaml", "--on", ON)
    assert ran.exit == 0
    assert "The facts are saved in new.case." in ran.out
    assert CaseFile.load(tmp_path / "new.case").case == entered("plain-childless-divorce")
    assert stat.S_IMODE((tmp_path / "new.case").stat().st_mode) == 0o600


def test_every_bad_line_is_named_and_nothing_is_half_saved(run: Run, home: Path, tmp_path: Path) -> None:
    before = home.read_bytes()
    (tmp_path / "facts.yaml").write_text(
        "petitioner.name: Other Name\n"
        "petitioner.shoe_size: 9\n"
        "dates.married_on: 2012-02-30\n"
        "court:\n"
        "  county: Atlantis\n"
    )
    ran = run("enter", "home.case", "facts.yaml", "--on", ON)
    assert ran.exit == 2
    assert "3 lines in facts.yaml cannot be used" in ran.said
    for place in ("Line 2, petitioner.shoe_size:", "Line 3, dates.married_on:", "Line 5, court.county:"):
        assert place in ran.said
    assert home.read_bytes() == before
    fresh = run("enter", "new.case", "facts.yaml", "--on", ON)
    assert fresh.exit == 2
    assert not (tmp_path / "new.case").exists()


@pytest.mark.parametrize("content", [b"\xff\xfe\x00", b"\x00" * 50, b"a: &x 1\nb: *x\n", b"- [" * 5000])
def test_a_file_that_is_no_list_of_facts_is_refused_kindly(run: Run, tmp_path: Path, content: bytes) -> None:
    (tmp_path / "facts.yaml").write_bytes(content)
    ran = run("enter", "new.case", "facts.yaml")
    assert ran.exit == 2
    assert ran.said
    assert not (tmp_path / "new.case").exists()


def test_a_missing_file_of_facts_or_a_folder_is_told(run: Run, tmp_path: Path) -> None:
    assert "could not be opened" in run("enter", "new.case", "gone.yaml").said
    assert "it is not a file" in run("enter", "new.case", ".").said


# --- packet and demo --------------------------------------------------------------------------------


def test_the_packet_lies_beside_the_case_file_for_its_owner_alone(run: Run, home: Path) -> None:
    ran = run("packet", "home.case", "--html", "home.html", "--on", ON)
    assert ran.exit == 0
    assert "The packet is in home.pdf." in flat(ran.out)
    for name, begins in (("home.pdf", b"%PDF-"), ("home.html", b"<!doctype html")):
        made = home.with_name(name)
        assert made.read_bytes().lower().startswith(begins.lower())
        assert stat.S_IMODE(made.stat().st_mode) == 0o600
    assert sorted(one.name for one in home.parent.iterdir()) == ["home.case", "home.html", "home.pdf"]


def test_a_packet_drafted_too_early_is_not_sent_to_the_clerk(run: Run, home: Path) -> None:
    """Fam. Code 2320(a): three months in the county, from October 12 of 2026."""
    new_here = ("respondent.lives=other_state", "petitioner.county_since=2026-10-12")
    assert run("change", "home.case", *(f"residence.{one}" for one in new_here)).exit == 0
    while left := run("check", "home.case", "--json", "--on", ON).envelope["data"]["open_questions"]:
        assert run("change", "home.case", *(f"{key}=don't know" for key in left)).exit == 0
    said = flat(run("packet", "home.case", "--on", ON).out)
    assert "file them with the clerk" not in said
    assert "firstpaper packet home.case --on 2027-01-13" in said


def test_the_part_that_is_needed_now_is_drafted_and_the_later_one_replaces_nothing(
    run: Run, home: Path
) -> None:
    first = run("packet", "home.case", "--on", ON)
    assert "Next: copy it onto the court's forms, and file them with the clerk." in flat(first.out)
    assert "firstpaper record home.case filed" in first.out
    drafted = home.with_suffix(".pdf").read_bytes()
    run("record", "home.case", "filed", "day=11/30/2026", "--on", ON)
    later = run("packet", "home.case", "--on", ON)
    assert later.exit == 0
    assert "The packet is in home-later.pdf." in flat(later.out)
    assert "file them with the clerk" not in flat(later.out)
    assert home.with_suffix(".pdf").read_bytes() == drafted
    whole = run("packet", "home.case", "--part", "all", "--json", "--on", ON).envelope["data"]
    assert whole["part"] == "all"
    assert {"Before you file", "After you file"} <= set(whole["sheets"])
    assert run("erase", "home.case", "--yes").exit == 0
    assert list(home.parent.glob("home*")) == []


def test_after_both_parts_are_drafted_the_next_step_is_to_file_and_not_to_draft(run: Run, home: Path) -> None:
    said = flat(run("packet", "home.case", "--part", "all", "--on", ON).out)
    assert "draft the packet" not in said
    assert "Next: copy it onto the court's forms, and file them with the clerk." in said
    assert "firstpaper record home.case filed" in said
    assert "draft the packet" in flat(run("packet", "home.case", "--part", "later", "--on", ON).out)


def test_a_part_that_there_is_not_is_refused(run: Run, home: Path) -> None:
    ran = run("packet", "home.case", "--part", "middle")
    assert ran.exit == 2
    assert "first" in ran.said


def test_a_packet_replaces_a_packet_and_nothing_else(run: Run, home: Path) -> None:
    assert run("packet", "home.case", "--on", ON).exit == 0
    assert run("packet", "home.case", "--on", ON).exit == 0
    before = home.read_bytes()
    ran = run("packet", "home.case", "-o", "home.case", "--on", ON)
    assert ran.exit == 2
    assert "It was left alone" in ran.said
    assert home.read_bytes() == before


def test_a_full_disk_leaves_the_packet_of_before(home: Path) -> None:
    assert run_in(home.parent, "packet", "home.case", "--on", ON).exit == 0
    before = home.with_name("home.pdf").read_bytes()
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, hard))
    try:
        ran = run_in(home.parent, "packet", "home.case", "--on", ON)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))
    assert ran.exit == 2
    assert "There is no room left" in ran.said
    assert home.with_name("home.pdf").read_bytes() == before


def test_a_household_is_drafted_in_one_go(run: Run, tmp_path: Path) -> None:
    ran = run("demo", "two-children-moved-county", "-o", "try.pdf", "--on", ON)
    assert ran.exit in (0, 1)
    assert (tmp_path / "try.pdf").read_bytes().startswith(b"%PDF-")
    assert not list(tmp_path.glob("*.case"))


def test_the_households_are_listed_with_what_they_show(run: Run) -> None:
    listed = run("demo", "--list").out
    for path in HOUSEHOLDS.glob("*.yaml"):
        assert path.stem in listed


# --- errors say nothing personal --------------------------------------------------------------------


def test_no_error_repeats_what_somebody_told_us(run: Run, home: Path, tmp_path: Path) -> None:
    whole = home.read_text("utf-8")
    swapped = (whole.replace('"2022-06-12"', '"Okafor"'), whole.replace('"facts"', '"fakts"'))
    for damage in (whole[:-40], *swapped):
        home.write_text(damage, "utf-8")
        for command in ("ask", "check", "items", "packet"):
            ran = run(command, "home.case", "--on", ON)
            assert ran.exit == 2
            assert_nothing_personal(ran.err)
        assert home.read_text("utf-8") == damage


def test_a_fault_of_the_program_is_told_without_a_traceback_or_a_name(
    run: Run, home: Path, tmp_path: Path
) -> None:
    """A broken copy of the program: a module that raises with what it was working on."""
    (tmp_path / "sitecustomize.py").write_text(
        "import firstpaper.forms.fl100.form as p\n"
        "def broken(case, on):\n"
        "    raise ValueError(case.petitioner.name)\n"
        "p.form = broken\n"
    )
    ran = run("items", "home.case", "--on", ON, PYTHONPATH=os.pathsep.join([str(tmp_path), *sys.path]))
    assert ran.exit == 2
    assert "a fault of its own and stopped (ValueError" in ran.said
    assert_nothing_personal(ran.err)


# --- a pipe -----------------------------------------------------------------------------------------


def test_answers_can_be_piped_in_and_what_was_read_is_kept(run: Run, tmp_path: Path) -> None:
    ran = run("ask", "home.case", "--on", ON, typed="yes\n1\nnone\n1\n")
    assert ran.exit == 0
    assert ran.out == ""
    assert "There is nothing more to read, so we stop here." in ran.said
    case = CaseFile.load(tmp_path / "home.case").case
    assert (case.safety.understood, case.safety.dangers) == (True, ())


def test_no_input_at_all_makes_no_file(run: Run, tmp_path: Path) -> None:
    assert run("ask", "home.case").exit == 0
    assert list(tmp_path.iterdir()) == []


HOSTILE = [
    b"\x00\x01\x02\x1b[2J\x1b]0;owned\x07",
    b"\xff\xfe\xfd",
    "\u202egnp.exe".encode(),
    b"<script>alert(1)</script> & {{ 7*7 }} {name} %s",
    "👩‍👩‍👧 Ⅷ ﷽".encode(),
    b"9" * 6000,
    b"N" * 300,
    b"N" * 100_000,
    b"123-45-6789",
    b"4111 1111 1111 1111",
    b"-1",
    b"0",
    b"99999999999999999999",
    b"../../etc/passwd",
    b"= = =",
    b"?",
    b" ",
]


def test_hostile_lines_at_every_question_never_break_it_nor_reach_the_terminal(run: Run) -> None:
    lines = b"yes\n1\nnone\n1\n" + b"".join(line + b"\nskip\n" for line in HOSTILE * 6)
    ran = run("ask", "home.case", "--on", ON, typed=lines)
    assert ran.exit == 0
    assert not [c for c in ran.err if not (c.isprintable() or c == "\n" or c in "\u200c\u200d")]


@pytest.mark.parametrize("line", HOSTILE)
def test_a_hostile_name_is_kept_as_text_or_refused_and_shown_harmlessly(
    run: Run, home: Path, line: bytes
) -> None:
    without(home, "petitioner.name")
    ran = run("ask", "home.case", "--on", ON, typed=line + b"\nskip\n")
    assert ran.exit == 0
    name = CaseFile.load(home).case.petitioner.name
    assert "123-45-6789" not in home.read_text("utf-8")
    assert "4111" not in home.read_text("utf-8")
    if name in (None, DONT_KNOW):
        return
    assert name.replace("\u200d", "").isprintable()
    assert len(name) <= 300
    for command in ("check", "items", "packet"):
        shown = run(command, "home.case", "--on", ON)
        assert shown.exit in (0, 1)
        assert not [c for c in shown.out if not (c.isprintable() or c == "\n" or c in "\u200c\u200d")]


def test_a_case_file_of_another_hand_cannot_reach_the_terminal(run: Run, home: Path) -> None:
    home.write_text(
        home.read_text("utf-8").replace("Dana Marie Okafor", "Dana\\u001b[2J\\u0007\\u202eO"), "utf-8"
    )
    ran = run("items", "home.case", "--on", ON)
    assert ran.exit == 0
    assert "WRITE: DanaO" in ran.out


def test_the_name_of_a_file_cannot_reach_the_terminal(run: Run) -> None:
    ran = run("check", "a\x1b[2Jb.case")
    assert ran.exit == 2
    assert "a[2Jb.case" in ran.said


def test_an_empty_case_can_be_checked_listed_and_drafted(run: Run, tmp_path: Path) -> None:
    CaseFile(Case()).save(tmp_path / "home.case")
    for command in ("check", "items", "packet"):
        assert run(command, "home.case", "--on", ON).exit in (0, 1)


# --- answers given at once ------------------------------------------------------------------------------


def test_a_new_answer_can_be_given_on_the_command_line(run: Run, home: Path) -> None:
    ran = run("change", "home.case", "petitioner.phone=(559) 555-0199", "court.county=Kern", "--json")
    assert ran.exit == 0
    assert [one["key"] for one in ran.envelope["data"]["changed"]] == ["petitioner.phone", "court.county"]
    case = CaseFile.load(home).case
    assert (case.petitioner.phone, case.court.county) == ("(559) 555-0199", "Kern")


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ("petitioner.phon=1", "Close to it: petitioner.phone"),
        ("dates.married_on=June 31 2017", "There is no day 31 in June 2017"),
    ],
)
def test_where_one_answer_cannot_be_taken_none_is(run: Run, home: Path, given: str, said: str) -> None:
    before = home.read_bytes()
    ran = run("change", "home.case", "court.county=Kern", given)
    assert ran.exit == 2
    assert said in ran.said
    assert home.read_bytes() == before


def test_without_a_name_and_nobody_to_ask_change_says_how_to_name_one(run: Run, home: Path) -> None:
    assert "petitioner.phone=" in run("change", "home.case").said
