"""What holds for the petition of any household, whatever was told and whatever is missing."""

from collections.abc import Iterable
from datetime import date
from enum import Enum
from typing import Any

import pytest
from hypothesis import given, settings
from pydantic import BaseModel

from firstpaper.facts import Case
from firstpaper.facts.choices import Kind
from firstpaper.forms.answer import Action, Answer, ItemAnswer, blank
from firstpaper.forms.attachments import attachments
from firstpaper.forms.edition import edition_for
from firstpaper.forms.placing import MisplacedError, placed
from firstpaper.intake import standing
from tests.any_case import any_case, filing_days
from tests.forms.petition import petition

ON = date(2026, 12, 1)
any_household = given(any_case(), filing_days())
some = settings(max_examples=60, deadline=None)
FILER_ADDRESS = {"cap.street", "cap.city", "cap.state", "cap.zip"}

Answers = dict[str, ItemAnswer]


def answers(case: Case, on: date) -> Answers:
    return {answer.concept: answer for answer in petition(case, on)}


def marked(found: Answers, concepts: Iterable[str]) -> list[str]:
    return [concept for concept in concepts if found[concept].action is Action.MARK]


@some
@any_household
def test_it_is_answered_page_by_page_and_nothing_is_left_to_be_filled_in_later(case: Case, on: date) -> None:
    found = petition(case, on)
    assert [answer.page for answer in found] == sorted(answer.page for answer in found)
    assert not [answer for answer in found if answer.action is Action.FILL]


EXCLUDE_EACH_OTHER = (
    ("cap.dissolution", "cap.separation", "cap.nullity"),
    ("children.none", "children.listed"),
    ("children.none", "children.unborn"),
    ("grounds.dissolution", "grounds.separation", "grounds.void"),
    ("grounds.dissolution", "grounds.separation", "grounds.voidable"),
    ("grounds.irreconcilable", "grounds.incapacity"),
    ("custody.legal.petitioner", "custody.legal.respondent", "custody.legal.joint", "custody.legal.other"),
    (
        "custody.physical.petitioner",
        "custody.physical.respondent",
        "custody.physical.joint",
        "custody.physical.other",
    ),
    ("custody.visits.petitioner", "custody.visits.respondent", "custody.visits.other"),
    ("support.ask.petitioner", "support.end.petitioner", "support.reserve.petitioner"),
    ("support.ask.respondent", "support.end.respondent", "support.reserve.respondent"),
    ("property.separate.none", "property.separate.confirm"),
    ("property.separate.fl_160", "property.separate.attachment", "property.separate.listed"),
    ("property.community.none", "property.community.determine"),
    ("property.community.fl_160", "property.community.attachment", "property.community.listed"),
    ("requests.fees.petitioner", "requests.fees.respondent"),
)


@some
@any_household
def test_boxes_that_contradict_each_other_are_never_both_marked(case: Case, on: date) -> None:
    found = answers(case, on)
    for group in EXCLUDE_EACH_OTHER:
        assert len(marked(found, group)) <= 1, group


HEADED_BY = {
    "cap.dissolution": ("cap.dissolution.marriage", "cap.dissolution.partnership"),
    "cap.separation": ("cap.separation.marriage", "cap.separation.partnership"),
    "cap.nullity": ("cap.nullity.marriage", "cap.nullity.partnership"),
    "grounds.void": ("grounds.incest", "grounds.bigamy"),
    "grounds.voidable": (
        "grounds.under_age",
        "grounds.prior_spouse",
        "grounds.unsound_mind",
        "grounds.fraud",
        "grounds.force",
        "grounds.physical_incapacity",
    ),
    "support.ask": ("support.ask.petitioner", "support.ask.respondent"),
    "support.end": ("support.end.petitioner", "support.end.respondent"),
    "support.reserve": ("support.reserve.petitioner", "support.reserve.respondent"),
    "property.separate.confirm": (
        "property.separate.fl_160",
        "property.separate.attachment",
        "property.separate.listed",
    ),
    "property.community.determine": (
        "property.community.fl_160",
        "property.community.attachment",
        "property.community.listed",
    ),
    "requests.fees": ("requests.fees.petitioner", "requests.fees.respondent"),
}


@some
@any_household
def test_a_box_under_a_heading_is_marked_only_with_its_heading(case: Case, on: date) -> None:
    found = answers(case, on)
    for heading, boxes in HEADED_BY.items():
        if marked(found, boxes):
            assert found[heading].action is Action.MARK, heading


@some
@any_household
def test_item_5_agrees_with_the_caption(case: Case, on: date) -> None:
    found = answers(case, on)
    kinds = {"cap.dissolution": "grounds.dissolution", "cap.separation": "grounds.separation"}
    for caption, ground in kinds.items():
        assert found[caption].action is found[ground].action
    if marked(found, ("grounds.void", "grounds.voidable")):
        assert found["cap.nullity"].action is Action.MARK


@some
@any_household
def test_nobody_ends_their_own_support_without_confirming_it(case: Case, on: date) -> None:
    if case.support.own_right_ends is not True:
        assert answers(case, on)["support.end.petitioner"].action is Action.BLANK


