"""`firstpaper why` on an item of a form: its page, a list of several, and how it stands in a case."""

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from firstpaper.cli.words.why_item import item_paragraphs
from firstpaper.forms.explained_names import entries, entries_called, forms_explained
from firstpaper.forms.explanation import EXPLAINED
from tests.cli.person import ON, Ran, flat, written

Run = Callable[..., Ran]


def test_an_item_has_a_page_with_its_sides_its_traps_and_the_law(run: Run) -> None:
    text = flat(run("why", "2a", "--on", ON).out)
    (entry,) = entries_called("2a")
    assert f"FL-100, item 2a: {entry.title}" in text
    for words in (
        "If you leave it empty:",
        "Watch out:",
        "common practice, no published source",
        "Who can help:",
    ):
        assert words in text
    assert "The other side of it:" in text
    assert "What it rests on: Fam. Code 2320(a)" in text
    assert "{figure" not in text


@pytest.mark.parametrize(
    ("name", "place"),
    [
        ("2a", "2a"),
        ("2A", "2a"),
        ("item 2a", "2a"),
        ("fl-100 2a", "2a"),
        ("FL-100:2a", "2a"),
        ("fl100 item 2a", "2a"),
        ("residence.petitioner", "2a"),
        ("residence", "2a"),
        ("4b(1)", "4b"),
        ("children.2.name", "4b"),
    ],
)
def test_an_item_goes_by_every_name_that_a_person_may_type(run: Run, name: str, place: str) -> None:
    data = run("why", name, "--json").envelope["data"]
    assert (data["kind"], data["form"], data["item"]) == ("item", "FL-100", place)


def test_an_item_with_parts_and_a_whole_form_are_lists(run: Run) -> None:
    data = run("why", "2", "--json").envelope["data"]
    assert [one["item"] for one in data["items"]] == ["2a", "2b", "2c"]
    assert "firstpaper why 2a" in flat(run("why", "2").out)
    whole = run("why", "FL-105", "--json").envelope["data"]["items"]
    assert len(whole) == len(list((EXPLAINED / "fl105").glob("*.yaml")))


def test_one_item_is_not_taken_for_another_that_begins_alike(run: Run) -> None:
    items = [one["item"] for one in run("why", "1", "--json").envelope["data"]["items"]]
    assert items == ["1a", "1b", "1c"]


def test_a_number_of_the_edition_before_leads_to_the_page(run: Run) -> None:
    data = run("why", "fl-105:3", "--json").envelope["data"]
    assert data["kind"] in {"item", "items"}


@pytest.mark.parametrize(
    ("name", "close"), [("residense", "residence"), ("2z", "2a"), ("fl-105 hoems", "homes")]
)
def test_a_name_that_is_near_gets_an_offer(run: Run, name: str, close: str) -> None:
    ran = run("why", name)
    assert ran.exit == 2
    assert close in ran.said


def test_what_is_not_confirmed_in_the_law_is_said_to_be_so_on_every_page(run: Run) -> None:
    unsure = [one for form in forms_explained() for one in entries(form) if one.read().not_confirmed]
    assert unsure
    for entry in unsure:
        (source, *_more) = entry.read().not_confirmed
        page = " ".join(item_paragraphs(entry, date(2026, 12, 1)))
        assert f"We have not confirmed this in the law itself: {source}" in page


def test_an_item_shows_how_it_stands_in_a_case(run: Run, home: Path) -> None:
    text = flat(run("why", "2a", "home.case", "--on", ON).out)
    assert "Since what day have you lived in California? 2009" in text
    assert "MARK this box." in text
    assert "In detail: 1. You told us 2009." in text
    assert "firstpaper change home.case residence.petitioner.lives" in text


def test_an_item_says_the_day_from_which_it_can_be_marked(run: Run, tmp_path: Path) -> None:
    written(tmp_path, "two-children-moved-county")
    ran = run("why", "2a", "home.case", "--on", ON, "--json").envelope["data"]
    (first, *_more) = ran["later"]
    text = flat(run("why", "2a", "home.case", "--on", ON).out)
    assert "or later: - 2a Petitioner" in text
    assert ["residence.petitioner", "mark", ""] in first["items"]
    then = run("items", "home.case", "--on", first["on"], "--json").envelope["data"]["items"]
    assert "mark" in [one["action"] for one in then if one["concept"] == "residence.petitioner"]


def test_an_item_says_the_same_as_items_and_check(run: Run, home: Path) -> None:
    items = run("items", "home.case", "--on", ON, "--json").envelope["data"]["items"]
    found = run("check", "home.case", "--on", ON, "--json").envelope["data"]["findings"]
    data = run("why", "2a", "home.case", "--on", ON, "--json").envelope["data"]
    assert all(one in items for one in data["answers"])
    assert all(one in found for one in data["findings"])
    assert data["answers"]
    assert data["findings"]


def test_a_form_that_the_case_does_not_use_says_so(run: Run, home: Path) -> None:
    assert "This case does not use the form" in flat(run("why", "fl-105 homes", "home.case", "--on", ON).out)


def test_a_rule_and_a_question_keep_their_own_pages(run: Run) -> None:
    assert run("why", "requests.fees", "--json").envelope["data"]["kind"] == "rule"
    assert run("why", "grounds.under_age", "--json").envelope["data"]["kind"] == "question"


def test_an_item_is_shown_only_for_a_day_whose_law_is_known(run: Run) -> None:
    ran = run("why", "2a", "--on", "2001-01-01")
    assert ran.exit == 2
    assert "cannot work out papers" in ran.said
