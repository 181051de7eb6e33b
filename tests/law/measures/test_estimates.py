"""The estimates against the numbers of the published opinions, and all that each must refuse.

The facts of Moore, Hug, Nelson (2006) and Epstein were read in the opinions, those of Marsden in a digest;
results marked as worked out follow from the opinion's facts by its own formula. The opinions round their
percentages to two places, so a result may differ from theirs by up to two dollars.
"""

from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.choices import Who
from firstpaper.law.measures.estimates import caution
from firstpaper.law.measures.estimates.after_separation import Entry, Ledger, ledger, net_from_the_other
from firstpaper.law.measures.estimates.house import HouseShare, Payments, house_share, house_share_for
from firstpaper.law.measures.estimates.months import months
from firstpaper.law.measures.estimates.options import OptionShares, option_shares, option_shares_for
from firstpaper.law.measures.estimates.pension import TimeRule, pension_part
from firstpaper.law.measures.refused import Refused

ON = date(2026, 11, 25)
TWO_DOLLARS = Decimal(2)
GENERAL: dict[str, Any] = {
    "matter": {"kind": "dissolution", "unions": ["marriage"]},
    "dates": {
        "married_on": "2010-06-01",
        "separation_told_on": "2024-06-01",
        "separation_acted_on": "2024-06-01",
    },
    "schedule": {"agreement": False, "in_california": True},
}


def household(*assets: dict[str, Any], debts: tuple[dict[str, Any], ...] = (), **dates: Any) -> Case:
    general = {**GENERAL, "dates": {**GENERAL["dates"], **dates}}
    return Case.model_validate({**general, "asset": assets, "debt": debts})


def payments(*amounts: str) -> Payments:
    return Payments(*map(Decimal, amounts))


# A house from before the wedding

MOORE = payments("56640.57", "16640.57", "245.18", "5986.20", "581.07", "56640.57", "160000")
MARSDEN = payments("38300", "8300", "7000", "9200", "655", "65000", "182500")


@pytest.mark.parametrize(
    ("told", "community", "separate", "equity", "percent"),
    [
        pytest.param(MOORE, "16911.29", "109901.16", "126812.45", "10.57", id="Moore (1980) 28 Cal.3d 366"),
        pytest.param(
            MARSDEN, "37423.50", "131931.50", "169355", "24.02", id="Marsden (1982) 130 Cal.App.3d 426"
        ),
    ],
)
def test_the_opinions_own_numbers(
    told: Payments, community: str, separate: str, equity: str, percent: str
) -> None:
    found = house_share(told)
    assert abs(found.community - Decimal(community)) <= TWO_DOLLARS
    assert abs(found.separate - Decimal(separate)) <= TWO_DOLLARS
    assert found.community + found.separate == told.equity == Decimal(equity)
    assert f"{float(found.fraction) * 100:.2f}" == percent


def test_without_rounding_on_the_way() -> None:
    """Worked out by hand from the facts of the two opinions, in full precision."""
    assert (house_share(MOORE).community, house_share(MOORE).separate) == (
        Decimal("16910.00"),
        Decimal("109902.45"),
    )
    assert house_share(MARSDEN).community == Decimal("37424.54")


def test_the_share_of_another_opinion() -> None:
    """In re Marriage of Nelson (2006) 139 Cal.App.4th 1546: $14,725 of a price of $47,500 is 31 percent."""
    found = house_share(payments("47500", "8500", "24275", "14725", "0", "47500", "47500"))
    assert found.fraction == Fraction(31, 100)
    assert found.payments.loan_left == 0


@given(st.decimals(0, 500_000, places=2))
def test_payments_after_the_separation_do_not_move_the_share(after: Decimal) -> None:
    """In re Marriage of Mohler (2020) 47 Cal.App.5th 788: the share stands still at the separation."""
    one = house_share(payments("600000", "50000", "0", "100000", "0", "600000", "900000"))
    two = house_share(payments("600000", "50000", "0", "100000", str(after), "600000", "900000"))
    assert (one.fraction, one.community) == (two.fraction, two.community)
    assert two.separate - one.separate == after


