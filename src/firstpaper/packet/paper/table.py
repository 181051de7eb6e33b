"""Tables: rows that stay whole when short, a header repeated on every page."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import NamedTuple

from firstpaper.packet.paper.blocks import Stack
from firstpaper.packet.paper.pen import Pen
from firstpaper.packet.paper.tags import Element, Meaning, for_all_parts


class Cell(NamedTuple):
    """A cell of a row: its content and its offset from the left edge of the table, in points."""

    x: float
    body: Stack


@dataclass(slots=True)
class Row:
    """A row of cells."""

    cells: Sequence[Cell]
    padding: float
    whole_below: float
    tag: Meaning

    @property
    def height(self) -> float:
        return max(cell.body.height for cell in self.cells) + 2 * self.padding

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Row, Row] | None":
        """The row cut at one height through all its cells."""
        if self.height < self.whole_below and not fresh:
            return None
        room -= 2 * self.padding
        heads, rests = list[Cell](), list[Cell]()
        for cell in self.cells:
            head, rest = cell.body, Stack([])
            if cell.body.height > room:
                parts = cell.body.split(room, fresh=fresh)
                if parts is None:
                    return None
                head, rest = parts
            heads.append(Cell(cell.x, head))
            rests.append(Cell(cell.x, rest))
        if not any(rest.body.blocks for rest in rests):
            return None
        one = for_all_parts(self.tag)
        return Row(heads, self.padding, 0, one), Row(rests, self.padding, self.whole_below, one)

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        here = pen.within(above, self.tag)
        for cell in self.cells:
            cell.body.draw(pen, x + cell.x, top - self.padding, here)


@dataclass(slots=True)
class Table:
    """A table. `continued` says that its header was drawn before, so that now it is only decoration."""

    header: Sequence[Row]
    rows: Sequence[Row]
    width: float
    ruled: bool
    before: float
    after: float
    tag: Meaning
    continued: bool = False
    stays_with_next: bool = False
    height: float = field(init=False)

    def __post_init__(self) -> None:
        self.height = self._header_height + sum(row.height for row in self.rows)

    @property
    def _header_height(self) -> float:
        return sum(row.height for row in self.header)

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Table, Table] | None":
        room -= self._header_height
        for count, row in enumerate(self.rows):
            if row.height <= room:
                room -= row.height
                continue
            parts = row.split(room, fresh=fresh and count == 0)
            if parts is not None:
                return self._parts([*self.rows[:count], parts[0]], [parts[1], *self.rows[count + 1 :]])
            # the last row takes the one above along, so as not to stand alone
            alone = 0 < count == len(self.rows) - 1 and (count > 1 or not fresh)
            cut = count - alone
            return self._parts(self.rows[:cut], self.rows[cut:]) if cut > 0 else None
        return None

    def _parts(self, rows: Sequence[Row], rest: Sequence[Row]) -> "tuple[Table, Table]":
        one = for_all_parts(self.tag)
        return (
            replace(self, rows=rows, after=0, tag=one),
            replace(self, rows=rest, before=0, continued=True, tag=one),
        )

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        here = pen.within(above, self.tag)
        heights = [row.height for row in (*self.header, *self.rows)]
        if self.ruled:
            with pen.artifact():
                self._draw_rules(pen, x, top, heights)
        for count, row in enumerate((*self.header, *self.rows)):
            if self.continued and count < len(self.header):
                with pen.artifact("/Pagination"):
                    row.draw(pen, x, top, here)
            else:
                row.draw(pen, x, top, here)
            top -= heights[count]

    def _draw_rules(self, pen: Pen, x: float, top: float, heights: Sequence[float]) -> None:
        """A heavy line below the header, thin ones between rows, a black one at the foot."""
        if not self.header:
            pen.rule(x, top, self.width, 0.8)
        for count, height in enumerate(heights, start=1):
            top -= height
            if count == len(self.header):
                pen.rule(x, top, self.width, 1.4)
            elif count == len(heights):
                pen.rule(x, top, self.width, 0.8)
            else:
                pen.rule(x, top, self.width, 0.5, grey=0.55)
