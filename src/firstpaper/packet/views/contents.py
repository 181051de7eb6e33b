"""The list of sheets on a page to start from."""

from collections.abc import Iterator, Sequence
from itertools import groupby

from firstpaper.locale import _
from firstpaper.packet.views.sheet import Sheet


def named(sheets: Sequence[Sheet]) -> Iterator[tuple[str, str]]:
    """The sheets by name, each with what it is for. Neighbours of one group stand on one line."""
    for group, alike in groupby(sheets, key=lambda sheet: sheet.group):
        found = tuple(alike)
        if group and len(found) > 1:
            yield group, _("Copy them onto the blank form. They say what to mark and write in every item.")
        else:
            yield from ((sheet.title, sheet.purpose) for sheet in found)
