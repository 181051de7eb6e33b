"""What is told before the filing: whom the orders bind already, and what says nothing to this couple."""

from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.locale import speaking
from firstpaper.packet import Stage, build
from firstpaper.packet.brief import brief
from firstpaper.packet.templates import render
from firstpaper.packet.views import before, last_check
from firstpaper.packet.views.headed import headed
from firstpaper.packet.views.ways import ways
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
    assert "Look again at the items that were open. FL-100: 3a(2), 3a(3), 3b(2), 3b(3)." in words


def test_an_open_item_of_another_form_is_named_wherever_those_of_the_petition_are() -> None:
    one = household("address-must-stay-hidden")
    words = "FL-100: 3a(2), 3a(3); FL-105: Other court cases about the children"
    pages = [" ".join(page.split()) for page in pages_of(one.case, one.on)]
    assert sum(words in page for page in pages) == 3  # the cover, the last check, the hand-off sheet
    assert any("Items that are not finished" in page and "FL-105: Other court" in page for page in pages)


def test_a_packet_of_a_case_that_must_wait_names_one_filing_day() -> None:
    """Fam. Code 2320(a): the first day with the time lived here is a holiday, so the next court day."""
    one = household("partner-from-another-country")
    sheets = build(one.case, one.on, stages=[Stage.FIRST]).sheets
    words = " ".join(" ".join(pages_of(one.case, one.on)).split())
    lines = {chart.line.words for sheet in sheets for chart in sheet.pictures.values() if chart.line}
    assert lines == {"Filing: Mon, Nov 30, 2026"}
    assert (
        "Worked out for Wednesday, November 25, 2026. The first day to file is Monday, November 30" in words
    )
    assert "to file Mon, Nov 30, 2026" in words


def test_where_both_ways_are_open_the_cover_signs_and_stacks_for_one_who_files_alone() -> None:
    words = first_page("both-file-together")
    assert "4. Stack and copy (if you file alone)" in words
    assert "Sign and date too: FL-105." in words
    assert "(if you file alone)" not in first_page(CHILDLESS)
    assert "Orders that bind you if you file alone" in told_to("both-file-together")
    assert "if you file alone" not in told_to(CHILDLESS)


def test_where_nobody_knows_where_they_are_nothing_is_owed_and_not_owed_in_one_breath() -> None:
    # Fam. Code 2110: no disclosure where service was by publication or posting and nobody answers
    words = told_to("nobody-knows-where-he-is")
    assert "You may owe none: nobody can find the other side." in words
    assert "You must send the other side" not in words
    assert "Somebody else, 18 or older" not in words
    assert "You must send the other side" in told_to(CHILDLESS)


def test_a_parent_is_told_whom_the_pages_mean_and_that_the_signature_is_open() -> None:
    words = first_page("nullity-under-age-by-a-parent")
    assert "they mean Clara Silva and Dylan Frost." in words
    assert "Ask first who signs FL-100." in words
    assert "Sign FL-100 yourself" not in words
    assert "they mean" not in first_page("nullity-under-age-by-the-spouse")


def test_silence_about_support_after_a_long_marriage_is_told_to_the_filer() -> None:
    # Fam. Code 4336(b): ten years or more are presumed to be long
    assert "Your petition says nothing about support for you." in told_to("mailed-out-of-the-state")
    assert "Saying nothing about support" in first_page("mailed-out-of-the-state")


def test_the_page_for_attachments_says_what_goes_onto_it() -> None:
    words = "Only if the clerk wants attachments on this form. Then copy our attachment pages onto it."
    assert words in first_page("lists-on-the-courts-own-form")


def test_the_way_of_one_who_files_alone_names_its_worksheet_in_each_language() -> None:
    one = household("both-file-together")
    with speaking("es"):
        sheets = build(one.case, one.on, stages=[Stage.FIRST]).sheets
        alone, _together = ways(brief(one.case, one.on), sheets)
    assert alone.sheets == ("Hoja de trabajo de FL-100", "La última revisión")


def test_a_child_still_to_be_placed_says_how_form_fl_105_gets_its_lines() -> None:
    words = "Find out first if the child of just one of you goes on the petition."
    assert words in first_page("a-child-by-somebody-new")
    assert words not in first_page("six-children-and-one-unborn")


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
