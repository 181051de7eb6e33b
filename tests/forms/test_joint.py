"""One petition for both: what its forms ask for, and that it is offered only where nothing is in the way.

Contents: Fam. Code 2330(c), 2342.5(a); Cal. Rules of Court, rule 5.16(a)(2). The numbers of FL-700 and
FL-710 are not established, so nothing here is checked against them.
"""

from dataclasses import replace
from datetime import date
from io import BytesIO
from typing import Any

import pytest
from hypothesis import given, settings
from pypdf import PdfReader

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.packet import build
from firstpaper.packet.brief import brief
from firstpaper.packet.screen import screen
from tests.any_case import any_case, filing_days
from tests.packet.drawn import footed, household

ON = date(2026, 11, 25)
TOGETHER = household("both-file-together")


def petition(case: Case) -> dict[str, ItemAnswer]:
    return {answer.concept: answer for answer in filled_forms(case, ON, Filing.JOINT)[0].items}


@settings(max_examples=200, deadline=None)
@given(any_case(), filing_days())
def test_every_concept_is_answered_once_with_a_reason(case: Case, on: date) -> None:
    for form in filled_forms(case, on, Filing.JOINT):
        assert [answer.concept for answer in form.items] == [item.concept for item in form.edition.items]
        for answer in form.items:
            assert answer.because.strip()
            assert bool(answer.value) == (answer.action is Action.WRITE)
            if answer.open_key:
                case.fact(answer.open_key)


@pytest.mark.parametrize("form", ["FL-700", "FL-710"])
def test_no_number_is_claimed_and_the_sheet_says_so(form: str) -> None:
    edition = edition_for(form, ON)
    assert all(item.item is None and item.page is None and not item.was for item in edition.items)
    assert "not established" in edition.caution


def test_the_list_of_issues_is_that_of_the_statute() -> None:
    """Fam. Code 2330(c)(3): grounds, separation, custody, both kinds of support, property, name, fees."""
    issues = {item.concept for item in edition_for("FL-700", ON).items if item.concept.startswith("issue.")}
    assert issues == {
        "issue.grounds",
        "issue.separated_on",
        "issue.custody",
        "issue.child_support",
        "issue.support",
        "issue.separate",
        "issue.community",
        "issue.former_name",
        "issue.fees",
    }


def test_both_are_petitioners_and_the_child_is_listed() -> None:
    found = petition(TOGETHER.case)
    assert found["caption.names"].value == "Petitioner 1: Teresa Lindqvist\nPetitioner 2: Andre Lindqvist"
    assert found["children.rows"].value == "Freya Lindqvist; 10/04/2015; 11"
    assert found["issue.custody"].action is found["issue.child_support"].action is Action.MARK
    assert found["signing.first"].action is found["signing.second"].action is Action.SIGN
    assert found["married_on"].value == "08/03/2011"


def test_without_children_custody_is_no_issue() -> None:
    case = TOGETHER.case.with_fact("children.family", []).with_fact("child", [])
    found = petition(case)
    assert found["children.none"].action is Action.MARK
    assert found["issue.custody"].action is found["issue.child_support"].action is Action.BLANK


def test_a_legal_separation_gives_no_former_name_back() -> None:
    """Fam. Code 2080."""
    apart = petition(TOGETHER.case.with_fact("matter.kind", "legal_separation"))
    assert apart["issue.former_name"].action is Action.BLANK
    assert apart["issue.fees"].action is petition(TOGETHER.case)["issue.former_name"].action is Action.FILL


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("joint.pressed", True),
        ("joint.pressed", DONT_KNOW),
        ("joint.pressed", None),
        ("joint.willing", False),
        ("joint.agree", False),
        ("joint.agree", None),
        ("matter.kind", "nullity"),
        ("matter.amended", True),
        ("safety.dangers", ["afraid"]),
        ("safety.dangers", DONT_KNOW),
        ("shortcuts.look_at", []),
    ],
    ids=str,
)
def test_it_is_never_offered_where_something_stands_in_the_way(key: str, value: Any) -> None:
    assert brief(TOGETHER.case, TOGETHER.on).joint
    assert brief(TOGETHER.case.with_fact(key, value), TOGETHER.on).joint == ()


