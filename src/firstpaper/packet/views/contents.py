"""The list of sheets on a page to start from."""

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import NamedTuple

from firstpaper.packet.views.sheet import Sheet


class Entry(NamedTuple):
    """A line of the list: its name, what it is for, and the sheets it stands for, by what they are called."""

    name: str
    purpose: str
    sheets: tuple[tuple[str, str], ...]


def named(sheets: Sequence[Sheet]) -> Iterator[Entry]:
    """The sheets by name, each with what it is for. Neighbours of one group stand on one line."""
    for group, alike in groupby(sheets, key=lambda sheet: sheet.group):
        found = tuple(alike)
        if group and len(found) > 1:
            purpose = found[0].purpose_of_all or found[0].purpose
            yield Entry(group, purpose, tuple((sheet.short, sheet.title) for sheet in found))
        else:
            yield from (Entry(sheet.title, sheet.purpose, (("", sheet.title),)) for sheet in found)
