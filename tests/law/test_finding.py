"""Which findings press: a last day that is near, or a late filing that a judge must allow."""

from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.law.finding import presses
from firstpaper.law.register import findings

FORCED = Case.model_validate(
    {
        "matter": {"kind": "nullity", "unions": ["marriage"]},
        "dates": {"married_on": "2023-02-14"},
        "grounds": {"filer": "spouse", "nullity": ["force"], "forced": "petitioner"},
    }
)


@pytest.mark.parametrize(
    ("on", "pressing"),
    [
        (date(2026, 11, 25), set()),  # more than sixty days are left
        (date(2027, 2, 3), {"nullity.last_day"}),
        (date(2027, 3, 1), {"nullity.force_from_2027"}),
    ],
)
def test_a_near_last_day_presses_and_so_does_the_permission_that_a_late_filing_needs(
    on: date, pressing: set[str]
) -> None:
    """Fam. Code 2211(e), (g)(1): four years after the wedding is Sunday, February 14, 2027."""
    assert {one.id for one in findings(FORCED, on) if presses(one)} == pressing
