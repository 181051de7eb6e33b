"""Two columns beside each other, read down the left one first."""

from dataclasses import dataclass, field, replace

from firstpaper.packet.paper.blocks import Stack
from firstpaper.packet.paper.pen import Pen
from firstpaper.packet.paper.tags import SECTION, Element, Meaning, for_all_parts

_CLOSE_ENOUGH = 2.0  # points


@dataclass(slots=True)
class Columns:
    """What is laid out in half the width, cut into a left and a right column of about one height."""

    body: Stack
    offset: float
    """How far to the right of the left column the right one starts, in points."""
    gap: float
    """The room between the columns, and half of it to what stands below, in points."""
    whole_below: float
    """Lower than this they go to the next page whole: who reads on there would lose the order."""
    stays_with_next: bool = False
    tag: Meaning = SECTION
    height: float = field(init=False)
    before: float = field(init=False)
    after: float = field(init=False)
    left: Stack = field(init=False)
    right: Stack = field(init=False)

    def __post_init__(self) -> None:
        self._set(*_balanced(self.body))

    def _set(self, left: Stack, right: Stack) -> None:
        self.left, self.right = left, right
        self.height = max(left.height, right.height)
        self.before, self.after = self.body.before, max(self.body.after, self.gap / 2)

    def split(self, room: float, *, fresh: bool = False) -> "tuple[Columns, Columns] | None":
        """Both columns filled as far as they go, and the rest."""
        if self.height < self.whole_below and not fresh:
            return None
        parts = self.body.split(room, fresh=fresh)
        if parts is None:
            return None
        left, right = parts
        right, rest = right.split(room) or (Stack([]), right)
        one = for_all_parts(self.tag)
        head = replace(self, tag=one)
        head._set(left, right)
        return head, replace(self, tag=one, body=rest)

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        here = pen.within(above, self.tag)
        self.left.draw(pen, x, top, here)
        self.right.draw(pen, x + self.offset, top, here)


def _balanced(body: Stack) -> tuple[Stack, Stack]:
    """The body cut so that the higher part is as low as can be."""
    best = body, Stack([])
    low, high = body.height / 2, body.height
    while high - low > _CLOSE_ENOUGH:
        middle = (low + high) / 2
        parts = body.split(middle)
        if parts and parts[1].height <= middle:
            best, high = parts, middle
        else:
            low = middle
    return best