@some
@any_household
def test_no_former_name_is_asked_for_in_a_legal_separation(case: Case, on: date) -> None:
    separation = case.model_copy(
        update={"matter": case.matter.model_copy(update={"kind": Kind.LEGAL_SEPARATION})}
    )
    assert answers(separation, on)["requests.former_name"].action is Action.BLANK


@some
@any_household
def test_what_was_taken_back_reaches_neither_form_nor_attachment(case: Case, on: date) -> None:
    """Every text names its own key, so that each can be told apart in what is drafted."""
    tagged = keyed(case)
    stands = standing(tagged)
    drafted = "\n".join(filed_text(stands, on))

    for key in texts(tagged) - texts(stands):
        assert f"[{key}]" not in drafted, key


@some
@any_household
def test_the_other_sides_address_is_nowhere_and_the_filers_only_in_its_place(case: Case, on: date) -> None:
    tagged = keyed(case)
    found = answers(tagged, on)

    for concept, answer in found.items():
        assert "[respondent.mailing" not in answer.value, concept
        assert "[petitioner.mailing" not in answer.value or concept in FILER_ADDRESS, concept
    assert not any("mailing" in text for page in attachments(tagged, on) for text in str(page).split("["))


def filed_text(case: Case, on: date) -> Iterable[str]:
    """Everything that goes to the court: what is written on the form, and the attachments."""
    yield from (answer.value for answer in petition(case, on))
    for page in attachments(case, on):
        yield from page.paragraphs
        yield from (cell for row in page.rows for cell in row)


def keyed(facts: Any, key: str = "") -> Any:
    """The same facts, with every text replaced by its key in brackets."""
    if isinstance(facts, BaseModel):
        inside = {
            name: keyed(getattr(facts, name), f"{key}.{name}".strip(".")) for name in type(facts).model_fields
        }
        return type(facts).model_construct(**inside)
    if isinstance(facts, tuple):
        return tuple(keyed(each, f"{key}.{number}") for number, each in enumerate(facts, 1))
    if isinstance(facts, str) and not isinstance(facts, Enum) and not key.endswith("county"):
        return f"[{key}]" if facts else facts
    return facts


def texts(facts: Any) -> set[str]:
    """The keys that `keyed` wrote into these facts."""
    if isinstance(facts, BaseModel):
        return set().union(*(texts(getattr(facts, name)) for name in type(facts).model_fields))
    if isinstance(facts, tuple):
        return set().union(*map(texts, facts))
    return {facts[1:-1]} if isinstance(facts, str) and facts.startswith("[") else set()


HOSTILE = '<b>Ana</b> & "Co" {{ petitioner.name }} {name} %(x)s'


def test_typed_text_is_carried_through_as_it_is() -> None:
    case = Case.model_validate(
        {
            "matter": {"unions": ["marriage"], "kind": "dissolution"},
            "petitioner": {"name": HOSTILE},
            "requests": {"other": HOSTILE},
            "property": {"community_how": "list", "community_items": [HOSTILE]},
        }
    )
    found = answers(case, ON)

    for concept in ("cap.name", "cap.petitioner", "head2.petitioner", "signing.name", "requests.other.words"):
        assert found[concept].value == HOSTILE
    assert found["property.community.rows"].value == HOSTILE


def test_a_name_in_other_letters_is_left_to_the_filer_and_stays_open() -> None:
    told = {"petitioner": {"name": "Zoë Kaʻiulani Núñez"}, "respondent": {"name": "Ольга Петрова"}}
    found = answers(Case.model_validate(told), ON)

    for concept in ("cap.respondent", "head2.respondent"):
        assert (found[concept].action, found[concept].value) == (Action.FILL, "")
        assert "Latin letters" in found[concept].because
        assert "Ольга Петрова" in found[concept].because
        assert found[concept].open_key == "respondent.name"
    assert (found["cap.name"].value, found["cap.name"].open_key) == ("Zoë Kaʻiulani Núñez", "")


def test_a_name_longer_than_its_line_is_written_whole_and_the_filer_is_told() -> None:
    name = "Ana " + "Soto " * 50 + "Reyes"
    found = answers(Case.model_validate({"petitioner": {"name": name}}), ON)

    assert found["cap.name"].value == name
    assert "longer than the line" in found["cap.name"].because
    assert "longer than the line" not in found["cap.for"].because


def test_an_item_carries_the_edition_and_where_to_look_for_it() -> None:
    (first, *_rest) = petition(Case(), ON)

    assert (first.form, first.edition, first.page, first.item) == ("FL-100", "January 1, 2020", 1, "caption")
    assert first.label == "State Bar number"
    assert not first.confirmed


@pytest.mark.parametrize(
    ("given_answers", "complaint"),
    [
        ((), "not answered: cap.amended, cap.bar"),
        ((blank("cap.moon"),), "not on this edition: cap.moon"),
        ((blank("cap.bar"), blank("cap.bar")), "answered twice: cap.bar"),
    ],
)
def test_an_answer_missing_unknown_or_double_is_refused_by_name(
    given_answers: tuple[Answer, ...], complaint: str
) -> None:
    with pytest.raises(MisplacedError, match=complaint):
        placed(edition_for("FL-100", ON), given_answers)
