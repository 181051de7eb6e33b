"""Sums over what is listed: worked examples, the statutes' limits, and what must hold for any amounts."""

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.choices import ContributionFor, Who
from firstpaper.facts.schedule import Contribution
from firstpaper.law.measures.cents import CENT, cents, shared
from firstpaper.law.measures.character import Code
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.sums import (
    Equalizing,
    Total,
    equalizing,
    lines,
    repayment,
    repayment_for,
    small_when_spouse_is_missing,
    totals,
    value_day,
)

ON = date(2026, 11, 25)
P, R = Who.PETITIONER, Who.RESPONDENT
AMOUNTS = st.decimals(0, 900_000, places=2)


def household(*assets: dict[str, Any], debts: tuple[dict[str, Any], ...] = ()) -> Case:
    return Case.model_validate(
        {
            "matter": {"kind": "dissolution", "unions": ["marriage"]},
            "dates": {
                "married_on": "2010-06-01",
                "separation_told_on": "2024-06-01",
                "separation_acted_on": "2024-06-01",
            },
            "schedule": {"agreement": False, "in_california": True},
            "asset": assets,
            "debt": debts,
        }
    )


def bought(value: object, **facts: Any) -> dict[str, Any]:
    shared_facts = {"kind": "household", "how": "bought", "acquired_on": "2015", "title": "no_paper"}
    return {**shared_facts, "source": "community", "value": str(value), **facts}


def card(owed: object, **facts: Any) -> dict[str, Any]:
    shared_facts = {"kind": "credit_card", "incurred_on": "2015", "by": "respondent", "purpose": "household"}
    return {**shared_facts, "owed": str(owed), **facts}


def joint_house(value: str, owed: str, *put_in: tuple[str, str], **facts: Any) -> dict[str, Any]:
    contributions = [
        {"by": by, "amount": amount, "toward": "down_payment", "traced": True} for by, amount in put_in
    ]
    return bought(
        value, kind="real_estate", by="both", title="joint", owed=owed, contributions=contributions, **facts
    )


# Separate money put into a thing (Fam. Code 2640)


def test_a_down_payment_comes_back_before_the_rest_is_shared() -> None:
    """Worth $420,000, $300,000 owed, $60,000 of separate money: 60,000 back, then 60,000 in half."""
    found = repayment_for(household(joint_house("420000", "300000", ("petitioner", "60000"))), 1, ON)
    assert not isinstance(found, Refused)
    assert [(claim.by, claim.back) for claim in found.claims] == [(P, 60_000)]
    assert (found.rest, found.cut, found.cite) == (60_000, False, "Fam. Code 2640(a)-(b)")


def test_no_more_comes_back_than_the_thing_is_worth() -> None:
    found = repayment_for(household(joint_house("345000", "300000", ("petitioner", "60000"))), 1, ON)
    assert not isinstance(found, Refused)
    assert [claim.back for claim in found.claims] == [45_000]
    assert (found.rest, found.cut) == (0, True)


def test_two_claims_on_too_little_are_cut_in_proportion() -> None:
    """In re Marriage of Walrath (1998) 17 Cal.4th 907: the trial court shared a net value of $1,000 between
    contributions of $146,000 and $20,000 as $880 and $120 (88 and 12 percent, rounded)."""
    case = household(joint_house("1000", "0", ("respondent", "146000"), ("petitioner", "20000")))
    found = repayment_for(case, 1, ON)
    assert not isinstance(found, Refused)
    assert {claim.by: claim.back for claim in found.claims} == {R: Decimal("879.52"), P: Decimal("120.48")}
    assert {claim.by: round(claim.back / 10) for claim in found.claims} == {R: 88, P: 12}


def test_money_put_into_what_belongs_to_the_other_comes_back_too() -> None:
    """Fam. Code 2640(c)."""
    house = {
        "kind": "real_estate",
        "how": "inherited",
        "by": "petitioner",
        "title": "petitioner",
        "mixed": False,
        "value": "20000",
        "owed": "0",
        "contributions": [
            {"by": "respondent", "amount": "30000", "toward": "improvement", "traced": True},
            {"by": "petitioner", "amount": "5000", "toward": "improvement", "traced": True},
        ],
    }
    found = repayment_for(household(house), 1, ON)
    assert not isinstance(found, Refused)
    assert [(claim.by, claim.back) for claim in found.claims] == [(R, 20_000)]
    assert found.cite == "Fam. Code 2640(c)"


def test_money_that_is_not_traced_does_not_come_back() -> None:
    given = [
        Contribution(by=P, amount=Decimal(500), toward=ContributionFor.PRINCIPAL, traced=True),
        Contribution(by=P, amount=Decimal(700), toward=ContributionFor.PRINCIPAL, traced=False),
        Contribution(by=R, amount=Decimal(800), toward=ContributionFor.PRINCIPAL),
    ]
    found = repayment(Decimal(5000), given, "Fam. Code 2640(b)")
    assert [(claim.by, claim.back) for claim in found.claims] == [(P, 500)]
    assert (found.not_traced, found.rest) == (1500, 4500)


