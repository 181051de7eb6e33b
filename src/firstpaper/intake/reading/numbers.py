"""Whole numbers and shares, in digits or as a word."""

import re
from decimal import Decimal

from firstpaper.facts.count import MOST_COUNTED
from firstpaper.intake.habits import plainly
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
    "eleven once",
    "twelve doce",
)
NUMBER_OF = {word: number for number, words in enumerate(_WORDS, 1) for word in words.split()}
"""Small numbers by their words, in English and Spanish."""

WHOLE = Decimal(100)
_WHOLE = r"\d{1,9}|\d{1,3}(?:,\d{3}){1,3}"
_UNIT = r" *(?:months?|shares?|options?|meses|mes)$"
_NONE_OF_IT = {"none", "no", "nothing", "zero", "cero"}
_SHARE = r"\d{1,3}(?:\.\d{1,2})?"
_PERCENT_SIGN = r" *(?:%|percent|per cent|por ciento)$"
_PLAIN_SHARES = {"half": Decimal(50), "all": WHOLE, "none": Decimal(0), "la mitad": Decimal(50)}


def read_number(text: str) -> int:
    """The number typed, from 1 to the most that a case can hold. Raises AnswerRefused otherwise."""
    word = plainly("number", fold(text).rstrip(" .!"))
    number = int(word) if re.fullmatch(r"\d{1,4}", word) else NUMBER_OF.get(word)
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


def read_quantity(text: str) -> int:
    """How many of something, nothing included. Raises AnswerRefused where it is no plain whole number."""
    word = re.sub(_UNIT, "", plainly("number", fold(text).rstrip(" .!")))
    if word in _NONE_OF_IT:
        return 0
    if re.fullmatch(_WHOLE, word):
        return int(word.replace(",", ""))
    if word in NUMBER_OF:
        return NUMBER_OF[word]
    raise AnswerRefused(_("Please type a whole number, like 18. If none, type 0."))


def read_percent(text: str) -> Decimal:
    """A share in percent. Raises AnswerRefused where it is none, or is more than the whole."""
    word = plainly("share", re.sub(_PERCENT_SIGN, "", fold(text).rstrip(" .!")))
    share = Decimal(word) if re.fullmatch(_SHARE, word) else _PLAIN_SHARES.get(word)
    if share is None or share > WHOLE:
        raise AnswerRefused(
            _("Please type a number from 0 to 100, like 35. It is how many days of a hundred.")
        )
    return share
