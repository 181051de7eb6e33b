"""Draws sheets: a small subset of HTML in, one tagged PDF/UA-1 file out.

The sheet markup, in full (the reference page "Sheet markup" says more):

    h1 h2 h3              headings, in order
    p                     a paragraph; one that starts with <tick> hangs
    ul ol li              lists; an item that starts with <tick> has the box as its label
    strong em small br    inside of words
    <tick> <tick marked>  a box to tick, empty or crossed
    <line> <line width="40">  a line to write on: the rest of the line, or percent of the column
    table thead tbody tr th td  with widths="12 30 58" (percent), class="plain" (layout, no lines),
                          colspan="2", class="number" (set at the right)
    section class="keep"  stays on one page when it can
    div class="note"      a remark with a bar at its left
    div class="warning"   a remark in a heavy frame
    figure name="timeline"  a picture that the sheet brings with it
    hr pagebreak

Anything else is a ValueError. All text is data: write it escaped, as Jinja's autoescape does.
"""

from firstpaper.packet.paper.document import SheetSource, draw, markup_errors, text_column
from firstpaper.packet.paper.fonts import missing_characters, text_width

__all__ = ["SheetSource", "draw", "markup_errors", "missing_characters", "text_column", "text_width"]
