"""Item 12, the signatures and the printed notices."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.forms.answer import Answer, blank, sign
from firstpaper.forms.saying import get_help_with_this_box, nothing_to_mark, somebody_else_files, written
from firstpaper.locale import _


def answers(case: Case, on: date) -> Iterator[Answer]:
    """What stands above, at and below the signature."""
    del on
    yield _orders(case)
    yield blank(
        "signing.perjury",
        _("Nothing to mark. By signing you swear that everything above is true. Read it all once more."),
        "Fam. Code 212; Code Civ. Proc. 2015.5",
    )
    by_hand = _("By hand, on the day you sign. Never a day later than the filing.")
    yield sign("signing.date", by_hand, "Code Civ. Proc. 2015.5")
    help_first = get_help_with_this_box() if somebody_else_files(case) else ""
    same = _("Spelled the same way as at the top of page 1.")
    yield written(case, "signing.name", "petitioner.name", help_first or same)
    yourself = _("You sign, and nobody else for you.")
    yield sign("signing.petitioner", help_first or yourself, "Fam. Code 212")
    for part in ("date", "name", "signature"):
        yield blank(f"signing.attorney.{part}", _("You have no lawyer, so this stays empty."))
    yield blank("notice.information", nothing_to_mark())
    last_four = _(
        "Nothing to mark. Never write a whole social security or account number on any paper you file."
    )
    yield blank("notice.redaction", last_four, "Fam. Code 2024.5; Cal. Rules of Court, rule 1.201(a)")
    rights = _(
        "Nothing to mark. Read it: wills, accounts, insurance and joint titles may need your attention."
    )
    yield blank("notice.cancellation", rights, "Fam. Code 2024(a)")


def _orders(case: Case) -> Answer:
    read_first = _(
        "Nothing to mark. Read page 2 of form FL-110 before you sign: its orders bind you from filing on."
    )
    answer = blank("signing.orders", read_first, "Fam. Code 233(a)")
    if known(case.signing.orders_read) is True:
        return answer
    return replace(answer, open_key="signing.orders_read")
