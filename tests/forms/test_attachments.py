"""The attachment pages, and the ledger: a page is ticked exactly where it exists."""

from dataclasses import replace
from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings

from firstpaper.facts import Case
from firstpaper.facts.choices import CommunityKind
from firstpaper.forms.answer import Action
from firstpaper.forms.attachments import Attachment, attachments, ledger
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filing import filled_forms
from firstpaper.forms.fl100 import community_property
from firstpaper.forms.needed import Goes, forms_needed
from firstpaper.intake import standing
from tests.any_case import any_case, filing_days
from tests.forms.petition import petition

ON = date(2026, 12, 1)
COUPLE = {
    "matter": {"unions": ["marriage"], "kind": "dissolution"},
    "petitioner": {"name": "Ana Soto"},
    "respondent": {"name": "Luis Soto"},
}
LONG = "Order this and that, and all that follows from it. " * 10
TICKS = {
    "Attachment 4b": ("children.continued",),
    "Attachment 6c(1)": ("custody.sheet.own_page",),
    "Attachment 7d": ("support.child.other", "support.child.other.words"),
    "Attachment 8d": ("support.other", "support.other.words"),
    "Attachment 9b": ("property.separate.attachment",),
    "Attachment 10b": ("property.community.attachment",),
    "Attachment 11c": ("requests.other", "requests.other.words", "requests.other.continued"),
}


def pages(**facts: Any) -> dict[str, Attachment]:
    return {page.label: page for page in attachments(Case.model_validate({**COUPLE, **facts}), ON)}


@settings(max_examples=200, deadline=None)
@given(any_case(), filing_days())
def test_a_page_is_ticked_exactly_where_it_exists(case: Case, on: date) -> None:
    exist = {page.label for page in attachments(case, on) if page.form == "FL-100"}
    found = {answer.concept: answer for answer in petition(case, on)}
    named = {answer.continues for answer in found.values() if answer.continues.startswith("Attachment")}

    assert named == exist
    for label, boxes in TICKS.items():
        for box in boxes:
            assert (found[box].continues == label) == (label in exist), (label, box)
            assert found[box].action is not Action.BLANK or label not in exist, (label, box)


@settings(max_examples=100, deadline=None)
@given(any_case(), filing_days())
def test_the_ledger_pairs_every_sheet_with_a_page_or_a_form_to_get(case: Case, on: date) -> None:
    case = standing(case)
    to_file = [each for each in forms_needed(case, on) if each.goes is Goes.FILE]
    names = {each.form for each in to_file} | {each.title for each in to_file if not each.form}

    lines = ledger(filled_forms(case, on), attachments(case, on))
    for line in lines:
        assert line.items or line.form != "FL-100"
        if line.label.startswith("Attachment"):
            assert line.attachment is not None
            assert line.attachment.label == line.label
        else:
            assert line.attachment is None
            assert line.label.partition(" (")[0] in names or line.label in names, line.label
    assert {line.attachment for line in lines if line.attachment} == set(attachments(case, on))


@settings(max_examples=100, deadline=None)
@given(any_case(), filing_days())
def test_a_page_has_something_on_it_and_a_table_is_square(case: Case, on: date) -> None:
    for page in attachments(standing(case), on):
        assert page.paragraphs
        assert all(text.strip() for text in page.paragraphs)
        assert all(len(row) == len(page.columns) for row in page.rows)
        assert bool(page.rows) == bool(page.columns)


def test_the_children_beyond_the_printed_rows_stand_on_attachment_4b() -> None:
    names = "ABCDEF"
    found = pages(
        children={"family": ["minor_together"], "how_many": 6},
        child=[{"name": name, "born_on": f"201{number}-03-04"} for number, name in enumerate(names)],
    )

    page = found["Attachment 4b"]
    assert (page.form, page.continues) == ("FL-100", "item 4b")
    assert page.short_title == "Marriage of Ana Soto and Luis Soto"
    assert page.columns == ("Child's name", "Birthdate", "Age")
    assert page.rows == (("E", "03/04/2014", "12"), ("F", "03/04/2015", "11"))


def test_a_cell_whose_fact_is_missing_is_left_for_the_filer() -> None:
    children = [{"name": name, "born_on": "2012-01-01"} for name in "ABCD"]
    found = pages(children={"family": ["minor_together"], "how_many": 5}, child=[*children, {"name": "E"}])

    assert found["Attachment 4b"].rows == (("E", "", ""),)


