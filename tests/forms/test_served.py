"""The envelope, the proof of service, the acknowledgment and the blank forms to get tell of the same papers.

Who serves signs under oath which papers went along (Code Civ. Proc. 417.10): nothing may be sworn to that is
not there.
"""

from collections import Counter
from datetime import date

import pytest
from hypothesis import given, settings

from firstpaper.facts import Case
from firstpaper.forms.answer import Action
from firstpaper.forms.attachments import attachments
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.forms.needed import Stack, forms_needed
from firstpaper.forms.served import Served, served
from firstpaper.intake import standing
from firstpaper.packet.brief import brief
from firstpaper.packet.views import cover
from tests.any_case import any_case, filing_days
from tests.households.golden import households

ON = date(2026, 12, 1)
LINES = {"papers.fl105": "FL-105", "papers.fl160": "FL-160"}
FIRST_LINE = {"FL-100", "FL-110", "FL-120"}
CASES = {one.name: one for one in households()}
NAMES = sorted(CASES)


def envelope(case: Case, on: date) -> tuple[Served, ...]:
    return served(forms_needed(case, on), attachments(case, on))


def agree(case: Case, on: date) -> None:
    papers = envelope(case, on)
    filed, blank = (Counter(p.form for p in papers if p.form and p.blank is each) for each in (False, True))
    sure = {p.form for p in papers if not p.only_if}
    assert set(blank) - {"FL-120"} <= set(filed)
    for form in filled_forms(case, on, Filing.SERVICE):
        marked = {answer.concept for answer in form.items if answer.action is Action.MARK}
        assert "papers.petition" in marked
        assert {LINES[name] for name in LINES if name in marked} == set(filed) & set(
            blank
        ) & sure - FIRST_LINE
        assert ("papers.more" in marked) is bool(set(LINES) & marked)


@settings(max_examples=150, deadline=None)
@given(any_case(), filing_days())
def test_what_is_sworn_to_is_in_the_envelope_and_the_other_way_round(told: Case, on: date) -> None:
    agree(standing(told), on)


@pytest.mark.parametrize("name", NAMES)
def test_the_papers_of_every_household_agree(name: str) -> None:
    told = standing(CASES[name].case)
    agree(told, ON)
    papers = envelope(told, ON)
    assert len({(p.name, p.blank) for p in papers}) == len(papers)
    kept_apart = {form.label for form in forms_needed(told, ON) if form.stack is Stack.APART}
    assert not {p.name for p in papers} & kept_apart


@pytest.mark.parametrize("name", NAMES)
def test_as_many_sheets_are_to_be_got_as_are_filled_in_or_given_along_blank(name: str) -> None:
    told = brief(CASES[name].case, ON)
    rows = cover.sheet(told, (), with_later=False).values["first_forms"]
    in_all = {form.form: count for form, count in rows if count}
    blank = Counter(p.form for p in served(told.forms, ()) if p.blank)
    for form, copies in Counter(form.form for form in told.filled).items():
        assert in_all[form] == copies + blank[form], form


def test_a_separate_and_a_community_list_take_three_sheets_and_one_of_them_stays_blank() -> None:
    told = brief(CASES["things-and-debts-listed"].case, ON)
    rows = cover.sheet(told, (), with_later=False).values["first_forms"]
    assert [count for form, count in rows if form.form == "FL-160"] == [3, 0, 0]
    assert [(p.name, p.blank) for p in served(told.forms, ()) if p.form == "FL-160"] == [
        ("FL-160 (separate property)", False),
        ("FL-160 (community property)", False),
        ("FL-160", True),
    ]


@pytest.mark.parametrize(("kind", "goes_along"), [("family", True), ("juvenile", False), ("adoption", False)])
def test_the_orders_of_another_case_go_behind_the_declaration_unless_they_are_secret(
    kind: str, goes_along: bool
) -> None:
    # common practice, no source; the papers of a juvenile court and of an adoption are not for the public
    child = ({"name": "Ana Vale", "born_on": "2019-05-04", "parentage": "born_to_both"},)
    facts = {
        "children": {"family": ["minor_together"]},
        "child": child,
        "uccjea": {"now": True, "cases": [kind]},
    }
    found = {form.label for form in forms_needed(Case.model_validate(facts), ON)}
    assert ("Orders of the other case" in found) is goes_along


def test_the_copy_of_a_restraining_order_is_in_the_stack_behind_the_declaration() -> None:
    child = {"name": "Lucia", "born_on": "2016-02-29", "parentage": "born_to_both"}
    told = Case.model_validate(
        {
            "children": {"family": ["minor_together"], "how_many": 1},
            "child": [child],
            "uccjea": {"now": True, "orders": ["family"]},
        }
    )
    (copy,) = (form for form in forms_needed(told, ON) if form.label == "Restraining order that is in force")
    assert (copy.stack, copy.copy_served) == (Stack.DECLARATION, True)
    none = told.with_fact("uccjea.orders", ())
    assert "Restraining order that is in force" not in {form.label for form in forms_needed(none, ON)}


def test_who_fills_in_the_declaration_alone_is_told_from_which_day_it_asks_for_homes() -> None:
    alone = brief(CASES["things-and-debts-listed"].case, ON)
    assert cover.sheet(alone, (), with_later=False).values["homes_since"] == (
        ("Paula Castro", date(2021, 12, 1)),
    )
    with_us = brief(CASES["six-children-and-one-unborn"].case, ON)
    assert any(form.form == "FL-105" for form in with_us.filled)
    assert cover.sheet(with_us, (), with_later=False).values["homes_since"] == ()
