"""Who signs the declaration, and what the signer promises."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, blank, fill, sign
from firstpaper.forms.saying import nothing_to_mark, written
from firstpaper.locale import _


def answers(case: Case, on: date) -> Iterator[Answer]:
    """The end of the form."""
    swears = _("Nothing to mark. By signing you swear that everything above is true. Read it all once more.")
    yield blank("signing.perjury", swears, "Code Civ. Proc. 2015.5")
    yield sign(
        "signing.date",
        _("Write the day on which you sign. Never an earlier or a later one."),
        "Code Civ. Proc. 2015.5",
    )
    name = _("Your full legal name, as at the top.")
    yield written(case, "signing.name", "petitioner.name", name)
    yield sign("signing.signature", _("You sign, and nobody for you."), "Fam. Code 3429(a)")
    count = _("Count the pages behind this form once it is done: added pages, copies of orders.")
    yield fill("signing.pages", count, _("common practice"))
    later = _("If you hear of another case about a child, you must tell the court.")
    yield blank("signing.update", f"{nothing_to_mark()} {later}", "Fam. Code 3429(d)")
