"""The plain reader's test: a page answers what people ask at its item.

The questions were written before the pages were read again. Common practice, no source: they are what people
ask at a kitchen table. A page answers when it holds the words without which there is no answer.
"""

from datetime import date
from pathlib import Path
from typing import NamedTuple

import pytest
import yaml

from firstpaper.forms.explanations import explanations

ON = date(2026, 12, 1)
QUESTIONS = Path(__file__).parent / "explained"
FEWEST, FEWEST_ELSEWHERE = 60, 30


class Question(NamedTuple):
    """What somebody asks, the item of a form they look at, and the words that its page must hold."""

    asks: str
    item: str
    holds: list[str]
    form: str = "FL-100"


ASKED = [
    Question(**row)
    for path in sorted(QUESTIONS.glob("*-questions.yaml"))
    for row in yaml.load(path.read_text(encoding="utf-8"), yaml.CSafeLoader)
]


def test_there_are_enough_and_each_is_asked_once() -> None:
    of_the_petition = [question for question in ASKED if question.form == "FL-100"]
    assert len(of_the_petition) >= FEWEST
    assert len(ASKED) - len(of_the_petition) >= FEWEST_ELSEWHERE
    assert len({question.asks for question in ASKED}) == len(ASKED)


@pytest.mark.parametrize("question", ASKED, ids=[question.asks for question in ASKED])
def test_the_page_answers(question: Question) -> None:
    page = _page(question.form, question.item)
    assert [words for words in question.holds if words.casefold() not in page] == []


def test_a_page_of_another_item_does_not_answer() -> None:
    """The words are telling: hardly any question is answered by a page that it does not name."""
    strangers = [
        (question.asks, item)
        for question in ASKED
        for item in (each.item for each in explanations(question.form))
        if item != question.item
        and all(words.casefold() in _page(question.form, item) for words in question.holds)
    ]
    assert len(strangers) <= len(ASKED) / 4, strangers


def _page(form: str, item: str) -> str:
    (found,) = (each.on(ON) for each in explanations(form) if each.item == item)
    return " ".join(" ".join(found.words).casefold().split())
