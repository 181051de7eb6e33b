"""Child support by the statewide formula: worked cases, the statute's own example, and what always holds."""

from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.choices import Who
from firstpaper.law.figure import FigureNotInForce, figure
from firstpaper.law.measures.cents import CENT
from firstpaper.law.measures.child_support import (
    AboveHalf,
    CostSplit,
    Guideline,
    Incomes,
    LowIncome,
    child_support,
    child_support_for,
    limits,
    low_income_line,
    split_costs,
    time_without_evidence,
)
from firstpaper.law.measures.refused import Refused

TABLE = yaml.safe_load((Path(__file__).parent / "child_support.yaml").read_text("utf-8"))
ON: date = TABLE["day"]
P, R = Who.PETITIONER, Who.RESPONDENT
AMOUNTS = st.decimals(0, 40_000, places=2)
ABOVE_THE_LOW_LINE = st.decimals(low_income_line(ON), 40_000, places=2)
PERCENTS = st.decimals(0, 100, places=2)


def worked(incomes: Incomes, children: int, on: date = ON, **options: bool) -> Guideline:
    found = child_support(incomes, children, on, **options)
    assert not isinstance(found, Refused), found.why
    return found


def incomes(petitioner: object, respondent: object, time: object) -> Incomes:
    return Incomes(Decimal(str(petitioner)), Decimal(str(respondent)), Decimal(str(time)))


def signed(found: Guideline, higher: Who) -> Decimal:
    """Above zero where the higher earner pays."""
    return found.amount if found.payer in (higher, None) else -found.amount


@pytest.mark.parametrize("swapped", [False, True], ids=["as written", "spouses swapped"])
@pytest.mark.parametrize("one", TABLE["cases"].values(), ids=TABLE["cases"].keys())
def test_the_formula_gives_the_worked_amount(one: Mapping[str, Any], swapped: bool) -> None:
    told = (
        incomes(one["low"], one["high"], 100 - one["time"])
        if swapped
        else incomes(one["high"], one["low"], one["time"])
    )
    found = worked(told, one["children"], one.get("day", ON))
    if one["high"] != one["low"] or not swapped:
        assert signed(found, R if swapped else P) == Decimal(one["sum"])
    assert found.amount == abs(Decimal(one["sum"]))
    low_income = found.low_income
    if "range" in one:
        assert isinstance(low_income, LowIncome)
        assert [low_income.low, low_income.high] == [Decimal(amount) for amount in one["range"]]
        assert low_income.above_half == one.get("above_half", low_income.above_half)
        assert low_income.half == Decimal(one.get("half", low_income.half))
    else:
        assert low_income is None
    if "by_child" in one:
        assert found.by_child == tuple(Decimal(part) for part in one["by_child"])


@pytest.mark.parametrize("percent", [20, 80])
def test_the_example_in_the_section(percent: int) -> None:
    """Fam. Code 4055(b)(3): H% of 20, or of 80, and a total of $1,000 give K = 0.21."""
    steps = worked(incomes(700, 300, percent), 1).steps
    assert "0.212483" in steps[2]
    assert steps[0] == "Both net incomes together: $1,000 a month."


def test_the_working_can_be_followed() -> None:
    assert worked(incomes(9000, 3000, 25), 2).steps == (
        "Both net incomes together: $12,000 a month.",
        "The part of it for children, by its band: 0.10 + 1,499 / $12,000 = 0.224917.",
        "Times 1 + 25%, for 25% of the time with the higher earner: 0.281146.",
        "The higher income less 25% of both: $9,000 - $3,000 = $6,000.",
        "The two multiplied, for one child: $1,686.88.",
        "Times 1.6 for 2 children: $2,699.",
    )
    assert worked(incomes(4400, 2200, 85), 2).steps[-1] == "Below zero means that the lower earner pays."


# The minimum wage of the day


@pytest.mark.parametrize(
    ("on", "line"), [("2024-09-01", "2773.33"), ("2025-12-31", "2860.00"), ("2026-12-31", "2929.33")]
)
def test_the_low_income_line_by_year(on: str, line: str) -> None:
    """Fam. Code 4055(b)(7): full-time minimum wage, 40 hours a week, 52 weeks a year, by the month."""
    assert round(low_income_line(date.fromisoformat(on)), 2) == Decimal(line)


