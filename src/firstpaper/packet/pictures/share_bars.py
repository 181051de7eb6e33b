"""Laying a chart of shares out: each bar under its words, and the key to the patterns below them all."""

from collections.abc import Iterator

from firstpaper.packet.pictures.lettering import LEADING, RISE, Measure, lines_of
from firstpaper.packet.pictures.patterns import box
from firstpaper.packet.pictures.shapes import Area, Drawing, Label, Shape
from firstpaper.packet.pictures.shares import Bar, Key, Shares
from firstpaper.packet.pictures.words import alt_of

BAR = 20.0  # the height of a bar
GAP = 8.0  # below a bar
SWATCH, SWATCH_GAP = 22.0, 10.0
LEAST_PART = 2.0  # the width of a part too small to see


def drawn_shares(chart: Shares, width: float, measure: Measure) -> Drawing:
    """The chart in a frame so many points wide."""
    longest = max((bar.whole for bar in chart.bars), default=0)
    shapes: list[Shape] = []
    top = 0.0
    for bar in chart.bars:
        share = float(bar.whole / longest) if longest else 0.0
        shapes += _bar(bar, top, width, width * share, measure)
        top = _below(shapes) + GAP
    for key in chart.keys:
        shapes += _key(key, top, width, measure)
        top = _below(shapes) + RISE
    return Drawing(width, top, alt_of(chart), shapes)


def _bar(bar: Bar, top: float, width: float, length: float, measure: Measure) -> Iterator[Shape]:
    lines = lines_of(bar.title, width, measure, bold=True)
    for number, text in enumerate(lines, start=1):
        yield Label(0, top + LEADING * number - RISE, text, measure(text, True), bold=True)
    top += LEADING * len(lines)
    left = 0.0
    for part, long in zip(bar.parts, _lengths(bar, length), strict=True):
        yield from box(left, left + long, top, top + BAR, part.pattern)
        left += long


def _lengths(bar: Bar, length: float) -> list[float]:
    """How long each part is; one too small to see is drawn a little longer, and the others give way."""
    wanted = [max(length * float(part.amount / bar.whole), LEAST_PART) for part in bar.parts]
    return [one * length / sum(wanted) for one in wanted]


def _key(key: Key, top: float, width: float, measure: Measure) -> Iterator[Shape]:
    yield from box(0, SWATCH, top + RISE, top + LEADING, key.pattern)
    left = SWATCH + SWATCH_GAP
    for number, text in enumerate(lines_of(key.words, width - left, measure, bold=False), start=1):
        yield Label(left, top + LEADING * number - RISE + 1, text, measure(text, False))


def _below(shapes: list[Shape]) -> float:
    """Where the lowest of the shapes ends."""
    feet = [shape.y + RISE for shape in shapes if isinstance(shape, Label)]
    feet += [y for shape in shapes if isinstance(shape, Area) for _x, y in shape.corners]
    return max(feet, default=0.0)
