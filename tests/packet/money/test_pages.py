"""The private money pages: what they say of invented households, and that every page keeps its promises."""

from datetime import date
from typing import Any

import page as page_validation
import pytest

from firstpaper.facts import Case
from firstpaper.packet import build
from firstpaper.packet.money import money_pages
from firstpaper.packet.paper import markup_errors
from firstpaper.packet.templates import render
from tests.each import one_by_one
from tests.households.golden import households, packet
from tests.packet.money.invented import ALL, ON, Household, pages, text
from tests.packet.reading_pdf import page_words
from tests.words.reading import barred_words, grade, words
from tests.words.test_sheet_words import sentences_of

each = one_by_one(ALL)
PRIVATE = "Private: not for the court."


@each
def test_the_pages_say_what_was_read_and_agreed(one: Household) -> None:
    assert text(one) == one.expected.read_text("utf-8"), (
        "read the difference, then run python -m tests.packet.money.invented"
    )


@each
def test_they_are_written_in_the_sheet_markup_and_conform_to_pdf_ua_1(one: Household) -> None:
    # ISO 14289-1 (PDF/UA-1), by an outside validator
    for sheet in pages(one).sheets:
        assert markup_errors(render(sheet.template, sheet.values)) == [], sheet.title
    report = page_validation.validate_pdf_bytes(pages(one).pdf(), profile="ua1")
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []
    assert report.is_compliant


@each
def test_every_page_says_at_its_foot_that_it_is_private(one: Household) -> None:
    found = page_words(pages(one).pdf())
    for number, page in enumerate(found, start=1):
        assert PRIVATE in page[-160:], number
        assert page.endswith(f"Page {number} of {len(found)}")


@each
def test_the_three_groups_are_named_and_every_page_stands_in_one(one: Household) -> None:
    start, *others = pages(one).sheets
    named = [name for group in start.values["groups"] for name, _purpose in group.pages]  # type: ignore[attr-defined]
    assert named == [sheet.title for sheet in others]
    assert [group.title[:2] for group in start.values["groups"]] == ["1.", "2.", "3."]  # type: ignore[attr-defined]


@each
def test_every_estimate_says_so_and_ends_with_a_lawyer(one: Household) -> None:
    for sheet in pages(one).sheets:
        said = " ".join(render(sheet.template, sheet.values).split())
        if sheet.template == "money-estimate.html":
            assert "An estimate: show it to a lawyer." in sheet.running
            assert "This is an estimate for you alone" in said
            assert said.rindex("Show this page to a lawyer") > len(said) - 500
        if sheet.template in ("money-child-support.html", "money-temporary-support.html"):
            assert said.index("this program is not certified") < said.index("<h2>")
            assert "Fam. Code 3830(a); Cal. Rules of Court, rule 5.275" in said


@each
def test_they_are_easy_to_read(one: Household) -> None:
    for sheet in pages(one).sheets:
        found = sentences_of(sheet)
        assert grade(found) <= 8, sheet.title
        assert barred_words(" ".join(found)) == [], sheet.title


@each
def test_the_version_for_a_screen_says_the_same_and_fetches_nothing(one: Household) -> None:
    html = pages(one).html()
    for sheet in pages(one).sheets:
        assert sheet.title.replace("'", "&#39;") in html
    assert "src=" not in html
    assert "<script" not in html
    assert html.count("<svg") == sum(len(sheet.pictures) for sheet in pages(one).sheets)


@each
def test_the_same_case_and_day_give_the_same_bytes(one: Household) -> None:
    assert money_pages(one.case, ON).pdf() == pages(one).pdf()


@each
def test_no_name_of_the_two_and_no_address_is_on_them(one: Household) -> None:
    told = one.case
    for key, value in (
        ("petitioner.mailing", {"street": "77 Hidden Lane", "city": "Novato", "zip": "94945"}),
        ("petitioner.phone", "415-555-0188"),
        ("petitioner.email", "hidden@example.org"),
        ("respondent.mailing", {"street": "9 Seen Street", "city": "Novato", "zip": "94945"}),
    ):
        told = told.with_fact(key, value)
    html = money_pages(told, ON).html()
    for hidden in ("Hidden Lane", "Novato", "555-0188", "hidden@", "Seen Street", "Quill", "Lund", "Reyes"):
        assert hidden not in html


@each
def test_no_money_page_is_in_the_packet(one: Household) -> None:
    packet = build(one.case, ON)
    assert not any(sheet.template.startswith("money-") for sheet in packet.sheets)
    assert PRIVATE not in packet.html()


@one_by_one(households())
def test_no_packet_of_any_household_has_a_private_page(one: Any) -> None:
    assert PRIVATE not in packet(one).html()


