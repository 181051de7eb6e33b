"""The case file on disk: its format and upgrades, the safe save, the copies, the lock, the seal."""

from firstpaper.casefile.document import CaseFile
from firstpaper.casefile.lock import Lock
from firstpaper.casefile.opened import OpenCase, bring_back, load, load_with_seal
from firstpaper.casefile.saving import save, sweep

__all__ = ["CaseFile", "Lock", "OpenCase", "bring_back", "load", "load_with_seal", "save", "sweep"]
