"""FW-003, the order on court fees: the filer fills in its top, and the judge does the rest."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, blank
from firstpaper.forms.caption_box import with_case_name
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.when import wants_fee_waiver
from firstpaper.locale import _

FORM = "FW-003"


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The order that the judge signs, where the filer wants to ask."""
    if not wants_fee_waiver(case, on):
        return ()
    return (filled(edition_for(FORM, on), tuple(_answers(case)), private=True),)


def _answers(case: Case) -> Iterator[Answer]:
    """The top of the order (Cal. Rules of Court, rule 3.52(2))."""
    yield from with_case_name(case)
    yield blank("lawyer", _("This is for lawyers. You file for yourself."))
    yield blank("order", _("Leave all of it to the judge."), "Cal. Rules of Court, rule 3.52(2)")
