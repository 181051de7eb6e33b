"""Breaking text into lines."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from firstpaper.packet.paper.fonts import Face

TICK_EMS = 0.86  # side of a box to tick
MARK_GAP_EMS = 0.5  # space after such a box where no space is written
LEAST_BLANK = 90.0  # points; the shortest line to write on


class Piece(NamedTuple):
    """Text in one typeface and shade; `lang` is its language where that is not the sheet's."""

    text: str
    face: Face
    grey: float = 0
    lang: str = ""

    def alike(self, other: "Piece") -> bool:
        """Whether the two can be drawn at once."""
        return self.face is other.face and self[2:] == other[2:]


class Tick(NamedTuple):
    """A box to tick, drawn in the line of text; a round one only keeps the reader's place.

    `alt` is what a screen reader says of it.
    """

    marked: bool
    alt: str
    round: bool = False


class PageNumber(NamedTuple):
    """The page on which the sheet of this title starts. It is known once all sheets are laid out."""

    sheet: str
    face: Face


class Blank(NamedTuple):
    """A line to write on by hand; `share` is its part of the column, 0 for the rest of the line."""

    share: float
    alt: str


class LineBreak(NamedTuple):
    """A forced end of line."""


Inline = Piece | Tick | Blank | PageNumber | LineBreak
Mark = Tick | Blank | PageNumber
"""What is drawn in a line and is not text of the sheet."""
PAGE_DIGITS = "00"


class Placed(NamedTuple):
    """Something in a line: its offset from the left edge and its width, in points."""

    x: float
    width: float
    what: Piece | Mark


class Line(NamedTuple):
    """One line of text."""

    placed: Sequence[Placed]
    width: float
    for_writing: bool
    """Whether somebody writes on this line by hand, so that it needs room above."""


_Part = tuple[Piece | Mark, float]


@dataclass(slots=True)
class _Word:
    parts: list[_Part]
    width: float

    def add(self, what: Piece | Mark, width: float) -> None:
        self.parts.append((what, width))
        self.width += width


@lru_cache(maxsize=4096)
def break_lines(items: tuple[Inline, ...], size: float, width: float) -> Sequence[Line]:
    """`items` set at `size` points in lines no wider than `width` points; at least one line.

    Text that starts with a box to tick hangs: its later lines start to the right of the box. What was found
    is kept, since most paragraphs stand in many packets.
    """
    hang = (TICK_EMS + MARK_GAP_EMS) * size if items and isinstance(items[0], Tick) else 0.0
    setter = _Setter(size, width, hang)
    for word in _words(items, size, width):
        if word is None:
            setter.wrap()
        else:
            setter.place(word)
    if not setter.at_start or not setter.lines:
        setter.end_line()
    return setter.lines


def _words(items: Iterable[Inline], size: float, width: float) -> Iterator[_Word | None]:
    """The unbreakable parts; None is a forced end of line."""
    word = _Word([], 0)
    for item in items:
        if isinstance(item, Piece):
            for count, text in enumerate(item.text.split(" ")):
                if count and word.parts:
                    yield word
                    word = _Word([], 0)
                if text:
                    word.add(Piece(text, item.face, item.grey, item.lang), item.face.width(text) * size)
        elif isinstance(item, Tick):
            word.add(item, TICK_EMS * size)
        elif isinstance(item, PageNumber):
            word.add(item, item.face.width(PAGE_DIGITS) * size)
        else:
            if word.parts:
                yield word
                word = _Word([], 0)
            if isinstance(item, Blank):
                wide = item.share * width or LEAST_BLANK
                yield _Word([(item, wide)], wide)
            else:
                yield None
    if word.parts:
        yield word


class _Setter:
    """Fills line after line, as many words to a line as go in.

    Neighbours in the same typeface, shade and language are gathered, with the spaces between them, into one
    piece, the open one, so that they are drawn at once.
    """

    def __init__(self, size: float, width: float, hang: float) -> None:
        self.size = size
        self.width = width
        self.hang = hang
        self.lines: list[Line] = []
        self.parts: list[Placed] = []
        self.used = 0.0
        self.for_writing = False
        self._texts: list[str] = []
        self._open: Piece
        self._open_at = 0.0

    def place(self, word: _Word) -> None:
        space = self._space()
        if space and self.used + space + word.width > self.width:
            self.wrap()
        elif space:
            self._add_space(space)
        for what, wide in word.parts:
            if not isinstance(what, Piece):
                self._add_mark(what, wide)
            elif word.width > self.width - self.hang:
                self._add_split(what)
            else:
                self._add_text(what, wide)

    def wrap(self) -> None:
        """Close a line between two words: the space stays in the text for whoever reads it aloud."""
        width = self.used
        self._add_space(self._space())
        self.end_line(width)

    def end_line(self, width: float | None = None) -> None:
        """Close the line, which is as wide as what is in it unless `width` is given."""
        self._close_piece()
        self.lines.append(Line(self.parts, self.used if width is None else width, self.for_writing))
        self.parts = []
        self.used = self.hang
        self.for_writing = False

    @property
    def at_start(self) -> bool:
        """Whether nothing is in the line yet."""
        return not self.parts and not self._texts

    def _add_text(self, piece: Piece, wide: float) -> None:
        if not self._texts or not piece.alike(self._open):
            self._close_piece()
            self._open, self._open_at = piece, self.used
        self._texts.append(piece.text)
        self.used += wide

    def _add_split(self, piece: Piece) -> None:
        """A word wider than a whole line is cut between any two characters."""
        for char in piece.text:
            step = piece.face.width(char) * self.size
            if self.used + step > self.width and not self.at_start:
                self.end_line()
            self._add_text(piece._replace(text=char), step)

    def _add_mark(self, mark: Mark, wide: float) -> None:
        self._close_piece()
        if isinstance(mark, Blank):
            self.for_writing = True
            wide = min(wide, self.width - self.used) if mark.share else self.width - self.used
        self.parts.append(Placed(self.used, wide, mark))
        self.used += wide

    def _space(self) -> float:
        """The width of a space after what is in the line."""
        if self._texts:
            return self._open.face.width(" ") * self.size
        return MARK_GAP_EMS * self.size if self.parts else 0.0

    def _add_space(self, space: float) -> None:
        if self._texts:
            self._texts.append(" ")
        self.used += space

    def _close_piece(self) -> None:
        if self._texts:
            piece = self._open._replace(text="".join(self._texts))
            self.parts.append(Placed(self._open_at, self.used - self._open_at, piece))
            self._texts = []