def test_the_stages_end_with_the_shares() -> None:
    at_buying, at_wedding, now = (stage[1:] for stage in house_share(MARSDEN).stages)
    assert at_buying == (Decimal(8300), 0)
    assert at_wedding == (Decimal(8300 + 7000 + 26700), 0)
    assert now == (Decimal("131930.46"), Decimal("37424.54"))
    assert house_share(MARSDEN).community_growth == Decimal("28224.54")


_PART = st.decimals(0, 100_000, places=2)


@given(st.tuples(*[_PART] * 7))
def test_the_two_parts_are_the_equity(parts: tuple[Decimal, ...]) -> None:
    down, before, during, after, left, growth_before, growth = parts
    price = down + before + during + after + left + 1
    told = Payments(price, down, before, during, after, price + growth_before, price + growth_before + growth)
    found = house_share(told)
    assert found.community + found.separate == told.equity
    assert during <= found.community <= during + growth
    assert 0 <= found.fraction <= 1


HOUSE: dict[str, Any] = {
    "kind": "real_estate",
    "how": "bought",
    "acquired_on": "2006-03-01",
    "by": "petitioner",
    "title": "petitioner",
    "mixed": True,
    "value": "182500",
    "house": {
        "price": "38300",
        "down_payment": "8300",
        "principal_before": "7000",
        "principal_during": "9200",
        "principal_after": "655",
        "value_at_wedding": "65000",
        "refinanced": False,
        "improved": False,
        "rented_out": False,
    },
}


def test_a_house_of_a_case() -> None:
    found = house_share_for(household(HOUSE), 1, ON)
    assert isinstance(found, HouseShare)
    assert found.community == Decimal("37424.54")


def _house(**changes: Any) -> dict[str, Any]:
    return {**HOUSE, "house": {**HOUSE["house"], **changes}}


@pytest.mark.parametrize(
    ("asset", "words", "missing"),
    [
        (_house(refinanced=True), "a new loan", ()),
        (_house(improved=True), "built on", ()),
        (_house(rented_out=True), "rented out", ()),
        (_house(refinanced=None), "must be known", ("asset.1.house.refinanced",)),
        (_house(value_at_wedding=None), "must be known", ("asset.1.house.value_at_wedding",)),
        (_house(principal_after="don't know"), "must be known", ("asset.1.house.principal_after",)),
        ({**HOUSE, "value": None}, "must be known", ("asset.1.value",)),
        (_house(down_payment="38301"), "do not fit", ()),
        (_house(principal_during="30000"), "do not fit", ()),
        (_house(price="0", down_payment="0"), "do not fit", ()),
        (_house(value_at_wedding="38299"), "lost value", ()),
        ({**HOUSE, "value": "64999"}, "lost value", ()),
        ({**HOUSE, "title": "joint"}, "only for a house", ()),
        ({**HOUSE, "mixed": False}, "only for a house", ()),
        ({**HOUSE, "acquired_on": "2012"}, "only for a house", ()),
        ({**HOUSE, "acquired_on": None}, "only for a house", ()),
        ({**HOUSE, "kind": "vehicle"}, "only for a house", ()),
        ({**HOUSE, "agreement": True}, "only for a house", ()),
    ],
)
def test_a_house_the_opinions_do_not_fit_is_refused(
    asset: dict[str, Any], words: str, missing: tuple[str, ...]
) -> None:
    refused = house_share_for(household(asset), 1, ON)
    assert isinstance(refused, Refused)
    assert words in " ".join(refused.why)
    assert refused.missing == missing


def test_more_than_one_time_together_is_refused() -> None:
    case = household(HOUSE, back_together=[{"start": "2015-01-01", "end": "2015-06-01"}])
    refused = house_share_for(case, 1, ON)
    assert isinstance(refused, Refused)
    assert "together again" in " ".join(refused.why)


# A pension


@pytest.mark.parametrize(
    ("part", "fraction", "half"),
    [
        pytest.param(TimeRule(180, 300), "0.6", "0.3", id="worked out: 180 of 300 months"),
        pytest.param(
            TimeRule(48, 360), "0.1333", "0.0667", id="Henkle (1987) 189 Cal.App.3d 97: 4 of 30 years"
        ),
        pytest.param(TimeRule(180, 504), "0.3571", "0.1786", id="Gray (2007) 155 Cal.App.4th 504: 15 of 42"),
    ],
)
def test_the_time_rule(part: TimeRule, fraction: str, half: str) -> None:
    assert round(float(part.fraction), 4) == float(fraction)
    assert round(float(part.half), 4) == float(half)


