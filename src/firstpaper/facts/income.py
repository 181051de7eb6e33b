"""Monthly net incomes and the children's time, for a private picture of support."""

from decimal import Decimal
from typing import Annotated

from pydantic import Field

from firstpaper.facts.model import Facts
from firstpaper.facts.money import Amount
from firstpaper.facts.told import Told

Percent = Annotated[Decimal, Field(ge=0, le=100, max_digits=5, decimal_places=2)]
"""A share in percent, exact to two places."""


class Income(Facts):
    """What each has left in a month after the deductions of Fam. Code 4059, and what children cost besides.

    `time_with_petitioner` is the percent of time that the children are with the petitioner, on average
    over the children where it differs (`same_time` is then no). `childcare` and `health_costs` are
    monthly. `temporary_asked` says that the filer wants to see the county's temporary spousal formula.
    """

    petitioner_net: Told[Amount] = None
    respondent_net: Told[Amount] = None
    time_with_petitioner: Told[Percent] = None
    same_time: Told[bool] = None
    third_parent: Told[bool] = None
    childcare: Told[Amount] = None
    health_costs: Told[Amount] = None
    temporary_asked: Told[bool] = None
