"""How much a person meets in one evening: questions and words, counted and held."""

from itertools import pairwise

from firstpaper.facts import Case
from firstpaper.intake import next_question, put, read_answer
from firstpaper.intake.to_come import ahead
from tests.benchmarks.sitting import TWO_CHILDREN_SUPPORT_AND_FEES, sitting
from tests.intake.test_interview import PLAIN, TODAY, typed

MOST_QUESTIONS, MOST_WORDS = 40, 3000
MOST_WITH_CHILDREN = 62
MOST_GROWTH = 3


def test_a_plain_case_is_one_evening() -> None:
    found = sitting(PLAIN)
    assert found.questions <= MOST_QUESTIONS
    assert found.words <= MOST_WORDS


def test_two_children_support_and_a_fee_waiver_are_one_evening_too() -> None:
    assert sitting(TWO_CHILDREN_SUPPORT_AND_FEES).questions <= MOST_WITH_CHILDREN


def test_the_number_of_questions_left_is_a_promise() -> None:
    """It never grows by more than a few, and the way to the end lies inside the range at every question."""
    case, told = Case(), []
    while one := next_question(case):
        told.append(ahead(case))
        case = put(case, one.key, read_answer(one, typed(one, PLAIN), TODAY))
    for number, (fewest, most) in enumerate(told):
        left = len(told) - number
        assert fewest - MOST_GROWTH <= left <= most + MOST_GROWTH
    for before, after in pairwise(told):
        assert after.fewest - before.fewest <= MOST_GROWTH
        assert after.most - before.most <= MOST_GROWTH
