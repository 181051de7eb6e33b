"""Item 9: what belongs, or is owed, to one of the two alone."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import SeparateHow
from firstpaper.forms.answer import Answer, blank, mark, mark_if, write
from firstpaper.forms.fl100.told import married, partners, space
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import Attachment, attachment
from firstpaper.locale import _

NONE, CONFIRM = "property.separate.none", "property.separate.confirm"
FL_160, ATTACHED = "property.separate.fl_160", "property.separate.attachment"
LISTED, ROWS = "property.separate.listed", "property.separate.rows"
LISTS = {
    "property.separate_petitioner": "Petitioner",
    "property.separate_respondent": "Respondent",
}
COLUMNS = ("Item", "Confirm to")
LAW = "Fam. Code 770, 771"
SHEET = "FL-160 (separate property)"


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 9a and 9b."""
    how = known(case.property.separate_how)
    if how is None:
        for concept in (NONE, CONFIRM, FL_160, ATTACHED, LISTED, ROWS):
            yield still_open(case, concept, "property.separate_how")
        return
    none = how is SeparateHow.NONE
    yield mark_if(NONE, none, _("You said that neither of you has any that you know of."), _not_none(), LAW)
    if none:
        for concept in (CONFIRM, FL_160, ATTACHED, LISTED, ROWS):
            yield blank(concept, _("You marked that there is none."))
    elif how is SeparateHow.LIST and not _rows(case):
        for concept in (CONFIRM, FL_160, ATTACHED, LISTED, ROWS):
            yield still_open(case, concept, _missing_list(case) or "property.separate_petitioner")
    else:
        yield _confirm(case, how)
        yield from _where(case, on, how)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The list, where it does not fit on the lines."""
    rows = _rows(case)
    if not rows or space(ROWS, on).holds(_on_the_lines(rows)):
        return None
    asks = (
        "Petitioner asks the court to confirm the following to the party named, as separate property or debt:"
    )
    return attachment(case, "9b", "Separate property", (asks,), columns=COLUMNS, rows=rows)


def _confirm(case: Case, how: SeparateHow) -> Answer:
    answer = mark(CONFIRM, _("You ask the judge to confirm what belongs to each of you alone."), LAW)
    missing = _missing_list(case) if how is SeparateHow.LIST else ""
    return flagged(case, answer, missing) if missing else answer


def _not_none() -> str:
    return _("You do have some to confirm.")


def _where(case: Case, on: date, how: SeparateHow) -> Iterator[Answer]:
    """The three places where the list can be, and the list itself."""
    page, on_form = attachment_page(case, on), how is SeparateHow.FL_160
    elsewhere = _("Your list is in another place.")
    if on_form:
        form = _("You chose to list it on form FL-160. Use one FL-160 for separate property alone.")
        yield mark(FL_160, form, LAW, continues=SHEET)
    else:
        yield blank(FL_160, elsewhere)
    if page:
        too_long = _("Your list is too long for the lines. It is on {label}.").format(label=page.label)
        yield mark(ATTACHED, too_long, LAW, continues=page.label)
    else:
        yield blank(ATTACHED, elsewhere)
    if page or on_form:
        yield blank(LISTED, elsewhere)
        yield blank(ROWS, elsewhere)
        return
    yield mark(LISTED, _("Your list fits on the lines."), LAW)
    yield _list(case, how)


def _list(case: Case, how: SeparateHow) -> Answer:
    if how is SeparateHow.CLASSES:
        kinds = _("The usual kinds of separate property. At this stage this is enough.")
        return write(ROWS, _on_the_lines(_rows(case)), kinds, LAW)
    last_four = _("As you listed it. Never more than the last four digits of an account.")
    return write(ROWS, _on_the_lines(_rows(case)), last_four, "Cal. Rules of Court 1.201(a)")


def _on_the_lines(rows: tuple[tuple[str, ...], ...]) -> str:
    """One line an entry: the item, and after a colon whom to confirm it to."""
    return "\n".join(f"{item}: {owner}" for item, owner in rows)


def _missing_list(case: Case) -> str:
    return next((key for key in LISTS if known(case.fact(key)) is None), "")


def _rows(case: Case) -> tuple[tuple[str, ...], ...]:
    """What is to be confirmed, and to whom, as it is filed."""
    how = known(case.property.separate_how)
    if how is SeparateHow.LIST:
        return tuple(
            (item, owner) for key, owner in LISTS.items() for item in known(case.fact(key)) or () if item
        )
    return _classes(case) if how is SeparateHow.CLASSES else ()


def _classes(case: Case) -> tuple[tuple[str, ...], ...]:
    began = "registration" if partners(case) and not married(case) else "marriage"
    return (
        (f"All property and debts from before the {began}", "party who had them"),
        ("All gifts and inheritances", "party who received them"),
        ("All earnings, property and debts from after separation", "party who gained or incurred them"),
    )
