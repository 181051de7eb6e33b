"""Laying a chart out: words at the left, bars and marks over the days at the right.

Each row has a band of its own for its words and its bars, so that no words can meet.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from itertools import pairwise
from typing import NamedTuple

from firstpaper.counting import MissingDay, add_months, short_month
from firstpaper.packet.pictures.chart import Chart, Fill, Line, Mark, Row, Span
from firstpaper.packet.pictures.lettering import LEADING, RISE, Measure, cut, lines_of
from firstpaper.packet.pictures.patterns import rising
from firstpaper.packet.pictures.shapes import Area, Drawing, Label, Shape, Stroke
from firstpaper.packet.pictures.words import alt_of

PADDING = 6.0  # above and below the words of a row
WORDS_SHARE = 0.46  # of the width, for the words of the rows
COLUMN_GAP = 14.0
TICK_GAP = 10.0  # between two names of months
BAR = 11.0  # the height of a bar
DIAMOND = 6.5  # from the middle of a mark to its tip
RIM, WHITE = 4.0, 1.0
ARROW = 8.0
LEAST_BAR = 2.0
HIGHEST = 500.0  # of the rows of one drawing, so that it goes on a page with a heading above it
HEAD_GAP = 5.0  # below the names of months
LINE_END = 4.0  # how far the heavy line reaches beyond the rows
LINE_GAP = 3.0  # below its end, to its words
GRID_GREY, ROW_GREY = 0.72, 0.55
DAYS_IN_MONTH = 31
STEPS = (1, 2, 3, 6, 12, 24, 60, 120, 240)  # months from tick to tick


def drawings_of(chart: Chart, width: float, measure: Measure) -> tuple[Drawing, ...]:
    """The chart laid out in a frame so many points wide: one drawing, or several where it is too high."""
    parts = list(_parts(chart.rows, width, measure)) or [()]
    return tuple(_drawing(replace(chart, rows=rows), width, measure) for rows in parts)


def _parts(rows: Sequence[Row], width: float, measure: Measure) -> Iterator[tuple[Row, ...]]:
    """The rows in groups, none of them higher than `HIGHEST`."""
    group: list[Row] = []
    top = 0.0
    for band in _bands(rows, 0, _words_width(width), measure):
        if group and band.foot - top > HIGHEST:
            yield tuple(group)
            group, top = [], band.top
        group.append(band.row)
    if group:
        yield tuple(group)


def _words_width(width: float) -> float:
    return width * WORDS_SHARE


def _drawing(chart: Chart, width: float, measure: Measure) -> Drawing:
    scale = _Scale(chart.first, chart.last, _words_width(width) + COLUMN_GAP, width)
    head = LEADING + HEAD_GAP
    bands = list(_bands(chart.rows, head, _words_width(width), measure))
    foot = bands[-1].foot if bands else head
    shapes: list[Shape] = [*_grid(scale, head, foot, measure)]
    for band in bands:
        shapes.append(Stroke(0, band.top, width, band.top, 0.5, ROW_GREY))
        shapes += band.words
        shapes += (shape for span in band.row.spans for shape in _bar(span, scale, band.middle))
    shapes.append(Stroke(0, foot, width, foot, 0.5, ROW_GREY))
    height = foot + 0.5
    for number, line in enumerate(filter(None, (chart.line, chart.today))):
        height = foot + LINE_END + LINE_GAP + LEADING * (number + 1)
        shapes += [
            _line(line, scale, head, foot + LINE_END),
            _line_words(line, scale, height - RISE, measure),
        ]
    shapes += (
        shape for band in bands for mark in band.row.marks for shape in _mark(mark, scale, band.middle)
    )
    return Drawing(width, height, alt_of(chart), shapes)


class _Scale(NamedTuple):
    """Where a day stands between two edges."""

    first: date
    last: date
    left: float
    right: float

    def begin(self, day: date) -> float:
        """The left edge of the day, kept inside."""
        return self._after((day - self.first).days)

    def end(self, day: date) -> float:
        """The right edge of the day, kept inside."""
        return self._after((day - self.first).days + 1)

    def middle(self, day: date) -> float:
        """The middle of the day, kept inside."""
        return (self.begin(day) + self.end(day)) / 2

    def _after(self, days: int) -> float:
        share = days / ((self.last - self.first).days + 1)
        return self.left + (self.right - self.left) * min(max(share, 0.0), 1.0)


class _Band(NamedTuple):
    """The room of one row, with its words in place."""

    row: Row
    top: float
    foot: float
    words: Sequence[Label]

    @property
    def middle(self) -> float:
        return (self.top + self.foot) / 2


def _bands(rows: Sequence[Row], top: float, width: float, measure: Measure) -> Iterator[_Band]:
    for row in rows:
        lines = [(text, True) for text in lines_of(row.title, width, measure, bold=True)]
        for note in row.notes:
            lines += [(text, False) for text in lines_of(note, width, measure, bold=False)]
        words = [
            Label(0, top + PADDING + LEADING * count - RISE, text, measure(text, bold), bold)
            for count, (text, bold) in enumerate(lines, start=1)
        ]
        foot = top + 2 * PADDING + LEADING * max(len(lines), 1)
        yield _Band(row, top, foot, words)
        top = foot


def _grid(scale: _Scale, head: float, foot: float, measure: Measure) -> Iterator[Shape]:
    """The names of months or years over the rows, each with a thin line down through them."""
    for day, label in _ticks(scale, head - HEAD_GAP - RISE, measure):
        yield Stroke(scale.begin(day), head - HEAD_GAP, scale.begin(day), foot, 0.5, GRID_GREY)
        yield label


def _ticks(scale: _Scale, baseline: float, measure: Measure) -> list[tuple[date, Label]]:
    """The narrowest steps of time whose names have room beside each other."""
    most = (scale.right - scale.left) / TICK_GAP
    for step in STEPS:
        if (scale.last - scale.first).days > most * step * DAYS_IN_MONTH:
            continue
        ticks = [(day, _tick_label(day, step, scale, baseline, measure)) for day in _steps(scale, step)]
        ticks = [(day, label) for day, label in ticks if 0 <= label.x <= scale.right - label.width]
        if ticks and all(one.x + one.width + TICK_GAP <= other.x for (_, one), (_, other) in pairwise(ticks)):
            return ticks
    return []


def _steps(scale: _Scale, months: int) -> Iterator[date]:
    """The first days of every so many months, counted from January of the year 1."""
    first = scale.first.replace(day=1)
    since = (first.year - 1) * 12 + first.month - 1
    day = _later(first, -since % months)
    while day <= scale.last:
        if day >= scale.first:
            yield day
        day = _later(day, months)


def _later(first: date, months: int) -> date:
    return add_months(first, months, missing_day=MissingDay.LAST_DAY_OF_MONTH)


def _tick_label(day: date, step: int, scale: _Scale, baseline: float, measure: Measure) -> Label:
    text = str(day.year) if step % 12 == 0 else f"{short_month(day)} {day.year}"
    width = measure(text, False)
    return Label(scale.begin(day) - width / 2, baseline, text, width)


def _kept(x: float, least: float, most: float) -> float:
    return max(least, min(x, most))


def _line(line: Line, scale: _Scale, top: float, foot: float) -> Stroke:
    """A line through all rows."""
    x = scale.middle(line.day)
    return Stroke(x, top, x, foot, 1.8 if line.heavy else 0.9)


def _line_words(line: Line, scale: _Scale, baseline: float, measure: Measure) -> Label:
    """The words of a line, below it."""
    text = cut(line.words, scale.right, measure, True, over=False)
    width = measure(text, True)
    x = _kept(scale.middle(line.day) - width / 2, 0, scale.right - width)
    return Label(x, baseline, text, width, bold=True)


def _bar(span: Span, scale: _Scale, middle: float) -> Iterator[Shape]:
    if span.last < scale.first or span.first > scale.last:
        yield _arrow(scale, middle, span.fill, left=span.last < scale.first)
        return
    left, right = scale.begin(span.first), scale.end(span.last)
    if span.first < scale.first:
        left += ARROW
        yield _arrow(scale, middle, span.fill, left=True)
    if span.last > scale.last:
        right -= ARROW
        yield _arrow(scale, middle, span.fill, left=False)
    if right - left < LEAST_BAR:
        left = _kept(left, scale.left, scale.right - LEAST_BAR)
        right = left + LEAST_BAR
    top, foot = middle - BAR / 2, middle + BAR / 2
    corners = ((left, top), (right, top), (right, foot), (left, foot))
    yield Area(corners, black=span.fill is Fill.BLACK)
    if span.fill is Fill.STRIPED:
        yield from rising(left, right, top, foot)


def _arrow(scale: _Scale, middle: float, fill: Fill, *, left: bool) -> Area:
    """A tip at the edge: it goes on beyond it."""
    tip, base = (scale.left, scale.left + ARROW) if left else (scale.right, scale.right - ARROW)
    corners = ((tip, middle), (base, middle - DIAMOND), (base, middle + DIAMOND))
    return Area(corners, black=fill is Fill.BLACK)


def _mark(mark: Mark, scale: _Scale, middle: float) -> Iterator[Shape]:
    """A diamond on its day, with a white rim that keeps it apart from a black bar."""
    if not scale.first <= mark.day <= scale.last:
        yield _arrow(scale, middle, mark.fill, left=mark.day < scale.first)
        return
    x = _kept(scale.middle(mark.day), scale.left + DIAMOND, scale.right - DIAMOND)
    corners = ((x - DIAMOND, middle), (x, middle - DIAMOND), (x + DIAMOND, middle), (x, middle + DIAMOND))
    for (x1, y1), (x2, y2) in pairwise((*corners, corners[0])):
        yield Stroke(x1, y1, x2, y2, RIM, WHITE)
    yield Area(corners, black=mark.fill is Fill.BLACK)
