"""The interview from the first question to the last, as households of several kinds go through it."""

from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.facts.choices import Lives
from firstpaper.intake.engine import Asked, asked, asking, next_question, put, standing
from firstpaper.intake.kinds import AnswerKind
from firstpaper.intake.reading import read_answer

TODAY = date(2026, 11, 25)
MOST_FOR_TWO = 43
MOST_WITH_TWO_CHILDREN = 62
MOST_WITH_EVERYTHING = 70

Typed = dict[str, str]

PLAIN: Typed = {
    "safety.here": "safe",
    "safety.typist": "filer",
    "matter.unions": "marriage",
    "matter.kind": "dissolution",
    "matter.other_case": "no",
    "petitioner.name": "Maria Elena Soto",
    "petitioner.mailing": "PO Box 118, Fresno, CA 93701",
    "respondent.name": "Daniel Reyes",
    "respondent.mailing": "1420 Olive Street, Fresno, CA 93728",
    "residence.petitioner.own_county": "Fresno",
    "court.county": "Fresno",
    "court.address": "1130 Example Avenue, Fresno, CA 93724",
    "dates.married_on": "6/14/2012",
    "dates.separation_told_on": "8/30/2026",
    "dates.separation_acted_on": "9/5/2026",
    "residence.petitioner.lives": "this_county",
    "residence.petitioner.state_since": "1990",
    "residence.petitioner.county_since": "March 2020",
    "grounds.reason": "irreconcilable",
    "support.petitioner": "reserve",
    "support.respondent": "reserve",
    "property.separate_how": "classes",
    "property.community_how": "not_yet_known",
    "requests.fees": "not_asked",
}
TWO_CHILDREN: Typed = PLAIN | {
    "children.family": "minor_together",
    "children.how_many": "2",
    "child.1.name": "Lucia Reyes",
    "child.1.born_on": "11/2/2014",
    "child.1.parentage": "born_to_both",
    "child.2.name": "Mateo Reyes",
    "child.2.born_on": "5/5/2018",
    "child.2.parentage": "born_to_both",
    "custody.legal": "joint",
    "custody.physical": "petitioner",
    "custody.visits": "respondent",
    "uccjea.now": "no",
}
FULL: Typed = TWO_CHILDREN | {
    "people.special": "interpreter",
    "people.language": "Mixteco, for me",
    "petitioner.other_names": "Maria Soto Vega",
    "matter.other_case": "yes",
    "matter.other_case_words": "Child support, Fresno County, open",
    "matter.amended": "no",
    "child.1.born_on": "11/2/2011",
    "child.1.declaration": "not_signed",
    "custody.visits": "other",
    "custody.other_words": "Visits with Ana Soto present",
    "custody.sheets": "own_page",
    "custody.plan": "Every other weekend",
    "support.petitioner": "ask",
    "property.separate_how": "list",
    "property.separate_petitioner": "My ring",
    "property.community_how": "list",
    "property.community_items": "2019 car",
    "requests.former_name": "Maria Elena Soto Cruz",
    "requests.former_name_used": "yes",
}


def typed(stop: Asked, answers: Typed) -> str:
    """What the household types; where it has nothing special to say: none, yes, or nothing to add."""
    if stop.key in answers:
        return answers[stop.key]
    if stop.kind is AnswerKind.YES_NO:
        return "yes"
    assert stop.none, f"the household has no answer to {stop.key}"
    return "none"


def interview(answers: Typed) -> tuple[list[str], Case]:
    """The keys asked, in order, and the case at the end."""
    case, keys = Case(), []
    while stop := next_question(case):
        keys.append(stop.key)
        case = put(case, stop.key, read_answer(stop, typed(stop, answers), TODAY))
    return keys, case


def test_a_plain_divorce_without_children_is_short() -> None:
    keys, _case = interview(PLAIN)
    assert len(keys) <= MOST_FOR_TWO
    assert keys[0] == "safety.understood"
    assert keys[-1] == "signing.orders_read"
    assert keys.index("shortcuts.look_at") < keys.index("petitioner.name")


