"""The part of a pension that is community, by time.

The community's part is the service in the marriage and before the separation, over all the service that
earned the benefit (In re Marriage of Lehman (1998) 18 Cal.4th 169; In re Marriage of Gowan (1997) 54
Cal.App.4th 80, 88). It fits only where the benefit hangs on years of service (In re Marriage of Poppe
(1979) 97 Cal.App.3d 1, 8). Service after the benefit has stopped growing counts in neither place (In re
Marriage of Henkle (1987) 189 Cal.App.3d 97). Only the fraction is worked out here, never dollars.
"""

from datetime import date
from fractions import Fraction
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Acquired, AssetKind
from firstpaper.law.measures.character import Code, asset_character
from firstpaper.law.measures.estimates.months import months, sure
from firstpaper.law.measures.marriage import first_union, separation
from firstpaper.law.measures.refused import Refused
from firstpaper.locale import _

CITE = (
    "In re Marriage of Lehman (1998) 18 Cal.4th 169",
    "In re Marriage of Gowan (1997) 54 Cal.App.4th 80",
)


class TimeRule(NamedTuple):
    """The community's part of a benefit: months of service in the marriage, over all months of service.

    `growing` says that the work goes on, so that the second number grows and the part gets smaller until
    retirement.
    """

    in_marriage: int
    total: int
    growing: bool = False

    @property
    def fraction(self) -> Fraction:
        """The community's part."""
        return Fraction(self.in_marriage, self.total)

    @property
    def half(self) -> Fraction:
        """The part of each spouse in it."""
        return self.fraction / 2


def pension_part(case: Case, number: int, on: date) -> TimeRule | Refused:
    """The community's part so far of the pension with that number, on the day `on`."""
    asset, key = case.asset[number - 1], f"asset.{number}"
    if known(asset.how) is not Acquired.EARNED or known(asset.kind) is not AssetKind.PENSION:
        return Refused((_("Sharing by time is for a pension that grows with the years of work."),), cite=CITE)
    code = asset_character(case, number, on).code
    if code.shared:
        return Refused((_("All of the work was in the marriage, so no fraction is needed."),), cite=CITE)
    growing = bool(known(asset.still_earning)) and known(asset.earned_until) is None
    began_key, wed = first_union(case)
    days = {
        f"{key}.earned_from": sure(asset.earned_from),
        f"{key}.earned_until": on if growing else sure(asset.earned_until),
        began_key: sure(wed),
        "dates.separation_told_on": separation(case).day,
    }
    missing = tuple(name for name, day in days.items() if day is None)
    if missing:
        return Refused((_("Every day must be known to the day, or the months cannot be counted."),), missing)
    hired, ended, wedding, parted = (day for day in days.values() if day)
    found = TimeRule(months(max(hired, wedding), min(ended, parted)), months(hired, ended), growing)
    if code is not Code.MIXED or not found.in_marriage:
        return Refused(
            (_("It does not lie on both sides of the wedding or the separation for sure."),), cite=CITE
        )
    return found
