"""Stock options granted in the marriage that can be used only after the separation, by two formulas.

Both share one grant by time; they differ in where the time begins. In re Marriage of Hug (1984) 154
Cal.App.3d 780 counts from the first day at work, In re Marriage of Nelson (1986) 177 Cal.App.3d 150 from
the grant. No formula must be used: the first fits pay for past work, the second pay for work to come.
"""

from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Acquired
from firstpaper.law.measures.cents import cents
from firstpaper.law.measures.character import Code, asset_character
from firstpaper.law.measures.estimates.months import months, sure
from firstpaper.law.measures.marriage import first_union, separation
from firstpaper.law.measures.refused import Refused
from firstpaper.locale import _

CITE = (
    "In re Marriage of Hug (1984) 154 Cal.App.3d 780",
    "In re Marriage of Nelson (1986) 177 Cal.App.3d 150",
)


class OptionShares(NamedTuple):
    """The community's part of one grant by each formula: months to the separation, over months to its use."""

    hug: tuple[int, int]
    nelson: tuple[int, int]
    shares: int | None = None

    @property
    def community_by_hug(self) -> Decimal | None:
        """How many of the options are community by Hug; None where their number was not told."""
        return self._of(self.hug)

    @property
    def community_by_nelson(self) -> Decimal | None:
        """How many of the options are community by Nelson; None where their number was not told."""
        return self._of(self.nelson)

    def _of(self, part: tuple[int, int]) -> Decimal | None:
        return None if self.shares is None else cents(Decimal(self.shares) * part[0] / part[1])

    @property
    def fractions(self) -> tuple[Fraction, Fraction]:
        """The community's part by Hug and by Nelson."""
        return Fraction(*self.hug), Fraction(*self.nelson)


def option_shares(
    hired: date, granted: date, parted: date, usable: date, shares: int | None = None
) -> OptionShares:
    """Both formulas for one grant, for days in that order."""
    return OptionShares(
        (months(hired, parted), months(hired, usable)),
        (months(granted, parted), months(granted, usable)),
        shares,
    )


def option_shares_for(case: Case, number: int, on: date) -> OptionShares | Refused:
    """Both formulas for the grant with that number, or what stands in the way."""
    asset, key = case.asset[number - 1], f"asset.{number}"
    if known(asset.how) is not Acquired.STOCK_OPTION:
        return Refused(
            (_("The formulas are for stock options and other shares that work earns."),), cite=CITE
        )
    began_key, wed = first_union(case)
    days = {
        began_key: sure(wed),
        f"{key}.earned_from": sure(asset.earned_from),
        f"{key}.acquired_on": sure(asset.acquired_on),
        "dates.separation_told_on": separation(case).day,
        f"{key}.earned_until": sure(asset.earned_until),
    }
    missing = tuple(name for name, day in days.items() if day is None)
    if missing:
        return Refused((_("Every day must be known to the day, or the months cannot be counted."),), missing)
    wedding, hired, granted, parted, usable = (day for day in days.values() if day)
    in_order = wedding <= hired <= granted <= parted < usable
    if not in_order or asset_character(case, number, on).code is not Code.MIXED:
        return Refused((_order(),), cite=CITE)
    return option_shares(hired, granted, parted, usable, known(asset.shares))


def _order() -> str:
    return _(
        "The opinions are about a person hired in the marriage, options granted in it, and their use after "
        "the separation, in that order. Other cases need a lawyer."
    )
