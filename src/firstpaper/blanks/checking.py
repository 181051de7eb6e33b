"""Reading a filled file back: what its fields hold, and what PDFium draws inside each of them."""

from collections.abc import Iterator, Sequence
from typing import Any

from firstpaper.blanks.blank import Blank, Box, Spot
from firstpaper.blanks.filling import Entry, Filling
from firstpaper.blanks.reading import full_name, inherited, lineage, on_state, opened, read_as_data, widgets

SCALE = 2.0
DARKER = 6.0
"""Ours: by how much a marked box must be darker than an empty one, in parts of 255."""


def values(data: bytes, name: str) -> dict[tuple[str, str], str]:
    """What each field of a file holds: its text, or for a box "marked" or nothing."""
    with read_as_data(name):
        return dict(_held(widget) for page in opened(data, name).pages for widget in widgets(page))


def _held(widget: Any) -> tuple[tuple[str, str], str]:
    line = lineage(widget)
    if inherited(line, "/FT") != "/Btn":
        return (full_name(line), ""), str(inherited(line, "/V") or "")
    state = on_state(widget)
    return (full_name(line), state), "marked" if widget.get("/AS") == f"/{state}" and state else ""


def differences(
    blank: bytes, filled: bytes, what: Filling, form: Blank, *, flat: bool = False
) -> tuple[str, ...]:
    """The names of the fields in which the filled file is not what it should be; empty where all is well."""
    return tuple(
        dict.fromkeys(
            (*(() if flat else _wrong_values(blank, filled, what)), *_wrong_looks(blank, filled, what, form))
        )
    )


def _wrong_values(blank: bytes, filled: bytes, what: Filling) -> Iterator[str]:
    before, now = values(blank, "blank"), values(filled, "filled")
    wanted = {entry.key: "marked" if entry.marked else entry.text for entry in what.entries}
    touched = {key[0] for key in wanted}
    for key in before.keys() | now.keys():
        should = wanted.get(key, "" if key[0] in touched else before.get(key, ""))
        if now.get(key, "") != should:
            yield key[0]


def _wrong_looks(blank: bytes, filled: bytes, what: Filling, form: Blank) -> Iterator[str]:
    import pypdfium2  # noqa: PLC0415 - slow to import

    drawn, empty = pypdfium2.PdfDocument(filled), pypdfium2.PdfDocument(blank, password="")
    for document in (drawn, empty):
        document.init_forms()
    pages: dict[int, tuple[_Drawn, _Drawn]] = {}
    for entry in what.entries:
        spot = form.by_key[entry.key]
        for box in spot.boxes:
            if box.page not in pages:
                pages[box.page] = _Drawn(drawn, box.page), _Drawn(empty, box.page)
            now, before = pages[box.page]
            if not _shows(entry, spot, box, now, before):
                yield spot.name


def _shows(entry: Entry, spot: Spot, box: Box, now: "_Drawn", before: "_Drawn") -> bool:
    if entry.marked:
        return before.light(box) - now.light(box) > DARKER
    return _letters(entry.text) in _letters(now.words(box))


def _letters(text: str) -> str:
    return "".join(text.split())


class _Drawn:
    """One page as PDFium draws it, its fields drawn into it."""

    def __init__(self, document: Any, number: int) -> None:
        page = document[number - 1]
        self.turned, self.media = page.get_rotation(), page.get_mediabox()
        if page.formenv:
            page.flatten()
        self.page = document[number - 1]
        bitmap = self.page.render(scale=SCALE, grayscale=True, may_draw_forms=False)
        self.pixels, self.stride, self.high = bytes(bitmap.buffer), bitmap.stride, bitmap.height
        self.text = self.page.get_textpage()

    def words(self, box: Box) -> str:
        """What is written in a box, read off the drawn page."""
        left, bottom, right, top = self._in_file(box)
        return str(self.text.get_text_bounded(left - 1, bottom - 1, right + 1, top + 1))

    def light(self, box: Box) -> float:
        """How light the inside of a box is, from 0 to 255."""
        rows = range(int(self.high - box.top * SCALE) + 2, int(self.high - box.bottom * SCALE) - 1)
        left, right = int(box.left * SCALE) + 2, int(box.right * SCALE) - 1
        inside = [
            self.pixels[row * self.stride + left : row * self.stride + right]
            for row in rows
            if 0 <= row < self.high
        ]
        count = sum(map(len, inside))
        return sum(map(sum, inside)) / count if count else 255.0

    def _in_file(self, box: Box) -> Sequence[float]:
        """The corners of a box that is seen turned, as the file has them."""
        left, bottom, right, top = self.media
        wide, high = right - left, top - bottom
        a, b, c, d = box.left, box.bottom, box.right, box.top
        turned = {
            90: (wide - d, a, wide - b, c),
            180: (wide - c, high - d, wide - a, high - b),
            270: (b, high - c, d, high - a),
        }.get(self.turned, (a, b, c, d))
        return turned[0] + left, turned[1] + bottom, turned[2] + left, turned[3] + bottom
