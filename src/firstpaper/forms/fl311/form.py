"""FL-311, the custody sheet behind item 6: what it repeats from the petition, and what is left to the filer.

An optional form. It ties the filer to a plan, so nothing is proposed here beyond what item 6 asks for.
"""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CustodySheet
from firstpaper.forms.answer import Answer, blank, fill, mark, write
from firstpaper.forms.caption_box import only_names
from firstpaper.forms.custody_wishes import CASES_TOLD, Wishes, ask_before_custody, asked_for, wishes_of
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.open_answers import not_before_advice, still_open
from firstpaper.forms.saying import on_the_sheet
from firstpaper.law.measures.children import CUSTODY_FORMS, ListedChild
from firstpaper.locale import _

FORM = "FL-311"
PARTS = {
    CustodySheet.FL_312: "abduction",
    CustodySheet.FL_341_C: "holidays",
    CustodySheet.FL_341_D: "provisions",
    CustodySheet.FL_341_E: "joint_legal",
}


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The sheet, where the filer chose to put it behind item 6."""
    wishes = wishes_of(case, on)
    if CustodySheet.FL_311 not in (known(case.custody.sheets) or ()) or not wishes.concerned:
        return ()
    return (filled(edition_for(FORM, on), tuple(_answers(case, wishes))),)


def _answers(case: Case, wishes: Wishes) -> Iterator[Answer]:
    yield from only_names(case)
    yield mark("to.petition", _("You put it behind the petition."))
    yield _custody(case, wishes)
    yield fill("visits", _("Choose one way. A schedule needs days, hours and a first day."))
    yield _supervised(case)
    yield fill("exchange", _("Who drives, and where the children change hands. Choose a safe place."))
    yield fill("travel", _("Only if you want limits on trips with the children."))
    for sheet, part in PARTS.items():
        yield _sheet(case, sheet, part)
    yield fill("other", _("Only if there is more. It must fit what item 6 of the petition asks for."))


def _custody(case: Case, wishes: Wishes) -> Answer:
    concept = "custody"
    missing = next((wish.missing for wish in wishes.lines.values() if wish.missing), "")
    if missing:
        return still_open(case, concept, missing)
    if first := ask_before_custody(case):
        return not_before_advice(concept, first, CASES_TOLD)
    cells = tuple(_row(child, wishes) for child in wishes.children)
    if not cells:
        return still_open(case, concept, "child.1.name")
    rows = "\n".join("; ".join(filter(None, row)) for row in cells)
    same = _("It must say the same as item 6 of the petition.")
    return write(concept, rows, same, "Fam. Code 3002-3007", cells=cells)


def _row(child: ListedChild, wishes: Wishes) -> tuple[str, ...]:
    """Child, birth date, legal custody to, physical custody to."""
    born = on_the_sheet(child.born.sure) if child.born and child.born.sure else ""
    return (child.name or "", born, *(asked_for(child, wishes, line) for line in ("legal", "physical")))


def _supervised(case: Case) -> Answer:
    if known(case.custody.supervised):
        asked = _("You ask that somebody watches the visits. Mark this part. Say who could do it, and why.")
        return fill("supervised", asked, "Fam. Code 3044")
    if known(case.custody.supervised) is False:
        return blank("supervised", _("You chose not to ask for it."))
    if known(case.safety.dangers) == ():
        return blank("supervised", _("You told us of no danger."))
    ask = _("You can ask that somebody watches the visits. Get help with this part, and say why.")
    return fill("supervised", ask, "Fam. Code 3044")


def _sheet(case: Case, sheet: CustodySheet, part: str) -> Answer:
    form = CUSTODY_FORMS[sheet]
    if sheet in (known(case.custody.sheets) or ()):
        return mark(part, _("You chose to add form {form}.").format(form=form), continues=form)
    return blank(part, _("You chose not to add form {form}.").format(form=form))
