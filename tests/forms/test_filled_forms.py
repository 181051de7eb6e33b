"""What holds for every form we help to fill in, for any household: complete, and with a reason for all."""

from collections import Counter
from datetime import date

from hypothesis import given, settings

from firstpaper.facts import Case
from firstpaper.forms.answer import Action
from firstpaper.forms.attachments import attachments, ledger
from firstpaper.forms.edition import ItemKind, all_editions
from firstpaper.forms.filing import filled_forms
from firstpaper.forms.needed import Goes, forms_needed, table
from firstpaper.forms.stack import apart, stack
from firstpaper.intake import standing
from tests.any_case import any_case, filing_days
from tests.each import one_by_one
from tests.households.golden import households

ALLOWED = {
    ItemKind.BOX: {Action.MARK, Action.BLANK, Action.FILL},
    ItemKind.TEXT: {Action.WRITE, Action.BLANK, Action.FILL},
    ItemKind.NUMBER: {Action.WRITE, Action.BLANK, Action.FILL},
    ItemKind.DATE: {Action.WRITE, Action.BLANK, Action.SIGN},
    ItemKind.SIGNATURE: {Action.SIGN, Action.BLANK},
    ItemKind.STATEMENT: {Action.BLANK},
}


@settings(max_examples=200, deadline=None)
@given(any_case(), filing_days())
def test_every_item_is_answered_once_with_a_reason_and_as_what_it_is(case: Case, on: date) -> None:
    for form in filled_forms(case, on):
        assert [answer.concept for answer in form.items] == [item.concept for item in form.edition.items]
        for answer in form.items:
            assert answer.because.strip(), answer
            assert answer.label.strip()
            assert bool(answer.value) == (answer.action is Action.WRITE), answer
            assert answer.action in ALLOWED[ItemKind(answer.kind)], answer
            if answer.open_key:
                case.fact(answer.open_key)


@settings(max_examples=150, deadline=None)
@given(any_case(), filing_days())
def test_copies_of_one_form_are_told_apart_and_the_petition_comes_first(case: Case, on: date) -> None:
    forms = filled_forms(case, on)
    assert forms[0].form == "FL-100"
    several = Counter(form.form for form in forms)
    assert all(form.use for form in forms if several[form.form] > 1)
    assert {form.form for form in forms if form.private} <= {"FW-001", "FW-003"}


@settings(max_examples=500, deadline=None)
@given(any_case(), filing_days())
def test_every_ticked_sheet_exists_and_every_sheet_is_ticked(case: Case, on: date) -> None:
    """The ledger: our pages by their labels, official forms and papers of the filer's own by their names."""
    case = standing(case)
    pages, to_file = (
        attachments(case, on),
        [each for each in forms_needed(case, on) if each.goes is Goes.FILE],
    )
    lines = ledger(filled_forms(case, on), pages)
    ours = {line.attachment for line in lines if line.attachment}
    named = {line.label.partition(" (")[0] for line in lines if not line.attachment}

    assert ours == set(pages)
    assert named <= {each.form or each.title for each in to_file}
    behind = {"FL-311", "FL-312", "FL-341(C)", "FL-341(D)", "FL-341(E)", "FL-160", "FL-161"}
    asked_for = {each.form for each in to_file if each.form in behind and not each.only_if}
    assert asked_for <= named


@settings(max_examples=200, deadline=None)
@given(any_case(), filing_days())
def test_the_stack_holds_each_paper_of_the_first_filing_once_and_nothing_private(
    case: Case, on: date
) -> None:
    """Order of the stack: common practice. Private papers apart: Cal. Rules of Court, rule 3.54."""
    case = standing(case)
    needed, pages = forms_needed(case, on), attachments(case, on)
    papers = stack(needed, ledger(filled_forms(case, on), pages))
    names = [paper.name for paper in papers]

    assert names[:2] == ["FL-110", "FL-100"]
    assert len(names) == len(set(names))
    assert {page.label for page in pages} == {paper.name for paper in papers if paper.ours}
    to_file = {each.label for each in needed if each.goes is Goes.FILE and not each.later}
    private = {paper.name for paper in apart(needed)}
    assert private in (set(), {"FW-001", "FW-003"})
    assert to_file - set(names) - private <= {"MC-025"}
    assert not private & set(names)
    declaration = names.index("FL-105") if "FL-105" in names else len(names)
    behind = [paper.name for paper in papers if paper.behind == "FL-100"]
    assert all(names.index(name) < declaration for name in behind)


def test_every_form_of_the_first_filing_that_we_fill_in_is_in_some_household() -> None:
    used = {form.form for one in households() for form in filled_forms(standing(one.case), one.on)}
    first = {row.form for row in table() if row.form and not row.later}
    assert used >= {edition.form for edition in all_editions()} & first


@one_by_one(households())
def test_no_household_is_told_to_leave_empty_what_it_must_fill_in(one: object) -> None:
    for form in filled_forms(standing(one.case), one.on):  # type: ignore[attr-defined]
        written = {answer.concept for answer in form.items if answer.action is not Action.BLANK}
        assert written, form.form
