"""FL-710, the summons of a joint petition. The court issues it; nobody serves it (Fam. Code 2342.5)."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, blank
from firstpaper.forms.caption_box import both_petitioners, court
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.locale import _

FORM = "FL-710"


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The joint summons for a filing on the day `on`."""
    return (filled(edition_for(FORM, on), tuple(_answers(case))),)


def _answers(case: Case) -> Iterator[Answer]:
    yield both_petitioners(case)
    yield court(case, "caption.court", because=_("The same words as at the top of FL-700."))
    yield blank("caption.case_number", _("The court gives the number when you file."), _("common practice"))
    yield blank("issued", _("The clerk dates it, signs it and stamps it."), "Cal. Rules of Court, rule 5.50")
    orders = _("Read them both. They bind each of you from the day you file.")
    yield blank("orders", orders, "Fam. Code 2342.5(a)(2)")
