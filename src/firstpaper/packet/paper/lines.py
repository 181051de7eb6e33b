"""Breaking text into lines."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from firstpaper.packet.paper.fonts import Face
from firstpaper.packet.paper.tags import Element

TICK_EMS = 0.86  # side of a box to tick
MARK_GAP_EMS = 0.5  # space after such a box where no space is written
LEAST_BLANK = 90.0  # points; the shortest line to write on


@dataclass(frozen=True, slots=True)
class Piece:
    """Text in one typeface and shade."""

    text: str
    face: Face
    grey: float = 0


@dataclass(frozen=True, slots=True)
class Tick:
    """A box to tick, drawn in the line of text."""

    marked: bool
    element: Element


@dataclass(frozen=True, slots=True)
class Blank:
    """A line to write on by hand; `share` is its part of the column, 0 for the rest of the line."""

    share: float
    element: Element


class LineBreak:
    """A forced end of line."""


Inline = Piece | Tick | Blank | LineBreak


@dataclass(frozen=True, slots=True)
class Placed:
    """Something in a line: its offset from the left edge and its width, in points."""

    x: float
    width: float
    what: Piece | Tick | Blank


@dataclass(frozen=True, slots=True)
class Line:
    """One line of text."""

    placed: tuple[Placed, ...]
    width: float

    @property
    def for_writing(self) -> bool:
        """Whether somebody writes on this line by hand, so that it needs room above."""
        return any(isinstance(each.what, Blank) for each in self.placed)


_Part = tuple[Piece | Tick | Blank, float]


@dataclass(slots=True)
class _Word:
    parts: list[_Part]
    width: float

    def add(self, what: Piece | Tick | Blank, width: float) -> None:
        self.parts.append((what, width))
        self.width += width


def break_lines(items: Sequence[Inline], size: float, width: float) -> list[Line]:
    """`items` set at `size` points in lines no wider than `width` points; at least one line.

    Text that starts with a box to tick hangs: its later lines start to the right of the box.
    """
    hang = (TICK_EMS + MARK_GAP_EMS) * size if items and isinstance(items[0], Tick) else 0.0
    setter = _Setter(size, width, hang)
    for word in _words(items, size, width):
        if word is None:
            setter.end_line()
        else:
            setter.place(word)
    if setter.parts or not setter.lines:
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
                    word.add(Piece(text, item.face, item.grey), item.face.width(text) * size)
        elif isinstance(item, Tick):
            word.add(item, TICK_EMS * size)
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
    """Fills line after line, as many words to a line as go in."""

    def __init__(self, size: float, width: float, hang: float) -> None:
        self.size = size
        self.width = width
        self.hang = hang
        self.lines: list[Line] = []
        self.parts: list[Placed] = []
        self.used = 0.0

    def place(self, word: _Word) -> None:
        space = self._space() if self.parts else 0.0
        if self.parts and self.used + space + word.width > self.width:
            self.end_line(space)
        elif space:
            self._add_space(space)
        for what, wide in word.parts:
            if isinstance(what, Blank) and not what.share:
                self._append(what, self.width - self.used)
            elif isinstance(what, Piece) and word.width > self.width - self.hang:
                self._append_split(what)
            else:
                self._append(what, wide)

    def end_line(self, space: float = 0) -> None:
        """Close the line; where it wraps, the space stays in the text for whoever reads it aloud."""
        width = self.used
        if space:
            self._add_space(space)
        self.lines.append(Line(tuple(_merged(self.parts)), width))
        self.parts = []
        self.used = self.hang

    def _append(self, what: Piece | Tick | Blank, wide: float) -> None:
        self.parts.append(Placed(self.used, wide, what))
        self.used += wide

    def _append_split(self, piece: Piece) -> None:
        """A word wider than a whole line is cut between any two characters."""
        for char in piece.text:
            step = piece.face.width(char) * self.size
            if self.parts and self.used + step > self.width:
                self.end_line()
            self._append(Piece(char, piece.face, piece.grey), step)

    def _space(self) -> float:
        last = self.parts[-1].what
        return last.face.width(" ") * self.size if isinstance(last, Piece) else MARK_GAP_EMS * self.size

    def _add_space(self, space: float) -> None:
        last = self.parts[-1]
        if isinstance(last.what, Piece):
            spaced = Piece(last.what.text + " ", last.what.face, last.what.grey)
            self.parts[-1] = Placed(last.x, last.width + space, spaced)
        self.used += space


def _merged(parts: Iterable[Placed]) -> Iterator[Placed]:
    """Neighbours in the same typeface and shade, joined to be drawn as one."""
    for _, group in groupby(parts, key=_drawn_alike):
        first, *others = group
        if not others or not isinstance(first.what, Piece):
            yield from (first, *others)
            continue
        text = "".join(part.what.text for part in (first, *others) if isinstance(part.what, Piece))
        width = first.width + sum(part.width for part in others)
        yield Placed(first.x, width, Piece(text, first.what.face, first.what.grey))


def _drawn_alike(part: Placed) -> tuple[Face, float] | None:
    return (part.what.face, part.what.grey) if isinstance(part.what, Piece) else None
