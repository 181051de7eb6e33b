"""An amount of money, in dollars and cents."""

import re
from decimal import Decimal

from firstpaper.intake.habits import plainly, thousands, with_a_point
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold
from firstpaper.locale import _

MOST_DIGITS = 9

_NOTHING = {"none", "nothing", "zero", "no", "nada", "ninguno", "ninguna", "cero"}
_BEFORE = r"(?:about|around|approximately|approx|roughly|maybe|alrededor de|unos)\b\.? *"
_AFTER = r" *(?:dollars?|usd|d[oó]lares|a month|per month|each month|monthly|al mes|/ ?month)\.?$"
_OTHER_TIME = r"\b(?:hour|day|week|weekly|year|yearly|hora|d[ií]a|semana|a[nñ]o)s?\b"
_AMOUNT = r"\$? ?(\d{1,3}(?:,\d{3})+|\d+)(\.\d{1,2})?"


def read_amount(text: str) -> Decimal:
    """The amount typed. Raises AnswerRefused where it is not plain dollars, or dollars and cents."""
    typed = re.sub(_BEFORE, "", plainly("amount", fold(text).rstrip(" .!")), count=1)
    while shorter := re.sub(_AFTER, "", typed, count=1):
        if shorter == typed:
            break
        typed = shorter
    if typed in _NOTHING:
        return Decimal(0)
    if re.search(_OTHER_TIME, typed):
        raise AnswerRefused(_("Please work it out for one month, and type only the dollars, like 2450."))
    amount = re.fullmatch(_AMOUNT, with_a_point(thousands(typed)))
    if amount is None:
        raise AnswerRefused(_("Please type an amount in dollars, like 2450 or 2,450.75. If none, type 0."))
    dollars = amount[1].replace(",", "")
    if len(dollars) > MOST_DIGITS:
        raise AnswerRefused(_("That is more than can be right here. Please check the amount."))
    return Decimal(dollars + (amount[2] or ""))
