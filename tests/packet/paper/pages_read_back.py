"""Reads a drawn file back: as a sighted reader, as a screen reader and as a printer see it."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property
from io import BytesIO
from typing import Any

import page as page_validation
import pdfplumber
from pypdf import PdfReader

from firstpaper.packet.paper import SheetSource, draw
from tests.packet.reading_pdf import Leaf, leaves

ON = date(2026, 1, 5)


@dataclass(frozen=True)
class Heard:
    """One element of the structure tree: its role, what is read out for it, and what is inside it."""

    role: str
    text: str
    alt: str = ""
    attributes: dict[str, Any] = field(default_factory=dict)
    kids: tuple["Heard", ...] = ()

    def walk(self) -> "Iterator[Heard]":
        yield self
        for kid in self.kids:
            yield from kid.walk()

    def all(self, role: str) -> "list[Heard]":
        """Every element with this role, in reading order."""
        return [each for each in self.walk() if each.role == role]


class Drawn:
    """A drawn file."""

    def __init__(self, *sheets: SheetSource, title: str = "Packet", **named: Any) -> None:
        self.data = draw(sheets, title=title, **{"on": ON, **named})

    @cached_property
    def reader(self) -> PdfReader:
        return PdfReader(BytesIO(self.data))

    @cached_property
    def pages(self) -> list[Any]:
        with pdfplumber.open(BytesIO(self.data)) as pdf:
            pages = list(pdf.pages)
            for each in pages:
                each.chars  # noqa: B018 (read while the file is open)
            return pages

    @property
    def report(self) -> Any:
        """The report of an outside PDF/UA-1 validator."""
        return page_validation.validate_pdf_bytes(self.data, profile="ua1")

    def text(self, number: int = 0) -> str:
        """The text of one page, in drawing order, with single spaces."""
        return self.leaves[number].words

    @cached_property
    def leaves(self) -> tuple[Leaf, ...]:
        """The pages with their words and the type they are set in."""
        return tuple(leaves(self.data))

    @cached_property
    def whole_text(self) -> str:
        return " ".join(leaf.words for leaf in self.leaves)

    @cached_property
    def heard(self) -> Heard:
        """The structure tree as a screen reader walks it."""
        texts: defaultdict[tuple[int, int], str] = defaultdict(str)
        for number, leaf in enumerate(self.leaves):
            for run in leaf.runs:
                texts[number, run.marked] += run.words
        places = {each.indirect_reference.idnum: number for number, each in enumerate(self.reader.pages)}
        return _heard(self.reader.root_object["/StructTreeRoot"]["/K"].get_object(), texts, places)

    @property
    def spoken(self) -> str:
        """Everything a screen reader says, in order, pictures in brackets."""
        return " ".join(self.heard.text.replace(LINE_END_HYPHEN, "-").split())


LINE_END_HYPHEN = "\x02"
"""What PDFium gives for a hyphen that ends a line. No sheet holds a control character."""


def _heard(element: Any, texts: Mapping[tuple[int, int], str], places: dict[int, int]) -> Heard:
    kids, words = [], []
    for kid in element.get("/K", []):
        inside = kid.get_object()
        if isinstance(inside, int):
            words.append(texts[places[element.raw_get("/Pg").idnum], inside])
        elif inside.get("/Type") == "/MCR":
            words.append(texts[places[inside.raw_get("/Pg").idnum], inside["/MCID"]])
        else:
            kids.append(_heard(inside, texts, places))
            words.append(f" {kids[-1].text} " if kids[-1].role != "Figure" else f"[{kids[-1].alt}]")
    return Heard(
        element["/S"][1:],
        "".join(words).strip(),
        element.get("/Alt", ""),
        dict(element.get("/A", {})),
        tuple(kids),
    )


def worksheet(html: str, **named: Any) -> Drawn:
    """One worksheet, drawn."""
    return Drawn(SheetSource("Worksheet", html, running="Worksheet for FL-100"), **named)


def attachment(html: str, **named: Any) -> Drawn:
    """One attachment, drawn."""
    return Drawn(SheetSource("Attachment 9b", html, style="attachment", running="Attachment 9b"), **named)
