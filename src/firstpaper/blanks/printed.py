"""The words printed on the pages of a PDF, with the place of each, as PDFium draws them."""

from collections.abc import Iterator, Sequence
from itertools import groupby

from firstpaper.blanks.blank import Box, Label, Phrase, Side

GAP = 0.9
"""A gap wider than this many times the height of the letters ends a phrase."""
REACH = 90.0
"""How far from a field its words can begin, in points. About an inch and a quarter."""
ABOVE = 16.0
COLUMN = 130.0
"""How far above a field the head of its column can stand, in points."""
TITLE = 24.0
"""How far above the head of a column the title of the table can stand, in points."""

Letter = tuple[str, float, float, float, float]


def phrases(letters: Sequence[Letter], page: int) -> Iterator[Phrase]:
    """The runs of words that these letters make, top to bottom, left to right."""
    for _row, row in groupby(sorted(letters, key=_row_then_left), key=_row_of):
        yield from _runs(sorted(row, key=lambda one: one[1]), page)


def near(box: Box, of_page: Sequence[Phrase], others: Sequence[Box]) -> dict[Side, Label]:
    """The phrases next to a box, by side; nothing that lies beyond another box."""
    row = [one for one in of_page if one.box.bottom - 1 < box.middle < one.box.top + 1]
    beside = [one for one in others if one.bottom < box.middle < one.top and one != box]
    right_end = min((one.left for one in beside if one.left >= box.right - 1), default=box.right + 400)
    left_end = max((one.right for one in beside if one.right <= box.left + 1), default=0.0)
    right = [p for p in row if box.right - 2 <= p.box.left < min(box.right + REACH, right_end)]
    left = [p for p in row if max(box.left - REACH, left_end - 2) < p.box.right <= box.left + 2]
    over = [p for p in of_page if 0 <= p.box.bottom - box.top + 4 < ABOVE and _overlap(p.box, box)]
    column = [p for p in of_page if 0 <= p.box.bottom - box.top + 4 < COLUMN and _overlap(p.box, box)]
    head = min(column, key=lambda p: p.box.bottom, default=None)
    found = {
        Side.RIGHT: min(right, key=lambda p: p.box.left, default=None),
        Side.LEFT: max(left, key=lambda p: p.box.right, default=None),
        Side.ABOVE: min(over, key=lambda p: p.box.bottom, default=None),
        Side.COLUMN: head,
        Side.TITLE: _title(head.box, of_page) if head else None,
    }
    return {side: Label(one.text, _gap(box, one.box, side)) for side, one in found.items() if one}


def _title(head: Box, of_page: Sequence[Phrase]) -> Phrase | None:
    over = [p for p in of_page if 0 < p.box.bottom - head.bottom < TITLE and p.box.bottom > head.middle]
    return min(over, key=lambda p: (p.box.bottom, p.box.left), default=None)


def _gap(box: Box, words: Box, side: Side) -> float:
    gaps = {Side.RIGHT: words.left - box.right, Side.LEFT: box.left - words.right}
    return max(0.0, gaps.get(side, words.bottom - box.top))


def heading(box: Box, headings: Sequence[Phrase]) -> str:
    """The nearest heading at or above a box; `headings` go down the page."""
    above = [one for one in headings if one.box.bottom >= box.bottom - 2]
    return above[-1].text if above else ""


def headings(of_page: Sequence[Phrase]) -> list[Phrase]:
    """The phrases that begin a numbered section."""
    return [one for one in of_page if one.text.split(" ", 1)[0].rstrip(".").isdigit() and " " in one.text]


def _overlap(phrase: Box, box: Box) -> bool:
    return phrase.left < box.right and phrase.right > box.left


def _row_of(letter: Letter) -> int:
    return -round((letter[2] + letter[4]) / 2 / 4)


def _row_then_left(letter: Letter) -> tuple[int, float]:
    return _row_of(letter), letter[1]


def _runs(row: Sequence[Letter], page: int) -> Iterator[Phrase]:
    run: list[Letter] = []
    for letter in row:
        if run and letter[1] - run[-1][3] > GAP * max(6.0, run[-1][4] - run[-1][2]):
            yield _phrase(run, page)
            run = []
        run.append(letter)
    if run:
        yield _phrase(run, page)


def _phrase(run: Sequence[Letter], page: int) -> Phrase:
    text, last = "", run[0][1]
    for letter, left, _bottom, right, _top in run:
        text += (" " if left - last > 1.2 and not text.endswith(" ") else "") + letter
        last = right
    box = Box(page, run[0][1], min(o[2] for o in run), run[-1][3], max(o[4] for o in run))
    return Phrase(" ".join(text.split()), box)
