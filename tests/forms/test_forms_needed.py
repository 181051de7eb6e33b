"""Which official forms a household is told to get, and where each one goes.

The list follows Fam. Code 2104, 2330, 3429 and Cal. Rules of Court, rule 5.50-5.68 where they speak, and
common practice, no source, for the rest.
"""

from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings

from firstpaper.facts import Case
from firstpaper.forms.needed import FormNeeded, Goes, Stack, forms_needed
from firstpaper.law.authority import Certainty
from tests.any_case import any_case, filing_days

ON = date(2026, 12, 1)
PLAIN: dict[str, Any] = {
    "matter": {"unions": ["marriage"], "kind": "dissolution", "amended": False},
    "children": {"family": []},
}
TWO: dict[str, Any] = {
    "children": {"family": ["minor_together"], "how_many": 2},
    "child": [{"name": "Ruth", "born_on": "2012-01-01"}, {"name": "Joel", "born_on": "2014-01-01"}],
}


def needed(on: date = ON, **facts: Any) -> tuple[FormNeeded, ...]:
    return forms_needed(Case.model_validate({**PLAIN, **facts}), on)


def numbers(found: tuple[FormNeeded, ...], goes: Goes, *, later: bool = False) -> list[str]:
    return [each.form for each in found if each.goes is goes and each.later is later and not each.only_if]


def one(form: str, found: tuple[FormNeeded, ...]) -> FormNeeded:
    (only,) = (each for each in found if each.form == form)
    return only


def test_a_plain_divorce_files_two_forms_and_hands_over_a_blank_response() -> None:
    found = needed()

    assert numbers(found, Goes.FILE) == ["FL-100", "FL-110"]
    assert numbers(found, Goes.SERVE) == ["FL-120"]
    assert numbers(found, Goes.FILE, later=True) == ["FL-115", "FL-141"]
    assert numbers(found, Goes.SERVE, later=True) == ["FL-140", "FL-142", "FL-150"]
    assert [each.title for each in found if each.goes is Goes.ASK] == ["Your court's own forms"]
    assert numbers(found, Goes.KEEP) == ["FL-107-INFO"]
    assert [each.form for each in found if each.only_if] == ["", "FW-001", "FW-003", "FL-117"]


def test_the_other_side_gets_copies_of_what_is_filed_but_never_of_the_fee_waiver() -> None:
    found = needed(**TWO)

    copies = [each.form or each.title for each in found if each.copy_served]
    assert copies == ["FL-100", "FL-110", "FL-105", "FL-105(A)", "Your court's own forms"]
    assert "private" in one("FW-001", found).why


def test_what_the_filer_signs_is_known_for_each_form() -> None:
    found = needed(**TWO)

    assert {each.form for each in found if each.signed} == {
        "FL-100",
        "FL-105",
        "FW-001",
        "FL-140",
        "FL-141",
        "FL-142",
        "FL-150",
    }


def test_children_bring_the_declaration_on_where_they_have_lived() -> None:
    found = needed(**TWO)

    (filed, blank) = (each for each in found if each.form == "FL-105")
    assert (filed.goes, blank.goes) == (Goes.FILE, Goes.SERVE)
    assert filed.authority == "Fam. Code 3429; Cal. Rules of Court, rule 5.52(a)"
    assert one("FL-105(A)", found).only_if


def test_one_child_needs_no_added_page() -> None:
    found = needed(children=TWO["children"] | {"how_many": 1}, child=TWO["child"][:1])
    assert "FL-105(A)" not in {each.form for each in found}


def test_only_an_unborn_child_makes_it_a_question_for_the_clerk() -> None:
    found = needed(children={"family": ["unborn_together"]})
    copy, blank = (each for each in found if each.form == "FL-105")
    assert (copy.goes, blank.goes) == (Goes.ASK, Goes.SERVE)
    assert copy.only_if == blank.only_if != ""
    assert (copy.stack, copy.copy_served) == (Stack.DECLARATION, True)


def test_custody_sheets_are_filed_where_they_were_chosen() -> None:
    sheets = ["fl_311", "fl_312", "fl_341_c", "fl_341_d", "fl_341_e"]
    chosen = needed(**TWO, custody={"sheets": sheets})
    without_children = needed(custody={"sheets": sheets})

    forms = ["FL-311", "FL-312", "FL-341(C)", "FL-341(D)", "FL-341(E)"]
    assert [form for form in numbers(chosen, Goes.FILE) if form in forms] == forms
    assert numbers(without_children, Goes.FILE) == ["FL-100", "FL-110"]


@pytest.mark.parametrize(("sheets", "only_if"), [([], True), (["fl_311"], False)])
def test_wishes_that_differ_by_child_offer_the_courts_own_sheet(sheets: list[str], only_if: bool) -> None:
    ruth = TWO["child"][0] | {"legal": "joint", "physical": "joint"}
    joel = TWO["child"][1] | {"legal": "joint", "physical": "petitioner", "visits": "respondent"}
    found = needed(children=TWO["children"], child=[ruth, joel], custody={"alike": False, "sheets": sheets})

    assert bool(one("FL-311", found).only_if) is only_if
    assert "FL-311" not in {each.form for each in needed(**TWO)}


@pytest.mark.parametrize(
    ("facts", "asked_for"),
    [
        ({"waiver": {"wanted": True}}, True),
        ({"shortcuts": {"look_at": ["fee_waiver"]}}, True),
        ({}, False),
    ],
)
def test_a_fee_waiver_that_is_wanted_is_part_of_the_filing(facts: dict[str, Any], asked_for: bool) -> None:
    found = needed(**facts)
    assert [bool(one(form, found).only_if) for form in ("FW-001", "FW-003")] == [not asked_for] * 2