@pytest.mark.parametrize(
    ("asset", "missing"),
    [
        (joint_house("420000", "300000"), ("asset.1.contributions",)),
        ({**joint_house("420000", "300000", ("petitioner", "1")), "value": None}, ("asset.1.value",)),
        ({**joint_house("420000", "300000", ("petitioner", "1")), "owed": None}, ("asset.1.owed",)),
        (joint_house("420000", "300000", ("both", "1")), ()),
        ({**joint_house("420000", "300000", ("petitioner", "1")), "title": "somebody_else"}, ()),
    ],
)
def test_a_claim_is_not_worked_out_where_it_cannot_be(
    asset: dict[str, Any], missing: tuple[str, ...]
) -> None:
    refused = repayment_for(household(asset), 1, ON)
    assert isinstance(refused, Refused)
    assert refused.missing == missing
    assert all(why.endswith(".") for why in refused.why)


@given(AMOUNTS, st.lists(st.tuples(st.sampled_from([P, R]), AMOUNTS), max_size=4))
def test_what_comes_back_is_never_more_than_was_put_in_or_is_there(
    net: Decimal, put_in: list[tuple[Who, Decimal]]
) -> None:
    given_ = [
        Contribution(by=by, amount=a, toward=ContributionFor.PRINCIPAL, traced=True) for by, a in put_in
    ]
    found = repayment(net, given_, "Fam. Code 2640(b)")
    assert sum(claim.back for claim in found.claims) + found.rest == net
    assert all(0 <= claim.back <= claim.put_in for claim in found.claims)
    assert found.rest == 0 or not found.cut


# Totals


def test_totals_by_what_things_are_taken_to_be() -> None:
    case = household(
        bought(20_000, kind="vehicle", owed="5000"),
        bought(8_000, lived_in="elsewhere"),
        bought(900, how="inherited", by="respondent", mixed=False),
        bought(700, source=None),
        {**bought(1), "value": None},
        bought(30_000, kind="vehicle"),
        debts=(card(1_200), card(300, incurred_on="2025", purpose="own"), {**card(1), "owed": None}),
    )
    found = totals(case, ON)
    assert found.by_code == {
        Code.COMMUNITY: Total(Decimal(20_000), Decimal(6_200)),
        Code.QUASI_COMMUNITY: Total(Decimal(8_000)),
        Code.RESPONDENT_SEPARATE: Total(Decimal(900), Decimal(300)),
        Code.UNKNOWN: Total(Decimal(700)),
    }
    assert found.community_estate.net == 20_000 - 6_200 + 8_000
    assert [line.key for line in found.left_out] == ["asset.5", "asset.6", "debt.3"]


def test_of_a_car_nobody_takes_it_that_nothing_is_owed() -> None:
    (car, sofa) = lines(household(bought(30_000, kind="vehicle"), bought(100)), ON)
    assert car.net is None
    assert sofa.net == 100


def test_an_estate_that_a_court_may_give_whole_where_a_spouse_is_missing() -> None:
    """Fam. Code 2604: a net value of less than $5,000."""
    assert small_when_spouse_is_missing(Total(Decimal("5000"), CENT), ON)
    assert not small_when_spouse_is_missing(Total(Decimal("5000")), ON)


def test_as_of_when_things_are_valued() -> None:
    """Fam. Code 2552(b)."""
    assert "30 days' notice" in value_day(ON)


@settings(deadline=None)
@given(st.lists(st.tuples(AMOUNTS, AMOUNTS, st.sampled_from(["community", "petitioner_separate", None]))))
def test_totals_conserve(things: list[tuple[Decimal, Decimal, str | None]]) -> None:
    case = household(*(bought(value, owed=str(owed), source=source) for value, owed, source in things))
    found = totals(case, ON)
    assert sum(total.net for total in found.by_code.values()) == sum(
        value - owed for value, owed, _ in things
    )


# The filer's own proposal


def proposed(value: object, to: str | None, **facts: Any) -> dict[str, Any]:
    return bought(value, proposal=to, **facts)


def even(case: Case) -> Equalizing:
    found = equalizing(case, ON)
    assert not isinstance(found, Refused), found.why
    return found


def test_the_payment_that_makes_a_proposal_even() -> None:
    """House equity 300,000 and a car of 20,000 against a plan of 180,000 and a debt of 12,000."""
    plan = {
        "kind": "pension",
        "how": "earned",
        "earned_from": "2012",
        "earned_until": "2023",
        "by": "respondent",
    }
    case = household(
        joint_house("800000", "500000", proposal="petitioner"),
        proposed(20_000, "petitioner"),
        {**plan, "value": "180000", "proposal": "respondent"},
        debts=(card(12_000, proposal="respondent"),),
    )
    found = even(case)
    assert (found.petitioner, found.respondent) == (320_000, 168_000)
    assert (found.payment, found.payer) == (76_000, P)
    assert (found.petitioner_ends_with, found.respondent_ends_with) == (244_000, 244_000)
    assert found.left_out == ()


