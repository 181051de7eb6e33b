"""Cells that a spreadsheet leaves as they are.

A cell that a spreadsheet would run as a formula gets an apostrophe in front on the way out, which is taken
off again on the way in. Some spreadsheets part cells at a semicolon, so what follows one is treated alike.
So is a cell of which a spreadsheet would make another number, or a day: 0937, 12-4, 2E5.
"""

import re

_FORMULA = r"'*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]"
_TO_GUARD = re.compile(rf"(^|;[^\S\t\r\n]*)(?={_FORMULA})")
_GUARDED = re.compile(rf"(^|;[^\S\t\r\n]*)'(?={_FORMULA})")

_ALMOST_A_NUMBER = r"'*(0\d+|\d+[-/:.,eE ][-\d/:.,eE ]*)"
_CHANGEABLE = re.compile(_ALMOST_A_NUMBER)
_STEADIED = re.compile(rf"'{_ALMOST_A_NUMBER}")


def harmless(cell: str) -> str:
    """A cell that no spreadsheet runs as a formula."""
    return _TO_GUARD.sub(r"\1'", cell)


def steady(cell: str) -> str:
    """A cell of words of which no spreadsheet makes another number, or a day."""
    return f"'{cell}" if _CHANGEABLE.fullmatch(cell) else cell


def plain(cell: str) -> str:
    """A cell as it would be typed, whether or not it was guarded on the way out."""
    return _GUARDED.sub(r"\1", cell[1:] if _STEADIED.fullmatch(cell.strip()) else cell)
