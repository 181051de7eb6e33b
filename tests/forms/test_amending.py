"""An amended petition against the one it replaces: every answer that differs, and no other.

It restates everything and replaces the earlier one: Cal. Rules of Court, rule 5.74(a)(2).
"""

from datetime import date
from typing import Any

import page as page_validation
import pytest
from hypothesis import given, settings

from firstpaper.facts import Case, Day
from firstpaper.facts.amending import begun_from
from firstpaper.forms.amending import PageChange, changed_items, changed_pages
from firstpaper.forms.attachments import attachments
from firstpaper.intake import standing
from firstpaper.packet import build
from tests.any_case import any_case, filing_days
from tests.forms.petition import petition
from tests.packet.drawn import household

ON = date(2026, 11, 25)
PLAIN = household("plain-childless-divorce").case


@settings(max_examples=200, deadline=None)
@given(any_case(), any_case(), filing_days())
def test_what_differs_is_named_and_nothing_else(before: Case, now: Case, on: date) -> None:
    earlier, later = petition(before, on), petition(now, on)
    named = {one.now.concept for one in changed_items(earlier, later)}
    for old, new in zip(earlier, later, strict=True):
        assert (new.concept in named) is ((old.action, old.value) != (new.action, new.value))
    assert changed_items(later, later) == ()
    assert changed_pages(attachments(now, on), attachments(now, on)) == ()


def test_a_page_may_come_go_or_change() -> None:
    def pages(*items: str) -> tuple[Any, ...]:
        told = {"property.community_how": "list", "property.community_items": list(items)}
        case = PLAIN
        for key, value in told.items():
            case = case.with_fact(key, value)
        return attachments(standing(case), ON)

    many = [f"A thing with a long name, number {number}" for number in range(30)]
    long, longer, short = pages(*many), pages(*many, "One more"), pages("A car")
    assert [(one.label, one.how) for one in changed_pages(short, long)] == [
        ("Attachment 10b", PageChange.NEW)
    ]
    assert [one.how for one in changed_pages(long, longer)] == [PageChange.CHANGED]
    assert [one.how for one in changed_pages(long, short)] == [PageChange.GONE]


# --- beginning one ----------------------------------------------------------------------------------


def test_everything_is_kept_but_the_signature_and_the_first_petition_is_told_of() -> None:
    earlier = PLAIN.with_fact("record.filed_on", Day(2026, 3, 14)).with_fact("record.response_filed_on", None)
    case = begun_from(earlier)
    assert case.matter.amended is True
    assert case.matter.first_kind == earlier.matter.kind
    assert case.matter.first_filed_on == Day(2026, 3, 14)
    assert case.matter.other_side_answered is None
    assert case.signing.orders_read is None
    assert case.petitioner == earlier.petitioner
    assert case.property == earlier.property


def test_a_response_on_record_is_carried_over() -> None:
    earlier = PLAIN.with_fact("record.response_filed_on", Day(2026, 5, 1))
    assert begun_from(earlier).matter.other_side_answered is True


def test_what_an_amended_petition_said_of_the_first_one_stays() -> None:
    earlier = household("amended-petition").case
    case = begun_from(earlier)
    assert case.matter == earlier.matter


# --- the sheet --------------------------------------------------------------------------------------


def words(case: Case, earlier: Case | None) -> str:
    return " ".join(build(case, ON, earlier).html().split())


def test_the_sheet_shows_before_and_now_and_what_to_serve() -> None:
    now = begun_from(PLAIN).with_fact("requests.fees", "paid_by_respondent")
    text = words(now.with_fact("matter.other_side_answered", False), PLAIN)
    assert "What changes in the amended petition" in text
    assert "Attorney's fees and costs payable by: Respondent" in text or "Respondent" in text
    assert "A summons (FL-110) with it" in text
    assert "marked “amended”" in text


@pytest.mark.parametrize(
    ("facts", "says"),
    [
        ({"matter.other_side_answered": True}, "their agreement or a judge"),
        ({"matter.first_kind": "legal_separation", "matter.first_stated_intent": True}, "may go by mail"),
        (
            {"matter.first_kind": "legal_separation", "matter.first_stated_intent": False},
            "A summons (FL-110)",
        ),
    ],
)
def test_how_it_is_served_goes_by_the_case(facts: dict[str, Any], says: str) -> None:
    case = household("amended-petition").case
    for key, value in facts.items():
        case = case.with_fact(key, value)
    assert says in words(case, PLAIN)


def test_the_sheet_conforms_to_pdf_ua_1() -> None:
    # ISO 14289-1 (PDF/UA-1), by an outside validator
    now = begun_from(PLAIN).with_fact("matter.case_number", "26FL001234")
    report = page_validation.validate_pdf_bytes(build(now, ON, PLAIN).pdf(), profile="ua1")
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []


def test_the_tops_of_later_pages_are_not_said_again() -> None:
    now = begun_from(PLAIN).with_fact("matter.case_number", "26FL001234")
    (sheet,) = [one for one in build(now, ON, PLAIN).sheets if one.template == "amended.html"]
    lines = [line for part in sheet.values["parts"] for line in part.lines]  # type: ignore[attr-defined]
    assert [(line.before, line.now) for line in lines if line.label == "Case number"] == [
        ("empty", "26FL001234")
    ]


def test_without_an_earlier_case_there_is_no_sheet() -> None:
    assert "What changes in the amended petition" not in words(household("amended-petition").case, None)
