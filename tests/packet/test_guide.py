"""The read-along of a form, and the road after the filing: every item, no name, nothing to fill in."""

import re
from datetime import date
from io import BytesIO

import page as page_validation
import pytest
from pypdf import PdfReader

from firstpaper.forms.answer import ItemAnswer
from firstpaper.forms.explained_names import entries, forms_explained
from firstpaper.forms.filing import maker
from firstpaper.intake import standing
from firstpaper.law.agenda import agenda
from firstpaper.packet.brief import brief
from firstpaper.packet.guide import read_along, road
from firstpaper.packet.templates import render
from firstpaper.packet.views.road import sheets as roads
from tests.each import one_by_one
from tests.households.golden import Household, blocks, followed, households
from tests.packet.reading_pdf import leaves
from tests.words.reading import grade, words

ON = date(2026, 12, 1)
MOST_PAGES = 14
HOUSEHOLD = Household("two-children-moved-county", date(2026, 11, 25))
HIDDEN = next(one for one in households() if one.name == "address-must-stay-hidden")

each_form = pytest.mark.parametrize("form", forms_explained())


def markup(guide: object) -> str:
    return "".join(render(sheet.template, sheet.values) for sheet in guide.sheets)  # type: ignore[attr-defined]


def flat(text: str) -> str:
    return " ".join(text.split())


@each_form
def test_every_item_is_there_in_the_order_of_the_sheet(form: str) -> None:
    said = " ".join(blocks(markup(read_along(form, ON))))
    at = 0
    for entry in entries(form):
        at = said.index(flat(entry.read().on(ON).means), at) + 1


@each_form
def test_nothing_is_filled_in_and_no_figure_is_left_out(form: str) -> None:
    found = markup(read_along(form, ON))
    assert not re.search(r"<(tick|line|done)\b", found)
    assert "{figure" not in found
    assert "common practice" in found or all(
        not trap.practice for entry in entries(form) for trap in entry.read().traps
    )


@each_form
def test_common_practice_is_not_looked_for_in_the_law(form: str) -> None:
    """It is said beside the trap. Only law that we have not read itself is called not confirmed."""
    assert "law itself: common practice" not in flat(markup(read_along(form, ON)))


def test_the_petition_is_explained_on_few_pages() -> None:
    assert len(PdfReader(BytesIO(read_along("FL-100", ON).pdf())).pages) <= MOST_PAGES


@pytest.mark.parametrize("form", ["FL-100", "FL-105"])
def test_a_read_along_is_an_accessible_pdf(form: str) -> None:
    pdf = read_along(form, ON).pdf()
    # ISO 14289-1 (PDF/UA-1), by an outside validator
    report = page_validation.validate_pdf_bytes(pdf, profile="ua1")
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []
    above_the_foot = [
        run for leaf in leaves(pdf) for run in leaf.runs if run.words.strip() and run.bottom > 54
    ]
    assert min(run.size for run in above_the_foot) >= 12


@pytest.mark.parametrize("one", [HOUSEHOLD, HIDDEN], ids=str)
@pytest.mark.parametrize("form", ["FL-100", "FL-105", "FL-110", "FW-001"])
def test_of_a_case_it_says_what_is_marked_and_never_what_is_written(form: str, one: Household) -> None:
    case = standing(one.case)
    said = " ".join(blocks(markup(read_along(form, one.on, case))))
    for each in (each for copy in maker(form)(case, one.on) for each in copy.items):
        if each.action == "mark":
            assert flat(each.label) in said
    without = " ".join(blocks(markup(read_along(form, one.on))))
    for line in (
        line for copy in maker(form)(case, one.on) for each in copy.items for line in _written(each)
    ):
        assert line not in said or line in without
    assert ("In your case:" in said) == bool(maker(form)(case, one.on))


def _written(each: ItemAnswer) -> list[str]:
    """The lines to write at an item that are long enough to be found by themselves."""
    return [flat(line) for line in each.value.splitlines() if len(line) > 5] if each.action == "write" else []


def test_of_a_form_that_a_case_does_not_use_it_says_so() -> None:
    plain = Household("plain-childless-divorce", date(2026, 11, 30))
    assert "Your case does not use this form" in markup(read_along("FL-105", plain.on, plain.case))


def test_the_road_without_a_case_names_every_way_and_no_day() -> None:
    said = markup(road(ON))
    for form in ("FL-115", "FL-120", "FL-141", "FL-165", "FL-170", "FL-144", "FL-180", "FL-190"):
        assert form in said
    assert "202" not in re.sub(r"<small>.*?</small>", "", said)
    assert "does not draft a default" in said


@one_by_one(followed())
def test_the_road_of_a_case_has_its_own_days_and_ways(one: Household) -> None:
    case = standing(one.case)
    said = markup(road(one.on, case))
    ahead = {each.deadline.key for each in agenda(case, one.on).ahead}
    assert ("Their last day:" in said) >= ("response.petition" in ahead)
    assert ("Not before:" in said) == ("waiting.earliest_end" in ahead)
    assert ("notary" in said) == ("If the other side stays silent" in said)


def _road_of(name: str, day: str = "") -> str:
    one = next(each for each in (*followed(), *households()) if each.name == name and day in str(each.on))
    return markup(road(one.on, standing(one.case)))


def test_the_road_of_a_nullity_names_no_form_that_is_for_a_divorce() -> None:
    """Fam. Code 2336 and 2105 speak of a divorce and a legal separation."""
    said = _road_of("nullity-for-force", "2026-11-19")
    assert "FL-170" not in said
    assert "FL-144" not in said
    assert "final declarations of disclosure) are owed" in said


def test_the_road_says_what_was_recorded() -> None:
    answered = _road_of("handed-over-in-person", "2027-01-11")
    assert "The other side responded on Monday, January 4, 2027." in answered
    assert "may respond" not in answered
    left = _road_of("left-with-a-housemate", "2027-01-08")
    assert "Service is complete on Friday, January 15, 2027." in left
    assert "This is done." not in left
    passed = _road_of("served-as-the-judge-ordered", "2026-12-04")
    assert "Monday, November 30, 2026. That day has passed: serve it now." in passed
    silent = _road_of("nobody-knows-where-he-is", "2026-12-10")
    assert "You owe no declaration while the other side stays silent." in silent  # Fam. Code 2110


def test_the_road_without_children_does_not_speak_of_them() -> None:
    assert "children" not in _road_of("plain-childless-divorce")
    assert "children" in _road_of("left-with-a-housemate")


def test_the_road_reads_easily() -> None:
    texts = [
        text for text in blocks(re.sub(r"<small>.*?</small>", "", markup(road(ON)))) if len(words(text)) > 3
    ]
    assert grade(texts) <= 8


def test_the_road_of_two_who_may_file_together_has_both_ways_until_one_is_recorded() -> None:
    """Fam. Code 2331(b), 2339(a): filed together on November 25, 2026, six months end on May 25, 2027."""
    planned = next(one for one in households() if one.name == "both-file-together")
    (open_still,) = roads(brief(planned.case, planned.on))
    assert "Points 1 and 2 are for one who files alone." in open_still.markup
    assert "If you two file together</h2>" in open_still.markup
    assert "Wednesday, May 26, 2027" in open_still.markup
    filed = planned.case.with_fact("record.filed_on", "2026-11-25").with_fact("record.joint", True)
    (recorded,) = roads(brief(filed, date(2026, 12, 1)))
    assert "You filed together</h2>" in recorded.markup
    assert "If you" not in recorded.markup.partition("Where this program ends")[0]
