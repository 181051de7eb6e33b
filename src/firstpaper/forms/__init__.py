"""What goes in each item of each official form. Concepts here; item numbers in `editions/`.

Names load when they are first used, so that a page that needs no case comes at once.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
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

_HOMES = {
    "answer": ("Action", "Answer", "ItemAnswer"),
    "attachments": ("Attachment", "LedgerLine", "attachments", "ledger"),
    "filing": ("Filing", "filled_forms"),
    "filled": ("FilledForm",),
    "needed": ("FormNeeded", "Goes", "forms_needed"),
}
_HOME_OF = {name: module for module, names in _HOMES.items() for name in names}


def __getattr__(name: str) -> Any:
    if name not in _HOME_OF:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_HOME_OF[name]}"), name)
