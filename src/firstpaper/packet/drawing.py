"""From sheets to the bytes of one PDF."""

from collections.abc import Iterable
from datetime import date

from firstpaper.locale import language
from firstpaper.packet.templates import render
from firstpaper.packet.views.sheet import Sheet


def drawn(sheets: Iterable[Sheet], title: str, on: date) -> bytes:
    """The sheets as one tagged PDF that carries the day `on`. The same sheets give the same bytes."""
    from firstpaper.packet.paper import SheetSource, draw  # noqa: PLC0415  (slow to import)

    sources = [
        SheetSource(sheet.title, render(sheet.template, sheet.values), sheet.style, sheet.running)
        for sheet in sheets
    ]
    return draw(sources, title=title, lang=language(), on=on)
