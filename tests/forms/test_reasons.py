"""The reason given at each item: short plain sentences, in words nobody needs to look up."""

from datetime import date
from functools import cache
from random import Random

from firstpaper.forms.needed import forms_needed
from firstpaper.forms.petition import petition
from tests.forms.any_case import household
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
        found.update(dict.fromkeys(answer.because for answer in petition(case, ON)))
        found.update(dict.fromkeys(each.why for each in forms_needed(case, ON)))
    return tuple(found)


def test_the_reasons_read_easily() -> None:
    assert len(reasons()) > 300
    assert grade(reasons()) <= HARDEST_ON_AVERAGE


def test_no_reason_has_a_long_sentence() -> None:
    assert [text for text in reasons() if len(words(longest_sentence(text))) > LONGEST_SENTENCE] == []


def test_no_reason_uses_a_word_that_has_a_plainer_twin() -> None:
    assert [text for text in reasons() if barred_words(text)] == []
