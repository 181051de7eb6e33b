"""Which test the county of filing has to pass, and whether it does.

Code Civ. Proc. 395(a) asks for three months in the county before a dissolution, and for a home there before
a nullity or a legal separation; Fam. Code 2320(b)(2) asks for the county of the wedding.
"""

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting import ResidenceBand
from firstpaper.facts import Case, known
from firstpaper.facts.choices import AWAY, HERE, Kind, Lives, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.measures.residence import SPOUSES, residence_of, same_sex_route_told, spouse_residence


class VenueTest(StrEnum):
    """What makes a county the right one."""

    WEDDING = "wedding"
    NOBODY_HERE = "nobody_here"
    THREE_MONTHS = "three_months"
    HOME = "home"


class Venue(NamedTuple):
    """The test, and whether the county of filing passes it; None where that cannot be told."""

    test: VenueTest
    right: bool | None


def venue_of(case: Case, on: date) -> Venue | None:
    """How the county of filing stands on the day `on`; None where no county or kind of case was told."""
    kind, county = kind_of(case), known(case.court.county)
    if kind is None or county is None:
        return None
    if same_sex_route_told(case):
        return Venue(VenueTest.WEDDING, known(case.residence.exception.wedding_county) == county)
    lives = [known(residence_of(case, who).lives) for who in SPOUSES]
    if all(place in AWAY for place in lives):
        return Venue(VenueTest.NOBODY_HERE, None)
    if kind is Kind.DISSOLUTION and not _partners_of_unknown_time(case):
        return Venue(VenueTest.THREE_MONTHS, _lived_long_enough(case, on))
    return Venue(VenueTest.HOME, _is_home(lives))


def _partners_of_unknown_time(case: Case) -> bool:
    """Whether a California partnership ends of which the time in the county was not told.

    Nobody asks for it: Code Civ. Proc. 395(a) names the three months for a marriage.
    """
    times = [known(residence_of(case, who).county_since) for who in SPOUSES]
    return known(case.matter.unions) == (Union.PARTNERS_CALIFORNIA,) and times == [None, None]


def _lived_long_enough(case: Case, on: date) -> bool | None:
    bands = [spouse_residence(case, who, on).county_band for who in SPOUSES]
    if ResidenceBand.MET in bands:
        return True
    return None if None in bands else False


def _is_home(lives: list[Lives | None]) -> bool | None:
    if any(place in HERE for place in lives):
        return True
    return None if None in lives else False
