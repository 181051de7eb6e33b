"""A small number, in digits or as a word."""

import re

from firstpaper.facts.count import MOST_COUNTED
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold
from firstpaper.locale import _

_WORDS = (
    "one uno una",
    "two dos",
    "three tres",
    "four cuatro",
    "five cinco",
    "six seis",
    "seven siete",
    "eight ocho",
    "nine nueve",
    "ten diez",
)
_NUMBER_OF = {word: number for number, words in enumerate(_WORDS, 1) for word in words.split()}


def read_number(text: str) -> int:
    """The number typed, from 1 to the most that a case can hold. Raises AnswerRefused otherwise."""
    word = fold(text).rstrip(" .!")
    number = int(word) if re.fullmatch(r"\d{1,4}", word) else _NUMBER_OF.get(word)
    if number is None:
        raise AnswerRefused(_("Please type a number, like 2."))
    if number == 0:
        raise AnswerRefused(_("If there are none, type back and change the answer before this one."))
    if number > MOST_COUNTED:
        raise AnswerRefused(
            _("This program can take up to {most}. Please type a number from 1 to {most}.").format(
                most=MOST_COUNTED
            )
        )
    return number
