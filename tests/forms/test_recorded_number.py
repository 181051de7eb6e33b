"""The case number that the court gave: on every later paper, and never on a first petition."""

from datetime import date

import pytest

from firstpaper.facts import Case, Day
from firstpaper.facts.amending import begun_from
from firstpaper.forms.answer import Action
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.intake import standing
from firstpaper.law.measures.record import case_number
from firstpaper.law.register import findings
from tests.forms.petition import petition

ON = date(2026, 12, 1)
NUMBER = "26FL001234"
PETITION_BOXES = ("cap.case_number", "head2.case_number", "head3.case_number")


def filed(**matter: object) -> Case:
    case = Case().with_fact("matter.kind", "dissolution")
    for name, value in {"amended": False, **matter}.items():
        case = case.with_fact(f"matter.{name}", value)
    case = case.with_fact("record.filed_on", Day.of(date(2026, 11, 25)))
    return standing(case.with_fact("record.case_number", NUMBER))


def test_the_boxes_of_a_first_petition_stay_empty_after_the_number_was_recorded() -> None:
    """Common practice, no source: the court gives the number, so a first petition carries none."""
    boxes = {one.concept: one for one in petition(filed(), ON)}
    assert {boxes[name].action for name in PETITION_BOXES} == {Action.BLANK}
    assert all(boxes[name].value == "" for name in PETITION_BOXES)


def test_recording_the_number_is_no_slip_to_look_at_again() -> None:
    assert findings(filed(), ON, ["matter.amended"]) == ()


@pytest.mark.parametrize("form", ["FL-115", "FL-117"])
def test_a_later_paper_carries_it(form: str) -> None:
    items = next(one.items for one in filled_forms(filed(), ON, Filing.SERVICE) if one.form == form)
    assert [one.value for one in items if one.concept == "caption.case_number"] == [NUMBER]


def test_what_was_recorded_comes_before_what_was_told() -> None:
    assert case_number(filed(amended=True, case_number="26FL009999")) == NUMBER
    told = standing(Case().with_fact("matter.amended", True).with_fact("matter.case_number", "26FL009999"))
    assert case_number(told) == "26FL009999"
    assert case_number(Case()) is None


def test_an_amended_petition_begun_from_the_case_carries_it_in_all_three_boxes() -> None:
    """Cal. Rules of Court, rule 5.74(a)(2): it stands in the case that is open already."""
    boxes = {one.concept: one for one in petition(standing(begun_from(filed())), ON)}
    assert [boxes[name].value for name in PETITION_BOXES] == [NUMBER] * 3
