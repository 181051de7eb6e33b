"""What must hold for any amounts: spouses swapped, sums conserved, the unknown never said firmly."""

from decimal import Decimal
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.packet.money import MoneyPages, money_pages
from firstpaper.packet.templates import render
from firstpaper.packet.views.money.sums import Taken
from tests.packet.money.invented import ON

OTHER = {"petitioner": "respondent", "respondent": "petitioner"}
GENERAL: dict[str, Any] = {
    "matter": {"kind": "dissolution", "unions": ["marriage"]},
    "dates": {
        "married_on": "2010-06-01",
        "separation_told_on": "2024-06-01",
        "separation_acted_on": "2024-06-01",
    },
    "schedule": {"agreement": False, "in_california": True},
}
EVEN = st.integers(0, 40_000_000).map(lambda cents: str(Decimal(cents * 2) / 100))
"""Amounts that can be halved to the cent."""
PROPOSALS = st.sampled_from(["petitioner", "respondent", "half_each", None])
BOUGHT = {"kind": "household", "how": "bought", "acquired_on": "2015", "title": "joint"}
CARD = {"kind": "credit_card", "incurred_on": "2015", "by": "petitioner", "purpose": "household"}


@st.composite
def estates(draw: st.DrawFn) -> dict[str, Any]:
    """Some community things and debts, and what each owns alone."""
    assets = [
        {**BOUGHT, "value": draw(EVEN), "owed": "0", "proposal": draw(PROPOSALS)}
        for _number in range(draw(st.integers(1, 4)))
    ]
    for who in OTHER:
        kept = {"kind": "cash", "how": "inherited", "by": who, "title": "no_paper", "mixed": False}
        assets.append({**kept, "value": draw(EVEN)})
    debts = [
        {**CARD, "by": draw(st.sampled_from([*OTHER])), "owed": draw(EVEN), "proposal": draw(PROPOSALS)}
        for _number in range(draw(st.integers(0, 2)))
    ]
    return {**GENERAL, "asset": assets, "debt": debts}


def swapped(facts: dict[str, Any]) -> dict[str, Any]:
    """The same household with the other spouse filing."""

    def turn(row: dict[str, Any]) -> dict[str, Any]:
        return {
            name: OTHER.get(value, value) if isinstance(value, str) else value for name, value in row.items()
        }

    return {**facts, **{name: [turn(row) for row in facts[name]] for name in ("asset", "debt")}}


def pages(facts: dict[str, Any]) -> MoneyPages:
    return money_pages(Case.model_validate(facts), ON)


def values(found: MoneyPages, template: str) -> dict[str, Any]:
    return next((dict(one.values) for one in found.sheets if one.template == f"money-{template}.html"), {})


@settings(max_examples=60, deadline=None)
@given(estates())
def test_swapping_the_spouses_swaps_the_columns(facts: dict[str, Any]) -> None:
    one, two = values(pages(facts), "proposal"), values(pages(swapped(facts)), "proposal")
    assert bool(one["refused"]) == bool(two["refused"])
    if one["refused"]:
        return
    assert [Taken(row.name, row.other, row.you) for row in one["rows"]] == list(two["rows"])
    assert (one["you"], one["other"]) == (two["other"], two["you"])
    assert (one["you_end_with"], one["other_ends_with"]) == (two["other_ends_with"], two["you_end_with"])
    turned = one["payment"].replace("You would pay the other side", "The other side would pay you")
    assert two["payment"] in (
        turned,
        one["payment"].replace("The other side would pay you", "You would pay the other side"),
    )
    if "even" not in one["payment"]:
        assert two["payment"] != one["payment"]


@settings(max_examples=60, deadline=None)
@given(estates())
def test_swapping_the_spouses_swaps_what_each_owns_alone(facts: dict[str, Any]) -> None:
    titles = {"Taken to be yours alone": "Taken to be the other side's alone"}
    titles |= {other: mine for mine, other in titles.items()}
    one, two = (
        {group.title: group.rows for group in values(pages(told), "sums")["groups"]}
        for told in (facts, swapped(facts))
    )
    assert {titles.get(title, title): rows for title, rows in one.items()} == two


@settings(max_examples=60, deadline=None)
@given(estates())
def test_nothing_is_lost_in_the_sums(facts: dict[str, Any]) -> None:
    """All that has an amount is in one group, and the groups add up to the whole."""
    found = pages(facts)
    whole = sum((Decimal(row["value"]) for row in facts["asset"]), Decimal(0))
    whole -= sum((Decimal(row["owed"]) for row in facts["debt"]), Decimal(0))
    shown = [row for group in values(found, "sums")["groups"] for row in group.rows]
    assert len(shown) == len(facts["asset"]) + len(facts["debt"])
    assert sum((amount(row.net) for row in shown), Decimal(0)) == whole


@settings(max_examples=60, deadline=None)
@given(estates())
def test_what_the_two_take_is_all_that_was_proposed(facts: dict[str, Any]) -> None:
    told = values(pages(facts), "proposal")
    if told["refused"]:
        return
    rows = told["rows"]
    assert sum((amount(row.you) for row in rows), Decimal(0)) == amount(told["you"])
    assert amount(told["you"]) + amount(told["other"]) == amount(told["you_end_with"]) + amount(
        told["other_ends_with"]
    )
    assert abs(amount(told["you_end_with"]) - amount(told["other_ends_with"])) <= Decimal("0.02")


def amount(words: str) -> Decimal:
    """An amount as it stands on the page, read back."""
    return Decimal(words.replace("$", "").replace(",", ""))


FACTS = ("acquired_on", "how", "by", "title", "source", "mixed", "kind")


@settings(max_examples=80, deadline=None)
@given(st.sets(st.sampled_from(FACTS)), st.sampled_from(["vehicle", "savings", "real_estate", "pension"]))
def test_what_is_not_known_is_never_said_firmly(left_out: set[str], kind: str) -> None:
    whole = {
        "kind": kind,
        "how": "bought",
        "acquired_on": "2006-01-01",
        "by": "petitioner",
        "title": "petitioner",
    }
    told = {name: value for name, value in {**whole, "mixed": True}.items() if name not in left_out}
    found = pages({**GENERAL, "asset": [{"words": "Thing", **told}]})
    (row,) = values(found, "owned")["rows"]
    if found.reckoning.characters[0].missing:
        assert not row.known
        assert "Taken to be: " not in render("money-owned.html", values(found, "owned"))
        assert row.missing
