"""The look of a filled text field: its own font, size and width decide what fits."""

from collections.abc import Iterator, Sequence
from typing import Any, NamedTuple

from firstpaper.blanks.reading import COMB, LETTERS, MULTI_LINE, inherited, lineage
from firstpaper.locale import _

MARGIN, LEADING = 2.0, 1.16
LARGEST, SMALLEST = 12.0, 7.0
"""Ours: the sizes between which a field that leaves the size open is lettered."""
FAMILIES = {"cour": "Courier", "time": "Times-Roman", "tiro": "Times-Roman"}


class TooLong(Exception):
    """The text cannot stand in its field."""

    def __init__(self, why: str) -> None:
        super().__init__()
        self.why = why


class Lettering(NamedTuple):
    """How a field is lettered; `size` is 0 where the field leaves it open."""

    width: float
    height: float
    font: str
    size: float
    many_lines: bool
    cells: int
    right: int
    turned: int = 0

    @staticmethod
    def of(widget: Any, root: Any) -> "Lettering":
        """Of one place of a field."""
        line = lineage(widget)
        left, bottom, right, top = (float(edge) for edge in widget["/Rect"])
        form = root["/AcroForm"].get_object()
        told = LETTERS.search(str(inherited(line, "/DA") or form.get("/DA") or ""))
        flags, most = int(inherited(line, "/Ff") or 0), inherited(line, "/MaxLen")
        turned = int((widget.get("/MK") or {}).get("/R") or 0) % 360
        across, up = abs(right - left), abs(top - bottom)
        return Lettering(
            *((up, across) if turned in (90, 270) else (across, up)),
            told.group(1) if told else "Helv",
            float(told.group(2)) if told else 0.0,
            bool(flags & MULTI_LINE),
            int(most) if flags & COMB and most else 0,
            int(inherited(line, "/Q") or 0),
            turned,
        )

    @property
    def base(self) -> str:
        """The plain font that is as wide as the field's own."""
        return next(
            (name for start, name in FAMILIES.items() if self.font.lower().startswith(start)), "Helvetica"
        )


def look(letters: Lettering, text: str) -> Any:
    """The look as a stream of the file; TooLong where the text does not fit or the font lacks a letter."""
    try:
        text.encode("cp1252")
    except UnicodeEncodeError as missing:
        raise TooLong(_("The font of the blank has not all of its letters.")) from missing
    size, lines = _fitted(letters, text)
    return _stream(letters, " ".join(_drawn(letters, size, lines)))


def _fitted(letters: Lettering, text: str) -> tuple[float, list[str]]:
    sizes = [letters.size] if letters.size else _sizes(letters)
    for size in sizes:
        lines = list(_lines(letters, text, size))
        wide = all(_wide(letters, line, size) <= letters.width - 2 * MARGIN for line in lines)
        high = len(lines) == 1 or len(lines) * size * LEADING <= letters.height - MARGIN
        if letters.cells or (wide and high):
            return size, lines
    raise TooLong(_("It is too long for its field on the blank."))


def _sizes(letters: Lettering) -> list[float]:
    most = LARGEST if letters.many_lines else min(LARGEST, max(SMALLEST, letters.height * 0.7))
    return [most - step for step in range(int(most - SMALLEST) + 1)]


def _lines(letters: Lettering, text: str, size: float) -> Iterator[str]:
    if not letters.many_lines:
        yield " ".join(text.split())
        return
    for paragraph in text.splitlines():
        line = ""
        for word in paragraph.split():
            longer = f"{line} {word}".strip()
            if line and _wide(letters, longer, size) > letters.width - 2 * MARGIN:
                yield line
                longer = word
            line = longer
        yield line


def _wide(letters: Lettering, text: str, size: float) -> float:
    from reportlab.pdfbase.pdfmetrics import stringWidth  # noqa: PLC0415 - slow to import

    return float(stringWidth(text, letters.base, size))


def _drawn(letters: Lettering, size: float, lines: Sequence[str]) -> Iterator[str]:
    yield f"/Tx BMC q 0 0 {letters.width:.2f} {letters.height:.2f} re W n BT /{letters.font} {size:g} Tf 0 g"
    if letters.cells:
        cell = letters.width / letters.cells
        at = 0.0
        for number, letter in enumerate(lines[0]):
            x = number * cell + (cell - _wide(letters, letter, size)) / 2
            up = 0 if number else (letters.height - size * 0.72) / 2
            yield f"{x - at:.2f} {up:.2f} Td {_hex(letter)} Tj"
            at = x
    else:
        first = letters.height - MARGIN - size if letters.many_lines else (letters.height - size * 0.72) / 2
        x = y = 0.0
        for number, line in enumerate(lines):
            room = letters.width - 2 * MARGIN - _wide(letters, line, size)
            left, down = MARGIN + room * letters.right / 2, first - number * size * LEADING
            yield f"{left - x:.2f} {down - y:.2f} Td {_hex(line)} Tj"
            x, y = left, down
    yield "ET Q EMC"


def _hex(text: str) -> str:
    return f"<{text.encode('cp1252').hex()}>"


def _stream(letters: Lettering, drawing: str) -> Any:
    from pypdf.generic import (  # noqa: PLC0415 - slow to import
        ArrayObject,
        DecodedStreamObject,
        DictionaryObject,
        FloatObject,
        NameObject,
    )

    stream = DecodedStreamObject()
    stream.set_data(drawing.encode("ascii"))
    stream[NameObject("/Type")] = NameObject("/XObject")
    stream[NameObject("/Subtype")] = NameObject("/Form")
    stream[NameObject("/BBox")] = ArrayObject(map(FloatObject, (0, 0, letters.width, letters.height)))
    if letters.turned:
        stream[NameObject("/Matrix")] = ArrayObject(map(FloatObject, _turn(letters)))
    stream[NameObject("/Resources")] = DictionaryObject({NameObject("/Font"): _font(letters)})
    return stream


def _turn(letters: Lettering) -> tuple[float, ...]:
    """What turns the look so that it stands upright on a page that is shown turned."""
    return {
        90: (0, 1, -1, 0, letters.height, 0),
        180: (-1, 0, 0, -1, letters.width, letters.height),
        270: (0, -1, 1, 0, 0, letters.width),
    }.get(letters.turned, (1, 0, 0, 1, 0, 0))


def _font(letters: Lettering) -> Any:
    """The plain font of the family: its widths are known, and every viewer has it."""
    from pypdf.generic import DictionaryObject, NameObject  # noqa: PLC0415 - slow to import

    plain = DictionaryObject(
        {
            NameObject("/Type"): NameObject("/Font"),
            NameObject("/Subtype"): NameObject("/Type1"),
            NameObject("/BaseFont"): NameObject(f"/{letters.base}"),
            NameObject("/Encoding"): NameObject("/WinAnsiEncoding"),
        }
    )
    return DictionaryObject({NameObject(f"/{letters.font}"): plain})
