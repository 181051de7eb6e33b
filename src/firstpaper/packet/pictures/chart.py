"""A chart of days: rows of bars and marks over one line of time, with what each row says in words."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting.days import ONE_DAY


class Fill(StrEnum):
    """How a bar or a mark looks: gone by, still to come, or not known."""

    BLACK = "black"
    WHITE = "white"
    STRIPED = "striped"


class Span(NamedTuple):
    """A stretch of days, both ends included."""

    first: date
    last: date
    fill: Fill = Fill.BLACK


class Mark(NamedTuple):
    """One day that matters."""

    day: date
    fill: Fill = Fill.BLACK


class Row(NamedTuple):
    """One line of the chart: what stands beside it, what is drawn, and all of it in a sentence or two.

    `title` and `notes` are short, for the picture; `says` is for those who hear it.
    """

    title: str
    notes: tuple[str, ...]
    says: str
    spans: tuple[Span, ...] = ()
    marks: tuple[Mark, ...] = ()


class Line(NamedTuple):
    """The day that goes through all rows, with the words at its foot."""

    day: date
    words: str
    heavy: bool = True


@dataclass(frozen=True, slots=True)
class Chart:
    """Rows over the days from `first` to `last`. What lies outside is shown as an arrow at the edge.

    `line` is the day that the picture is about; `today` stands apart from it once that day has gone by.
    `says` is the sentence that comes before those of the rows.
    """

    says: str
    first: date
    last: date
    rows: tuple[Row, ...]
    line: Line | None = None
    today: Line | None = None

    @property
    def sentences(self) -> tuple[str, ...]:
        """The whole chart in sentences."""
        return (self.says, *(row.says for row in self.rows))


def gone_and_ahead(first: date, last: date, today: date) -> Iterator[Span]:
    """A stretch of days as one bar, or cut in two at `today`: what has gone by, and what is to come.

    The day itself counts as gone by.
    """
    if first <= today:
        yield Span(first, min(last, today))
    if last > today:
        yield Span(max(first, today + ONE_DAY), last, Fill.WHITE)


def days_of(rows: Iterable[Row]) -> Iterator[date]:
    """Every day that is drawn."""
    for row in rows:
        for span in row.spans:
            yield from (span.first, span.last)
        yield from (mark.day for mark in row.marks)