def test_a_day_without_a_minimum_wage_refuses_the_range_and_says_why() -> None:
    with pytest.raises(FigureNotInForce):
        low_income_line(date(2027, 1, 1))
    found = worked(incomes(1800, 800, 20), 1, date(2027, 1, 1))
    assert found.amount == Decimal("301.64")
    assert isinstance(found.low_income, Refused)
    assert "minimum wage of Fri, Jan 1, 2027" in found.low_income.why[0]
    assert found.by_child is None
    assert isinstance(split_costs(found, Decimal(100)), Refused)


def test_the_line_is_not_rounded_and_exactly_on_it_is_not_under_it() -> None:
    assert isinstance(worked(incomes("2929.33", 0, 0), 1).low_income, LowIncome)
    assert worked(incomes("2929.34", 0, 0), 1).low_income is None
    assert (
        worked(incomes("2860", 0, 0), 1, date(2025, 6, 1)).low_income is None
    )  # 16.50 x 40 x 52 / 12 exactly


def test_before_the_formula_began_nothing_is_worked_out() -> None:
    """Fam. Code 4055(d): operative September 1, 2024."""
    refused = child_support(incomes(1800, 800, 20), 1, date(2024, 8, 31))
    assert isinstance(refused, Refused)
    assert "before Sun, Sep 1, 2024" in refused.why[0]


@pytest.mark.parametrize("children", [0, 11])
def test_a_number_of_children_the_law_has_no_number_for_is_refused(children: int) -> None:
    assert isinstance(child_support(incomes(1800, 800, 20), children, ON), Refused)


# What must always hold


@settings(deadline=None)
@given(AMOUNTS, AMOUNTS, PERCENTS, st.integers(1, 10))
def test_swapping_the_spouses_swaps_the_payer(
    one: Decimal, two: Decimal, time: Decimal, children: int
) -> None:
    here, there = worked(Incomes(one, two, time), children), worked(Incomes(two, one, 100 - time), children)
    assert here.amount == there.amount
    assert {here.payer, there.payer} in ({P, R}, {None})
    assert here.low_income == there.low_income


@settings(deadline=None)
@given(AMOUNTS, AMOUNTS, PERCENTS, st.integers(1, 10))
def test_the_range_holds_the_amount_and_shows_when_it_applies(
    one: Decimal, two: Decimal, time: Decimal, children: int
) -> None:
    found = worked(Incomes(one, two, time), children)
    net = found.incomes.of(found.payer) if found.payer else None
    assert (found.low_income is not None) == (net is not None and net < low_income_line(ON))
    if isinstance(found.low_income, LowIncome):
        assert 0 <= found.low_income.low <= found.amount == found.low_income.high


@settings(deadline=None)
@given(ABOVE_THE_LOW_LINE, ABOVE_THE_LOW_LINE, PERCENTS, st.integers(1, 10))
def test_the_parts_of_the_children_add_up(one: Decimal, two: Decimal, time: Decimal, children: int) -> None:
    found = worked(Incomes(one, two, time), children)
    assume(found.payer)
    assert found.by_child
    assert len(found.by_child) == children
    assert sum(found.by_child) == found.amount
    for fewer, part in enumerate(found.by_child[1:], 1):
        whole = (
            worked(Incomes(one, two, time), fewer + 1).amount - worked(Incomes(one, two, time), fewer).amount
        )
        assert part == whole


@settings(deadline=None)
@given(AMOUNTS, AMOUNTS, st.lists(PERCENTS, min_size=2, max_size=5, unique=True))
def test_more_time_never_means_more_to_pay(one: Decimal, two: Decimal, times: list[Decimal]) -> None:
    """Up to half of the time with the higher earner, and beyond: the amount falls as H% rises."""
    assume(one > two)
    amounts = [signed(worked(Incomes(one, two, time), 1), P) for time in sorted(times) if time >= 50]
    assert all(later <= earlier for earlier, later in pairwise(amounts))


def test_children_with_different_times_are_not_split() -> None:
    """Fam. Code 4055(b)(8): no split where the children have different times."""
    assert worked(incomes(18000, 4000, 15), 3, same_time=False).by_child is None