def test_the_list_of_blank_forms_says_which_are_for_which_way() -> None:
    (cover,) = (one for one in build(TOGETHER.case, TOGETHER.on).sheets if one.template == "cover.html")
    for words in (
        "Petition. Only if you file alone.",
        "Summons. Only if you file alone.",
        "Response. Only if you file alone.",
        "Joint petition. Only if you two file together.",
        "Joint summons. Only if you two file together.",
        "The second only if you file alone",
    ):
        assert words in cover.markup, words
    plain = household("plain-childless-divorce")
    (alone,) = (one for one in build(plain.case, plain.on).sheets if one.template == "cover.html")
    assert "Only if you" not in alone.markup


def test_the_ways_read_well_on_a_screen_too_where_there_are_no_pages() -> None:
    one = household("short-marriage-short-way")
    shown = " ".join(screen("Packet", build(one.case, one.on).sheets).split())
    assert "See “Worksheet for FL-100”, “The last check”.</li>" in shown
    assert "The self-help center helps with it.</li>" in shown


def test_filing_together_is_told_on_one_page_with_two_fees_and_how_to_leave_it() -> None:
    (page,) = footed(TOGETHER, "If you two file together")
    for words in (
        "free to say no",
        "$870 to $900",
        "FL-720",
        "30 days",
        "May 26, 2027",
        "May 27, 2027",
        "FL-105",
    ):
        assert words in page, words


@pytest.mark.parametrize("form", ["FL-700", "FL-710"])
def test_the_worksheets_write_out_what_no_other_form_of_this_way_holds(form: str) -> None:
    """FL-100 is not filled in by two who file together, so its caption is nowhere to copy from."""
    packet = build(TOGETHER.case, TOGETHER.on)
    (sheet,) = (one for one in packet.sheets if one.title == f"Worksheet for {form}")
    for words in ("Petitioner 1: Teresa Lindqvist", "Petitioner 2: Andre Lindqvist", "1100 Almanac Street"):
        assert words in sheet.markup, words
    assert "FL-100" not in sheet.markup


def test_a_form_that_nobody_has_seen_names_what_stays_empty() -> None:
    """It may ask for more than we know of, so it never says that all else stays empty."""
    packet = build(TOGETHER.case, TOGETHER.on)
    (sheet,) = (one for one in packet.sheets if one.title == "Worksheet for FL-700")
    assert "everything else" not in sheet.markup
    assert "What this sheet does not name" not in sheet.markup
    assert "Leave empty: Case number; Legal separation; Of a domestic partnership." in sheet.markup


@pytest.mark.parametrize(
    ("name", "foot", "words"),
    [
        ("short-marriage-short-way", "The short kind of divorce", ("FL-800", "FL-810", "FL-830", "90 days")),
        ("partners-end-it-by-notice", "Ending a partnership by notice", ("Secretary of State", "notary")),
    ],
)
def test_a_shorter_way_that_fits_is_handed_over_on_one_page(
    name: str, foot: str, words: tuple[str, ...]
) -> None:
    one = household(name)
    packet = build(one.case, one.on)
    alone = replace(packet, sheets=tuple(sheet for sheet in packet.sheets if sheet.title == foot))
    (page,) = (page.extract_text() for page in PdfReader(BytesIO(alone.pdf())).pages)
    assert [word for word in words if word not in page] == []


def test_a_shorter_way_whose_limits_nobody_has_published_is_handed_over_too() -> None:
    """Fam. Code 2400(b): the amounts are set anew on January 1, 2027. They asked; it does not vanish."""
    one = household("short-marriage-short-way")
    packet = build(one.case, date(2027, 1, 4))
    cover, page = (
        next(sheet for sheet in packet.sheets if sheet.title == title)
        for title in ("Start here: cover checklist", "The short kind of divorce")
    )
    assert "FL-800, FL-810" in cover.markup
    assert "not published when we last looked" in page.markup
    assert "$57,000" not in page.markup


def test_a_shorter_way_that_is_closed_says_why() -> None:
    one = household("california-partners-both-left")
    (page,) = (each for each in build(one.case, one.on).sheets if each.title == "Other papers to ask about")
    assert "you were married or partners for more than 5 years" in page.markup
    assert "the partnership is more than 5 years old" in page.markup


@pytest.mark.parametrize("foot", ["The short kind of divorce", "Ending a partnership by notice"])
def test_a_shorter_way_that_was_not_asked_for_has_no_page(foot: str) -> None:
    assert footed(household("plain-childless-divorce"), foot) == ()
