"""The question bank as a whole: complete, in an order that is safe, and asking for nothing in vain."""

import inspect
import re
from collections import Counter
from datetime import date
from itertools import pairwise
from pathlib import Path

import pytest

from firstpaper.facts import Case
from firstpaper.forms.edition import edition_for
from firstpaper.intake.engine import asking
from firstpaper.intake.kinds import AnswerKind, place_of, places
from firstpaper.intake.loading import FOLDER, bank
from firstpaper.intake.predicates import OF_THE_INTERVIEW
from firstpaper.intake.question import Question, Topic, all_words
from firstpaper.intake.reading import read_answer
from firstpaper.law.figure import figure
from tests.each import for_each
from tests.intake.predicates_of import predicates_of

TODAY = date(2026, 11, 25)
HOTLINE = figure("help.domestic_violence_hotline", TODAY).value
QUESTIONS: list[Question] = [question for topic in bank().topics for question in topic.questions]
ORDER = {question.key: place for place, question in enumerate(QUESTIONS)}
SOURCE = Path(inspect.getfile(Case)).parents[1]

each_question = for_each(QUESTIONS, lambda question: question.key)
each_topic = for_each(bank().topics, lambda topic: topic.name)


def test_every_fact_has_one_question_and_every_question_a_fact() -> None:
    assert Counter(question.key for question in QUESTIONS) == Counter(list(places()))


@each_topic
def test_a_file_is_named_for_its_topic(topic: Topic) -> None:
    assert [path.stem[3:] for path in FOLDER.glob(f"[0-9][0-9]-{topic.name}.yaml")] == [topic.name]


def test_topics_come_in_the_order_of_their_numbers() -> None:
    numbers = sorted(int(path.stem[:2]) for path in FOLDER.glob("*.yaml"))
    assert numbers == list(range(1, len(bank().topics) + 1))


# --- what a question asks -------------------------------------------------------------------------


@each_question
def test_choices_cover_every_value_and_nothing_else(question: Question) -> None:
    values = place_of(question.key).choices
    assert {choice.value for choice in question.choices} == set(values or ())


@each_question
def test_nothing_can_be_answered_where_and_only_where_there_are_words_for_it(question: Question) -> None:
    """Text that a model takes empty has words for "nothing"; so has every list but those that need one."""
    must_have_one = (
        "matter.unions",
        "grounds.nullity",
        "matter.case_number",
        "matter.other_case_words",
        "child.*.homes",
    )
    must_have_words = ("people.language", "dates.married_place", "child.*.birthplace", "custody.other_words")
    empty = {AnswerKind.TEXT: "", AnswerKind.PARAGRAPH: ""}.get(question.kind, ())
    place = place_of(question.key)
    takes_empty = question.kind in (*NOTHING_POSSIBLE,) and _fits(place.model, place.field, empty)
    wanted = takes_empty and question.key not in (*must_have_one, *must_have_words, "custody.plan")
    assert bool(question.none) is wanted


NOTHING_POSSIBLE = (
    AnswerKind.TEXT,
    AnswerKind.PARAGRAPH,
    AnswerKind.LINES,
    AnswerKind.PERIODS,
    AnswerKind.HOMES,
    AnswerKind.PEOPLE,
    AnswerKind.SEVERAL,
)


def _fits(model: type, field: str, value: object) -> bool:
    try:
        model.model_validate({field: value})  # type: ignore[attr-defined]
    except ValueError:
        return False
    return True


@each_question
def test_every_example_is_an_answer_that_is_taken(question: Question) -> None:
    stop = asking(question.key.replace("*", "1"), Case())
    assert stop is not None
    for example in question.examples:
        assert read_answer(stop, example, TODAY) not in (None, "", ())


@each_question
def test_what_a_person_must_type_is_shown_by_an_example_or_hint(question: Question) -> None:
    typed = question.kind not in (AnswerKind.YES_NO, AnswerKind.CHOICE, AnswerKind.SEVERAL)
    assert not typed or question.examples or question.hint


@each_question
def test_days_told_lie_in_the_past(question: Question) -> None:
    """All but the end of a lease, which is to come."""
    dated = question.kind in (AnswerKind.DATE, AnswerKind.PERIODS, AnswerKind.HOMES)
    assert question.not_after_today is (dated and question.key != "summary.lease_ends_on")


# --- when it is asked -----------------------------------------------------------------------------


@each_question
def test_a_predicate_takes_the_child_where_a_question_is_about_one(question: Question) -> None:
    if question.applies is None:
        assert not question.each
    else:
        names = list(inspect.signature(question.applies).parameters)
        assert names == (["case", "child"] if question.each else ["case"])


def test_every_predicate_is_used() -> None:
    used = {
        name
        for question in QUESTIONS
        for name in (question.when, question.spared_if, question.needless_if)
        if name
    }
    assert set(predicates_of(OF_THE_INTERVIEW)) == used


def test_each_child_is_asked_about_in_one_go_in_each_topic() -> None:
    for topic in bank().topics:
        changes = [a.each != b.each for a, b in pairwise(topic.questions)]
        assert sum(changes) <= 2


# --- safety first ---------------------------------------------------------------------------------


