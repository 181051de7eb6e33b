"""Reads the words and the type of a PDF with PDFium, an outside reader that takes milliseconds a page."""

import ctypes
from collections.abc import Iterator
from typing import Any, NamedTuple

import pypdfium2
import pypdfium2.raw as pdfium


class Run(NamedTuple):
    """Words set in one go: where they stand in points from the lower left corner, and how large they are."""

    words: str
    left: float
    bottom: float
    right: float
    size: float
    marked: int
    """The number of the marked content that they belong to; -1 for none."""


class Leaf(NamedTuple):
    """One page: its size in points, its words in drawing order, and the runs they are set in."""

    width: float
    height: float
    words: str
    runs: tuple[Run, ...]


def page_words(pdf: bytes, password: str | None = None) -> list[str]:
    """The words of each page, with single spaces."""
    document = pypdfium2.PdfDocument(pdf, password=password)
    found = [" ".join(page.get_textpage().get_text_bounded().split()) for page in document]
    document.close()
    return found


def leaves(pdf: bytes) -> Iterator[Leaf]:
    """The pages of a PDF."""
    document = pypdfium2.PdfDocument(pdf)
    for page in document:
        text = page.get_textpage()
        words = " ".join(text.get_text_bounded().split())
        yield Leaf(*page.get_size(), words, tuple(_runs(page, text)))
    document.close()


def _runs(page: Any, text: Any) -> Iterator[Run]:
    for one in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_TEXT]):
        left, bottom, right, _top = one.get_bounds()
        size = ctypes.c_float()
        pdfium.FPDFTextObj_GetFontSize(one.raw, size)
        marked = pdfium.FPDFPageObj_GetMarkedContentID(one.raw)
        yield Run(_words(one, text), left, bottom, right, size.value * one.get_matrix().d, marked)


def _words(one: Any, text: Any) -> str:
    octets = pdfium.FPDFTextObj_GetText(one.raw, text.raw, None, 0)
    room = (ctypes.c_ushort * (octets // 2))()
    pdfium.FPDFTextObj_GetText(one.raw, text.raw, room, octets)
    return bytes(room).decode("utf-16-le").rstrip("\0")