def test_custody_by_child_stands_in_a_table_with_the_words_for_other() -> None:
    page = pages(
        children={"family": ["minor_together"], "how_many": 2},
        child=[
            {"name": "Ruth", "born_on": "2012-01-01", "legal": "joint", "physical": "joint"},
            {
                "name": "Joel",
                "born_on": "2014-01-01",
                "legal": "joint",
                "physical": "petitioner",
                "visits": "other",
            },
        ],
        custody={
            "alike": False,
            "other_words": "With a supervisor",
            "sheets": ["own_page"],
            "plan": "Weekends.\n\nSummer.",
        },
    )["Attachment 6c(1)"]

    assert page.columns[0] == "Child's name"
    assert page.rows == (
        ("Ruth", "Petitioner and Respondent jointly", "Petitioner and Respondent jointly", "No request"),
        ("Joel", "Petitioner and Respondent jointly", "Petitioner", "Other, as stated on this page"),
    )
    assert page.paragraphs[0].startswith("Petitioner asks the court to order custody and visitation")
    assert page.paragraphs[2:] == (
        "With a supervisor",
        "Petitioner asks the court to order the following parenting plan:",
        "Weekends.",
        "Summer.",
    )


def test_a_child_not_yet_born_is_not_in_the_table_and_the_page_says_so() -> None:
    page = pages(
        children={"family": ["minor_together", "unborn_together"], "how_many": 1},
        child=[{"name": "Ruth", "born_on": "2012-01-01", "legal": "joint", "physical": "joint"}],
        custody={"alike": False},
    )["Attachment 6c(1)"]

    assert "The unborn child is not included in this table." in page.paragraphs
    assert len(page.rows) == 1


def test_long_words_stand_whole_on_their_page_in_the_petitions_voice() -> None:
    found = pages(
        children={"family": ["unborn_together"]},
        support={"child_other": LONG, "petitioner": "ask", "other": LONG},
        requests={"other": LONG},
    )

    asks = "Petitioner asks the court for the following, in addition to what is marked in item {item}:"
    assert found["Attachment 7d"].paragraphs == (asks.format(item=7), LONG.strip())
    assert found["Attachment 8d"].paragraphs == (asks.format(item=8), LONG.strip())
    assert found["Attachment 11c"].paragraphs == (LONG.strip(),)


def test_separate_property_stands_with_whom_to_confirm_it_to() -> None:
    page = pages(
        property={
            "separate_how": "list",
            "separate_petitioner": ["Savings", "Ring"],
            "separate_respondent": ["Truck", "Card debt"],
        }
    )["Attachment 9b"]

    assert page.columns == ("Item", "Confirm to")
    assert page.rows == (
        ("Savings", "Petitioner"),
        ("Ring", "Petitioner"),
        ("Truck", "Respondent"),
        ("Card debt", "Respondent"),
    )


def test_community_property_stands_without_shares() -> None:
    page = pages(property={"community_how": "list", "community_items": list("ABCDEF")})["Attachment 10b"]

    assert page.paragraphs == (
        "Petitioner asks the court to determine the rights of both parties to the following:",
    )
    assert page.rows == tuple((item,) for item in "ABCDEF")


def test_the_words_on_property_not_yet_known_fit_on_the_lines_with_every_kind() -> None:
    how = {"community_how": "not_yet_known", "community_kinds": list(CommunityKind)}

    assert pages(property=how) == {}
    (rows,) = (
        answer.value
        for answer in petition(Case.model_validate({**COUPLE, "property": how}), ON)
        if answer.concept == "property.community.rows"
    )
    assert rows.endswith("tax refunds, digital assets, and pets.")


def test_how_much_fits_is_decided_by_the_edition(monkeypatch: pytest.MonkeyPatch) -> None:
    narrow = replace(edition_for("FL-100", ON).item("property.community.rows"), lines=1)
    monkeypatch.setattr(community_property, "space", lambda _concept, _on: narrow)
    (page,) = pages(property={"community_how": "not_yet_known", "community_kinds": ["pets"]}).values()

    assert page.label == "Attachment 10b"
    assert page.paragraphs[-1] == "They include: pets."


def test_partners_who_are_not_married_have_their_own_short_title() -> None:
    matter = {"unions": ["partners_california"], "kind": "dissolution"}
    (page,) = pages(matter=matter, requests={"other": LONG}).values()

    assert page.short_title == "Domestic partnership of Ana Soto and Luis Soto"


def test_a_missing_name_leaves_a_line_to_write_on() -> None:
    (page,) = pages(respondent={}, requests={"other": LONG}).values()

    assert page.short_title == "Marriage of Ana Soto and ______________________"
