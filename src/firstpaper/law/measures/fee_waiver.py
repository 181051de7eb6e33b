"""The monthly income up to which somebody may have a fee waiver (Gov. Code 68632(b)).

A percentage of the federal poverty guideline of the year, by twelve, rounded up to the next cent. The
rounding is that of the table printed on the request form of 2023.
"""

from collections.abc import Mapping
from datetime import date
from decimal import ROUND_CEILING, Decimal
from typing import NamedTuple

from firstpaper.facts.money import in_dollars
from firstpaper.law.figure import figure
from firstpaper.locale import _

CENT = Decimal("0.01")
MONTHS_IN_A_YEAR = 12


class IncomeLimit(NamedTuple):
    """The most that a household may get in a month. `guideline_since` is the first day of its guideline."""

    household: int
    guideline: int
    percent: int
    monthly: Decimal
    guideline_since: date
    steps: tuple[str, ...]


def income_limit(household: int, on: date) -> IncomeLimit:
    """The limit for so many people, by the guideline in force on the day `on`.

    Raises FigureNotInForce for a day without a guideline, ValueError for a household of nobody.
    """
    if household < 1:
        raise ValueError(f"a household has one person at least: {household}")
    guidelines, percent = figure("fee_waiver.poverty_guideline", on), figure("fee_waiver.percent", on).value
    largest: int = figure("fee_waiver.guideline_sizes", on).value
    yearly = _guideline(guidelines.value, household, largest)
    exact = Decimal(yearly * percent) / (100 * MONTHS_IN_A_YEAR)
    monthly = exact.quantize(CENT, rounding=ROUND_CEILING)
    steps = (
        _("Federal guideline of {since} for {people}: {amount} a year").format(
            since=guidelines.since.year, people=household, amount=in_dollars(Decimal(yearly))
        ),
        _("{percent} percent of that: {amount} a year").format(
            percent=percent, amount=in_dollars(Decimal(yearly * percent) / 100)
        ),
        _("By 12, rounded up to the cent: {amount} a month").format(amount=in_dollars(monthly)),
    )
    return IncomeLimit(household, yearly, percent, monthly, guidelines.since, steps)


def _guideline(amounts: Mapping[object, int], household: int, largest: int) -> int:
    """The yearly amount for a household; beyond the printed sizes each person adds one step."""
    more = max(household - largest, 0)
    return amounts[min(household, largest)] + more * amounts["each_more"]