def test_the_bands_meet_without_a_jump_that_matters() -> None:
    """The statute's own bands: the fraction moves by less than two thousandths from one band to the next."""
    for edge in (band["up_to"] for band in figure("child_support.fraction", ON).value if "up_to" in band):
        here, there = worked(incomes(edge, 0, 0), 1), worked(incomes(edge + 1, 0, 0), 1)
        assert abs(here.amount - there.amount) < edge * Decimal("0.002")


# A default, and costs on top


def test_without_evidence_the_children_count_as_wholly_with_one() -> None:
    """Fam. Code 4055(b)(6): H% of zero, or of one hundred, as the parent with custody earns less or more."""
    assert time_without_evidence(P) == 100
    assert time_without_evidence(R) == 0
    assert worked(Incomes(Decimal(4200), Decimal(1900), time_without_evidence(R)), 1).amount == 1050
    assert worked(Incomes(Decimal(4200), Decimal(1900), time_without_evidence(P)), 1).payer is R


def test_costs_are_split_by_what_is_left_after_support() -> None:
    """Fam. Code 4061(d): 5,000 less 1,080 against 2,000, so 66.2162 and 33.7838 percent of 600."""
    found = split_costs(worked(incomes(5000, 2000, 20), 1), Decimal(600))
    assert found == CostSplit(Decimal("397.30"), Decimal("202.70"), (Decimal(300), Decimal(300)))


def test_the_other_way_to_split_costs_is_in_half_to_the_cent() -> None:
    found = split_costs(worked(incomes(5000, 2000, 20), 1), Decimal("0.01"))
    assert isinstance(found, CostSplit)
    assert sum(found.halves) == found.petitioner + found.respondent == CENT


def test_costs_are_not_split_where_support_is_a_range_or_nothing_is_left() -> None:
    assert isinstance(split_costs(worked(incomes(1800, 800, 20), 1), Decimal(100)), Refused)
    assert isinstance(split_costs(worked(incomes(0, 0, 20), 1), Decimal(100)), Refused)


# A case

FACTS: dict[str, Any] = {
    "matter": {"kind": "dissolution", "unions": ["marriage"]},
    "children": {"family": ["minor_together"], "how_many": 2},
    "child": [{"born_on": "2015-02-01"}, {"born_on": "2018-02-01"}],
    "income": {"petitioner_net": "3000", "respondent_net": "6000", "time_with_petitioner": "50"},
}


def test_the_formula_for_the_children_of_a_case() -> None:
    found = child_support_for(Case.model_validate(FACTS), ON)
    assert isinstance(found, Guideline)
    assert (found.payer, found.amount, found.children) == (R, 900, 2)


@pytest.mark.parametrize(
    ("key", "value", "missing"),
    [
        ("income.petitioner_net", None, ("income.petitioner_net",)),
        ("income.respondent_net", "don't know", ("income.respondent_net",)),
        ("income.time_with_petitioner", None, ("income.time_with_petitioner",)),
        ("income.third_parent", True, ()),
        ("child", (), ("children.family",)),
    ],
)
def test_a_case_that_lacks_something_is_refused(key: str, value: object, missing: tuple[str, ...]) -> None:
    refused = child_support_for(Case.model_validate(FACTS).with_fact(key, value), ON)
    assert isinstance(refused, Refused)
    assert refused.missing == missing


def test_grown_children_do_not_count() -> None:
    case = Case.model_validate(FACTS).with_fact("child.1.born_on", "2000-01-01")
    found = child_support_for(case, ON)
    assert isinstance(found, Guideline)
    assert found.children == 1


def test_the_limit_on_its_use_is_said() -> None:
    """Fam. Code 3830(a); Cal. Rules of Court, rules 5.275 and 5.260(e)(2)(A)."""
    text = " ".join(limits())
    assert "Do not file it" in text
    assert "not certified" in text
    assert "spousal support in a judgment" in text


def test_the_three_answers_about_half_of_the_income() -> None:
    assert {AboveHalf(one["above_half"]) for one in TABLE["cases"].values() if "above_half" in one} == set(
        AboveHalf
    )
