"""Answers chosen by number or by words, and small numbers: never the nearest thing, only what was meant."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts.children import MOST_CHILDREN
from firstpaper.intake.question import Choice
from firstpaper.intake.reading.choices import read_choice, read_several, read_yes_no
from firstpaper.intake.reading.numbers import read_number
from firstpaper.intake.refusals import AnswerRefused

CHOICES = (
    Choice("petitioner", "Me"),
    Choice("respondent", "The other side"),
    Choice("joint", "Both of us, together"),
    Choice("own_page", "No, on a page of my own"),
    Choice("not_asked", "Nothing: the court should not decide"),
)

ONE = {
    "1": "petitioner",
    " 2. ": "respondent",
    "(3)": "joint",
    "#4": "own_page",
    "５": "not_asked",
    "٢": "respondent",
    "me": "petitioner",
    "Me.": "petitioner",
    "the other side": "respondent",
    "The Other": "respondent",
    "resp": "respondent",
    "both": "joint",
    "Both of us, together": "joint",
    "JOINT": "joint",
    "no": "own_page",
    "own_page": "own_page",
    "own page": "own_page",
    "not asked": "not_asked",
    "not": "not_asked",
    "nothing": "not_asked",
}
NOT_ONE = {
    "0": "from 1 to 5",
    "6": "from 1 to 5",
    "-1": "not one of the answers",
    "1.5": "not one of the answers",
    "²": "not one of the answers",
    "1,3": "choose one",
    "1 and 3": "choose one",
    "999999": "from 1 to 5",
    "9" * 400: "not one of the answers",
    "b": "not one of the answers",
    "court": "not one of the answers",
    "\x1b[31m": "not one of the answers",
    "": "not one of the answers",
}


@pytest.mark.parametrize(("typed", "value"), ONE.items())
def test_one_choice(typed: str, value: str) -> None:
    assert read_choice(CHOICES, typed) == value


@pytest.mark.parametrize(("typed", "says"), NOT_ONE.items())
def test_what_is_no_choice_is_refused(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        read_choice(CHOICES, typed)


def test_words_that_begin_two_answers_name_both_numbers() -> None:
    with pytest.raises(AnswerRefused, match="1, 2"):
        read_choice((Choice("a", "Yes, born to us"), Choice("b", "Yes, adopted"), Choice("c", "No")), "yes")


@pytest.mark.parametrize(
    ("typed", "values"),
    [
        ("1", ("petitioner",)),
        ("1,3", ("petitioner", "joint")),
        ("3 1", ("petitioner", "joint")),
        ("1, 3 and 4", ("petitioner", "joint", "own_page")),
        ("2;2;2", ("respondent",)),
        ("1\n3", ("petitioner", "joint")),
        ("me, the other side", ("petitioner", "respondent")),
        ("joint; own page", ("joint", "own_page")),
        ("both of us, together", ("joint",)),
    ],
)
def test_several_choices_come_in_the_order_shown(typed: str, values: tuple[str, ...]) -> None:
    assert read_several(CHOICES, typed) == values


@pytest.mark.parametrize("typed", ["1,9", "0 1", "1-3", "1,x", "me, nobody", "13", "1,,9"])
def test_one_wrong_choice_among_several_refuses_them_all(typed: str) -> None:
    with pytest.raises(AnswerRefused):
        read_several(CHOICES, typed)


@given(st.lists(st.integers(0, 12), min_size=1, max_size=6))
def test_a_number_that_is_not_shown_is_never_passed_over(numbers: list[int]) -> None:
    typed = ",".join(map(str, numbers))
    if all(1 <= number <= len(CHOICES) for number in numbers):
        assert read_several(CHOICES, typed) == tuple(
            choice.value for index, choice in enumerate(CHOICES, 1) if index in numbers
        )
    else:
        with pytest.raises(AnswerRefused):
            read_several(CHOICES, typed)


@pytest.mark.parametrize("typed", ["y", "Y", "yes", "Yes.", "YES!", "si", "Sí", "ok", "sure", "true"])
def test_yes(typed: str) -> None:
    assert read_yes_no(typed) is True


@pytest.mark.parametrize("typed", ["n", "no", "No.", "NO", "false"])
def test_no(typed: str) -> None:
    assert read_yes_no(typed) is False


@pytest.mark.parametrize("typed", ["", "maybe", "1", "2", "3", "0", "yes no", "yn", "not"])
def test_neither_yes_nor_no(typed: str) -> None:
    with pytest.raises(AnswerRefused, match="yes or no"):
        read_yes_no(typed)


@pytest.mark.parametrize(
    ("typed", "number"), [("2", 2), ("two", 2), ("Ten.", 10), ("30", 30), ("dos", 2), ("٣", 3)]
)
def test_numbers(typed: str, number: int) -> None:
    assert read_number(typed) == number


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("0", "none"),
        (str(MOST_CHILDREN + 1), f"up to {MOST_CHILDREN}"),
        ("2.5", "a number"),
        ("-2", "a number"),
        ("thirteen", "a number"),
        ("9" * 5000, "a number"),
        ("", "a number"),
    ],
)
def test_what_is_no_small_number_is_refused(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        read_number(typed)