def test_a_divorce_with_two_children_is_not_too_long() -> None:
    keys, _case = interview(TWO_CHILDREN)
    assert len(keys) <= MOST_WITH_TWO_CHILDREN


def test_even_a_household_that_has_something_to_say_everywhere_is_not_asked_too_much() -> None:
    keys, _case = interview(FULL)
    assert set(FULL) <= set(keys)
    assert len(keys) <= MOST_WITH_EVERYTHING


@pytest.mark.parametrize("answers", [PLAIN, TWO_CHILDREN, FULL], ids=["plain", "two children", "full"])
def test_no_question_comes_twice(answers: Typed) -> None:
    keys, _case = interview(answers)
    assert len(keys) == len(set(keys))


SAME_SEX: Typed = PLAIN | {
    "residence.petitioner.lives": "abroad",
    "residence.respondent.lives": "other_state",
    "residence.exception.wedding_county": "Alameda",
    "residence.petitioner.lives_in": "Namibia",
    "residence.respondent.lives_in": "Ohio",
}
PARTNERS_AWAY: Typed = PLAIN | {
    "matter.unions": "partners_california",
    "dates.registered_on": "9/1/2015",
    "residence.petitioner.lives": "other_state",
    "residence.respondent.lives": "abroad",
}
FORCED: Typed = PLAIN | {
    "matter.kind": "nullity",
    "grounds.nullity": "force",
    "dates.married_place": "Fresno, California",
    "grounds.filer": "spouse",
    "grounds.forced": "petitioner",
    "grounds.stayed_after_force": "no",
    "grounds.good_faith": "neither",
    "residence.respondent.lives": "this_county",
    "waiver.wanted": "no",
}
AMENDED: Typed = PLAIN | {
    "matter.other_case": "yes",
    "matter.other_case_words": "This divorce, Fresno County, open",
    "matter.amended": "yes",
    "matter.case_number": "26FL001234",
    "matter.first_filed_on": "3/14/2026",
    "matter.first_kind": "legal_separation",
    "matter.other_side_answered": "no",
}
SEPARATE: Typed = {"matter.kind": "legal_separation"}
SEPARATION: Typed = PLAIN | SEPARATE | {"residence.respondent.lives": "this_county"}
MAILS_ABROAD: Typed = PLAIN | {
    "respondent.mailing": "Calle 5, Oaxaca, Mexico",
    "residence.respondent.lives": "california",
}
FILER = "residence.petitioner"
CAME_LATELY: Typed = PLAIN | {
    "residence.petitioner.county_since": "9/16/2026",
    "residence.petitioner.previous_county": "Kern",
    "residence.petitioner.previous_county_until": "9/16/2026",
    "residence.respondent.lives": "california",
    "residence.respondent.state_since": "2001",
    "residence.respondent.own_county": "Kern",
    "residence.respondent.own_county_since": "2001",
}
CAME_FROM_ABROAD: Typed = CAME_LATELY | {"residence.petitioner.previous_county": "none"}
IN_ANOTHER_COUNTY: Typed = CAME_LATELY | {
    "residence.petitioner.own_county": "Kings",
    "residence.petitioner.own_county_since": "2015",
}
TOOK_A_NAME: Typed = PLAIN | {"petitioner.other_names": "Maria Vega"}
GIVES_UP: Typed = PLAIN | {"support.petitioner": "end"}


