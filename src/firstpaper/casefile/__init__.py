"""The case file on disk: its format and upgrades, the safe save, the lock against two writers."""

from firstpaper.casefile.document import CaseFile
from firstpaper.casefile.lock import Lock
from firstpaper.casefile.opened import OpenCase
from firstpaper.casefile.saving import save, sweep

__all__ = ["CaseFile", "Lock", "OpenCase", "save", "sweep"]
