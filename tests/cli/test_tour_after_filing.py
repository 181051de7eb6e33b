"""A person at a real terminal after the filing: telling what happened, correcting it, reading the dates."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from icalendar import Calendar

from tests.cli.person import Ran, Sitting, flat

Run = Callable[..., Ran]
CHOOSE = "Type a number, or leave: "
PICK = "just Enter to go on: "
ON = "2026-12-07"


@pytest.fixture
def tell(home: Path) -> Iterator[Callable[..., Sitting]]:
    """Begin `record` on the case at a terminal."""
    begun: list[Sitting] = []

    def begin(*arguments: str, on: str = ON) -> Sitting:
        begun.append(Sitting(home, "record", "home.case", *arguments, "--on", on))
        return begun[-1]

    yield begin
    for sitting in begun:
        sitting.stop()


def last_words(sitting: Sitting) -> str:
    return flat(sitting.heard)


def test_the_whole_way_from_the_filing_to_a_corrected_service(
    tell: Callable[..., Sitting], run: Run, home: Path
) -> None:
    filing = tell()
    assert "1. The petition was filed" in filing.wait(CHOOSE)
    assert "On what day did the court stamp the petition as filed?" in filing.type("1")
    assert "I understood: Tuesday, December 1, 2026." in filing.type("December 1 2026")
    filing.type("26FL001234")
    filing.type("no")
    filing.type("1", then="firstpaper dates home.case")  # I paid it
    assert filing.end() == 0
    assert "Recorded: The petition was filed." in last_words(filing)
    assert "The packet now says what comes next" in last_words(filing)
    assert "firstpaper packet home.case" in last_words(filing)
    assert "Mon, Feb 1, 2027" in last_words(filing)  # Fam. Code 2104(f): January 30, 2027 is a Saturday

    serving = tell()
    assert "(recorded: Tuesday, December 1, 2026)" in serving.wait(CHOOSE)
    assert "How were the papers served?" in serving.type("3")
    assert "Who handed over or mailed the papers?" in serving.type("1")
    serving.type("2")
    assert "cannot" in serving.type("11/20/2026")  # before the filing: said, and asked again
    serving.type("December 5 2026", then="firstpaper dates home.case")
    assert serving.end() == 0
    assert "The packet now says what comes next" not in last_words(serving)
    assert "Mon, Jan 4, 2027: Last day to file and serve a response" in last_words(serving)  # Fam. Code 2020

    mending = tell("served")
    mending.wait()
    mending.type("")  # the way of service stays
    mending.type("")  # and who did it
    mending.type("December 4 2026", then="firstpaper dates home.case")
    assert mending.end() == 0
    # Code Civ. Proc. 12a
    assert "Sun, Jan 3, 2027 (court closed, so Mon, Jan 4, 2027)" in last_words(mending)

    dates = Sitting(home, "dates", "home.case", "--all", "--ics", "dates.ics", "--plain-titles", "--on", ON)
    assert dates.end() == 0
    said = last_words(dates)
    assert "Case number: 26FL001234" in said
    assert "[x] Friday, December 4, 2026: The papers were served or sent" in said
    assert said.index("AHEAD") < said.index("NOT RUNNING YET") < said.index("DONE, PAST")
    assert "Sat, Jun 5, 2027 The marriage cannot end before this day" in said  # 2339(a)
    assert "\x1b" not in dates.heard
    events = Calendar.from_ical(home.with_name("dates.ics").read_bytes()).walk("VEVENT")
    assert {str(event["SUMMARY"]) for event in events} == {"Reminder"}


def test_the_words_that_help_and_the_way_out(tell: Callable[..., Sitting], home: Path) -> None:
    before = home.read_bytes()
    sitting = tell("served")
    sitting.wait()
    assert "leave: stop now, and record nothing" in sitting.type("help")
    assert "Each way has its own day from which the time runs." in sitting.type("why")
    assert "Nothing is recorded yet." in sitting.type("review")
    assert "nothing to go back to" in sitting.type("back")
    assert "from 1 to 8" in sitting.type("9")
    assert "Who handed over or mailed the papers?" in sitting.type("2")
    assert "When did the server try before" in sitting.type("2")
    assert "handed over, or left with the other adult?" in sitting.type("skip")
    assert "When did the server try before" in sitting.type("back")
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert "Nothing was recorded." in last_words(sitting)
    assert home.read_bytes() == before


def test_an_answer_is_taken_back_or_changed_before_anything_is_recorded(
    tell: Callable[..., Sitting], home: Path
) -> None:
    before = home.read_bytes()
    sitting = tell("served")
    sitting.wait()
    assert "nothing to take back yet" in sitting.type("undo")
    assert "Who handed over or mailed the papers?" in sitting.type("2")
    assert "When did the server try before" in sitting.type("2")
    assert "Taken back. This is asked again:" in sitting.type("undo")
    assert "How were the papers served?" in sitting.type("undo")
    sitting.type("1")
    assert "1. How were the papers served? Handed to the other side" in sitting.type("change", then=PICK)
    assert "Your answer now: Handed to the other side" in sitting.type("1")
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert home.read_bytes() == before


def test_a_number_that_is_no_event_is_asked_for_again_and_leave_leaves(tell: Callable[..., Sitting]) -> None:
    sitting = tell()
    sitting.wait(CHOOSE)
    assert "Please type a number from 1 to" in sitting.type("99", then=CHOOSE)
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert "Nothing was recorded." in last_words(sitting)


def test_ctrl_c_in_the_middle_leaves_the_case_as_it_was(tell: Callable[..., Sitting], home: Path) -> None:
    before = home.read_bytes()
    sitting = tell("filed")
    sitting.wait()
    sitting.type("December 1 2026")
    sitting.child.sendintr()
    assert sitting.end() == 130
    assert home.read_bytes() == before
    assert "Stopped." in last_words(sitting)
