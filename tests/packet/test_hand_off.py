"""The sheet for the lawyer or volunteer: what it must tell, and how it says it."""

from collections.abc import Mapping

import pytest

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.choices import VisitsTo
from firstpaper.law.finding import Outcome, Weight
from firstpaper.packet.brief import brief
from firstpaper.packet.views import handoff
from firstpaper.packet.views.handoff.flags import counts, flags
from firstpaper.packet.views.handoff.line import Line
from tests.each import for_each
from tests.households.golden import Household, followed, households
from tests.packet.drawn import ALL, household
from tests.packet.read_back import words_of

EVERY = (*households(), *followed())


def lines(one: Household, part: str, case: Case | None = None) -> tuple[Line, ...]:
    sheet = handoff.sheet(brief(case or one.case, one.on))
    found = sheet.values[part]
    assert isinstance(found, tuple)
    return found


def said(one: Household, part: str, case: Case | None = None) -> Mapping[str, str]:
    return {line.label: line.words for line in lines(one, part, case)}


def since(name: str, day: str) -> Household:
    return next(one for one in followed() if one.name == name and str(one.on) == day)


@for_each(EVERY)
def test_every_flag_is_a_whole_sentence_under_a_capital_and_names_where_to_look(one: Household) -> None:
    for line in lines(one, "flags"):
        assert line.label[0].isupper()
        assert line.words[0].isupper(), line.words
        assert line.words.endswith((".", "?", ")")), line.words
        assert line.cite


def test_what_is_said_to_everybody_is_no_flag() -> None:
    labels = {line.label for one in EVERY for line in lines(one, "flags")}

    assert not any(label.startswith(("The edition of", "What changes on")) for label in labels)


CASES = (
    ("a-child-in-juvenile-court", "Welf. & Inst. Code 302(c)"),
    ("an-order-in-another-state", "Fam. Code 3423"),
    ("address-must-stay-hidden", "Fam. Code 3429(a)(1)-(2)"),
)


@pytest.mark.parametrize(("name", "cite"), CASES)
def test_another_case_is_told_with_the_law_of_its_kind(name: str, cite: str) -> None:
    cites = {line.label: line.cite for line in lines(household(name), "flags")}

    assert cites["Another court case"] == cite


def test_a_stop_says_what_it_comes_to() -> None:
    flag = lines(household("two-children-moved-county"), "flags")[0]

    assert flag.label == "One person meets both halves of the residence rule (STOP)"
    assert "neither of you has lived long enough" in flag.words


def test_an_initial_and_a_code_end_no_sentence() -> None:
    one = household("a-child-by-somebody-new")
    named = one.case.with_fact("child.1.name", "June R. Ashby")
    words = said(one, "flags", named)["A child born in the marriage"]

    assert words.startswith("You said that June R. Ashby is a child of just one of you. But June R. Ashby")


def test_a_first_sentence_that_repeats_the_title_is_passed_over() -> None:
    words = said(household("he-is-in-prison"), "flags")

    assert words["The other side is in prison or jail (open)"].startswith("The papers are served there")


FACTS = (
    ("a-child-by-somebody-new", "Said to be of one of the two only", "June Ashby, born Thu, Mar 20, 2025"),
    ("a-child-by-somebody-new", "Children", "open; none told of as a child of both"),
    ("lists-on-the-courts-own-form", "Others who have or claim a child", "Ruth Bell"),
    ("things-and-debts-listed", "Listed", "3 presumed separate, 1 to be assigned, 2 mixed"),
    (
        "a-grown-son-who-cannot-earn",
        "Support asked for a grown child",
        "Simon Castellan (cannot earn a living)",
    ),
    ("address-must-stay-hidden", "Protective orders", "Tulare County, California, VFL301122"),
    ("address-must-stay-hidden", "Danger", "Safe at Home address"),
    ("amended-petition", "Case", "26FL00417, amended petition to file Wed, Nov 25, 2026"),
    (
        "amended-petition",
        "First petition",
        "legal separation, filed Mon, Jun 1, 2026; intent to amend stated",
    ),
    (
        "nullity-under-age-by-a-parent",
        "Filed for",
        "Clara Silva, born Tue, Jan 20, 2009, by a parent or guardian",
    ),
    ("he-is-in-prison", "The other side", "in prison or jail"),
    ("a-paper-signed-before-the-wedding", "The other side", "lives in another state (OR), never lived here"),
    ("six-children-and-one-unborn", "The other side", "in the military"),
)


@pytest.mark.parametrize(("name", "label", "words"), FACTS)
def test_the_point_of_a_case_stands_among_its_facts(name: str, label: str, words: str) -> None:
    assert words in said(household(name), "facts")[label]


def test_the_former_name_stands_among_the_requests() -> None:
    assert said(household("only-the-husband-qualifies"), "requests")["Former name back"] == "Camille Dubois"


def test_a_case_told_twice_stands_once_with_what_the_second_adds() -> None:
    words = said(household("lists-on-the-courts-own-form"), "facts")["Other cases"]

    assert words.count("BY-0044321") == 1
    assert "(order of 6/12/2026, all three children, parent, open)" in words


