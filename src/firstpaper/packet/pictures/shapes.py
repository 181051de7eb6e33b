"""The shapes of a laid-out picture. Lengths are in points; x grows to the right and y downwards.

Everything is black, white or grey, and nothing is told by a shade alone: what lies behind a bar is its
pattern, and every bar has words beside it.
"""

from collections.abc import Sequence
from typing import NamedTuple

FONT_SIZE = 12.0
"""The size of all words in a picture, the least that a sheet may have."""


class Stroke(NamedTuple):
    """A straight line. `grey` is 0 for black."""

    x1: float
    y1: float
    x2: float
    y2: float
    weight: float = 0.8
    grey: float = 0


class Area(NamedTuple):
    """A closed figure: black, or white with a black outline."""

    corners: tuple[tuple[float, float], ...]
    black: bool


class Label(NamedTuple):
    """Words on one line, from x on, with their baseline at y, set `width` wide."""

    x: float
    y: float
    text: str
    width: float
    bold: bool = False


Shape = Stroke | Area | Label


class Drawing(NamedTuple):
    """A picture ready to draw, in a frame from (0, 0). `alt` says in words all that it shows."""

    width: float
    height: float
    alt: str
    shapes: Sequence[Shape]
