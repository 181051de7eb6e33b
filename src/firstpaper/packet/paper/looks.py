"""The look of each style of sheet: paper, margins, type. All lengths are in points, 72 to the inch."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache

PAGE_WIDTH, PAGE_HEIGHT = 612.0, 792.0  # letter, 8.5 by 11 inches
INCH = 72.0
CLOSER = 0.6
LEAST_LEADING = 1.2  # of the size


@dataclass(frozen=True, slots=True)
class TextLook:
    """How a paragraph or heading is set."""

    size: float
    leading: float
    before: float = 0
    after: float = 0
    bold: bool = False
    centered: bool = False
    written: float = 28
    """The least leading of a line that is written on by hand."""
    whole: int = 5
    """A paragraph of no more lines is not split between pages."""
    bar: bool = False
    """Whether a short black bar stands above, the mark of our own sheets."""

    @property
    def closer(self) -> "TextLook":
        """The same, with its lines and its neighbours closer together."""
        return replace(
            self,
            leading=min(self.leading, LEAST_LEADING * self.size),
            before=self.before * CLOSER,
            after=self.after * CLOSER,
        )


@dataclass(frozen=True, slots=True, eq=False)
class Look:
    """Everything that makes a style of sheet look as it does. There is one of each."""

    style: str
    left: float
    right: float
    top: float
    bottom: float
    texts: Mapping[str, TextLook]
    small_grey: float
    list_gap: float
    cell_padding: float
    table_gaps: tuple[float, float]
    """The room above and below a table."""
    column_gap: float
    whole_row: float
    """A table row or box lower than this is not split between pages."""

    @property
    def width(self) -> float:
        """The width of the text."""
        return PAGE_WIDTH - self.left - self.right

    @property
    def height(self) -> float:
        """The height of the text."""
        return PAGE_HEIGHT - self.top - self.bottom

    @property
    def tight(self) -> "Look":
        """The same look with less room between lines and blocks, for a sheet that ends a little over a page.

        The letters keep their size.
        """
        return _tight(self)


@cache
def _tight(look: Look) -> Look:
    return replace(
        look,
        texts={name: text.closer for name, text in look.texts.items()},
        list_gap=look.list_gap * CLOSER,
        cell_padding=look.cell_padding * CLOSER,
    )


WORKSHEET = Look(
    style="worksheet",
    left=INCH,
    right=0.9 * INCH,
    top=0.8 * INCH,
    bottom=0.9 * INCH,
    texts={
        "h1": TextLook(22, 26, before=22, after=8, bold=True, bar=True),
        "h2": TextLook(15, 19, before=15, after=4, bold=True),
        "h3": TextLook(13, 17, before=11, after=3, bold=True),
        "p": TextLook(12, 16, before=5, after=5),
        "cell": TextLook(12, 15, before=2, after=2),
        "head": TextLook(12, 15, before=2, after=2, bold=True),
    },
    small_grey=0.25,
    list_gap=3,
    cell_padding=4,
    table_gaps=(8, 9),
    column_gap=14,
    whole_row=240,
)

# The same letters for a language that takes more words: lines closer together, and more of the page.
TRANSLATED = replace(WORKSHEET.tight, left=0.85 * INCH, right=0.75 * INCH, top=0.65 * INCH, bottom=0.8 * INCH)

# Letter paper, 12 points and more, 1 inch at the left and at least 1/2 inch at the right, lines one and
# one-half spaced on a grid of numbered lines: Cal. Rules of Court, rules 2.103, 2.104, 2.107, 2.108.
# All black: rule 2.106. Every length from line to line is a multiple of 18, so that each line has its number.
ATTACHMENT = Look(
    style="attachment",
    left=INCH,
    right=0.75 * INCH,
    top=INCH,
    bottom=1.25 * INCH,
    texts={
        "h1": TextLook(13, 18, before=18, after=18, centered=True),
        "h2": TextLook(12, 18, before=18),
        "h3": TextLook(12, 18, before=18),
        "p": TextLook(12, 18, after=18, written=36),
        "cell": TextLook(12, 18, written=36),
        "head": TextLook(12, 18),
    },
    small_grey=0,
    list_gap=0,
    cell_padding=0,
    table_gaps=(18, 18),
    column_gap=14,
    whole_row=180,
)

# A text to read from the first line to the last: the same type, closer together, and nothing to write on.
READING = Look(
    style="reading",
    left=0.7 * INCH,
    right=0.7 * INCH,
    top=0.6 * INCH,
    bottom=0.75 * INCH,
    texts={
        "h1": TextLook(20, 24, before=14, after=6, bold=True, bar=True),
        "h2": TextLook(14, 17, before=9, after=1, bold=True),
        "h3": TextLook(12, 14.5, before=6, after=0, bold=True),
        "p": TextLook(12, 14.5, before=1, after=2, whole=0),
        "cell": TextLook(12, 15, before=2, after=2),
        "head": TextLook(12, 15, before=2, after=2, bold=True),
    },
    small_grey=0.25,
    list_gap=1,
    cell_padding=4,
    table_gaps=(8, 9),
    column_gap=14,
    whole_row=90,
)

LOOKS: Mapping[str, Look] = {look.style: look for look in (WORKSHEET, ATTACHMENT, READING)}
