"""Item 6: custody and visitation, and the detailed sheets that may go behind it."""

from collections.abc import Iterator
from datetime import date
from enum import StrEnum

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CustodySheet, VisitsTo
from firstpaper.forms.answer import Answer, blank, mark
from firstpaper.forms.custody_wishes import (
    CASES_TOLD,
    FILED_WORDS,
    LINES,
    Wishes,
    ask_before_custody,
    told_for,
    wishes_of,
)
from firstpaper.forms.fl100.words import paragraphs
from firstpaper.forms.open_answers import flagged, not_before_advice, still_open
from firstpaper.forms.pages import Attachment, attachment
from firstpaper.forms.saying import not_asked
from firstpaper.law.measures.children import CUSTODY_FORMS, ListedChild, open_on_children, unborn
from firstpaper.locale import _, _n

AUTHORITY = {
    "legal": "Fam. Code 3003, 3006",
    "physical": "Fam. Code 3004, 3007",
    "visits": "Fam. Code 3100",
}
COLUMNS = ("Child's name", "Legal custody to", "Physical custody to", "Visitation (parenting time) to")


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 6a to 6c and the list of sheets."""
    wishes, page = wishes_of(case, on), attachment_page(case, on)
    if not wishes.concerned:
        yield from _no_children(case, wishes, on)
        return
    for line, choices in LINES.items():
        for choice in choices:
            yield _box(case, line, choice, wishes, page)
    for sheet in CUSTODY_FORMS:
        yield _sheet(case, sheet)
    yield _own_page(case, page)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The custody table by child, the words for "Other", and the filer's own plan."""
    wishes = wishes_of(case, on)
    words = (*_table_words(case, wishes), *_other_words(case, wishes), *_plan_words(case))
    if not wishes.concerned or not words:
        return None
    return attachment(
        case,
        "6c(1)",
        "Child custody and visitation (parenting time)",
        words,
        columns=COLUMNS if wishes.differ else (),
        rows=tuple(_row(child) for child in wishes.children) if wishes.differ else (),
    )


def _no_children(case: Case, wishes: Wishes, on: date) -> Iterator[Answer]:
    boxes = [f"custody.{line}.{choice}" for line, choices in LINES.items() for choice in choices]
    none = _("There is no child under 18 of both of you, born or on the way.")
    for concept in (*boxes, *(f"custody.sheet.{sheet}" for sheet in CustodySheet)):
        unknown = wishes.concerned is None
        yield still_open(case, concept, open_on_children(case, on)) if unknown else blank(concept, none)


def _box(case: Case, line: str, choice: StrEnum, wishes: Wishes, page: Attachment | None) -> Answer:
    concept, wish = f"custody.{line}.{choice}", wishes.lines[line]
    if wish.missing:
        return still_open(case, concept, wish.missing)
    if wish.choice is VisitsTo.NOT_ASKED:
        return blank(concept, _("You are not asking for anything about visits here."))
    if wish.choice != choice:
        return blank(concept, _("You chose a different box."))
    if first := ask_before_custody(case):
        return not_before_advice(concept, first, CASES_TOLD)
    if choice == "other":
        return _other(case, line, wishes, page)
    count = len(wishes.children) + unborn(case)
    return mark(concept, _because(line, choice, count), AUTHORITY[line])


def _other(case: Case, line: str, wishes: Wishes, page: Attachment | None) -> Answer:
    label = page.label if page else ""
    because = _("You ask for something else, in your own words.")
    if wishes.lines[line].differs:
        because = _differs(line, wishes).format(label=label)
    answer = mark(f"custody.{line}.other", because, AUTHORITY[line], continues=label)
    words_missing = wishes.other_asked() and not known(case.custody.other_words)
    return flagged(case, answer, "custody.other_words") if words_missing else answer


