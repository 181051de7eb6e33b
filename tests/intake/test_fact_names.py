"""A fact has one name, and it goes on after "we need to know" wherever it is spoken of."""

import re

import pytest

from firstpaper.facts import Case
from firstpaper.intake import bank
from firstpaper.intake.events import events
from firstpaper.intake.fact_names import named
from firstpaper.intake.loading import listing
from firstpaper.intake.question import Question

QUESTIONS = [
    question
    for topic in (*bank().topics, *listing().topics, *events().topics)
    for question in topic.questions
]


@pytest.mark.parametrize("question", QUESTIONS, ids=lambda question: question.key)
def test_a_name_is_a_short_piece_of_a_sentence(question: Question) -> None:
    assert re.match(r"[a-z{]", question.short)
    assert question.short[-1] not in ".,;:?"
    assert len(question.short) <= 96
    assert "{respondent}" not in question.short


def test_no_two_facts_of_the_interview_or_the_record_have_the_same_name() -> None:
    topics = (*bank().topics, *events().topics)
    names = [question.short for topic in topics for question in topic.questions]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize(
    ("key", "name"),
    [
        ("petitioner.name", "your full legal name"),
        ("child.2.born_on", "the birth date of your second child"),
        ("asset.3.traced", "whether papers show whose money it was"),
        ("record.filed_on", "the filing"),
    ],
)
def test_every_kind_of_fact_is_named(key: str, name: str) -> None:
    assert named(key) == name


def test_a_child_is_named_as_in_the_case() -> None:
    case = Case().with_fact("child.1.name", "Ada Reyes")
    assert named("child.1.born_on", case) == "the birth date of Ada Reyes"


def test_what_nothing_asks_for_has_no_name() -> None:
    with pytest.raises(KeyError):
        named("petitioner.shoe_size")
