"""What goes in each item of each official form. Concepts here; item numbers in `editions/`."""

from firstpaper.forms.answer import Action, Answer, ItemAnswer
from firstpaper.forms.attachments import Attachment, LedgerLine, attachments, ledger
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.forms.filled import FilledForm
from firstpaper.forms.needed import FormNeeded, Goes, forms_needed

__all__ = [
    "Action",
    "Answer",
    "Attachment",
    "Filing",
    "FilledForm",
    "FormNeeded",
    "Goes",
    "ItemAnswer",
    "LedgerLine",
    "attachments",
    "filled_forms",
    "forms_needed",
    "ledger",
]
