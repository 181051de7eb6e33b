"""The case file on disk: its format and upgrades, the safe save, the copies, the lock, the seal.

Names load when they are first used: to save a paper safely needs no case.
"""

from typing import TYPE_CHECKING

from firstpaper.on_first_use import names_of

if TYPE_CHECKING:
    from firstpaper.casefile.document import CaseFile
    from firstpaper.casefile.lock import Lock
    from firstpaper.casefile.opened import OpenCase, bring_back, load, load_with_seal
    from firstpaper.casefile.saving import save, sweep

__all__ = ["CaseFile", "Lock", "OpenCase", "bring_back", "load", "load_with_seal", "save", "sweep"]

__getattr__ = names_of(
    __name__,
    {
        "document": ("CaseFile",),
        "lock": ("Lock",),
        "opened": ("OpenCase", "bring_back", "load", "load_with_seal"),
        "saving": ("save", "sweep"),
    },
)
