"""The attachment pages behind the forms, and the ledger that no ticked page is missing."""

from collections.abc import Iterable
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.forms.filled import FilledForm
from firstpaper.forms.fl100 import (
    child_support,
    children,
    community_property,
    custody,
    other_requests,
    partner_support,
    separate_property,
)
from firstpaper.forms.fl105.form import attachment_pages as declaration_pages
from firstpaper.forms.pages import Attachment

__all__ = ["Attachment", "LedgerLine", "attachments", "ledger"]

PETITION_PARTS = (
    children,
    custody,
    child_support,
    partner_support,
    separate_property,
    community_property,
    other_requests,
)


class LedgerLine(NamedTuple):
    """One sheet that a form sends its reader to.

    `form` is that form, and `items` are the items that do so, as far as their numbers are known.
    `attachment` is our page for it; None for an official form or a paper of the filer's own, which the
    filer must add.
    """

    label: str
    form: str
    items: tuple[str, ...]
    attachment: Attachment | None


def attachments(case: Case, on: date) -> tuple[Attachment, ...]:
    """Every attachment page for a filing on the day `on`, form by form, in the order of the items."""
    pages = (part.attachment_page(case, on) for part in PETITION_PARTS)
    return (*(page for page in pages if page is not None), *declaration_pages(case, on))


def ledger(forms: Iterable[FilledForm], pages: Iterable[Attachment]) -> tuple[LedgerLine, ...]:
    """Every sheet that some item of a form names, in the order of the items, with its page."""
    there = {(page.form, page.label): page for page in pages}
    named: dict[tuple[str, str], list[str]] = {}
    for form in forms:
        for answer in form.items:
            if answer.continues:
                named.setdefault((form.form, answer.continues), []).append(answer.item)
    return tuple(
        LedgerLine(label, form, tuple(dict.fromkeys(filter(None, items))), there.get((form, label)))
        for (form, label), items in named.items()
    )
