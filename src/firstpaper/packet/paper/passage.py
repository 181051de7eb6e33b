"""Words that are drawn at once, and as many of their operators as need no document.

A passage belongs to no document, as the block that it stands in: most paragraphs stand in many packets, and
what is made ready for one is there for all.
"""

from collections.abc import Iterable, Iterator
from itertools import groupby
from typing import NamedTuple

from firstpaper.packet.paper.fonts import Face, in_string


class PageOf(NamedTuple):
    """The page on which the sheet of this title starts; there is room for `width` points.

    What stands behind it on its line moves up to it.
    """

    sheet: str
    width: float


class Words(NamedTuple):
    """A piece of text to draw, at its baseline; `grey` is 0 for black, `lang` a language of its own."""

    x: float
    y: float
    text: str | PageOf
    face: Face
    size: float
    grey: float = 0
    lang: str = ""

    @property
    def end(self) -> float:
        """Where it ends, or the room for it."""
        if isinstance(self.text, PageOf):
            return self.x + self.text.width
        return self.x + self.face.width(self.text) * self.size


class SetIn(NamedTuple):
    """The typeface in which text is set from here on. What it is called, each document decides."""

    face: Face
    size: float


Part = str | SetIn | Words
"""Operators, or what only a document can make operators of."""


class Passage:
    """Words and page numbers in the order they are read, each placed from one corner."""

    __slots__ = ("parts",)

    def __init__(self, words: Iterable[Words]) -> None:
        self.parts = tuple(_joined(_operators(words)))


def _joined(parts: Iterable[Part]) -> Iterator[Part]:
    """The parts, with neighbouring operators in one text."""
    for are_operators, run in groupby(parts, lambda part: isinstance(part, str)):
        if are_operators:
            yield " ".join(map(str, run))
        else:
            yield from run


def _operators(words: Iterable[Words]) -> Iterator[Part]:
    """The text operators (ISO 32000-1, 9.4); a piece in another language is a span (14.9.2)."""
    at_x, at_y, grey = 0.0, 0.0, 0.0
    set_in: SetIn | None = None
    after: Words | None = None  # what a piece follows on its line, where a page number came before
    for piece in words:
        if after and after.y == piece.y:
            yield f"[{(after.end - piece.x) / after.size * 1000:.0f}] TJ"
        else:
            x, y = round(piece.x, 2), round(piece.y, 2)
            yield f"{x - at_x:.2f} {y - at_y:.2f} Td"
            at_x, at_y, after = x, y, None
        if after or isinstance(piece.text, PageOf):
            after = piece
        if piece.grey != grey:
            grey = piece.grey
            yield f"{grey:g} g"
        if piece.lang:
            yield f"/Span <</Lang ({piece.lang})>> BDC"
        if isinstance(piece.text, str) and piece.text.isascii():
            if set_in != (set_in := SetIn(piece.face, piece.size)):
                yield set_in
            yield f"{in_string(piece.text)} Tj"
        else:
            set_in = None
            yield piece
        if piece.lang:
            yield "EMC"
    if grey:
        yield "0 g"