PENSION = {"kind": "pension", "how": "earned", "by": "petitioner", "earned_from": "2002-06-01"}


def test_a_pension_that_still_grows_is_counted_until_now() -> None:
    found = pension_part(household({**PENSION, "still_earning": True}), 1, ON)
    assert found == TimeRule(14 * 12, 24 * 12 + 5, growing=True)


def test_a_pension_that_stopped_growing_is_counted_until_then() -> None:
    """In re Marriage of Henkle (1987): work after the benefit stopped growing counts in neither place."""
    found = pension_part(household({**PENSION, "earned_until": "2020-06-01"}), 1, ON)
    assert found == TimeRule(10 * 12, 18 * 12)


@pytest.mark.parametrize(
    ("asset", "words", "missing"),
    [
        ({**PENSION, "kind": "retirement_account", "still_earning": True}, "grows with the years", ()),
        ({**PENSION, "how": "inherited"}, "grows with the years", ()),
        ({**PENSION, "earned_from": "2012-01-01", "earned_until": "2020-01-01"}, "All of the work", ()),
        ({**PENSION, "earned_until": "2008-01-01"}, "for sure", ()),
        ({**PENSION, "earned_from": "2002", "still_earning": True}, "to the day", ("asset.1.earned_from",)),
        (PENSION, "to the day", ("asset.1.earned_until",)),
        ({**PENSION, "still_earning": True, "agreement": True}, "for sure", ()),
    ],
)
def test_a_pension_the_time_rule_does_not_fit_is_refused(
    asset: dict[str, Any], words: str, missing: tuple[str, ...]
) -> None:
    refused = pension_part(household(asset), 1, ON)
    assert isinstance(refused, Refused)
    assert words in " ".join(refused.why)
    assert refused.missing == missing


# Stock options


def test_the_months_of_hug() -> None:
    """In re Marriage of Hug (1984) 154 Cal.App.3d 780: hired November 6, 1972, separated June 9, 1976."""
    assert months(date(1972, 11, 6), date(1976, 6, 9)) == 43


def test_both_formulas_side_by_side() -> None:
    """Worked out by hand: 48 of 72 months by Hug, 24 of 48 by Nelson, of 1,000 options."""
    found = option_shares(date(2018, 1, 1), date(2020, 1, 1), date(2022, 1, 1), date(2024, 1, 1), 1000)
    assert (found.hug, found.nelson) == ((48, 72), (24, 48))
    assert found.fractions == (Fraction(2, 3), Fraction(1, 2))
    assert (found.community_by_hug, found.community_by_nelson) == (Decimal("666.67"), Decimal("500.00"))


OPTION = {
    "kind": "investments",
    "how": "stock_option",
    "by": "petitioner",
    "earned_from": "2018-06-01",
    "acquired_on": "2020-06-01",
    "earned_until": "2026-06-01",
}


def test_a_grant_of_a_case() -> None:
    assert option_shares_for(household(OPTION), 1, ON) == OptionShares((72, 96), (48, 72))
    with_number = option_shares_for(household({**OPTION, "shares": 96}), 1, ON)
    assert isinstance(with_number, OptionShares)
    assert (with_number.community_by_hug, with_number.community_by_nelson) == (72, 64)


@pytest.mark.parametrize(
    ("changes", "words", "missing"),
    [
        ({"how": "bought"}, "for stock options", ()),
        ({"earned_from": "2008-06-01"}, "in that order", ()),
        ({"acquired_on": "2018-05-31"}, "in that order", ()),
        ({"acquired_on": "2024-06-02"}, "in that order", ()),
        ({"earned_until": "2024-06-01"}, "in that order", ()),
        ({"agreement": True}, "in that order", ()),
        ({"earned_from": None}, "to the day", ("asset.1.earned_from",)),
        ({"earned_until": "2026"}, "to the day", ("asset.1.earned_until",)),
    ],
)
def test_a_grant_the_formulas_do_not_fit_is_refused(
    changes: dict[str, Any], words: str, missing: tuple[str, ...]
) -> None:
    refused = option_shares_for(household({**OPTION, **changes}), 1, ON)
    assert isinstance(refused, Refused)
    assert words in " ".join(refused.why)
    assert refused.missing == missing


