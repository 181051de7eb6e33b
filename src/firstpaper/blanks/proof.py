"""The proof of a map: the blank with each field showing what it would take, to be looked at by a person."""

from collections.abc import Mapping, Sequence
from io import BytesIO
from typing import Any

from firstpaper.blanks.blank import Box
from firstpaper.blanks.mapping import Line, Map, edition_of
from firstpaper.blanks.matching import Sure
from firstpaper.blanks.reading import opened, read_as_data
from firstpaper.blanks.wanted import Wanted, wanted
from firstpaper.locale import _

SMALL, NARROW = 5.5, 30.0


def proof(data: bytes, name: str, one: Map) -> bytes:
    """The pages of the blank, without its fields, with the words of what each would take drawn over them."""
    with read_as_data(name):
        return _proof(data, name, one)


def _proof(data: bytes, name: str, one: Map) -> bytes:
    from pypdf import PdfReader, PdfWriter  # noqa: PLC0415 - slow to import

    writer = PdfWriter(clone_from=opened(data, name))
    over = PdfReader(BytesIO(_over(data, name, one)))
    pages = list(writer.pages)
    for page, shown in zip(pages, over.pages, strict=False):
        if page.rotation:
            page.transfer_rotation_to_content()
        page.pop("/Annots", None)
        page.merge_page(shown)
    for listed in over.pages[len(pages) :]:
        writer.add_page(listed)
    for part in ("/AcroForm", "/OpenAction", "/AA", "/Names"):
        writer.root_object.pop(part, None)
    out = BytesIO()
    writer.write(out)
    return out.getvalue()


def _over(data: bytes, name: str, one: Map) -> bytes:
    """What is drawn over each page, and behind the pages a list of the fields by their numbers."""
    from reportlab.pdfgen.canvas import Canvas  # noqa: PLC0415 - slow to import

    edition, _same = edition_of(one.form, one.edition)
    ours = {each.key: each for each in wanted(edition)} if edition else {}
    out = BytesIO()
    canvas = Canvas(out)
    numbered = list(enumerate(one.lines, 1))
    for page_number, page in enumerate(opened(data, name).pages, 1):
        wide, high = float(page.mediabox.width), float(page.mediabox.height)
        canvas.setPageSize((high, wide) if int(page.rotation or 0) % 180 else (wide, high))
        _say(canvas, (20, 12), _legend(), "Helvetica-Bold", 8)
        for number, line in numbered:
            if line.page == page_number:
                _draw(canvas, number, line, _told(line, ours))
        canvas.showPage()
    _list(canvas, [(number, line, _told(line, ours)) for number, line in numbered])
    canvas.save()
    return out.getvalue()


def _legend() -> str:
    return _(
        "PROOF, not for filing. Full frame: sure. Dashed frame and “?”: look closely. Crossed: takes nothing."
    )


ROWS, HIGH = 62, 11.2


def _list(canvas: Any, told: Sequence[tuple[int, Line, str]]) -> None:
    for start in range(0, len(told), ROWS):
        canvas.setPageSize((612, 792))
        _say(canvas, (40, 760), _("Which field takes what"), "Helvetica-Bold", 12)
        for row, (number, line, words) in enumerate(told[start : start + ROWS]):
            mark = "?" if line.sure == Sure.DOUBTFUL else "-" if not line.takes else "+"
            takes = words or _("nothing")
            text = f"{number}  {mark}  p. {line.page}   {takes}"
            _say(canvas, (40, 742 - row * HIGH), text[:110], "Helvetica", 9)
        canvas.showPage()


def _told(line: Line, ours: Mapping[str, Wanted]) -> str:
    each = ours.get(line.takes)
    number = each.item if each and each.item[:1].isdigit() else ""
    return f"{number} {each.named if each else line.takes}".strip()


def _draw(canvas: Any, number: int, line: Line, words: str) -> None:
    box = Box(line.page, *line.at)
    doubtful = line.sure == Sure.DOUBTFUL
    canvas.setLineWidth(0.8)
    canvas.setDash([2, 2] if doubtful else [])
    canvas.rect(box.left, box.bottom, box.width, box.height)
    if not line.takes:
        canvas.line(box.left, box.bottom, box.right, box.top)
    told = f"{'?' if doubtful else ''}{number}" + (f" {words}" if box.width > NARROW else "")
    _say(
        canvas,
        (box.left + 1, box.bottom + 2),
        told[: max(4, int(box.width / (SMALL * 0.47)))],
        "Helvetica",
        SMALL,
    )


def _say(canvas: Any, at: tuple[float, float], words: str, font: str, size: float) -> None:
    """Words in a plain font; a letter that it lacks is shown as “?”."""
    canvas.setFont(font, size)
    canvas.drawString(*at, words.encode("cp1252", "replace").decode("cp1252"))