def test_help_is_shown_before_anything_that_could_lead_to_the_filer() -> None:
    first = bank().topics[0]
    assert HOTLINE in (first.opening or "")
    assert "911" in (first.opening or "")
    shown = " ".join(QUESTIONS[ORDER["safety.dangers"]].notice)
    assert HOTLINE in shown
    assert "911" in shown
    named = [
        q.key for q in QUESTIONS if q.kind is AnswerKind.ADDRESS or ".name" in q.key or ".phone" in q.key
    ]
    assert min(ORDER[key] for key in named) > ORDER["safety.dangers"] > ORDER["safety.here"]


def test_whoever_fled_here_hears_of_a_lawyer_before_choosing_a_kind_of_case() -> None:
    notice = " ".join(QUESTIONS[ORDER["safety.dangers"]].notice)
    assert "to get away from violence? Talk to a lawyer before you choose a kind of case." in notice
    assert ORDER["safety.dangers"] < ORDER["matter.kind"]


def test_no_number_to_call_but_the_hotline_and_the_emergency_number() -> None:
    everything = " ".join(text for topic in bank().topics for text in all_words(topic))
    assert set(re.findall(r"\b[\d(][\d() -]{8,}\d\b", everything)) == {HOTLINE}


def test_telephone_examples_are_of_the_kind_kept_for_fiction() -> None:
    """Numbers 555-0100 to 555-0199 are set aside for fiction (North American Numbering Plan)."""
    numbers = [example for question in QUESTIONS for example in question.examples if "555" in example]
    assert numbers
    assert all(re.search(r"555-01\d\d$", number) for number in numbers)


# --- both sides, and no trap ----------------------------------------------------------------------


def words_of(key: str) -> str:
    question = QUESTIONS[ORDER[key]]
    return " ".join(
        [*question.notice, question.ask, question.why, *(choice.words for choice in question.choices)]
    )


@pytest.mark.parametrize(
    ("key", "one_side", "other_side"),
    [
        ("custody.sheets", "you are not tied to a plan", "if the other parent never answers"),
        ("property.community_how", "ties you to nothing", "the judge can decide only what the petition told"),
        ("requests.fees", "keeps the door open", "keeps things calmer"),
        ("support.petitioner", "even if the other person never answers", "Some people fight harder"),
        ("matter.kind", "can start at once", "both must agree"),
    ],
)
def test_both_sides_are_shown(key: str, one_side: str, other_side: str) -> None:
    assert one_side in words_of(key)
    assert other_side in words_of(key)


def test_what_may_be_owned_together_is_asked_before_none_is_offered() -> None:
    assert ORDER["property.community_kinds"] < ORDER["property.community_how"]
    assert "What nobody deals with stays owned by you both" in words_of("property.community_how")


def test_giving_up_support_is_asked_again_at_once() -> None:
    assert ORDER["support.own_right_ends"] == ORDER["support.petitioner"] + 1
    assert "can never ask" in words_of("support.petitioner")
    assert "give up all support" in words_of("support.own_right_ends")


@pytest.mark.parametrize("key", ["property.separate_petitioner", "property.community_items"])
def test_account_numbers_are_asked_for_by_their_last_four_digits(key: str) -> None:
    assert "only the last four digits" in (QUESTIONS[ORDER[key]].hint or "")


# --- the law in the words -------------------------------------------------------------------------

NUMBER_WORDS = {3: "three", 4: "four", 5: "five", 6: "six", 18: "18", 60: "five years"}


@pytest.mark.parametrize(
    ("key", "name", "words"),
    [
        ("residence.petitioner.state_since", "residence.state_months", "{number} months in the state"),
        ("residence.petitioner.county_since", "residence.county_months", "{number} months in the county"),
        ("court.county", "residence.county_months", "lived there for {number} months"),
        ("court.county", "residence.state_months", "and {number} in California"),
        ("child.*.born_on", "children.majority", "turns {number}"),
        ("children.family", "children.home_state_months", "in the last {number} months"),
        ("child.*.homes", "children.address_history_years", "in the last {number} years"),
    ],
)
def test_numbers_set_by_law_are_those_of_the_figures(key: str, name: str, words: str) -> None:
    value = figure(name, TODAY).value
    assert words.format(number=NUMBER_WORDS[value]) in words_of(key)


def test_the_form_has_as_many_lines_for_children_as_the_words_say() -> None:
    edition = edition_for("FL-100", TODAY)
    rows = [item for item in edition.items if re.fullmatch(r"children\.\d+\.name", item.concept)]
    assert f"has {NUMBER_WORDS[len(rows)]} lines" in words_of("children.how_many")


def test_the_orders_in_the_summons_are_told_as_the_law_has_them() -> None:
    """Fam. Code 2040: written consent lifts three of the orders; the one on insurance names no consent."""
    told = dict(
        zip(("One", "Two", "Three", "Four"), QUESTIONS[ORDER["signing.orders_read"]].notice[1:5], strict=True)
    )
    law, law_of_2027 = (figure("restraining_orders.text", day).value for day in (TODAY, date(2027, 1, 1)))
    assert all(text.startswith(f"{number}:") for number, text in told.items())
    for text, order, consent in zip(told.values(), law, (FIRST, WRITTEN, NONE, WRITTEN), strict=True):
        assert consent[0] in text
        assert consent[1] in order.replace(",", "")
    assert [old == new for old, new in zip(law, law_of_2027, strict=True)] == [True, True, False, True]
    assert "From January 1, 2027, you also may not let it lapse or fail to renew it" in told["Three"]


FIRST = ("in writing and given first", "agrees in writing first")
WRITTEN = ("written yes", "agrees in writing or")
NONE = ("does not help: ask the judge first", "no exception for written consent")
