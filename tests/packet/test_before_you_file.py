"""What is told before the filing: whom the orders bind already, and what says nothing to this couple."""

from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.packet import Stage, build
from firstpaper.packet.brief import brief
from firstpaper.packet.templates import render
from firstpaper.packet.views import before, last_check
from firstpaper.packet.views.headed import headed
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
    assert "Until you file you may still do some things" not in words


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
    assert "It was due by Friday, July 31, 2026." in told_to("amended-petition")
    assert "It was due by" not in told_to("corrected-after-it-was-served")


def cover_of(name: str, on: date) -> str:
    sheets = build(household(name).case, on, stages=[Stage.FIRST]).sheets
    return " ".join(render(sheets[0].template, sheets[0].values).split("<h2>")[0].split())


def test_a_nullity_that_a_parent_files_is_called_by_the_one_who_married() -> None:
    """Cal. Rules of Court, rule 5.16(b)(3): the caption names the spouse, whoever acts."""
    one = household("nullity-under-age-by-a-parent")
    assert brief(one.case, one.on).couple == "Marriage of Clara Silva and Dylan Frost, filed by Renata Silva"
    nameless = one.case.with_fact("grounds.filed_for", None)
    assert brief(nameless, one.on).couple.startswith("Marriage of (the one you file for) and Dylan Frost")


def test_a_last_day_that_is_near_stands_on_the_cover_and_not_again_below() -> None:
    """Fam. Code 2211(a), (e): the last day of a parent, and four years after the wedding."""
    parent, forced = household("nullity-under-age-by-a-parent"), household("nullity-for-force")
    assert "Tuesday, January 19, 2027" in cover_of(parent.name, parent.on)
    assert "last day to file is Wednesday, November 25, 2026" in cover_of(forced.name, forced.on)
    assert "last day to file is Wednesday" not in told(forced.case, forced.on)


def test_a_late_filing_that_a_judge_may_allow_says_so_on_the_cover_and_asks_the_clerk() -> None:
    """Fam. Code 2211(g), operative January 1, 2027."""
    case, day = household("nullity-for-force").case, date(2027, 1, 4)
    assert "only if the court gives permission" in cover_of("nullity-for-force", day)
    (check,) = last_check.sheets(brief(case, day))
    assert any("petition for a nullity is late" in one for one in check.values["clerk_questions"])


def test_a_stop_is_said_again_where_one_signs_and_where_one_hands_in() -> None:
    one = household("two-children-moved-county")
    assert "Stop first" in " ".join(pages_of(one.case, one.on))
    (check,) = last_check.sheets(brief(one.case, one.on))
    assert "Stop. Do not file yet." in render(check.template, check.values)
    plain = household(CHILDLESS)
    (check,) = last_check.sheets(brief(plain.case, plain.on))
    assert "Stop." not in render(check.template, check.values)


def pages_of(case: Case, on: date) -> list[str]:
    return [render(one.template, one.values) for one in build(case, on, stages=[Stage.FIRST]).sheets]


def first_page(name: str) -> str:
    one = household(name)
    return " ".join(pages_of(one.case, one.on)[0].split())


def test_whom_to_ask_is_said_once_for_each_matter() -> None:
    one = household("a-child-in-juvenile-court")
    (case,) = [each for each in headed(brief(one.case, one.on).advice) if each.title == "Another court case"]
    assert [text.count("Talk to the court's self-help center") for text in case.says] == [0, 1]


def test_a_shared_computer_is_spoken_of_also_where_no_danger_was_told() -> None:
    # common practice, no source
    assert "Others can use this computer." in first_page("california-partners-both-left")


def test_a_form_used_for_more_than_one_thing_names_them_all() -> None:
    assert "for separate property; community property." in first_page("lists-on-the-courts-own-form")


def test_a_form_without_a_worksheet_is_to_be_filled_in_alone() -> None:
    words = "Fill in without a worksheet of ours: FL-341(C)."
    assert words in first_page("lists-on-the-courts-own-form")
    assert "without a worksheet of ours" not in first_page(CHILDLESS)


def test_with_an_unborn_child_alone_the_declaration_waits_for_the_clerk() -> None:
    assert "Only if the clerk asks for it: your child is not yet born." in first_page(
        "only-the-husband-qualifies"
    )


def test_what_was_left_open_is_looked_at_again_before_the_papers_are_handed_in() -> None:
    one = household("married-and-registered")
    (check,) = last_check.sheets(brief(one.case, one.on))
    words = render(check.template, check.values)
    assert "Look again at the items that were open: 3a(2), 3a(3), 3b(2), 3b(3)." in words


def test_where_nobody_said_it_nobody_is_asked_on_which_day_it_was_said() -> None:
    """Fam. Code 70(a): words from one to the other; who is in hiding must not go and say them."""
    one = household("address-must-stay-hidden")
    found = brief(one.case, one.on)
    assert "dates.separation_told_on" not in {each.key for each in found.open_questions}
    (because,) = {each.because for each in found.open_items if (each.place or "").startswith("3a")}
    assert "You need not get in touch with the other side for this." in because
    assert "Do not contact the other side for this." in told(one.case, one.on)


def test_dates_are_kept_out_of_sight_also_at_a_shared_computer() -> None:
    # common practice, no source
    words = "Keep this page where nobody else finds it."
    shared, safe = household("california-partners-both-left"), household(CHILDLESS)
    assert words in " ".join(later_pages(shared))
    assert words not in " ".join(later_pages(safe))


def later_pages(one: Household) -> list[str]:
    return [
        render(each.template, each.values) for each in build(one.case, one.on, stages=[Stage.LATER]).sheets
    ]