def test_separate_money_is_paid_back_before_the_rest_is_evened_out() -> None:
    house = joint_house("420000", "300000", ("petitioner", "60000"), proposal="respondent")
    found = even(household(house))
    assert (found.petitioner, found.respondent) == (0, 60_000)
    assert (found.payment, found.payer, found.repaid_to_petitioner) == (30_000, R, 60_000)


def test_separate_money_of_the_one_who_takes_the_thing_stays_with_them() -> None:
    house = joint_house("420000", "300000", ("petitioner", "60000"), proposal="petitioner")
    found = even(household(house))
    assert (found.payment, found.payer, found.repaid_to_petitioner) == (30_000, P, 0)


def test_what_is_shared_in_half_needs_no_payment() -> None:
    found = even(household(proposed("100.01", "half_each")))
    assert (found.payment, found.payer) == (0, None)
    assert found.petitioner_ends_with + found.respondent_ends_with == Decimal("100.01")


def test_what_is_left_out_of_the_proposal_is_named() -> None:
    injury = {
        "kind": "savings",
        "how": "injury",
        "by": "respondent",
        "acquired_on": "2021",
        "hurt_by_spouse": False,
        "living_apart": False,
        "mixed": False,
        "value": "90000",
        "proposal": "respondent",
    }
    case = household(
        proposed(1_000, "petitioner"),
        proposed(2_000, None),
        {**proposed(1, "petitioner"), "value": None},
        injury,
        proposed(500, "petitioner", how="inherited", by="petitioner", mixed=False),
        proposed(400, "petitioner", source=None),
    )
    found = even(case)
    assert [award.line.key for award in found.awards] == ["asset.1"]
    assert [line.key for line in found.left_out] == ["asset.2", "asset.3"]


def test_more_owed_than_owned_is_not_shared_by_half() -> None:
    """Fam. Code 2622(b)."""
    refused = equalizing(household(proposed(900, "petitioner"), debts=(card("900.01"),)), ON)
    assert isinstance(refused, Refused)
    assert refused.cite == ("Fam. Code 2622(b)",)
    assert not isinstance(
        equalizing(household(proposed(900, "petitioner"), debts=(card("900"),)), ON), Refused
    )


def test_without_a_proposal_there_is_nothing_to_even_out() -> None:
    assert isinstance(equalizing(household(bought(100)), ON), Refused)
    assert isinstance(equalizing(household(), ON), Refused)


_PROPOSED = st.lists(
    st.tuples(AMOUNTS, st.sampled_from(["petitioner", "respondent", "half_each"]), AMOUNTS),
    min_size=1,
    max_size=5,
)
_OTHER = {"petitioner": "respondent", "respondent": "petitioner", "half_each": "half_each"}


@settings(deadline=None)
@given(_PROPOSED)
def test_swapping_the_spouses_swaps_the_payment(things: list[tuple[Decimal, str, Decimal]]) -> None:
    one = even(household(*(_with_claim(*thing, by="petitioner") for thing in things)))
    two = even(household(*(_with_claim(value, _OTHER[to], c, by="respondent") for value, to, c in things)))
    assert (one.petitioner, one.respondent, one.payment) == (two.respondent, two.petitioner, two.payment)
    assert one.repaid_to_petitioner == -two.repaid_to_petitioner
    assert (one.payer, two.payer) in ((P, R), (R, P), (None, None))


@settings(deadline=None)
@given(_PROPOSED)
def test_the_payment_leaves_both_with_half_to_the_cent(things: list[tuple[Decimal, str, Decimal]]) -> None:
    found = even(household(*(_with_claim(*thing, by="petitioner") for thing in things)))
    assert abs(found.petitioner_ends_with - found.respondent_ends_with) <= CENT
    assert found.petitioner_ends_with + found.respondent_ends_with == found.petitioner + found.respondent


def _with_claim(value: Decimal, to: str, claim: Decimal, *, by: str) -> dict[str, Any]:
    return joint_house(str(value), "0", (by, str(claim)), proposal=to)


# Cents


@pytest.mark.parametrize(
    ("amount", "rounded"), [("0.005", "0.01"), ("-0.005", "-0.01"), ("0.0049", "0"), ("2.675", "2.68")]
)
def test_half_a_cent_goes_up(amount: str, rounded: str) -> None:
    assert cents(Decimal(amount)) == Decimal(rounded)


@given(AMOUNTS, st.lists(AMOUNTS, min_size=1, max_size=6))
def test_shares_add_up(total: Decimal, weights: list[Decimal]) -> None:
    assume(sum(weights) > 0)
    found = shared(total, weights)
    assert sum(found) == total
    exact = [total * weight / sum(weights) for weight in weights]
    assert all(abs(share - each) < CENT for share, each in zip(found, exact, strict=True))


@pytest.mark.parametrize("weights", [[0], [0, 0], [-1, 2]])
def test_there_must_be_a_proportion(weights: list[int]) -> None:
    with pytest.raises(ValueError, match="proportion"):
        shared(Decimal(1), [Decimal(weight) for weight in weights])