def test_two_cases_stay_two() -> None:
    one = household("lists-on-the-courts-own-form")
    more = one.case.with_fact("uccjea.case_words", ("Kern County, California, BY-0099999, guardianship",))

    assert said(one, "facts", more)["Other cases"].count(";") == 1


def test_after_the_filing_it_says_what_happened_and_the_next_days_to_keep() -> None:
    told = said(since("corrected-after-it-was-served", "2026-11-25"), "facts")

    assert told["Case"].endswith("amended petition filed Mon, Nov 16, 2026")
    assert told["First petition"].startswith("divorce (dissolution), filed Thu, Oct 1, 2026")
    assert (
        "October 10, 2026: The papers were served or sent (Handed to the other side in person)"
        in told["Since then"]
    )
    assert "November 20, 2026: The amended paper was served" in told["Since then"]
    # Cal. Rules of Court, rule 5.74 and Code Civ. Proc. 12a: 30 days end on Sunday, December 20
    assert "Sun, Dec 20, 2026 (court closed, so Mon, Dec 21, 2026)" in told["Next dates"]


@pytest.mark.parametrize(
    ("recorded", "words"),
    [(None, "no response"), ("2026-11-20", "a response has come"), ("2026-11-26", "no response")],
)
def test_a_response_that_was_recorded_is_told_of_the_first_petition(recorded: str | None, words: str) -> None:
    one = household("amended-petition")
    record = {"filed_on": "2026-06-01", "response_filed_on": recorded}
    told = Case.model_validate({**one.case.model_dump(mode="json"), "record": record})
    assert words in said(one, "facts", told)["First petition"].split("; ")


def test_a_petition_filed_together_is_called_so_and_offers_no_joint_petition() -> None:
    one = since("one-petition-for-both", "2026-12-01")

    assert "filed together Wed, Nov 25, 2026" in said(one, "facts")["Case"]
    assert "One petition for both" not in said(one, "flags")


@for_each(EVERY)
def test_each_count_stands_once_in_whole_sentences(one: Household) -> None:
    found = lines(one, "counts")
    assert len({line.words for line in found}) == len(found)
    for line in found:
        assert ";" not in line.words
        assert line.words[0].isupper()
        assert line.words.endswith(".")


def test_what_is_near_no_line_needs_no_count() -> None:
    assert not lines(household("six-children-and-one-unborn"), "counts")
    assert list(said(household("only-the-husband-qualifies"), "counts")) == ["The ten-year line"]


def test_a_count_is_of_a_finding_that_is_there() -> None:
    found = brief(household("nullity-for-force").case, household("nullity-for-force").on).findings
    titles = {each.title for each in found}

    assert {line.label for line in counts(found)} <= titles
    assert next(line.label for line in counts(found)) == "Last day to file for a nullity"


def test_flags_leave_out_what_is_only_good_to_know() -> None:
    found = brief(ALL[0].case, ALL[0].on).findings
    light = tuple(each for each in found if each.weight is Weight.GOOD_TO_KNOW)

    assert any(each.outcome is Outcome.MET for each in light)
    assert not list(flags(light))


def test_it_takes_one_page_in_nearly_every_household_and_never_more_than_two() -> None:
    pages = [len(words_of([handoff.sheet(brief(one.case, one.on))])) for one in households()]

    assert max(pages) <= 2
    assert pages.count(2) <= len(pages) // 10


def test_long_lists_are_cut_and_counted() -> None:
    one = household("address-must-stay-hidden")
    orders = tuple(f"Kern County, California, VF{number}0000" for number in range(40))
    case = one.case.with_fact("uccjea.order_words", orders).with_fact("petitioner.other_names", orders)
    told = said(one, "facts", case)

    assert told["Protective orders"].endswith("; 37 more")
    assert told["Petitioner's other names"].endswith("; 37 more")
    assert len(words_of([handoff.sheet(brief(case, one.on))])) <= 2


def test_visits_that_somebody_else_is_to_watch_are_told_as_supervised() -> None:
    one = household("address-must-stay-hidden")
    for asked, words in ((True, "respondent, supervised"), (False, "respondent"), (None, "respondent")):
        case = one.case.with_fact("custody.visits", VisitsTo.RESPONDENT)
        assert said(one, "requests", case.with_fact("custody.supervised", asked))["Visits"] == words


def test_what_the_filer_wrote_of_the_visits_stands_as_written() -> None:
    one = household("address-must-stay-hidden")
    assert said(one, "requests", one.case)["Visits"] == one.case.custody.other_words


def test_a_child_of_one_whose_birth_may_lie_before_the_wedding_is_told_as_open() -> None:
    # Fam. Code 7611(a): born in the marriage
    one = household("a-child-by-somebody-new")
    label, words = "Said to be of one of the two only", "(open: born in the union?)"
    assert words not in said(one, "facts", one.case)[label]
    assert words in said(one, "facts", one.case.with_fact("dates.married_on", DONT_KNOW))[label]
