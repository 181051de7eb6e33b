"""Sheets drawn by themselves and read back."""

from collections.abc import Iterable
from datetime import date

from firstpaper.packet.drawing import drawn
from firstpaper.packet.views.sheet import Sheet
from tests.packet.reading_pdf import page_words


def words_of(sheets: Iterable[Sheet], on: date = date(2026, 11, 25)) -> list[str]:
    """The words of each page, with single spaces."""
    return page_words(drawn(sheets, "Sheets", on))
