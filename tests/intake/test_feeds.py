"""Nothing is asked in vain: what each question feeds exists, and somebody reads the answer."""

import re
from datetime import date
from functools import cache
from pathlib import Path

import pytest

import firstpaper
from firstpaper.facts import Case
from firstpaper.forms import Action, ItemAnswer, forms_needed
from firstpaper.forms.edition import edition_for
from firstpaper.forms.fl100.form import form as petition_form
from firstpaper.intake import facts_from
from firstpaper.intake.kinds import general
from firstpaper.intake.loading import bank
from firstpaper.intake.question import Question
from firstpaper.law.register import Rule, all_rules
from tests.each import for_each
from tests.law.test_rule_cases import RULE_CASES

TODAY = date(2026, 11, 25)
QUESTIONS: list[Question] = [question for topic in bank().topics for question in topic.questions]
PACKAGE = Path(firstpaper.__file__).parent
TEMPLATES = Path(__file__).parents[2] / "templates"

HOUSEHOLDS = sorted(Path(__file__).parents[2].glob("demo/households/*.yaml"))
ASKED = {question.key for question in QUESTIONS}

each_question = for_each(QUESTIONS, lambda question: question.key)


@cache
def told(household: Path) -> Case:
    case, problems = facts_from(household.read_text("utf-8"), TODAY)
    assert not problems
    return case


@each_question
def test_what_a_question_feeds_exists(question: Question) -> None:
    concepts = {item.concept for item in edition_for("FL-100", TODAY).items}
    assert set(question.feeds.rules) - set(all_rules()) == set()
    assert set(question.feeds.items) - concepts == set()


@each_question
def test_a_sheet_it_feeds_is_one_of_ours_or_a_form_that_somebody_may_need(question: Question) -> None:
    ours = {path.stem for path in TEMPLATES.glob("*.html")}
    assert set(question.feeds.sheets) - ours - forms_of_somebody() == set()


@cache
def forms_of_somebody() -> frozenset[str | None]:
    needed = (one for household in HOUSEHOLDS for one in forms_needed(told(household), TODAY))
    return frozenset(one.form for one in needed)


@for_each(all_rules().values(), lambda rule: rule.id)
def test_every_fact_that_a_rule_names_is_asked_for_it(rule: Rule) -> None:
    found = [one for case in RULE_CASES if case.rule == rule.id for one in rule.apply(case.case, case.on)]
    named = {general(key) for finding in found for key in finding.facts}
    fed = {question.key for question in QUESTIONS if rule.id in question.feeds.rules}
    assert named & ASKED - fed == set()


@pytest.mark.parametrize("household", HOUSEHOLDS, ids=lambda path: path.stem)
def test_where_taking_an_answer_away_changes_the_petition_the_question_feeds_it(household: Path) -> None:
    case = told(household)
    before = {answer.concept: answer for answer in petition(case, TODAY)}
    for question in QUESTIONS:
        key = question.key.replace("*", "1")
        if case.fact(key) is not None:
            after = petition(case.with_fact(key, None), TODAY)
            changed = {answer.concept for answer in after if _shown(answer) != _shown(before[answer.concept])}
            assert not changed or changed & set(question.feeds.items), (question.key, sorted(changed))


def petition(case: Case, on: date) -> tuple[ItemAnswer, ...]:
    """What goes in each item of the petition."""
    return petition_form(case, on)[0].items


def _shown(answer: ItemAnswer) -> tuple[str, str, str]:
    return answer.action, answer.value, answer.continues


def test_every_item_of_the_petition_that_an_answer_fills_is_fed() -> None:
    filled = {
        answer.concept
        for household in HOUSEHOLDS
        for answer in petition(told(household), TODAY)
        if answer.action in (Action.MARK, Action.WRITE)
    }
    fed = {concept for question in QUESTIONS for concept in question.feeds.items}
    assert filled - fed - SAME_IN_EVERY_CASE == set()


SAME_IN_EVERY_CASE: set[str] = {"cap.for"}


@each_question
def test_what_was_asked_is_read_by_a_rule_a_form_or_a_sheet(question: Question) -> None:
    """The name of each fact stands somewhere in the code or the sheets that use facts."""
    assert question.key.rpartition(".")[2] in words_of_the_readers()


@cache
def words_of_the_readers() -> frozenset[str]:
    files = [path for name in ("law", "forms", "packet", "cli") for path in (PACKAGE / name).rglob("*.py")]
    files += TEMPLATES.rglob("*.html")
    return frozenset(word for path in files for word in re.findall(r"\w+", path.read_text("utf-8")))
