"""Answers that point to another answer, and refusals that show what the question itself would take."""

import pytest

from firstpaper.facts import Case, Day
from firstpaper.facts.people import Address
from firstpaper.intake import AnswerRefused, bank, read_answer
from tests.intake.small_bank import TODAY, question

HOME = Address(street="415 Third Street", city="Fresno", state="CA", zip="93701")
TOLD = (
    Case()
    .with_fact("dates.separation_told_on", Day(2026, 2, 3))
    .with_fact("petitioner.mailing", HOME)
    .with_fact("children.how_many", 1)
)


@pytest.mark.parametrize("typed", ["same day", "The same day.", "same", "on the same date", "el mismo día"])
def test_the_same_day_is_the_day_of_the_question_before(typed: str) -> None:
    assert read_answer(question("dates.separation_acted_on", TOLD), typed, TODAY) == Day(2026, 2, 3)


@pytest.mark.parametrize("key", ["child.1.address", "respondent.mailing"])
@pytest.mark.parametrize("typed", ["same as me", "same address as mine", "Same"])
def test_the_same_address_is_that_of_the_one_who_files(key: str, typed: str) -> None:
    assert read_answer(question(key, TOLD), typed, TODAY) == HOME


def test_nothing_is_the_same_as_what_is_not_told() -> None:
    with pytest.raises(AnswerRefused, match="not answered yet"):
        read_answer(question("dates.separation_acted_on"), "same day", TODAY)


def test_where_nothing_else_is_meant_the_words_stay_words() -> None:
    with pytest.raises(AnswerRefused, match="could not be read as a date"):
        read_answer(question("dates.married_on", TOLD), "same day", TODAY)


@pytest.mark.parametrize("key", ["dates.back_together", "residence.petitioner.absences", "dates.married_on"])
def test_what_cannot_be_read_is_answered_with_the_examples_of_that_question(key: str) -> None:
    one = question(key)
    with pytest.raises(AnswerRefused) as refused:
        read_answer(one, "no idea at all", TODAY)
    assert all(example in refused.value.message for example in one.question.examples)


def test_no_refusal_shows_the_example_of_another_question() -> None:
    examples = {example for topic in bank().topics for one in topic.questions for example in one.examples}
    for topic in bank().topics:
        for one in topic.questions:
            try:
                read_answer(question(one.key.replace("*", "1")), "%% no answer %%", TODAY)
            except AnswerRefused as refused:
                shown = {each for each in examples if len(each) > 12 and each in refused.message}
                assert all(any(each in own for own in one.examples) for each in shown), one.key