@pytest.mark.parametrize("facts", [{"waiver": {"wanted": False}}, {"shortcuts": {"look_at": []}}])
def test_no_fee_waiver_is_named_where_the_fee_is_not_hard_to_pay(facts: dict[str, Any]) -> None:
    assert not {"FW-001", "FW-003"} & {each.form for each in needed(**facts)}


def test_a_copy_of_the_declaration_of_parentage_is_filed_where_there_is_one() -> None:
    child = {"name": "Ruth", "born_on": "2012-01-01", "declaration": "signed_with_copy"}
    found = needed(children={"family": ["minor_together"], "how_many": 1}, child=[child])

    (copy,) = (each for each in found if each.title == "Copy of the declaration of parentage")
    assert copy.goes is Goes.FILE


def test_each_class_of_property_has_a_property_declaration_of_its_own() -> None:
    found = needed(property={"separate_how": "fl_160", "community_how": "fl_160"})
    separate, community, blank = (each for each in found if each.form == "FL-160")

    assert blank.goes is Goes.SERVE
    assert "separate property" in separate.title
    assert "community property" in community.title
    assert separate.signed
    assert "FL-160" not in {each.form for each in needed(property={"separate_how": "classes"})}


def test_a_form_page_for_attachments_is_named_only_where_there_is_an_attachment() -> None:
    long = needed(requests={"other": "Order this and that. " * 40})

    assert one("MC-025", long).only_if
    assert "MC-025" not in {each.form for each in needed()}


def test_an_amended_petition_asks_about_the_summons() -> None:
    amended = needed(matter={"unions": ["marriage"], "kind": "dissolution", "amended": True})
    assert "Ask the clerk" in one("FL-110", amended).why
    assert "Ask the clerk" not in one("FL-110", needed()).why


def test_a_nullity_asks_whether_disclosure_is_needed() -> None:
    found = needed(matter={"unions": ["marriage"], "kind": "nullity"})

    assert one("FL-140", found).goes is Goes.ASK
    assert {"FL-142", "FL-107-INFO"} & {each.form for each in found} == set()


@pytest.mark.parametrize(
    ("dangers", "pointed_to"),
    [(["violence"], True), (["hide_address", "fled"], True), (["hide_address"], False), ([], False)],
)
def test_danger_points_to_the_restraining_order(dangers: list[str], pointed_to: bool) -> None:
    found = needed(safety={"dangers": dangers})
    assert ("DV-100" in {each.form for each in found}) is pointed_to


def test_an_interpreter_is_asked_for_later() -> None:
    found = needed(people={"special": ["interpreter"]})
    assert one("INT-300", found).later


def test_an_edition_nobody_checked_never_sounds_certain() -> None:
    petition = one("FL-100", needed())

    assert petition.edition == "January 1, 2020, as far as we know"
    assert petition.edition_on == date(2020, 1, 1)
    assert petition.certainty is Certainty.SECONDARY
    assert "January 1, 2027" in petition.edition_note


def test_the_summons_of_2027_has_no_date_yet() -> None:
    before, after = one("FL-110", needed()), one("FL-110", needed(date(2027, 1, 4)))

    assert before.edition_on == date(2015, 1, 1)
    assert (after.edition_on, after.edition) == (None, "We do not know. Ask the court.")
    assert "2040" in after.edition_note


def test_a_form_whose_edition_was_never_read_says_so() -> None:
    order = one("FW-003", needed())
    assert (order.edition, order.certainty) == ("We do not know. Ask the court.", Certainty.UNCONFIRMED)


@settings(max_examples=100, deadline=None)
@given(any_case(), filing_days())
def test_every_form_has_a_title_a_reason_and_a_place_to_go(case: Case, on: date) -> None:
    found = forms_needed(case, on)

    assert found[0].form == "FL-100"
    for each in found:
        assert each.title
        assert each.why
        assert bool(each.edition) == bool(each.form)
        assert not (each.copy_served and each.goes not in (Goes.FILE, Goes.ASK))
    assert len({(each.form, each.title, each.why) for each in found}) == len(found)


@pytest.mark.parametrize(
    ("record", "left"),
    [
        ({}, {"FL-115", "FL-117", "FL-140", "FL-142", "FL-150", "FL-141"}),
        ({"joint": True}, {"FL-140", "FL-142", "FL-150", "FL-141"}),
        (
            {"service": {"method": "personal", "served_on": "2026-11-26"}},
            {"FL-115", "FL-140", "FL-142", "FL-150", "FL-141"},
        ),
        ({"response_filed_on": "2026-11-30", "disclosure_served_on": "2026-11-28"}, {"FL-141"}),
    ],
)
def test_of_the_later_forms_only_those_are_left_that_are_still_to_be_done(
    record: dict[str, Any], left: set[str]
) -> None:
    # Fam. Code 2104, 2331(b); Code Civ. Proc. 417.30
    found = needed(record={"filed_on": "2026-11-25", **record})
    assert {each.form for each in found if each.later} == left


@pytest.mark.parametrize(("gave_birth", "asked"), [(True, True), ("don't know", True), (False, False)])
def test_a_child_born_in_the_marriage_and_not_listed_may_yet_need_the_declaration(
    gave_birth: object, asked: bool
) -> None:
    # Fam. Code 7611(a), 3429(a): the law may take the child for one of both
    found = needed(children={"family": ["from_others"], "others_in_union": gave_birth})
    declarations = [each for each in found if each.form == "FL-105"]
    assert [each.goes for each in declarations] == ([Goes.FILE, Goes.SERVE] if asked else [])
    assert all("just one of you" in each.only_if for each in declarations)
