"""What goes in each item of each official form. Concepts here; item numbers in `editions/`."""

from firstpaper.forms.answer import Action, Answer, ItemAnswer
from firstpaper.forms.attachments import Attachment, LedgerLine, attachments, ledger
from firstpaper.forms.needed import FormNeeded, Goes, forms_needed
from firstpaper.forms.petition import petition

__all__ = [
    "Action",
    "Answer",
    "Attachment",
    "FormNeeded",
    "Goes",
    "ItemAnswer",
    "LedgerLine",
    "attachments",
    "forms_needed",
    "ledger",
    "petition",
]
