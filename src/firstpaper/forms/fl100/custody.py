"""Item 6: custody and visitation, and the detailed sheets that may go behind it."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CustodySheet, CustodyTo, VisitsTo
from firstpaper.forms.answer import Answer, blank, mark
from firstpaper.forms.fl100.children import concerns_children
from firstpaper.forms.fl100.told import not_asked
from firstpaper.forms.fl100.words import paragraphs
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import Attachment, attachment
from firstpaper.law.measures.children import ListedChild, listed_children, unborn
from firstpaper.locale import _

LINES: dict[str, tuple[StrEnum, ...]] = {
    "legal": (CustodyTo.PETITIONER, CustodyTo.RESPONDENT, CustodyTo.JOINT, CustodyTo.OTHER),
    "physical": (CustodyTo.PETITIONER, CustodyTo.RESPONDENT, CustodyTo.JOINT, CustodyTo.OTHER),
    "visits": (VisitsTo.PETITIONER, VisitsTo.RESPONDENT, VisitsTo.OTHER),
}
AUTHORITY = {
    "legal": "Fam. Code 3003, 3006",
    "physical": "Fam. Code 3004, 3007",
    "visits": "Fam. Code 3100",
}
FORMS = {
    CustodySheet.FL_311: "FL-311",
    CustodySheet.FL_312: "FL-312",
    CustodySheet.FL_341_C: "FL-341(C)",
    CustodySheet.FL_341_D: "FL-341(D)",
    CustodySheet.FL_341_E: "FL-341(E)",
}
FILED_WORDS = {
    "petitioner": "Petitioner",
    "respondent": "Respondent",
    "joint": "Petitioner and Respondent jointly",
    "other": "Other, as stated on this page",
    "not_asked": "No request",
}
COLUMNS = ("Child's name", "Legal custody to", "Physical custody to", "Visitation (parenting time) to")


@dataclass(frozen=True, slots=True)
class Wish:
    """What the filer asks for on one line of item 6.

    `choice` is None where nothing is asked or an answer is missing; then `missing` is its key.
    `differs` says that it is not the same for every child, which the sheet calls "Other".
    """

    choice: StrEnum | None = None
    differs: bool = False
    missing: str = ""


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 6a to 6c and the list of sheets."""
    page = attachment_page(case, on)
    for line, choices in LINES.items():
        for choice in choices:
            yield _box(case, on, line, choice)
    for sheet in CustodySheet:
        yield _sheet(case, on, sheet, page)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The custody table by child, the words for "Other", and the filer's own plan."""
    if not concerns_children(case, on):
        return None
    differs = _differs(case, on)
    paragraphs = (*_table_words(case, differs), *_other_words(case, on), *_plan_words(case))
    if not paragraphs:
        return None
    return attachment(
        case,
        "6c(1)",
        "Child custody and visitation (parenting time)",
        paragraphs,
        columns=COLUMNS if differs else (),
        rows=tuple(_row(child) for child in listed_children(case, on)) if differs else (),
    )


def wish_for(case: Case, line: str, on: date) -> Wish:
    """What is asked for on a line: for all children together, or child by child where they differ."""
    if known(case.custody.alike) is False:
        return _wish_by_child(case, line, on)
    choice = getattr(case.custody, line)
    if line == "visits" and choice is None and known(case.custody.physical) is CustodyTo.JOINT:
        return Wish(VisitsTo.NOT_ASKED)
    return Wish(known(choice), missing="" if known(choice) else f"custody.{line}")


def _wish_by_child(case: Case, line: str, on: date) -> Wish:
    told = {child.key: _told_for(child, line) for child in listed_children(case, on)}
    missing = next((f"{key}.{line}" for key, choice in told.items() if choice is None), "")
    if missing or not told:
        return Wish(missing=missing or "child.1.name")
    if len(set(told.values())) == 1 and not unborn(case):
        return Wish(next(iter(told.values())))
    return Wish(CustodyTo.OTHER if line != "visits" else VisitsTo.OTHER, differs=True)


def _told_for(child: ListedChild, line: str) -> StrEnum | None:
    choice: StrEnum | None = getattr(child, line)
    if line == "visits" and choice is None and child.physical is CustodyTo.JOINT:
        return VisitsTo.NOT_ASKED
    return choice


def _box(case: Case, on: date, line: str, choice: StrEnum) -> Answer:
    wish = wish_for(case, line, on)
    concept = f"custody.{line}.{choice}"
    concerned = concerns_children(case, on)
    if concerned is None:
        return still_open(case, concept, "children.family")
    if not concerned:
        return blank(concept, _("There is no child under 18 of both of you, born or on the way."))
    if wish.missing:
        return still_open(case, concept, wish.missing)
    if wish.choice != choice:
        return blank(concept, _no_wish(line, wish))
    if choice == "other":
        return _other(case, on, line, wish)
    return mark(concept, _because(line, choice), AUTHORITY[line])


