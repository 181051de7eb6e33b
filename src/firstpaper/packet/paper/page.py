"""The foot of each page."""

from collections.abc import Sequence

from firstpaper.locale import _
from firstpaper.packet.paper.blocks import CAP_HEIGHT_EMS
from firstpaper.packet.paper.fonts import clean, face, runs
from firstpaper.packet.paper.lines import Line, Piece, break_lines
from firstpaper.packet.paper.looks import INCH, PAGE_HEIGHT, Look
from firstpaper.packet.paper.passage import Passage, Words
from firstpaper.packet.paper.pen import Pen

FOOTER_SIZE = 10.0  # points; rule 2.110 asks for at least 10
FOOTER_LEADING = 13.0
CONTINUED_SIZE = 12.0
CONTINUED_RISE = 8.0  # points above the text
NUMBER_SIZE = 12.0
NUMBER_GAP = 0.2 * INCH  # rule 2.108(4) asks for a fifth of an inch between the numbers and the text
_MOST_LINES = 2


def draw_worksheet_foot(pen: Pen, look: Look, running: str, page: int, pages: int) -> None:
    """At the left what the sheet is for, at the right the page of the packet."""
    number = _("Page {page} of {pages}").format(page=page, pages=pages)
    number_width = face(look.style).width(number) * FOOTER_SIZE
    with pen.artifact("/Pagination/Subtype/Footer"):
        pen.rule(look.left, look.bottom - 14, look.width, 0.5, grey=0.45)
        top = look.bottom - 28
        _write(pen, look, _lines(running, look, look.width - number_width - 24), look.left, top)
        _write(pen, look, _lines(number, look, look.width), look.left, top, aligned=1)


def draw_continued(pen: Pen, look: Look, heads: str) -> None:
    """Above a page that begins in the middle, the heading it stands under, for the eye alone."""
    if not heads:
        return
    words = _lines(_("{heading} (continued)").format(heading=heads), look, look.width, CONTINUED_SIZE)[:1]
    with pen.artifact("/Pagination/Subtype/Header"):
        _write(pen, look, words, look.left, PAGE_HEIGHT - look.top + CONTINUED_RISE, size=CONTINUED_SIZE)


def draw_attachment_foot(pen: Pen, look: Look, running: str, page: int, pages: int) -> None:
    """The page number, a printed line, then the title of the paper: Cal. Rules of Court, rule 2.110.

    Nothing of the packet shows here, because this page leaves the packet and is filed.
    """
    number = _("Page {page} of {pages}").format(page=page, pages=pages)
    with pen.artifact("/Pagination/Subtype/Footer"):
        _write(pen, look, _lines(number, look, look.width), look.left, look.bottom - 30, aligned=0.5)
        pen.rule(look.left, look.bottom - 37, look.width, 0.8)
        _write(pen, look, _lines(running, look, look.width), look.left, look.bottom - 50, aligned=0.5)


def number_lines(pen: Pen, look: Look) -> None:
    """The numbers of the lines at the left, evenly spaced: Cal. Rules of Court, rule 2.108(4)."""
    leading = look.texts["p"].leading
    typeface = face(look.style)
    first = PAGE_HEIGHT - look.top - leading + (leading - CAP_HEIGHT_EMS * NUMBER_SIZE) / 2
    numbers = [str(count) for count in range(1, int(look.height / leading) + 1)]
    right = look.left - NUMBER_GAP
    with pen.artifact("/Layout"):
        words = (
            Words(
                -typeface.width(number) * NUMBER_SIZE,
                -row * leading,
                number,
                typeface,
                NUMBER_SIZE,
            )
            for row, number in enumerate(numbers)
        )
        pen.write(Passage(words), right, first)


def _lines(text: str, look: Look, width: float, size: float = FOOTER_SIZE) -> Sequence[Line]:
    """The footer text in at most two lines, cut with an ellipsis when it is longer."""
    pieces = (Piece(part, typeface) for typeface, part in runs(clean(text), look.style))
    lines = break_lines(tuple(pieces), size, width)
    if len(lines) <= _MOST_LINES:
        return lines
    kept = "".join(
        each.what.text for line in lines[:_MOST_LINES] for each in line.placed if isinstance(each.what, Piece)
    )
    return _lines(kept[:-3].rstrip() + "…", look, width, size)


def _write(
    pen: Pen,
    look: Look,
    lines: Sequence[Line],
    left: float,
    top: float,
    *,
    size: float = FOOTER_SIZE,
    aligned: float = 0,
) -> None:
    words = (
        Words(
            (look.width - line.width) * aligned + each.x,
            -count * FOOTER_LEADING,
            each.what.text,
            each.what.face,
            size,
        )
        for count, line in enumerate(lines)
        for each in line.placed
        if isinstance(each.what, Piece)
    )
    pen.write(Passage(words), left, top)
