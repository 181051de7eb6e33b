"""A filing planned for a day on which the clerk is closed is judged on the day it can really happen.

Code Civ. Proc. 12b, 1010.6(e)(3): what is filed on a closed day is filed on the next open one.
"""

from datetime import date

import pytest

from firstpaper.intake import standing
from firstpaper.law.register import findings
from firstpaper.packet.brief import brief
from tests.households.golden import Household, households

CLOSED = {
    date(2026, 12, 25): date(2026, 12, 28),
    date(2027, 1, 2): date(2027, 1, 4),
    date(2027, 2, 14): date(2027, 2, 16),
}


@pytest.mark.parametrize("household", households()[::4], ids=str)
@pytest.mark.parametrize("closed", CLOSED, ids=str)
def test_a_closed_day_and_the_next_open_one_are_judged_alike(household: Household, closed: date) -> None:
    case = standing(household.case)
    there, then = findings(case, closed), findings(case, CLOSED[closed])

    said = [one for one in there if one.id == "dates.filing_day"]
    assert [one.dates for one in said] == [{"first_court_day": CLOSED[closed]}]
    assert [one for one in there if one.id != "dates.filing_day"] == list(then)


def test_the_sheets_of_a_closed_day_are_those_of_the_next_open_one() -> None:
    case = next(one.case for one in households() if one.name == "two-children-moved-county")
    planned, real = brief(case, date(2027, 1, 2)), brief(case, date(2027, 1, 4))

    assert planned.items == real.items
    assert planned.on == real.on == date(2027, 1, 4)