def test_what_is_open_in_law_alone_shows_both_readings_and_asks_for_nothing() -> None:
    """Fam. Code 299.2 recognises the union; that no section says from which day is our finding."""
    case = Case.model_validate(
        {
            "matter": {"kind": "dissolution", "unions": ["partners_elsewhere"]},
            "dates": {
                "registered_on": "2010-06-01",
                "separation_told_on": "2024-06-01",
                "separation_acted_on": "2024-06-01",
            },
            "schedule": {"agreement": False, "in_california": True},
            "asset": [
                {
                    "kind": "vehicle",
                    "how": "bought",
                    "acquired_on": "2018",
                    "by": "respondent",
                    "title": "respondent",
                    "source": "community",
                    "mixed": False,
                }
            ],
        }
    )
    (owned,) = (one for one in money_pages(case, ON).sheets if one.template == "money-owned.html")
    said = " ".join(render(owned.template, owned.values).split())
    assert (
        "we found no law that says which day counts then. <small>Fam. Code 299.2; Fam. Code 297.5(k)(1)"
        in said
    )
    assert "What it could be:" in said
    assert "If before the wedding:" in said
    assert "If in the marriage:" in said
    assert "Still to find out" not in said


def test_what_somebody_typed_is_data() -> None:
    hostile = "<b>Car</b> & {{ 7*7 }} %s </p><script>x</script>"
    case = Case.model_validate({"asset": [{"kind": "vehicle", "words": hostile, "value": "1", "owed": "0"}]})
    html = money_pages(case, ON).html()
    assert "<script>x" not in html
    assert "&lt;b&gt;Car" in html


def test_a_long_list_and_long_words_stay_on_the_page() -> None:
    things = [{"kind": "vehicle", "words": "W" * 300, "value": "1"}, *({"kind": "pet"} for _n in range(98))]
    found = money_pages(Case.model_validate({"asset": things}), ON)
    assert page_validation.validate_pdf_bytes(found.pdf(), profile="ua1").is_compliant


def test_in_danger_the_first_page_says_where_to_keep_it_and_whom_to_call() -> None:
    start = render("money-start.html", pages(ALL[2]).sheets[0].values)
    assert ALL[2].name == "two-children-and-little-money"
    assert "Keep them where the other side cannot find them" in start
    assert "1-800-799-7233" in start
    assert "1-800-799-7233" not in render("money-start.html", pages(ALL[0]).sheets[0].values)


def test_another_day_moves_what_hangs_on_it() -> None:
    """The service behind a pension that still grows is counted up to the day."""
    old = ALL[1]
    later = money_pages(old.case, date(2027, 11, 25))
    now, then = (found.reckoning.pensions["asset.2"] for found in (pages(old), later))
    assert then._replace(total=then.total - 12) == now  # type: ignore[union-attr]


def test_without_anything_told_the_reckoning_is_empty() -> None:
    assert money_pages(Case(), ON).reckoning.empty
    assert money_pages(Case.model_validate({"income": {"petitioner_net": "don't know"}}), ON).reckoning.empty
    assert not money_pages(Case.model_validate({"income": {"petitioner_net": "1"}}), ON).reckoning.empty
    assert not money_pages(Case.model_validate({"debt": [{"kind": "tax"}]}), ON).reckoning.empty


def test_words_enough_for_a_page_are_counted() -> None:
    """The reading test above would pass on an empty page."""
    assert all(len(words(" ".join(sentences_of(sheet)))) > 30 for one in ALL for sheet in pages(one).sheets)


def sums_of(**facts: Any) -> str:
    """The words of the page of sums for a household of 2010 to 2024 with these facts."""
    general = {
        "matter": {"kind": "dissolution", "unions": ["marriage"]},
        "dates": {
            "married_on": "2010-06-01",
            "separation_told_on": "2024-06-01",
            "separation_acted_on": "2024-06-01",
        },
        "schedule": {"agreement": False, "in_california": True},
    }
    found = money_pages(Case.model_validate({**general, **facts}), ON)
    (sheet,) = (one for one in found.sheets if one.template == "money-sums.html")
    return " ".join(render(sheet.template, sheet.values).split())


CAR = {"kind": "vehicle", "how": "bought", "acquired_on": "2018", "title": "joint", "owed": "0"}


@pytest.mark.parametrize(
    ("value", "served_by", "told"),
    [("4999.99", "publication", True), ("5000", "publication", False), ("100", "personal", False)],
)
def test_a_small_estate_and_a_spouse_nobody_can_find(value: str, served_by: str, told: bool) -> None:
    """Fam. Code 2604: less than $5,000 after debts."""
    record = {"filed_on": "2026-06-01", "service": {"method": served_by}}
    said = sums_of(asset=[{**CAR, "value": value}], record=record)
    assert ("a judge can give all of it to you" in said) is told


def test_money_for_an_injury_is_said_not_to_be_halved() -> None:
    """Fam. Code 2603."""
    hurt = {"kind": "cash", "how": "injury", "by": "petitioner", "acquired_on": "2019-01-01", "value": "900"}
    whole = {**hurt, "living_apart": False, "hurt_by_spouse": False, "mixed": False, "title": "no_paper"}
    assert "Money for an injury is not halved." in sums_of(asset=[whole])
    assert "Money for an injury" not in sums_of(asset=[{**CAR, "value": "1"}])
