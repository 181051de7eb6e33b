"""Amounts of money, exact to the cent."""

import re
from decimal import Decimal
from typing import Annotated

from pydantic import BeforeValidator, Field

_WRITTEN = r"\$? ?(?P<dollars>[0-9]+|[0-9]{1,3}(?:,[0-9]{3})+)(?P<cents>\.[0-9]{1,2})?"
_BELOW_ZERO = r"\$? ?[-\u2010-\u2015\u2212]|\(.*\)$"


def _exact(value: object) -> object:
    """Text as people write amounts, read; a binary fraction refused, since it is not what was written."""
    if isinstance(value, bool | float):
        raise ValueError("not_an_amount")
    if not isinstance(value, str):
        return value
    if re.match(_BELOW_ZERO, value.strip()):
        raise ValueError("amount_below_zero")
    written = re.fullmatch(_WRITTEN, value.strip())
    if written is None:
        raise ValueError("not_an_amount")
    return written["dollars"].replace(",", "") + (written["cents"] or "")


Amount = Annotated[Decimal, BeforeValidator(_exact), Field(ge=0, max_digits=11, decimal_places=2)]
"""Dollars and cents, never less than nothing; exact, since it is compared with a limit of the law.

Read from a whole number, a `Decimal`, or text such as "1250", "1,250.50" and "$1,250".
"""


def in_dollars(amount: Decimal) -> str:
    """The amount as it is written in the United States: "$4,553.34", or "$6,000" without cents."""
    return f"${amount:,.2f}".removesuffix(".00")
