"""Editions: what each holds, and how strictly an edition file is read."""

import re
from datetime import date
from pathlib import Path

import pytest

from firstpaper.data_files import DataFileError
from firstpaper.forms.edition import (
    EDITIONS,
    Edition,
    ItemKind,
    NoEditionError,
    all_editions,
    as_printed,
    edition_for,
    load_edition,
    slug,
)
from firstpaper.law.figure import UnknownFigureError, figure

ON = date(2026, 12, 1)
FL_100 = edition_for("FL-100", ON)

CONCEPTS = Path(__file__).with_name("concepts")

each_edition = pytest.mark.parametrize(
    "edition", all_editions(), ids=lambda edition: f"{edition.form} {edition.printed}"
)


@each_edition
def test_an_edition_holds_every_concept_and_no_other(edition: Edition) -> None:
    written = (CONCEPTS / f"{slug(edition.form)}.txt").read_text(encoding="utf-8").splitlines()
    assert [item.concept for item in edition.items] == written[1:]


def test_every_list_of_concepts_is_of_a_form() -> None:
    assert {path.stem for path in CONCEPTS.iterdir()} == {slug(edition.form) for edition in all_editions()}


@each_edition
def test_nobody_has_checked_a_sheet_and_none_says_so(edition: Edition) -> None:
    assert not edition.verified_against_pdf
    assert not any(item.confirmed for item in edition.items)
    assert edition.numbered or edition.caution


@each_edition
def test_an_edition_is_the_one_that_the_dated_figures_name(edition: Edition) -> None:
    day = max(edition.begins, ON) if edition.in_use(ON) else edition.begins
    try:
        told = figure(f"form_edition.{edition.form}", day).value["edition"]
    except UnknownFigureError:
        told = None
    assert edition.edition == told


def test_the_items_of_the_sheet_are_all_there_in_their_order() -> None:
    numbers = [int(found[0]) for item in FL_100.items if (found := re.match(r"\d+", item.item))]

    assert numbers == sorted(numbers)
    assert set(numbers) == set(range(1, 13))


@pytest.mark.parametrize(
    ("concept", "item"),
    [
        ("residence.petitioner", "2a"),
        ("residence.partnership", "2b"),
        ("residence.same_sex", "2c"),
        ("facts.separated_on", "3a(2)"),
        ("children.continued", "4b(1)"),
        ("children.unborn", "4b(2)"),
        ("children.declaration", "4e"),
        ("grounds.force", "5c(5)"),
        ("custody.visits.other", "6c"),
        ("support.reserve.petitioner", "8c"),
        ("property.separate.confirm", "9b"),
        ("requests.former_name", "11b"),
        ("signing.orders", "12"),
    ],
)
def test_a_concept_stands_at_the_item_practitioners_know(concept: str, item: str) -> None:
    """Item numbers as copies of the sheet show them: common practice, no source."""
    assert FL_100.item(concept).item == item


def test_the_edition_says_what_it_is_and_that_nobody_checked_it_against_the_sheet() -> None:
    assert (FL_100.form, FL_100.edition, FL_100.printed) == ("FL-100", date(2020, 1, 1), "January 1, 2020")
    assert "lower left corner" in FL_100.where
    assert not FL_100.verified_against_pdf
    assert not any(item.confirmed for item in FL_100.items)
    assert FL_100.rows == {"children": 4}


def test_the_two_lines_that_may_change_places_say_so() -> None:
    for concept in ("residence.partnership", "residence.same_sex"):
        assert "Go by the words" in FL_100.item(concept).note


def test_a_new_edition_may_come_on_the_first_day_of_2027() -> None:
    assert FL_100.watch is not None
    assert not FL_100.may_be_replaced(date(2026, 12, 31))
    assert FL_100.may_be_replaced(date(2027, 1, 1))


def test_no_edition_is_known_for_a_day_before_the_first() -> None:
    assert edition_for("FL-100", date(2020, 1, 1)) is FL_100
    with pytest.raises(NoEditionError, match="FL-100"):
        edition_for("FL-100", date(2019, 12, 31))
    with pytest.raises(NoEditionError, match="FL-999"):
        edition_for("FL-999", ON)


def test_every_text_has_a_size_and_every_label_is_in_words() -> None:
    for item in FL_100.items:
        assert (item.fits is not None) == (item.kind is ItemKind.TEXT), item
        assert item.label.strip() == item.label != ""
        assert "{" not in item.words


