"""The reason given at each item: short plain sentences, in words nobody needs to look up."""

from datetime import date
from functools import cache
from random import Random

from firstpaper.facts import Case
from firstpaper.forms.needed import forms_needed
from firstpaper.law.property_words import thing_words
from tests.any_case import WORDS, household
from tests.forms.petition import petition
from tests.words.reading import barred_words, grade, longest_sentence, words

ON = date(2026, 12, 1)
HARDEST_ON_AVERAGE = 5.0
LONGEST_SENTENCE = 20


@cache
def reasons() -> tuple[str, ...]:
    """Every reason that a few hundred households are shown."""
    found: dict[str, None] = {}
    for seed in range(200):
        case = household(Random(seed))
        names = things(case)
        found.update(dict.fromkeys(without(names, answer.because) for answer in petition(case, ON)))
        found.update(dict.fromkeys(each.why for each in forms_needed(case, ON)))
    return tuple(found)


def things(case: Case) -> list[str]:
    """What a person called things and children, and whatever else they typed at length: not our words."""
    keys = (f"{name}.{n}" for name in ("asset", "debt") for n in range(1, len(case.fact(name)) + 1))
    typed = (word for word in WORDS if len(word) > 100)
    children = (str(child.name) for child in case.child if child.name)
    return sorted((*typed, *children, *(thing_words(case, key) for key in keys)), key=len, reverse=True)


def without(names: list[str], text: str) -> str:
    for name in names:
        text = text.replace(name, "it")
    return text


def test_the_reasons_read_easily() -> None:
    assert len(reasons()) > 300
    assert grade(reasons()) <= HARDEST_ON_AVERAGE


def test_no_reason_has_a_long_sentence() -> None:
    assert [text for text in reasons() if len(words(longest_sentence(text))) > LONGEST_SENTENCE] == []


def test_no_reason_uses_a_word_that_has_a_plainer_twin() -> None:
    assert [text for text in reasons() if barred_words(text)] == []
