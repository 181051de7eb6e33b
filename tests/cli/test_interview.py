"""A whole interview at a real terminal, with every word a person may type on the way."""

import re
import resource
import signal
import stat
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile
from firstpaper.facts import DONT_KNOW
from firstpaper.forms.explained_names import entries_called
from firstpaper.intake import standing
from tests.cli.person import Sitting, answers_of, facts_of, flat, without

Begin = Callable[..., Sitting]
SPARED = ("dates.married_place", "residence.respondent.state_since", "residence.respondent.county_since")
"""What nobody is asked in a plain case, though a file of facts may tell it."""


def go_on(sitting: Sitting, answers: dict[str, str], until: str = "") -> None:
    """Answer question after question; each must be the one the engine says is next."""
    while (one := sitting.next) and one.key != until:
        assert flat(one.ask) in flat(sitting.heard.split("Question ")[-1])
        sitting.answer(answers.get(one.key, "don't know"))


def numbers(sitting: Sitting) -> list[int]:
    """The numbers over the questions that were put, in order."""
    return [int(found) for found in re.findall(r"Question (\d+)", sitting.heard)]


def increasing(found: list[int]) -> bool:
    return len(found) > 1 and all(before < after for before, after in pairwise(found))


def test_a_childless_divorce_with_every_word_on_the_way(
    sit: Begin, typed_answers: dict[str, str], tmp_path: Path
) -> None:
    sitting = sit()
    welcome = sitting.wait()
    assert "back, why, skip, don't know, review, change, help or leave" in welcome
    assert "Before you begin (" in welcome
    assert "Question 1 " in welcome
    assert not sitting.path.exists()

    go_on(sitting, typed_answers, until="petitioner.phone")
    assert stat.S_IMODE(sitting.path.stat().st_mode) == 0o600

    why = sitting.type("why")
    assert "printed for all to see" in why
    assert "Your answer goes here on the petition: - page 1, caption: Your telephone number" in why
    assert sitting.file.case.petitioner.phone is None
    (item,) = entries_called("cap.phone")
    assert f"Type why again to read about FL-100, {item.item}: {item.title}" in why
    page = sitting.type("why")
    assert flat(item.read().means) in page
    assert "printed for all to see" in sitting.type("why")

    assert "skip: leave this question for later" in sitting.type("help")
    sitting.type("skip")
    assert sitting.file.passed == ("petitioner.phone",)

    back = sitting.type("back")
    assert "At what phone number" in back
    again = sitting.type("back")
    assert "Your answer now: 418 Alder Court, Fresno, CA 93701. Press Enter to keep it." in again
    assert "At what mailing address" in again
    forward = sitting.type("")
    assert "What is your e-mail address?" in forward

    go_on(sitting, typed_answers, until="respondent.mailing")
    sitting.type("don't know")
    assert sitting.file.case.respondent.mailing is DONT_KNOW

    review = sitting.type("review")
    assert "The two of you" in review
    assert "What is your full legal name? Dana Marie Okafor" in review
    assert "At what phone number may the court reach you? not answered yet" in review

    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert "Your answers are saved in home.case." in flat(sitting.heard)
    assert not list(tmp_path.glob("*.lock"))

    later = sit()
    assert "Welcome back." in later.wait()
    go_on(later, typed_answers)
    assert "You skipped some questions. Here they are once more." in flat(later.heard)
    later.answer(typed_answers["petitioner.phone"])
    assert later.end() == 0
    assert increasing(numbers(later))
    assert "That was the last question." in flat(later.heard)
    assert "firstpaper check home.case" in later.heard
    assert "\x1b" not in later.heard
    assert "\x1b" not in sitting.heard.replace("\x1b[H\x1b[2J\x1b[3J", "", 1)  # leaving empties the screen

    by_file = facts_of("plain-childless-divorce").with_fact("respondent.mailing", DONT_KNOW)
    by_file = by_file.with_fact("residence.petitioner.own_county", DONT_KNOW)
    for spared in SPARED:
        by_file = by_file.with_fact(spared, None)
    assert standing(later.file.case) == standing(by_file)
    assert later.file.passed == ()


def test_two_children_are_asked_about_one_after_the_other(sit: Begin) -> None:
    answers = answers_of("two-children-moved-county")
    sitting = sit()
    sitting.wait()
    go_on(sitting, answers)
    assert sitting.end() == 0
    assert len(sitting.file.case.child) == 2
    assert increasing(numbers(sitting))