def test_the_words_for_translators_are_all_there() -> None:
    told = {"lower left corner of page 1", "7. Child support", "State Bar number", "Child {number}: age"}
    assert told < set(FL_100.words)
    assert FL_100.watch is not None
    assert FL_100.watch.why in FL_100.words
    assert FL_100.item("residence.same_sex").note in FL_100.words


def test_a_concept_the_edition_does_not_have_is_an_error() -> None:
    with pytest.raises(KeyError, match=re.escape("cap.moon")):
        FL_100.item("cap.moon")


def test_the_rows_of_a_table_are_numbered() -> None:
    assert FL_100.item("children.3.born_on").words == "Child 3: birthdate"


@pytest.mark.parametrize(
    ("text", "holds"),
    [
        ("", True),
        ("x" * 90, True),
        ("word " * 71, True),
        ("word " * 73, False),
        ("a\nb\nc\nd", True),
        ("a\nb\nc\nd\ne", False),
        ("x" * 361, False),
    ],
)
def test_four_lines_of_ninety_hold_so_much(text: str, holds: bool) -> None:
    item = FL_100.item("requests.other.words")
    assert (item.fits, item.lines) == (90, 4)
    assert item.holds(text) is holds


def test_a_date_is_printed_in_english_on_every_computer() -> None:
    assert as_printed(date(2026, 8, 9)) == "August 9, 2026"


SMALL = """\
form: FL-1
title: A form
edition: 2024-02-01
where: foot
pages: 1
valid_from: null
valid_to: null
verified_against_pdf: false
parts:
  - title: Part
    page: 1
    items:
      - {concept: a, item: "1", kind: box, confirmed: false, label: A box}
"""


def read(folder: Path, text: str) -> None:
    path = folder / "small.yaml"
    path.write_text(text, encoding="utf-8")
    load_edition(path)


def test_a_small_file_is_read(tmp_path: Path) -> None:
    read(tmp_path, SMALL)


@pytest.mark.parametrize(
    ("now", "then", "complaint"),
    [
        ("pages: 1", "pages: one", "small.yaml > pages: this is no <class 'int'>: 'one'"),
        ("pages: 1", "pages: true", "pages: this is no"),
        ("where: foot\n", "", "small.yaml > where: this is missing"),
        ("where: foot", "where: foot\nfoot: where", "small.yaml > foot: nothing is known by that name"),
        ("where: foot", "where: foot\nwhere: head", "small.yaml > where: written twice, again in line 5"),
        (
            "kind: box",
            "kind: bix",
            "parts > 1 > items > 1 > kind: this must be one of box, text",
        ),
        (", label: A box", "", "parts > 1 > items > 1 > label: this is missing"),
        ("label: A box", "label: A box, colour: red", "parts > 1 > items > 1 > colour: nothing is known"),
        ("label: A box", "label: 7", "parts > 1 > items > 1 > label: this is no"),
        ("    page: 1\n", "    page: 2\n", "a is on page 2 of 1"),
        ("    page: 1\n", "", "page: this is missing"),
        ("parts:\n", "parties:\n", "small.yaml > parts: this must be a list"),
        ("    items:\n", "    items: 3\n    more:\n", "parts > 1 > items: this must be a list"),
        ("  - title: Part", "  - 7\n  - title: Part", "parts > 1: this must be names"),
        ("pages: 1", "pages: [", "small.yaml:"),
        (
            "valid_to: null",
            "valid_to: null\nwatch: {from: 2027-01-01, why: 3, authority: x}",
            "watch > why: this is no",
        ),
    ],
)
def test_a_file_that_is_not_as_it_should_be_is_refused_with_the_place(
    tmp_path: Path, now: str, then: str, complaint: str
) -> None:
    assert now in SMALL
    with pytest.raises(DataFileError, match=re.escape(complaint)):
        read(tmp_path, SMALL.replace(now, then, 1))


def test_a_concept_that_stands_twice_is_refused(tmp_path: Path) -> None:
    (line,) = (line for line in SMALL.splitlines() if "concept" in line)
    with pytest.raises(DataFileError, match="a stands twice"):
        read(tmp_path, f"{SMALL}{line}\n")


@pytest.mark.parametrize("path", sorted(EDITIONS.glob("*.yaml")), ids=lambda path: path.name)
def test_a_file_is_named_for_its_form_and_edition(path: Path) -> None:
    edition = load_edition(path)
    assert path.stem == f"{slug(edition.form)}-{edition.edition or 'unknown'}"
