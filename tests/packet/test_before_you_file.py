"""What is told before the filing: whom the orders bind already, and what says nothing to this couple."""

from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.packet.brief import brief
from firstpaper.packet.templates import render
from firstpaper.packet.views import before
from tests.households.golden import Household, households

CHILDLESS = "plain-childless-divorce"
NOT_YET = "They do not bind anybody yet."


def household(name: str) -> Household:
    return next(one for one in households() if one.name == name)


def told(case: Case, on: date) -> str:
    (sheet,) = before.sheets(brief(case, on))
    return " ".join(render(sheet.template, sheet.values).split())


def told_to(name: str) -> str:
    one = household(name)
    return told(one.case, one.on)


@pytest.mark.parametrize("name", ["amended-petition", "corrected-after-it-was-served"])
def test_the_orders_of_an_open_case_bind_since_its_first_petition(name: str) -> None:
    """Fam. Code 233(a)."""
    words = told_to(name)
    assert "Count on them to bind you since" in words
    assert NOT_YET not in words
    assert "Before you file you may still do some things" not in words


def test_the_orders_of_a_first_petition_bind_nobody_yet() -> None:
    assert NOT_YET in told_to(CHILDLESS)


def test_an_open_case_keeps_the_orders_of_its_own_summons() -> None:
    """Fam. Code 2040(a)(3) as of 2026 and, on a new summons, as operative January 1, 2027."""
    words = told(household("amended-petition").case, date(2027, 1, 4))
    first, new = words.split("This list changes on Friday, January 1, 2027.")
    assert "Do not let it lapse" not in first
    assert "Do not let it lapse" in new


def test_a_first_filing_too_old_for_the_texts_held_takes_the_one_of_today() -> None:
    one = household("amended-petition")
    old = one.case.with_fact("matter.first_filed_on", "2019-03-04")
    assert "Do not cash in" in told(old, one.on)


def test_a_couple_without_children_is_told_of_no_order_about_children() -> None:
    assert "minor children" not in told_to(CHILDLESS)
    assert "Leaving with the children" not in told_to(CHILDLESS)


def test_where_there_is_or_may_be_a_child_the_orders_about_children_stand() -> None:
    """Fam. Code 2040(a)(1); 7540: a child born in the marriage is most often one of both."""
    for name in ("a-child-in-juvenile-court", "a-child-by-somebody-new"):
        assert "Do not take your minor children out of California." in told_to(name)


def test_a_last_day_that_has_passed_is_said_to_have_passed() -> None:
    """Fam. Code 2104(f): 60 days after the first petition."""
    assert "That day has passed." in told_to("amended-petition")
    assert "That day has passed." not in told_to("corrected-after-it-was-served")
