"""Sheets in, one tagged PDF/UA-1 file out."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from hashlib import sha256

from reportlab.pdfbase.pdfdoc import XMP

from firstpaper.locale import ENGLISH, language, speaking, tag
from firstpaper.packet.paper import markup
from firstpaper.packet.paper.blocks import Block, Stack, Text
from firstpaper.packet.paper.flow import Flow
from firstpaper.packet.paper.fonts import clean
from firstpaper.packet.paper.looks import LOOKS, PAGE_HEIGHT, TRANSLATED, WORKSHEET, Look
from firstpaper.packet.paper.metadata import PRODUCER, Particulars
from firstpaper.packet.paper.page import (
    draw_attachment_foot,
    draw_continued,
    draw_worksheet_foot,
    number_lines,
)
from firstpaper.packet.paper.pen import Pen
from firstpaper.packet.paper.tags import Tag, write_tree
from firstpaper.packet.pictures.shapes import Drawing

LITTLE = 0.5  # of a page: a last page that holds no more is worth saving
CLOSEST = 5 / 6  # of its height: no sheet of an invented household took less when it was set closer


@dataclass(frozen=True, slots=True)
class SheetSource:
    """One sheet to draw.

    Attributes:
        title: The outline entry.
        html: The content, in the sheet markup.
        style: "worksheet", or "attachment" for a page that is filed with the court.
        running: Short text for the foot of the sheet; an attachment shows its title when this is empty.
        figures: The pictures that the content names, each in one or more parts, no wider than `text_column`
            and lower than a page.
        follows: Whether it may start below the sheet before it, where that has the same style: it does where
            all of it fits there, or a third of a page is free.
        may_close: Whether it may be set with less room between its lines where that saves a page.
        language: The language of its words, by the name of its catalog; the one spoken where none is given.
    """

    title: str
    html: str
    style: str = "worksheet"
    running: str = ""
    figures: Mapping[str, Sequence[Drawing]] = field(default_factory=dict)
    follows: bool = False
    may_close: bool = False
    language: str = ""


@dataclass(frozen=True, slots=True)
class _LaidOut:
    """A sheet in pages, with the sheets that follow on its last page."""

    source: SheetSource
    look: Look
    pages: Sequence[Stack]
    running: Sequence[str]
    """What the foot of each page says: the sheet that the page begins with."""


def markup_errors(html: str) -> list[str]:
    """What in `html` is outside the sheet markup, with line numbers; empty when all is well."""
    return markup.parse(html)[1]


def text_column(style: str) -> float:
    """How wide the text of a style of sheet is, in points."""
    return LOOKS[style].width


def draw(
    sheets: Sequence[SheetSource], *, title: str, lang: str = "en-US", subject: str = "", on: date
) -> bytes:
    """The sheets as one PDF file, tagged for screen readers (PDF/UA-1). Same input, same bytes.

    Args:
        sheets: The sheets, in order; at least one.
        title: The title of the document, shown by the reader's window.
        lang: The language of the words, as a BCP 47 tag.
        subject: What the document is about.
        on: The day that the file carries as its date.

    Raises:
        ValueError: A sheet is outside the markup, has an unknown style or no title, names a picture that
            it does not bring, or there is none.
    """
    if not sheets or not all(clean(words).strip() for words in (title, *(sheet.title for sheet in sheets))):
        message = "A document needs a title and at least one sheet, and each sheet needs a title."
        raise ValueError(message)
    laid_out = _lay_out(sheets)
    pen = Pen(lang, _first_pages(laid_out))
    _draw_pages(pen, laid_out)
    return _finish(pen, Particulars(clean(title), clean(subject), lang, on))


def _lay_out(sheets: Sequence[SheetSource]) -> list[_LaidOut]:
    found: list[_LaidOut] = []
    for sheet in sheets:
        look = _look_of(sheet)
        after = found[-1].pages[-1] if found and sheet.follows and found[-1].look is look else None
        joined, pages = _placed(sheet, look, after)
        if joined:
            before = found[-1]
            feet = [*before.running, *[sheet.running] * (len(pages) - 1)]
            found[-1] = replace(before, pages=[*before.pages[:-1], *pages], running=feet)
        else:
            found.append(_LaidOut(sheet, look, pages, [sheet.running] * len(pages)))
    return found


def _look_of(sheet: SheetSource) -> Look:
    """How a sheet is set. One of ours in another language than English says the same in more words."""
    if sheet.style not in LOOKS:
        message = f"There is no style {sheet.style!r}; there is {' and '.join(LOOKS)}."
        raise ValueError(message)
    look = LOOKS[sheet.style]
    return TRANSLATED if look is WORKSHEET and (sheet.language or language()) != ENGLISH else look


def _placed(sheet: SheetSource, look: Look, after: Stack | None) -> tuple[bool, Sequence[Stack]]:
    """A sheet in pages, and whether the first of them is the page `after`, below which it begins.

    A sheet that may close up is set a little tighter where that saves a page that would hold little.
    """
    tree = markup.parse_strictly(sheet.html)
    joined, pages = first = _set(sheet, tree, look, after)
    if not sheet.may_close or len(pages) == 1 or not _may_save_a_page(pages, joined, look, after):
        return first
    second = _set(sheet, tree, look.tight, after)
    return second if len(second[1]) + joined < len(pages) + second[0] else first


def _may_save_a_page(pages: Sequence[Stack], joined: bool, look: Look, after: Stack | None) -> bool:
    """Whether closing up is worth a try: little is on the last page, and the others may have room for it."""
    before = after.height if after is not None else look.height
    taken = sum(page.height for page in pages) - before * joined
    room = look.height * (len(pages) - joined) - before
    return pages[-1].height <= LITTLE * look.height and taken * CLOSEST <= room


def _set(
    sheet: SheetSource, tree: markup.Node, look: Look, after: Stack | None
) -> tuple[bool, Sequence[Stack]]:
    section = Tag("Sect", lang="" if sheet.language in ("", language()) else tag(sheet.language))
    with speaking(sheet.language or language()):
        stack = Flow(look, sheet.figures).sheet(tree, section, clean(sheet.title))
    if after is not None and (below := _below(after, stack, look.height)):
        return True, below
    return False, list(_paginate(stack, look.height))


def _below(last: Stack, stack: Stack, height: float) -> list[Stack]:
    """A last page with the next sheet below it, and the pages it goes on to; none where there is no room."""
    room = height - last.height - max(last.after, stack.before)
    if stack.height <= room:
        return [Stack([*last.blocks, stack])]
    parts = stack.split(room) if room >= height / 4 else None
    if parts is None:
        return []
    head, rest = parts
    return [Stack([*last.blocks, head]), *_paginate(rest, height)]


def _first_pages(laid_out: Iterable[_LaidOut]) -> dict[str, int]:
    """The page of the document on which each sheet starts."""
    pages = (page for one in laid_out for page in one.pages)
    return {
        sheet.starts: number
        for number, page in enumerate(pages, start=1)
        for sheet in page.blocks
        if isinstance(sheet, Stack) and sheet.starts
    }


def _paginate(sheet: Stack, room: float) -> Iterator[Stack]:
    """The sheet cut into pages, none of them empty unless the sheet is. A page holds parts of sheets."""
    started = False
    while parts := sheet.split(room, fresh=True):
        part, sheet = parts
        if part.blocks:
            yield Stack([part])
            started = True
    if sheet.blocks or not started:
        yield Stack([sheet])


def _draw_pages(pen: Pen, laid_out: Sequence[_LaidOut]) -> None:
    total = sum(len(sheet.pages) for sheet in laid_out)
    page_of_packet = 0
    for sheet in laid_out:
        look = sheet.look
        for number, page in enumerate(sheet.pages, start=1):
            page_of_packet += 1
            page.draw(pen, look.left, PAGE_HEIGHT - look.top, pen.root)
            if look.style != "attachment" and number > 1:
                draw_continued(pen, look, _heads(sheet.pages, number - 1))
            with speaking(sheet.source.language or language()):
                if look.style == "attachment":
                    running = sheet.source.running or sheet.source.title
                    number_lines(pen, look)
                    draw_attachment_foot(pen, look, running, number, len(sheet.pages))
                else:
                    draw_worksheet_foot(pen, look, sheet.running[number - 1], page_of_packet, total)
            pen.turn_page()


def _heads(pages: Sequence[Stack], index: int) -> str:
    """The heading under which the page begins; nothing where it begins with one of its own."""
    if any(isinstance(block, Text) and block.heads for block in _opening(pages[index])):
        return ""
    before = (block for page in reversed(pages[:index]) for block in reversed(page.flat()))
    return next((block.heads for block in before if isinstance(block, Text) and block.heads), "")


def _opening(page: Stack) -> Iterator[Block]:
    """The blocks at its top that stay together: the first, and each that one before leads to."""
    for block in page.flat():
        yield block
        if not block.stays_with_next:
            return


def _finish(pen: Pen, particulars: Particulars) -> bytes:
    """Write structure, metadata and outline, and close the file."""
    canvas, document = pen.canvas, pen.document
    write_tree(document, pen.drawn, pen.marks[:-1])
    canvas.setTitle(particulars.title)
    canvas.setSubject(particulars.subject)
    canvas.setAuthor("")
    canvas.setCreator("")
    canvas.setProducer(PRODUCER)
    canvas.setDateFormatter(lambda *_: particulars.pdf_date)
    canvas.setViewerPreference("DisplayDocTitle", "true")
    canvas.showOutline()
    document.Catalog.Metadata = XMP(creator=particulars.xmp)
    content = "".join(page.stream for page in document.Pages.pages)
    document.signature = sha256(f"{particulars.on}{content}".encode())
    canvas.save()
    return pen.file.getvalue()
