"""Blocks: what stands one below the other on a page, laid out when made, split when a page is full.

Every block has its final height from the start. `split` gives the part that fits in the room that is
left and the rest, or None when nothing sensible fits; asked at the top of a fresh page it always
gives something, so that nothing can be too long to print.

A block belongs to no document, and once it is laid out nobody changes it: the same one may stand in many.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import NamedTuple, Protocol

from firstpaper.packet.paper.lines import TICK_EMS, Blank, Line, PageNumber, Piece, Tick
from firstpaper.packet.paper.looks import TextLook
from firstpaper.packet.paper.passage import PageOf, Passage, Words
from firstpaper.packet.paper.pen import Pen
from firstpaper.packet.paper.tags import DIVISION, Element, Meaning, Tag, for_all_parts

WRITING_HEIGHT = 20.0  # points of room above a line to write on
BLANK_DROP = 2.5  # points from the foot of the letters to that line
CAP_HEIGHT_EMS = 0.69  # both typefaces
BAR_WIDTH, BAR_HEIGHT, BAR_ROOM = 44.0, 5.0, 14.0  # the bar above a title, and the height it takes up
LIST_ITEM = Tag("LI")
KEEP_LINES = 2  # no fewer lines of a paragraph are left alone at the foot or the top of a page


class Block(Protocol):
    """Something that stands on a page. Lengths are in points; y grows upwards."""

    @property
    def height(self) -> float: ...
    @property
    def before(self) -> float: ...
    @property
    def after(self) -> float: ...
    @property
    def stays_with_next(self) -> bool: ...

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Block, Block] | None":
        """The part no higher than `room`, and the rest."""

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        """Draw with the upper left corner at (x, top), inside of the element `above`."""


@dataclass(slots=True)
class Text:
    """A paragraph or a heading."""

    lines: Sequence[Line]
    look: TextLook
    width: float
    tag: Meaning
    stays_with_next: bool = False
    before: float = 0
    after: float = 0
    aligned: float = 0
    """Where lines stand in the width: 0 left, 0.5 centered, 1 right."""
    bookmark: str = ""
    heads: str = ""
    """The words that head what follows, where this is a heading."""
    height: float = field(init=False)
    _parts: "Sequence[Passage | _Mark] | None" = field(init=False, default=None)

    def __post_init__(self) -> None:
        self.height = sum(map(self._leading, self.lines)) + self._bar_room

    @property
    def _bar_room(self) -> float:
        return BAR_ROOM if self.look.bar else 0.0

    @property
    def first_baseline(self) -> float:
        """How far below its top the first line of text stands."""
        return self._bar_room + self._leading(self.lines[0]) - self._rise

    @property
    def _rise(self) -> float:
        """How far above the foot of its line a baseline stands."""
        return (self.look.leading - CAP_HEIGHT_EMS * self.look.size) / 2

    def _leading(self, line: Line) -> float:
        return max(self.look.leading, self.look.written) if line.for_writing else self.look.leading

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Text, Text] | None":
        if len(self.lines) <= self.look.whole and not fresh:
            return None
        fits = 0
        room -= self._bar_room
        for line in self.lines:
            room -= self._leading(line)
            if room < 0:
                break
            fits += 1
        fits = min(fits, len(self.lines) - KEEP_LINES)
        if fits < KEEP_LINES:
            if not fresh or len(self.lines) < 2:
                return None
            fits = max(fits, 1)
        one = for_all_parts(self.tag)
        plain = replace(self.look, bar=False)
        return (
            replace(self, lines=self.lines[:fits], after=0.0, tag=one),
            replace(self, lines=self.lines[fits:], before=0.0, tag=one, look=plain, bookmark=""),
        )

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        here = pen.within(above, self.tag)
        size = self.look.size
        if self.bookmark:
            pen.bookmark(self.bookmark, 1, top + size)
        if self.look.bar:
            with pen.artifact():
                pen.bar(x, top - BAR_HEIGHT, BAR_WIDTH, BAR_HEIGHT)
            top -= BAR_ROOM
        for part in self._drawn():
            if isinstance(part, Passage):
                pen.write(part, x, top, here)
            elif isinstance(part.what, Tick):
                side = TICK_EMS * size
                foot = top + part.y - (side - CAP_HEIGHT_EMS * size) / 2
                draw_tick(pen, here, part.what, (x + part.x, foot), side)
            else:
                draw_blank(pen, here, part.what, (x + part.x, top + part.y - BLANK_DROP), part.width)

    def _drawn(self) -> "Sequence[Passage | _Mark]":
        """What is drawn below its bar, placed from its upper left corner; found once."""
        if self._parts is None:
            self._parts = tuple(self._found())
        return self._parts

    def _found(self) -> "Iterator[Passage | _Mark]":
        words: list[Words] = []
        foot, size = 0.0, self.look.size
        for line in self.lines:
            foot -= self._leading(line)
            y = foot + self._rise
            for each in line.placed:
                what, x = each.what, each.x + (self.width - line.width) * self.aligned
                if isinstance(what, Piece):
                    words.append(Words(x, y, what.text, what.face, size, *what[2:]))
                elif isinstance(what, PageNumber):
                    words.append(Words(x, y, PageOf(what.sheet, each.width), what.face, size))
                else:
                    if words:
                        yield Passage(words)
                    words = []
                    yield _Mark(what, x, y, each.width)
        if words:
            yield Passage(words)


class _Mark(NamedTuple):
    """Something in a paragraph that is no text: its place from the corner, and its width."""

    what: Tick | Blank
    x: float
    y: float
    width: float


def draw_tick(pen: Pen, above: Element, tick: Tick, corner: tuple[float, float], side: float) -> None:
    """A box to tick with this lower left corner, crossed when marked; or a ring."""
    x, foot = corner
    with pen.drawing(above, tick.alt, (x, foot, x + side, foot + side)):
        if tick.round:
            pen.ring(x, foot, side, 0.8)
            return
        pen.frame(x, foot, side, side, 1.1)
        if tick.marked:
            pen.cross(x, foot, side)


def draw_blank(pen: Pen, above: Element, blank: Blank, start: tuple[float, float], width: float) -> None:
    """A line to write on, from this point to the right."""
    x, y = start
    with pen.drawing(above, blank.alt, (x, y - 1, x + width, y - 1 + WRITING_HEIGHT)):
        pen.rule(x, y, width, 0.8)


@dataclass(slots=True)
class Rule:
    """A thin line across the column."""

    width: float
    before: float = 12
    after: float = 12
    height: float = 0.8
    stays_with_next: bool = False

    def split(self, room: float, *, fresh: bool = False) -> None:
        return None

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        with pen.artifact():
            pen.rule(x, top - self.height / 2, self.width, self.height, grey=0.45)


@dataclass(slots=True)
class PageBreak:
    """The next block starts a new page."""

    before: float = 0
    after: float = 0
    height: float = 0
    stays_with_next: bool = False

    def split(self, room: float, *, fresh: bool = False) -> None:
        return None

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        """There is nothing to see."""


@dataclass(slots=True)
class Stack:
    """Blocks one below the other; between two of them the larger of their two spaces."""

    blocks: Sequence[Block]
    whole_below: float = 0
    """Lower than this it goes to the next page whole rather than be split."""
    tag: Meaning = None
    starts: str = ""
    """The title of the sheet that begins here, its entry in the outline."""
    stays_with_next: bool = False
    height: float = field(init=False)
    before: float = field(init=False, default=0)
    after: float = field(init=False, default=0)

    def __post_init__(self) -> None:
        height, last = 0.0, None
        for block in self.blocks:
            height += _gap(last, block) + block.height
            last = block
        self.height = height
        if self.blocks:
            self.before, self.after = self.blocks[0].before, self.blocks[-1].after

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Stack, Stack] | None":
        if self.height < self.whole_below and not fresh:
            return None
        last: Block | None = None
        for count, block in enumerate(self.blocks):
            if isinstance(block, PageBreak):
                return self._parts(self.blocks[:count], self.blocks[count + 1 :])
            room -= _gap(last, block)
            if block.height > room:
                return self._split_at(count, room, fresh=fresh)
            room -= block.height
            last = block
        return None

    def _parts(self, blocks: Sequence[Block], rest: Sequence[Block]) -> "tuple[Stack, Stack]":
        one = for_all_parts(self.tag)
        return replace(self, blocks=blocks, tag=one), replace(self, blocks=rest, tag=one, starts="")

    def flat(self) -> list[Block]:
        """The blocks in order, those of stacks inside among them."""
        return [
            kid for block in self.blocks for kid in (block.flat() if isinstance(block, Stack) else (block,))
        ]

    def _split_at(self, count: int, room: float, *, fresh: bool) -> "tuple[Stack, Stack] | None":
        """Split inside block `count`, or before it and before the headings that lead to it."""
        block = self.blocks[count]
        parts = block.split(room, fresh=fresh and count == 0)
        if parts is None:
            start = count
            while start and self.blocks[start - 1].stays_with_next:
                start -= 1
            if start == len(self.blocks) - 1 > 1 and isinstance(block, Item):
                start -= 1  # the last item takes the one above along, so as not to stand alone
            if start:
                return self._parts(self.blocks[:start], self.blocks[start:])
            if fresh and count:
                parts = block.split(room, fresh=True)
                if parts is None:
                    return self._parts(self.blocks[:count], self.blocks[count:])
        if parts is None:
            return None
        head, rest = parts
        return self._parts([*self.blocks[:count], head], [rest, *self.blocks[count + 1 :]])

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        here = pen.within(above, self.tag)
        if self.starts:
            pen.bookmark(self.starts, 0, top + self._first_size)
        last: Block | None = None
        for block in self.blocks:
            top -= _gap(last, block)
            block.draw(pen, x, top, here)
            top -= block.height
            last = block

    @property
    def _first_size(self) -> float:
        """How large the letters are with which it begins."""
        return next((block.look.size for block in self.flat() if isinstance(block, Text)), 0.0)


def _gap(last: Block | None, block: Block) -> float:
    return 0.0 if last is None else max(last.after, block.before)


@dataclass(slots=True)
class Item:
    """A list item: its label hangs at the left of its body."""

    label: Text | None
    body: Stack
    indent: float
    before: float
    after: float
    stays_with_next: bool = False
    tag: Meaning = LIST_ITEM

    @property
    def height(self) -> float:
        return max(self.body.height, self.label.height) if self.label is not None else self.body.height

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Item, Item] | None":
        parts = self.body.split(room, fresh=fresh)
        if parts is None:
            return None
        head, rest = parts
        one = for_all_parts(self.tag)
        return (
            replace(self, body=head, after=0, tag=one),
            replace(self, label=None, body=rest, before=0, tag=one),
        )

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        here = pen.within(above, self.tag)
        if self.label is not None:
            first = self.body.blocks[0] if self.body.blocks else None
            drop = first.first_baseline - self.label.first_baseline if isinstance(first, Text) else 0.0
            self.label.draw(pen, x, top - drop, here)
        self.body.draw(pen, x + self.indent, top, here)


@dataclass(slots=True)
class Remark:
    """A boxed remark: a note has a bar at its left, a warning a heavy frame."""

    body: Stack
    width: float
    framed: bool
    before: float = 12
    after: float = 12
    stays_with_next: bool = False
    tag: Meaning = DIVISION

    PADDING = 11.0
    INDENT = 14.0

    @property
    def height(self) -> float:
        return self.body.height + 2 * self._padding

    @property
    def _padding(self) -> float:
        return self.PADDING if self.framed else 3.0

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Remark, Remark] | None":
        parts = self.body.split(room - 2 * self._padding, fresh=fresh)
        if parts is None:
            return None
        head, rest = parts
        one = for_all_parts(self.tag)
        return replace(self, body=head, after=0, tag=one), replace(self, body=rest, before=0, tag=one)

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        foot = top - self.height
        with pen.artifact():
            if self.framed:
                pen.frame(x, foot, self.width, self.height, 2)
            else:
                pen.bar(x, foot, 3, self.height)
        self.body.draw(pen, x + self.INDENT, top - self._padding, pen.within(above, self.tag))
