"""Item 9: what belongs, or is owed, to one of the two alone."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import SeparateHow
from firstpaper.forms.answer import Answer, blank, mark, write
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.fl100.places import Places, space
from firstpaper.forms.listed_things import (
    Listed,
    as_filed,
    doubts,
    listed_things,
    not_typed,
    things_of_item_9,
    typed,
)
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import Attachment, attachment
from firstpaper.forms.saying import married, partners, see_the_paper_first
from firstpaper.law.measures.character import Plea
from firstpaper.law.words import spaced
from firstpaper.locale import _, noted

NONE, CONFIRM = "property.separate.none", "property.separate.confirm"
LAW = "Fam. Code 770, 771"
PLACES = Places(
    "property.separate.fl_160",
    "property.separate.attachment",
    "property.separate.listed",
    "property.separate.rows",
    noted("FL-160 (separate property)"),
    LAW,
)
LISTS = {
    "property.separate_petitioner": "Petitioner",
    "property.separate_respondent": "Respondent",
}
COLUMNS = ("Item", "Confirm to")


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 9a and 9b."""
    how, all_of_9b = known(case.property.separate_how), (CONFIRM, *PLACES.all)
    if how is None:
        yield from (still_open(case, concept, "property.separate_how") for concept in (NONE, *all_of_9b))
    elif how is SeparateHow.NONE:
        yield _none(case, on)
        yield from (blank(concept, _("You marked that there is none.")) for concept in all_of_9b)
    elif how is SeparateHow.LIST and not _rows(case, on):
        missing = _missing_list(case, on) or "property.separate_petitioner"
        yield blank(NONE, _not_none())
        yield from (still_open(case, concept, missing) for concept in all_of_9b)
    else:
        yield blank(NONE, _not_none())
        yield _confirm(case, how, on)
        yield from PLACES.marked(attachment_page(case, on), _list(case, how, on))


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The list, where it does not fit on the lines."""
    rows = _rows(case, on)
    if not rows or space(PLACES.rows, on).holds(_on_the_lines(rows)):
        return None
    asks = (
        "Petitioner asks the court to confirm the following to the party named, as separate property or debt:"
    )
    return attachment(case, "9b", "Separate property", (asks,), columns=COLUMNS, rows=rows)


def _none(case: Case, on: date) -> Answer:
    """9a as the filer chose; flagged where something listed belongs to one of the two for sure."""
    answer = mark(NONE, _("You said that neither of you has any that you know of."), LAW)
    if not listed_things(case, Plea.CONFIRM, on):
        return answer
    look = _("But your list has things that are one person's own. Look again before you swear to this line.")
    return replace(answer, because=look, open_key="property.separate_how")


def _confirm(case: Case, how: SeparateHow, on: date) -> Answer:
    asks = _("You ask the judge to confirm what belongs to each of you alone.")
    placed = doubts(case, on) if how in (SeparateHow.LIST, SeparateHow.FL_160) else ""
    answer = mark(CONFIRM, spaced((asks, placed, see_the_paper_first(case))), LAW)
    missing = _missing_list(case, on) if how is SeparateHow.LIST else ""
    return flagged(case, answer, missing) if missing else answer


def _not_none() -> str:
    return _("You do have some to confirm.")


def _list(case: Case, how: SeparateHow, on: date) -> Answer | None:
    """The list on the lines; None where it is on the court's form."""
    if how is SeparateHow.FL_160:
        return None
    words = _on_the_lines(_rows(case, on))
    if how is SeparateHow.CLASSES:
        kinds = _(
            "The kinds of separate property that most people name. Many petitions say no more at this stage."
        )
        says = meaning(lambda: _on_the_lines(_rows(case, on)))
        return write(PLACES.rows, words, kinds, _("common practice"), meaning=says)
    last_four = _("As you listed it. Never more than the last four digits of an account.")
    return write(PLACES.rows, words, last_four, "Cal. Rules of Court, rule 1.201(a)")


def _on_the_lines(rows: tuple[tuple[str, ...], ...]) -> str:
    """One line an entry: the item, and after a colon whom to confirm it to."""
    return "\n".join(f"{item}: {owner}" for item, owner in rows)


def _missing_list(case: Case, on: date) -> str:
    """A list in the filer's own words that is still to be asked; none where things were listed one by one."""
    if things_of_item_9(case, on):
        return ""
    return next((key for key in LISTS if known(case.fact(key)) is None), "")


def _rows(case: Case, on: date) -> tuple[tuple[str, ...], ...]:
    """What is to be confirmed, and to whom, as it is filed: first as typed, then what was listed besides."""
    how = known(case.property.separate_how)
    if how is SeparateHow.LIST:
        things = things_of_item_9(case, on)
        besides = ((one.filed, one.owner) for one in not_typed(things, typed(case)))
        return (*_typed_rows(case, things), *besides)
    return _classes(case) if how is SeparateHow.CLASSES else ()


def _typed_rows(case: Case, things: Sequence[Listed]) -> Iterator[tuple[str, str]]:
    for key, owner in LISTS.items():
        items = filter(None, known(case.fact(key)) or ())
        yield from ((item, owner) for item in as_filed(items, things))


def _classes(case: Case) -> tuple[tuple[str, ...], ...]:
    registered = partners(case) and not married(case)
    return (
        (
            filed("All property and debts from before the registration")
            if registered
            else filed("All property and debts from before the marriage"),
            filed("party who had them"),
        ),
        (filed("All gifts and inheritances"), filed("party who received them")),
        (
            filed("All earnings, property and debts from after separation"),
            filed("party who gained or incurred them"),
        ),
    )
