"""The shape of every command's JSON, field by field: for the reference, and for the tests that hold us to it.

Nothing here runs when a command runs. A field that is not named here is a fault, and so is one that is
missing. Days are written as 2026-11-30.
"""

from pydantic import BaseModel

from firstpaper.cli.shapes.answers import (
    Amend,
    Ask,
    ChangeDone,
    Enter,
    Erase,
    Schedule,
    Seal,
    Show,
    Undo,
    Uninstall,
    Unseal,
)
from firstpaper.cli.shapes.checks import Check, Items
from firstpaper.cli.shapes.common import Envelope, Many, Shape
from firstpaper.cli.shapes.dates import Dates, Record, Shelf
from firstpaper.cli.shapes.law import LawList, Why
from firstpaper.cli.shapes.papers import Blank, Compare, Guide, Money, Packet, PacketDone, Paper

__all__ = ["SHAPES", "Envelope", "Many", "Shape"]

SHAPES: dict[str, type[BaseModel]] = {
    "ask": Ask,
    "change": ChangeDone,
    "enter": Enter,
    "show": Show,
    "check": Check,
    "items": Items,
    "packet": PacketDone,
    "blank": Blank,
    "compare": Compare,
    "schedule": Schedule,
    "money": Money,
    "record": Record,
    "dates": Dates,
    "amend": Amend,
    "undo": Undo,
    "seal": Seal,
    "unseal": Unseal,
    "erase": Erase,
    "shelf": Shelf,
    "paper": Paper,
    "law": LawList,
    "demo": Packet,
    "guide": Guide,
    "why": Why,
    "uninstall": Uninstall,
}
"""The data of each command for one case."""
