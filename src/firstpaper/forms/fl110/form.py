"""FL-110, the summons: a few boxes for the filer. The clerk dates, signs and stamps it.

The clerk issues it with the petition (Cal. Rules of Court, rule 5.50(a)); the original stays with the court.
"""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, blank
from firstpaper.forms.caption_box import court, filer
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.saying import (
    case_number,
    get_help_with_this_box,
    somebody_else_files,
    written,
    written_petitioner,
)
from firstpaper.locale import _

FORM = "FL-110"
ISSUED = "Code Civ. Proc. 412.20(a)"


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The summons for a petition filed on the day `on`."""
    return (filled(edition_for(FORM, on), tuple(_answers(case))),)


def _answers(case: Case) -> Iterator[Answer]:
    other_side = _("The other side, named just as on the petition.")
    yield written(case, "notice.respondent", "respondent.name", other_side)
    yield written_petitioner(case, "petitioner", _("You, named just as on the petition."))
    yield case_number(case, "case_number")
    yield court(case, "court")
    help_first = get_help_with_this_box() if somebody_else_files(case) else ""
    yield filer(case, "filer", because=help_first)
    clerk = _("The clerk dates, signs and stamps it when you file. A copy without the stamp is no good.")
    server = _("The person who serves it marks the other.")
    yield blank("issued", f"{clerk} {server}", ISSUED)
    read = _("Read them before you sign FL-100. They bind you from the day you file.")
    yield blank("orders", read, "Fam. Code 233, 2040")