@pytest.mark.parametrize(
    ("answers", "asked", "not_asked"),
    [
        (TOOK_A_NAME, "requests.former_name", "requests.intends_to_amend"),
        (PLAIN, "residence.petitioner.absences", "residence.respondent.absences"),
        (PLAIN, "support.respondent", "support.own_right_ends"),
        (SAME_SEX, "residence.exception.not_dissolvable_at_home", "residence.petitioner.state_since"),
        (SAME_SEX, "residence.respondent.lives_in", "dates.registered_on"),
        (PARTNERS_AWAY, "dates.registered_on", "dates.married_on"),
        (PARTNERS_AWAY, "grounds.reason", "residence.exception.same_sex"),
        (FORCED, "grounds.stayed_after_force", "grounds.discovered_on"),
        (FORCED, "residence.petitioner.lives", "residence.petitioner.state_since"),
        (FORCED, "grounds.good_faith", "requests.putative_division"),
        (AMENDED, "matter.first_stated_intent", "requests.intends_to_amend"),
        (PLAIN, "residence.petitioner.lives", "residence.respondent.lives"),
        (MAILS_ABROAD, "residence.respondent.lives", "residence.respondent.own_county"),
        (MAILS_ABROAD, "residence.respondent.lives", "residence.respondent.state_since"),
        (PLAIN, "residence.petitioner.own_county", "residence.petitioner.own_county_since"),
        (CAME_LATELY, "residence.respondent.own_county_since", "residence.respondent.county_since"),
        (CAME_LATELY, "residence.respondent.state_since", f"{FILER}.own_county_since"),
        (CAME_FROM_ABROAD, f"{FILER}.previous_county", f"{FILER}.previous_county_until"),
        (IN_ANOTHER_COUNTY, f"{FILER}.own_county_since", "residence.petitioner.county_since"),
        (IN_ANOTHER_COUNTY, "residence.respondent.lives", "residence.petitioner.lives"),
        (CAME_LATELY | SEPARATE, "residence.respondent.lives", "residence.respondent.own_county"),
        (SEPARATION, "requests.intends_to_amend", "requests.former_name"),
        (GIVES_UP, "support.own_right_ends", "support.other"),
        (TWO_CHILDREN, "custody.alike", "child.1.legal"),
        (TWO_CHILDREN | {"custody.alike": "no"} | dict.fromkeys(
            (f"child.{n}.{what}" for n in (1, 2) for what in ("legal", "physical", "visits")), "petitioner"
        ), "child.2.visits", "custody.legal"),
    ],
)  # fmt: skip
def test_what_is_asked_follows_from_what_was_told(answers: Typed, asked: str, not_asked: str) -> None:
    keys, _case = interview(answers)
    assert asked in keys
    assert not_asked not in keys


def test_an_answer_that_nobody_had_to_give_stands_once_it_is_told() -> None:
    _keys, case = interview(PLAIN)
    lives = put(case, "residence.respondent.lives", "this_county")
    told = put(lives, "residence.respondent.state_since", "1988")
    assert standing(told).residence.respondent.state_since == told.residence.respondent.state_since
    assert "residence.respondent.state_since" in [stop.key for stop in asked(told)]


def test_the_county_of_ones_home_comes_before_the_county_of_filing_and_tells_where_one_lives() -> None:
    keys, case = interview(IN_ANOTHER_COUNTY)
    assert keys.index(f"{FILER}.own_county") + 1 == keys.index("court.county")
    assert standing(case).residence.petitioner.lives is Lives.CALIFORNIA


def test_a_case_told_before_that_question_was_asked_is_as_finished_as_it_was() -> None:
    _keys, case = interview(PLAIN)
    before = put(case, f"{FILER}.own_county", None)
    assert next_question(before) is None
    elsewhere = put(before, f"{FILER}.lives", "california")
    assert f"{FILER}.own_county" in [stop.key for stop in asked(elsewhere)]


def test_names_told_stand_in_later_questions() -> None:
    case = put(Case(), "respondent.name", "Daniel Reyes")
    case = put(put(case, "children.family", ["minor_together"]), "children.how_many", 1)
    case = put(case, "child.1.name", "Lucia Reyes")
    lives, born = asking("residence.respondent.lives", case), asking("child.1.born_on", case)
    assert lives
    assert born
    assert lives.ask == "Where does Daniel Reyes live now?"
    assert born.ask == "On what day was Lucia Reyes born?"
