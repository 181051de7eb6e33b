"""Amounts of money, exact to the cent."""

from decimal import Decimal
from typing import Annotated

from pydantic import Field

Amount = Annotated[Decimal, Field(ge=0, max_digits=11, decimal_places=2)]
"""Dollars and cents, never less than nothing; exact, since it is compared with a limit of the law."""


def in_dollars(amount: Decimal) -> str:
    """The amount as it is written in the United States: "$4,553.34", or "$6,000" without cents."""
    return f"${amount:,.2f}".removesuffix(".00")