def _differs(line: str, wishes: Wishes) -> str:
    """Why one box does not say it all. Wishes that are alike differ only in leaving out an unborn child."""
    if len({told_for(child, line) for child in wishes.children}) == 1:
        return _(
            "You told us of an unborn child. {label} says what you ask for the children who are born. "
            "Ask a lawyer what to say for the unborn child."
        )
    return _("Your wishes are not the same for every child. {label} says what you ask for each.")


def _because(line: str, choice: StrEnum, count: int) -> str:
    return {
        ("legal", "petitioner"): _("You ask to make the big choices alone: school, health, welfare."),
        ("legal", "respondent"): _("You ask that the other parent makes the big choices alone."),
        ("legal", "joint"): _("You ask that both of you make the big choices: school, health, welfare."),
        ("physical", "petitioner"): _n(
            "You ask that the child lives mainly with you.",
            "You ask that the children live mainly with you.",
            count,
        ),
        ("physical", "respondent"): _n(
            "You ask that the child lives mainly with the other parent.",
            "You ask that the children live mainly with the other parent.",
            count,
        ),
        ("physical", "joint"): _n(
            "You ask that each of you has the child for plenty of the time.",
            "You ask that each of you has the children for plenty of the time.",
            count,
        ),
        ("visits", "petitioner"): _n(
            "You ask for time with the child for yourself.",
            "You ask for time with the children for yourself.",
            count,
        ),
        ("visits", "respondent"): _n(
            "You ask for time with the child for the other parent.",
            "You ask for time with the children for the other parent.",
            count,
        ),
    }[line, str(choice)]


def _sheet(case: Case, sheet: CustodySheet) -> Answer:
    concept, told = f"custody.sheet.{sheet}", known(case.custody.sheets)
    if told is None:
        return still_open(case, concept, "custody.sheets")
    if sheet not in told:
        return blank(concept, _("You chose not to add this sheet. It is not needed for filing."))
    because = _("Fill in form {form}, and put it behind the petition.")
    if sheet is not CustodySheet.FL_311:
        because = _("Fill in form {form} on your own, with no worksheet of ours. Put it behind the petition.")
    return mark(
        concept,
        because.format(form=CUSTODY_FORMS[sheet]),
        _("common practice"),
        continues=CUSTODY_FORMS[sheet],
    )


def _own_page(case: Case, page: Attachment | None) -> Answer:
    concept, sheets = "custody.sheet.own_page", known(case.custody.sheets)
    missing = "custody.sheets" if sheets is None else ""
    if CustodySheet.OWN_PAGE in (sheets or ()) and not known(case.custody.plan):
        missing = "custody.plan"
    if page:
        because = _("{label} is in your packet. Put it behind the petition.").format(label=page.label)
        answer = mark(concept, because, _("common practice"), continues=page.label)
        return flagged(case, answer, missing) if missing else answer
    return still_open(case, concept, missing) if missing else blank(concept, not_asked())


def _table_words(case: Case, wishes: Wishes) -> Iterator[str]:
    if wishes.differ:
        yield (
            "Petitioner asks the court to order custody and visitation (parenting time) for each child as "
            "shown in the table on this page."
        )
        if unborn(case):
            yield "The unborn child is not included in this table."


def _other_words(case: Case, wishes: Wishes) -> Iterator[str]:
    words = known(case.custody.other_words)
    if words and wishes.other_asked():
        yield 'Where "Other" is asked for in item 6, Petitioner asks the court for the following:'
        yield words


def _plan_words(case: Case) -> Iterator[str]:
    plan = known(case.custody.plan)
    if plan and CustodySheet.OWN_PAGE in (known(case.custody.sheets) or ()):
        yield "Petitioner asks the court to order the following parenting plan:"
        yield from paragraphs(plan)


def _row(child: ListedChild) -> tuple[str, ...]:
    told = (told_for(child, line) for line in LINES)
    return (child.name or "", *(FILED_WORDS[choice] if choice else "" for choice in told))
