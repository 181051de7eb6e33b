"""Where a case has the facts of a published opinion, the page shows the opinion's numbers.

The facts of Moore, Hug, Nelson (2006) and Epstein were read in the opinions, those of Marsden and Walrath's
shares in a digest; Henkle's top of 4 years, and the amounts for Jeffries and Watts, are worked out by hand.
"""

from typing import Any

import pytest

from firstpaper.facts import Case
from firstpaper.packet.money import money_pages
from firstpaper.packet.templates import render
from tests.households.golden import blocks
from tests.packet.money.invented import ON

GENERAL: dict[str, Any] = {
    "matter": {"kind": "dissolution", "unions": ["marriage"]},
    "schedule": {"agreement": False, "in_california": True},
}
YES_NO = {"refinanced": False, "improved": False, "rented_out": False}


def case(wed: str, parted: str, *assets: dict[str, Any]) -> Case:
    dates = {"married_on": wed, "separation_told_on": parted, "separation_acted_on": parted}
    return Case.model_validate({**GENERAL, "dates": dates, "asset": assets})


def shown(told: Case, title: str) -> str:
    """The words of the one page whose title begins like this."""
    (sheet,) = (sheet for sheet in money_pages(told, ON).sheets if sheet.title.startswith(title))
    return "\n".join(blocks(render(sheet.template, sheet.values)))


def house(bought: str, now: str, **amounts: str) -> dict[str, Any]:
    told = {"kind": "real_estate", "how": "bought", "by": "petitioner", "title": "petitioner", "mixed": True}
    return {**told, "acquired_on": bought, "value": now, "house": {**amounts, **YES_NO}}


MOORE = house(
    "1966-04-01",
    "160000",
    price="56640.57",
    down_payment="16640.57",
    principal_before="245.18",
    principal_during="5986.20",
    principal_after="581.07",
    value_at_wedding="56640.57",
)


def test_moore() -> None:
    """In re Marriage of Moore (1980) 28 Cal.3d 366: 10.57 percent; equity $126,812.45."""
    page = shown(case("1966-12-10", "1977-06-01", MOORE), "House from before the wedding")
    assert "$5,986.20 of $56,640.57, which is 10.57%" in page
    assert "Community part: $16,910. Half of it, $8,455, for each of you." in page
    assert "Separate part of the owner: $109,902.45." in page
    assert "$16,910 and $109,902.45 are $126,812.45" in page


def test_marsden() -> None:
    """In re Marriage of Marsden (1982) 130 Cal.App.3d 426: 24.02 percent; $26,700 of growth before."""
    told = house(
        "1962-01-01",
        "182500",
        price="38300",
        down_payment="8300",
        principal_before="7000",
        principal_during="9200",
        principal_after="655",
        value_at_wedding="65000",
    )
    page = shown(case("1971-02-01", "1978-07-01", told), "House from before the wedding")
    assert "which is 24.02%" in page
    assert "$65,000 less $38,300 = $26,700. All of it is separate." in page
    assert "$182,500 less $65,000 = $117,500. It is shared." in page
    assert "Community part: $37,424.54." in page
    assert "are $169,355, the worth now" in page


def test_nelson_2006() -> None:
    """In re Marriage of Nelson (2006) 139 Cal.App.4th 1546: $14,725 of $47,500 is 31 percent."""
    told = house(
        "1965-01-01",
        "47500",
        price="47500",
        down_payment="8500",
        principal_before="24275",
        principal_during="14725",
        principal_after="0",
        value_at_wedding="47500",
    )
    assert "$14,725 of $47,500, which is 31.00%" in shown(
        case("1982-01-01", "1999-01-01", told), "House from"
    )


def test_henkle() -> None:
    """In re Marriage of Henkle (1987) 189 Cal.App.3d 97: 4 of 30 years, 13.33 percent, half 6.67."""
    pension = {"kind": "pension", "how": "earned", "by": "respondent"}
    told = {**pension, "earned_from": "1943-01-01", "earned_until": "1973-01-01"}
    page = shown(case("1969-01-01", "1975-01-01", told), "Part of a pension")
    assert "48 of 360 months, 13.33% of the benefit" in page
    assert "Half of that for each of you: 6.67%." in page
    assert "$" not in page