def test_a_question_keeps_its_number_and_no_other_one_gets_it(sit: Begin, home: Path) -> None:
    """In which county they live is needless where they live in the county of filing."""
    without(home, "residence.petitioner.own_county", "court.county", "court.address", "court.branch")
    sitting = sit()
    sitting.wait()
    for typed in ("don't know", "Fresno", "back", "", "don't know"):
        sitting.type(typed)
    first, *rest = numbers(sitting)
    assert rest == [first + 1, first + 2, first + 1, first + 2, first + 3]


def test_a_question_skipped_twice_stays_open_and_is_named_at_the_end(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.type("skip")
    sitting.child.sendline("skip")
    assert sitting.end() == 0
    assert "1 question is still open: - What is that courthouse or branch called?" in flat(sitting.heard)
    assert sitting.file.passed == ("court.branch",)


def test_a_date_out_of_order_is_said_at_once_and_back_mends_it(sit: Begin, home: Path) -> None:
    without(home, "dates.separation_told_on", "dates.separation_acted_on")
    sitting = sit()
    sitting.wait()
    told = sitting.type("3/3/2019")
    assert "it stops a filing" in told
    assert "You can type back to change your answer" in told
    assert "Your answer now: Sunday, March 3, 2019" in sitting.type("back")
    assert "stops a filing" not in sitting.type("8/30/2026")


def test_an_answer_that_opens_and_closes_topics_says_so_and_loses_nothing(sit: Begin, home: Path) -> None:
    sitting = sit("change", "matter.kind")
    sitting.wait()
    opened = sitting.type("nullity")
    assert "These answers are set aside now." in opened
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert sitting.file.case.grounds.reason is not None

    again = sit("change", "matter.kind")
    again.wait()
    again.child.sendline("dissolution")
    assert again.end() == 0
    assert standing(again.file.case) == standing(facts_of("plain-childless-divorce"))


def test_a_day_that_reads_two_ways_is_asked_about_once(sit: Begin, home: Path) -> None:
    without(home, "dates.married_on", "dates.back_together")
    sitting = sit()
    sitting.wait()
    assert "08/05/2016 can be read two ways" in sitting.type("08/05/2016")
    assert "I understood: Sunday, May 8, 2016" in sitting.type("2")


def test_a_whole_topic_can_be_gone_through_again(sit: Begin, home: Path) -> None:
    sitting = sit("change", "court")
    assert "Your answer now: Fresno" in sitting.wait()
    assert "Your answer now: 1100 Invented Avenue" in sitting.type("")
    assert "Your answer now: Family Courthouse" in sitting.type("")
    sitting.child.sendline("none")
    assert sitting.end() == 0
    assert sitting.file.case.court.branch == ""


def test_an_answer_can_be_picked_from_the_review_by_its_number(sit: Begin, home: Path) -> None:
    without(home, "signing.orders_read")
    sitting = sit()
    sitting.wait()
    topics = sitting.type("change", then="just Enter to go on: ")
    topic = topics.split(". The two of you")[0].split()[-1]
    shown = sitting.type(topic, then="just Enter to go on: ")
    number = shown.split(". What is your full legal name?")[0].split()[-1]
    assert "Your answer now: Dana Marie Okafor" in sitting.type(number)
    sitting.type("Dana Okafor")
    assert sitting.file.case.petitioner.name == "Dana Okafor"


def test_going_back_before_the_first_question_is_told(sit: Begin) -> None:
    sitting = sit()
    sitting.wait()
    assert "nothing to go back to" in sitting.type("back")
    assert not sitting.path.exists()


def test_a_list_typed_before_a_word_is_kept(sit: Begin, home: Path) -> None:
    without(home, "petitioner.other_names")
    sitting = sit()
    sitting.wait()
    sitting.type("Dana Ade", then="just Enter: ")
    sitting.type("Dana M. Ade", then="just Enter: ")
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert sitting.file.case.petitioner.other_names == ("Dana Ade", "Dana M. Ade")


def test_an_address_ends_by_itself_when_it_is_whole(sit: Begin, home: Path) -> None:
    without(home, "petitioner.mailing", "petitioner.phone")
    sitting = sit()
    sitting.wait()
    sitting.type("9 Elm Road", then="just Enter: ")
    assert "I understood: 9 Elm Road, Fresno, CA 93701." in sitting.type("Fresno, CA 93701")


def test_a_word_can_be_an_answer_after_an_equals_sign(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.child.sendline("= Review")
    assert sitting.end() == 0
    assert sitting.file.case.court.branch == "Review"


def test_courthouses_of_other_case_files_are_offered_by_number(sit: Begin, home: Path) -> None:
    home.rename(home.with_name("earlier.case"))
    CaseFile.load(home.with_name("earlier.case")).save(home)
    without(home, "court.address", "court.branch")
    sitting = sit()
    assert "1. 1100 Invented Avenue, Fresno, CA 93721" in sitting.wait()
    sitting.type("1")
    assert sitting.file.case.court.address == facts_of("plain-childless-divorce").court.address


def test_ctrl_c_keeps_every_answer_and_says_so(sit: Begin, tmp_path: Path) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    sitting.child.sendintr()
    assert sitting.end() == 130
    assert "Your answers are saved in home.case." in flat(sitting.heard)
    assert sitting.file.case.safety.understood is True
    assert not list(tmp_path.glob("*.lock"))


def test_the_end_of_the_input_keeps_every_answer(sit: Begin) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    sitting.child.sendeof()
    assert sitting.end() == 0
    assert "Your answers are saved in home.case." in flat(sitting.heard)


@pytest.mark.parametrize("how", [signal.SIGHUP, signal.SIGTERM])
def test_a_closed_window_keeps_every_answer_and_lets_go_of_the_lock(
    sit: Begin, tmp_path: Path, how: signal.Signals
) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    assert list(tmp_path.glob("*.lock"))
    sitting.interrupt(how)
    assert sitting.end() == 128 + how
    assert sitting.file.case.safety.understood is True
    assert not list(tmp_path.glob("*.lock"))


def test_after_a_crash_the_next_sitting_goes_on_and_says_so(sit: Begin) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    sitting.child.kill(signal.SIGKILL)
    sitting.child.wait()
    later = sit()
    assert "The last sitting ended suddenly. Every answer that was saved is here." in later.wait()


def test_a_second_window_is_refused(sit: Begin) -> None:
    first = sit()
    first.wait()
    first.type("yes")
    second = sit()
    assert second.end() == 2
    assert "open in another window" in flat(second.heard)
    first.type("1")


def test_someone_who_is_not_safe_is_helped_to_stop_and_nothing_is_kept(sit: Begin, tmp_path: Path) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    sitting.child.sendline("3")
    assert sitting.end() == 0
    heard = flat(sitting.heard)
    assert "1-800-799-7233" in heard
    assert "Close this window now" in heard
    assert list(tmp_path.iterdir()) == []


def test_not_safe_later_leaves_the_earlier_file_as_it_was(sit: Begin, home: Path) -> None:
    before = home.read_bytes()
    sitting = sit("change", "safety.here")
    sitting.wait()
    sitting.child.sendline("not safe")
    assert sitting.end() == 0
    assert home.read_bytes() == before


def test_someone_who_does_not_want_to_go_on_is_let_go_and_nothing_is_kept(sit: Begin, tmp_path: Path) -> None:
    sitting = sit()
    sitting.wait()
    sitting.child.sendline("no")
    assert sitting.end() == 0
    assert list(tmp_path.iterdir()) == []


def test_typed_answers_are_not_kept_for_the_arrow_keys(sit: Begin) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    sitting.child.send("\x1b[A")
    assert "yes" not in sitting.type("")


@pytest.mark.parametrize("computer", ["C.UTF-8", "C", "nowhere"])
def test_a_name_of_many_alphabets_arrives_whole(sit: Begin, home: Path, computer: str) -> None:
    without(home, "respondent.name")
    sitting = sit(LC_ALL=computer)
    sitting.wait()
    sitting.type("Nguyễn Łukasz O'Neill-日本", then="answer again: ")
    sitting.child.sendline("yes")
    assert sitting.end() == 0
    assert sitting.file.case.respondent.name == "Nguyễn Łukasz O'Neill-日本"


def test_what_is_typed_instead_of_a_slip_is_the_answer(sit: Begin, home: Path) -> None:
    without(home, "respondent.name")
    sitting = sit()
    sitting.wait()
    asked_again = "type the answer again: "
    sitting.type("lewis tran", then=asked_again)
    sitting.type("lewis", then=asked_again)
    sitting.type("no")
    sitting.type("lewis tran", then=asked_again)
    sitting.child.sendline("Lewis Tran")
    assert sitting.end() == 0
    assert sitting.file.case.respondent.name == "Lewis Tran"


def test_the_same_words_once_more_are_meant(sit: Begin, home: Path) -> None:
    without(home, "respondent.name")
    sitting = sit()
    sitting.wait()
    sitting.type("Cher", then="type the answer again: ")
    sitting.child.sendline("Cher")
    assert sitting.end() == 0
    assert sitting.file.case.respondent.name == "Cher"


def test_a_full_disk_leaves_the_person_at_the_question_until_there_is_room(sit: Begin, home: Path) -> None:
    without(home, "respondent.name")
    before = home.read_bytes()
    sitting = sit()
    sitting.wait()
    _soft, hard = resource.prlimit(sitting.child.pid, resource.RLIMIT_FSIZE)
    resource.prlimit(sitting.child.pid, resource.RLIMIT_FSIZE, (1000, hard))
    assert "There is no room left to save home.case." in sitting.type("Lewis Tran")
    assert home.read_bytes() == before
    resource.prlimit(sitting.child.pid, resource.RLIMIT_FSIZE, (hard, hard))
    sitting.child.sendline("Lewis Tran")
    assert sitting.end() == 0
    assert sitting.file.case.respondent.name == "Lewis Tran"


def test_a_folder_that_goes_away_is_told_and_the_sitting_outlives_it(sit: Begin, home: Path) -> None:
    without(home, "respondent.name")
    away = home.parent.with_name("away")
    sitting = sit()
    sitting.wait()
    home.parent.rename(away)
    try:
        assert re.search(r"The folder \S+ is not there.", sitting.type("Lewis Tran"))
    finally:
        away.rename(home.parent)
    sitting.child.sendline("Lewis Tran")
    assert sitting.end() == 0
    assert sitting.file.case.respondent.name == "Lewis Tran"


# --- when nothing is left to ask, and changing from a list ---------------------------------------------

PICK = "just Enter to go on: "


def number_of(words: str, shown: str) -> str:
    """The number under which a list shows these words."""
    return shown.split(f". {words}", maxsplit=1)[0].rsplit(maxsplit=1)[-1]


def test_the_last_question_is_followed_by_a_look_at_the_answers(sit: Begin, home: Path) -> None:
    without(home, "signing.orders_read")
    sitting = sit()
    sitting.wait()
    sitting.type("yes", then="Look over your answers? Type yes, or just Enter: ")
    topics = sitting.type("yes", then=PICK)
    assert "safety" not in topics
    answers = sitting.type(number_of("The court", topics), then=PICK)
    assert "In which county will you file? Fresno" in answers
    assert "Your answer now: Fresno." in sitting.type(number_of("In which county", answers))
    sitting.type("Kern", then=PICK)
    sitting.child.sendline("")
    assert sitting.end() == 0
    assert sitting.file.case.court.county == "Kern"
    assert "Everything is saved in home.case." in flat(sitting.heard)


def test_ask_on_a_finished_case_offers_to_look_over_to_change_or_to_leave(sit: Begin, home: Path) -> None:
    sitting = sit()
    offer = "just Enter to leave: "
    assert "1. Look over my answers 2. Change an answer" in sitting.wait(offer)
    assert "What is your full legal name? Dana Marie Okafor" in sitting.type("1", then=offer)
    assert "Your answers, by topic:" in sitting.type("2", then=PICK)
    sitting.type("", then=offer)
    sitting.child.sendline("")
    assert sitting.end() == 0


def test_change_alone_gives_the_list_to_pick_from(sit: Begin, home: Path) -> None:
    sitting = sit("change")
    topics = sitting.wait(PICK)
    answers = sitting.type(number_of("The two of you", topics), then=PICK)
    sitting.type(number_of("What is your full legal name?", answers))
    sitting.type("Dana Okafor", then=PICK)
    sitting.child.sendline("")
    assert sitting.end() == 0
    assert sitting.file.case.petitioner.name == "Dana Okafor"


def test_no_at_giving_up_support_asks_once_more_what_the_petition_should_say(sit: Begin, home: Path) -> None:
    without(home, "support.petitioner", "support.own_right_ends")
    sitting = sit()
    sitting.wait()
    asked = sitting.type("end")
    assert "Do you truly want to give up all support" in asked
    again = sitting.type("no")
    assert "That answer is taken back." in again
    assert sitting.next is not None
    assert sitting.next.key == "support.petitioner"
    assert sitting.file.case.support.own_right_ends is None


def test_the_county_of_ones_home_is_offered_for_the_filing(sit: Begin, home: Path) -> None:
    without(home, "court.county", "residence.petitioner.lives")
    sitting = sit()
    assert "In which county of California do you live?" in sitting.wait()
    offered = sitting.type("kern")
    assert "You live in Kern County. Type yes to file there, or type another county: 1. Kern" in offered
    assert "Then please type the answer itself." in sitting.type("no")
    sitting.type("yes")
    assert sitting.file.case.court.county == "Kern"
