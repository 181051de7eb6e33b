"""The attachment pages behind the petition, and the ledger that no ticked page is missing."""

from dataclasses import dataclass
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.fl100 import (
    child_support,
    children,
    community_property,
    custody,
    other_requests,
    partner_support,
    separate_property,
)
from firstpaper.forms.pages import Attachment
from firstpaper.forms.petition import petition

__all__ = ["Attachment", "LedgerLine", "attachments", "ledger"]

PARTS = (
    children,
    custody,
    child_support,
    partner_support,
    separate_property,
    community_property,
    other_requests,
)


@dataclass(frozen=True, slots=True)
class LedgerLine:
    """One sheet that the petition sends its reader to.

    `items` are the items that do so. `attachment` is our page for it; None for an official form or a
    paper of the filer's own, which the filer must add.
    """

    label: str
    items: tuple[str, ...]
    attachment: Attachment | None


def attachments(case: Case, on: date) -> tuple[Attachment, ...]:
    """Every attachment page for a petition filed on the day `on`, in the order of the items."""
    pages = (part.attachment_page(case, on) for part in PARTS)
    return tuple(page for page in pages if page is not None)


def ledger(case: Case, on: date) -> tuple[LedgerLine, ...]:
    """Every sheet that some item of the petition names, with the page that answers to it."""
    pages = {page.label: page for page in attachments(case, on)}
    named: dict[str, list[str]] = {}
    for answer in petition(case, on):
        if answer.continues:
            named.setdefault(answer.continues, []).append(answer.item)
    return tuple(
        LedgerLine(label, tuple(dict.fromkeys(items)), pages.get(label)) for label, items in named.items()
    )