def test_hug() -> None:
    """In re Marriage of Hug (1984) 154 Cal.App.3d 780: hired November 6, 1972, separated June 9, 1976; the
    grant of August 9, 1974, here usable after four years: 43 of 69 months by Hug, 22 of 48 by Nelson."""
    grant = {"kind": "investments", "how": "stock_option", "by": "respondent", "shares": 1000}
    told = {**grant, "earned_from": "1972-11-06", "acquired_on": "1974-08-09", "earned_until": "1978-08-09"}
    page = shown(case("1970-01-01", "1976-06-09", told), "Stock options")
    assert "Months until you separated4322" in page
    assert "Months until they can be used6948" in page
    assert "Community part62.32%45.83%" in page
    assert "Of 1,000 options623.19458.33" in page
    assert "We do not choose between them." in page


CAR = {"kind": "vehicle", "how": "bought", "acquired_on": "2018-01-01", "title": "joint"}


def test_epstein() -> None:
    """In re Marriage of Epstein (1979) 24 Cal.3d 76: $2,250 to be restored to the community is $1,125."""
    told = {**CAR, "used_after_by": "respondent", "used_after_months": 1, "used_after_value": "2250"}
    page = shown(case("2010-06-01", "2024-06-01", told), "Since you separated")
    assert "the other side would owe you $1,125." in page


def test_jeffries_and_watts() -> None:
    """A credit and a charge for one home: In re Marriage of Jeffries (1991) 228 Cal.App.3d 548, In re
    Marriage of Watts (1985) 171 Cal.App.3d 366. Worked out: 12 months at 2,400 paid and 3,000 of use."""
    used = {"used_after_by": "petitioner", "used_after_months": 12, "used_after_value": "3000"}
    told = {**CAR, **used, "paid_after": "28800", "paid_after_by": "petitioner"}
    page = shown(case("2010-06-01", "2024-06-01", told), "Since you separated")
    assert "$28,800" in page
    assert "$36,000" in page
    assert "you would owe the other side $3,600." in page
    assert "A judge may allow all of it, a part, or nothing." in page


def test_walrath() -> None:
    """In re Marriage of Walrath (1998) 17 Cal.4th 907: $1,000 between $146,000 and $20,000 is 88 to 12."""
    put_in = [
        {"by": "respondent", "amount": "146000", "toward": "down_payment", "traced": True},
        {"by": "petitioner", "amount": "20000", "toward": "principal", "traced": True},
    ]
    told = {**CAR, "kind": "real_estate", "value": "181000", "owed": "180000", "contributions": put_in}
    page = shown(case("2010-06-01", "2024-06-01", told), "Separate money back")
    assert "Back to the other side: $879.52 of $146,000." in page
    assert "Back to you: $120.48 of $20,000." in page


@pytest.mark.parametrize(
    ("changed", "why"),
    [
        ({"house": {**MOORE["house"], "refinanced": True}}, "There was a new loan on it."),
        ({"house": {**MOORE["house"], "improved": True}}, "It was built on or made better."),
        ({"house": {**MOORE["house"], "rented_out": True}}, "It was rented out"),
        ({"house": {**MOORE["house"], "price": None}}, "what it was bought for"),
        ({"house": {**MOORE["house"], "value_at_wedding": "don't know"}}, "what it was worth at the wedding"),
        ({"value": None}, "what it is worth"),
        ({"title": "joint"}, "It must still be in that name"),
    ],
)
def test_a_house_the_opinions_do_not_fit_is_refused_in_words_with_its_numbers(
    changed: dict[str, Any], why: str
) -> None:
    page = shown(case("1966-12-10", "1977-06-01", {**MOORE, **changed}), "House from before the wedding")
    assert "# Not worked out" in page
    assert why in page
    assert "Down payment$16,640.57" in page
    assert "an accountant who works for courts" in page
    assert "Community part" not in page
    assert "%" not in page
