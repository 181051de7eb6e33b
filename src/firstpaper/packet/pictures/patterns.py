"""What fills a bar: black, white, or lines on white, so that bars can be told apart without any shade."""

from collections.abc import Iterator
from enum import StrEnum

from firstpaper.packet.pictures.shapes import Area, Shape, Stroke

GAP = 4.0
"""From one line of a pattern to the next."""
LINE = 0.8


class Pattern(StrEnum):
    """The looks of a bar: black, white, lines that rise or fall, both of them, or upright lines."""

    BLACK = "black"
    WHITE = "white"
    RISING = "rising"
    FALLING = "falling"
    CROSSED = "crossed"
    UPRIGHT = "upright"


def box(left: float, right: float, top: float, foot: float, pattern: Pattern) -> Iterator[Shape]:
    """A box with its pattern."""
    corners = ((left, top), (right, top), (right, foot), (left, foot))
    yield Area(corners, black=pattern is Pattern.BLACK)
    if pattern in (Pattern.RISING, Pattern.CROSSED):
        yield from rising(left, right, top, foot)
    if pattern in (Pattern.FALLING, Pattern.CROSSED):
        for one in rising(left, right, top, foot):
            yield Stroke(one.x1, top + foot - one.y1, one.x2, top + foot - one.y2, LINE)
    if pattern is Pattern.UPRIGHT:
        count = int((right - left) / GAP)
        yield from (Stroke(left + GAP * n, top, left + GAP * n, foot, LINE) for n in range(1, count + 1))


def rising(left: float, right: float, top: float, foot: float) -> Iterator[Stroke]:
    """Slanted lines, cut off at the edges of the box."""
    start = left - (foot - top) + GAP
    while start < right:
        x1, x2 = max(start, left), min(start + foot - top, right)
        yield Stroke(x1, foot - (x1 - start), x2, foot - (x2 - start), LINE)
        start += GAP