def _no_wish(line: str, wish: Wish) -> str:
    if line == "visits" and wish.choice is VisitsTo.NOT_ASKED:
        return _("You are not asking for anything about visits here.")
    return _("You chose another box on this line.")


def _other(case: Case, on: date, line: str, wish: Wish) -> Answer:
    page = attachment_page(case, on)
    label = page.label if page else ""
    because = _("You ask for something else, in your own words.")
    if wish.differs:
        differs = _("Your wishes are not the same for every child. {label} says what you ask for each one.")
        because = differs.format(label=label)
    answer = mark(f"custody.{line}.other", because, AUTHORITY[line], continues=label)
    words_missing = _asks_other(case, on) and not known(case.custody.other_words)
    return flagged(case, answer, "custody.other_words") if words_missing else answer


def _because(line: str, choice: StrEnum) -> str:
    return {
        ("legal", "petitioner"): _("You ask to make the big decisions alone: school, health, welfare."),
        ("legal", "respondent"): _("You ask that the other parent makes the big decisions alone."),
        ("legal", "joint"): _("You ask that both of you make the big decisions: school, health, welfare."),
        ("physical", "petitioner"): _("You ask that the children live with you."),
        ("physical", "respondent"): _("You ask that the children live with the other parent."),
        ("physical", "joint"): _("You ask that each of you has the children for much of the time."),
        ("visits", "petitioner"): _("You ask for time with the children for yourself."),
        ("visits", "respondent"): _("You ask for time with the children for the other parent."),
    }[line, str(choice)]


def _sheet(case: Case, on: date, sheet: CustodySheet, page: Attachment | None) -> Answer:
    concept = f"custody.sheet.{sheet}"
    concerned = concerns_children(case, on)
    if concerned is None:
        return still_open(case, concept, "children.family")
    if not concerned:
        return blank(concept, _("There is no child under 18 of both of you, born or on the way."))
    if sheet is CustodySheet.OWN_PAGE:
        return _own_page(case, concept, page)
    told = known(case.custody.sheets)
    if told is None:
        return still_open(case, concept, "custody.sheets")
    if sheet not in told:
        return blank(concept, _("You chose not to add this sheet. It is not needed for filing."))
    because = _("You want to add form {form}. Fill it in, and put it behind the petition.")
    return mark(concept, because.format(form=FORMS[sheet]), _("common practice"), continues=FORMS[sheet])


def _own_page(case: Case, concept: str, page: Attachment | None) -> Answer:
    plan_missing = CustodySheet.OWN_PAGE in (known(case.custody.sheets) or ()) and not known(
        case.custody.plan
    )
    if page:
        because = _("{label} is in your packet. Put it behind the petition.").format(label=page.label)
        answer = mark(concept, because, _("common practice"), continues=page.label)
        return flagged(case, answer, "custody.plan") if plan_missing else answer
    if plan_missing:
        return still_open(case, concept, "custody.plan")
    if known(case.custody.sheets) is None:
        return still_open(case, concept, "custody.sheets")
    return blank(concept, not_asked())


def _differs(case: Case, on: date) -> bool:
    return any(wish_for(case, line, on).differs for line in LINES)


def _table_words(case: Case, differs: bool) -> Iterator[str]:
    if differs:
        yield (
            "Petitioner asks the court to order custody and visitation (parenting time) for each child as "
            "shown in the table on this page."
        )
        if unborn(case):
            yield "Petitioner makes no request now for the child who is not yet born."


def _other_words(case: Case, on: date) -> Iterator[str]:
    words = known(case.custody.other_words)
    if words and _asks_other(case, on):
        yield 'Where "Other" is asked for in item 6, Petitioner asks the court for the following:'
        yield words


def _asks_other(case: Case, on: date) -> bool:
    if known(case.custody.alike) is False:
        return any(_told_for(child, line) == "other" for child in listed_children(case, on) for line in LINES)
    return any(wish_for(case, line, on).choice == "other" for line in LINES)


def _plan_words(case: Case) -> Iterator[str]:
    plan = known(case.custody.plan)
    if plan and CustodySheet.OWN_PAGE in (known(case.custody.sheets) or ()):
        yield "Petitioner asks the court to order the following parenting plan:"
        yield from paragraphs(plan)


def _row(child: ListedChild) -> tuple[str, ...]:
    told = (_told_for(child, line) for line in LINES)
    return (child.name or "", *(FILED_WORDS[choice] if choice else "" for choice in told))
