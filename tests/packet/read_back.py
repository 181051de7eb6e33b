"""Sheets drawn by themselves and read back."""

from collections.abc import Iterable
from datetime import date
from io import BytesIO

from pypdf import PdfReader

from firstpaper.packet.drawing import drawn
from firstpaper.packet.views.sheet import Sheet


def words_of(sheets: Iterable[Sheet], on: date = date(2026, 11, 25)) -> list[str]:
    """The words of each page, with single spaces."""
    pdf = PdfReader(BytesIO(drawn(sheets, "Sheets", on)))
    return [" ".join(page.extract_text().split()) for page in pdf.pages]
