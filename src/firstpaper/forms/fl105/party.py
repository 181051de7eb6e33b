"""The caption, who declares, and whether addresses are kept off the form."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, blank, fill, mark
from firstpaper.forms.caption_box import caption
from firstpaper.forms.fl105 import LAW
from firstpaper.forms.fl105.confidential import get_help_first, marks_the_box, wants_help_first
from firstpaper.forms.open_answers import still_open
from firstpaper.locale import _


def answers(case: Case, on: date) -> Iterator[Answer]:
    """The boxes at the top, and the first two statements."""
    yield from caption(case)
    yield blank("caption.guardianship", _("These boxes are for a guardianship. Yours is a family case."))
    says = _("This line says you are a party to the case. If it has a box, mark it.")
    yield blank("party", says, LAW)
    yield _confidential(case)


def _confidential(case: Case) -> Answer:
    concept, marks = "confidential", marks_the_box(case)
    if wants_help_first(case):
        return fill(concept, get_help_first(), LAW)
    if marks is None:
        return still_open(case, concept, "uccjea.kept_private")
    if marks:
        because = _(
            "You say that there was violence or abuse, and the other side does not know these addresses."
        )
        return mark(concept, because, LAW)
    return blank(concept, _("You told us of no violence or abuse that you want to name here."))