# After the separation


@pytest.mark.parametrize(
    ("paid", "use", "community", "net"),
    [
        pytest.param(
            "28800", "36000", "1", "-3600", id="worked out: 12 months at 2,400 paid and 3,000 of use"
        ),
        pytest.param("0", "180000", "0.3366", "-30294", id="Mohler's 33.66 percent, 72 months at 2,500"),
        pytest.param("0", "2250", "1", "-1125", id="Epstein (1979) 24 Cal.3d 76: 2,250 to the community"),
    ],
)
def test_what_the_other_owes_for_payments_less_use(paid: str, use: str, community: str, net: str) -> None:
    assert net_from_the_other(Decimal(paid), Decimal(use), Decimal(community)) == Decimal(net)


CAR = {"kind": "vehicle", "how": "bought", "acquired_on": "2018", "title": "joint"}
CARD = {"kind": "credit_card", "incurred_on": "2018", "by": "petitioner", "purpose": "household"}


def test_the_entries_of_a_case() -> None:
    used = {**CAR, "used_after_by": "petitioner", "used_after_months": 10, "used_after_value": "300"}
    case = household(
        {**used, "paid_after": "2000", "paid_after_by": "petitioner"},
        {**CAR, "how": "inherited", "by": "petitioner", "title": "petitioner", "mixed": False}
        | {"paid_after": "900", "paid_after_by": "petitioner"},
        debts=({**CARD, "paid_after": "400", "paid_after_by": "respondent"},),
    )
    found = ledger(case, ON)
    assert found == Ledger(
        (
            Entry("asset.1", Who.PETITIONER, paid=Decimal(2000)),
            Entry("asset.1", Who.PETITIONER, use=Decimal(3000)),
            Entry("debt.1", Who.RESPONDENT, paid=Decimal(400)),
        ),
        ("asset.2",),
    )
    assert found.owed_to_petitioner == 1000 - 1500 - 200


@pytest.mark.parametrize(
    ("asset", "missing"),
    [
        (CAR, ()),
        ({**CAR, "paid_after": "10"}, ("asset.1.paid_after_by",)),
        ({**CAR, "paid_after_by": "petitioner", "paid_after": "don't know"}, ("asset.1.paid_after",)),
        (
            {**CAR, "used_after_by": "petitioner"},
            ("asset.1.used_after_months", "asset.1.used_after_value"),
        ),
        ({**CAR, "paid_after": "10", "paid_after_by": "both"}, ()),
    ],
)
def test_entries_that_cannot_be_counted_are_refused(asset: dict[str, Any], missing: tuple[str, ...]) -> None:
    refused = ledger(household(asset), ON)
    assert isinstance(refused, Refused)
    assert refused.missing == missing


def test_nothing_paid_and_no_sole_use_need_no_more_and_stop_nothing() -> None:
    idle = {**CAR, "paid_after": "0", "used_after_by": "both"}
    assert ledger(household({**idle, "paid_after_by": "respondent"}), ON) == ledger(household(CAR), ON)
    found = ledger(household(idle, {**CAR, "paid_after": "50", "paid_after_by": "respondent"}), ON)
    assert isinstance(found, Ledger)
    assert [one.key for one in found.entries] == ["asset.2"]


@settings(deadline=None)
@given(st.decimals(0, 50_000, places=2), st.integers(0, 60), st.sampled_from(["petitioner", "respondent"]))
def test_swapping_the_spouses_swaps_who_owes(value: Decimal, span: int, by: str) -> None:
    other = {"petitioner": "respondent", "respondent": "petitioner"}[by]
    found = []
    for who in (by, other):
        use = {"used_after_by": who, "used_after_months": span, "used_after_value": str(value)}
        one = ledger(household({**CAR, **use, "paid_after": "77.77", "paid_after_by": who}), ON)
        assert isinstance(one, Ledger)
        found.append(one.owed_to_petitioner)
    assert found[0] == -found[1]


def test_every_estimate_says_what_it_is() -> None:
    assert "Do not file it" in caution()
