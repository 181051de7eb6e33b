"""The pen draws on the pages and marks whatever it draws: content of an element, or artifact."""

import math
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from io import BytesIO
from typing import Any

from reportlab.pdfbase import pdfdoc
from reportlab.pdfgen.canvas import Canvas

from firstpaper.packet.paper.fonts import Face
from firstpaper.packet.paper.looks import PAGE_HEIGHT, PAGE_WIDTH
from firstpaper.packet.paper.passage import PageOf, Passage, SetIn, Words
from firstpaper.packet.paper.tags import Element, Meaning, Tag, page_id

QUARTER = 4 / 3 * (math.sqrt(2) - 1)
"""How far the handles of a curve reach that comes nearest to a quarter of a circle, in its radius."""
ELSEWHERE = "–"
"""Stands for the page of a sheet that is not in this document."""


class _Canvas(Canvas):
    def __init__(self, file: BytesIO, lang: str) -> None:
        super().__init__(
            file,
            pagesize=(PAGE_WIDTH, PAGE_HEIGHT),
            pageCompression=1,
            invariant=1,
            pdfVersion=(1, 7),
            lang=lang,
        )

    def _make_preamble(self) -> None:
        self._preamble = ""  # the library would name Helvetica here, which is never embedded


@dataclass(slots=True)
class Pen:
    """Draws on one page after another. All places are in points from the lower left corner."""

    lang: str
    first_pages: Mapping[str, int] = field(default_factory=dict)
    """The page on which each sheet starts, by its title."""
    file: BytesIO = field(default_factory=BytesIO)
    root: Element = field(default_factory=lambda: Element(Tag("Document")))
    drawn: list[Element] = field(default_factory=list)
    """All elements so far, each above what is inside of it."""
    marks: list[list[Element]] = field(default_factory=lambda: [[]])
    canvas: Canvas = field(init=False)
    _fonts: dict[tuple[Face, int], str] = field(default_factory=dict)
    _inside_artifact: bool = False
    _bookmarks: int = 0

    def __post_init__(self) -> None:
        self.canvas = _Canvas(self.file, self.lang)
        self.drawn.append(self.root)

    @property
    def document(self) -> Any:
        """The library's document, for the parts of a file that its canvas does not offer."""
        return self.canvas._doc  # type: ignore[attr-defined]

    def within(self, above: Element, what: Meaning) -> Element:
        """The element to which belongs what is drawn now: `what`, inside of `above`."""
        if what is None or self._inside_artifact:
            return above
        element = Element(what) if isinstance(what, Tag) else what
        if element.parent is None:
            element.join(above)
            self.drawn.append(element)
        return element

    @contextmanager
    def drawing(self, above: Element, alt: str, box: tuple[float, float, float, float]) -> Iterator[None]:
        """What is drawn inside is a picture; `alt` says the same in words.

        `box` is the rectangle around it: its left, foot, right and top edge.
        """
        if self._inside_artifact:
            yield
            return
        left, foot, right, top = box
        place = f"/O/Layout/BBox[{left:.2f} {foot:.2f} {right:.2f} {top:.2f}]"
        self.canvas.addLiteral(self._begin(self.within(above, Tag("Figure", place, alt=alt))))
        yield
        self.canvas.addLiteral("EMC")

    def _begin(self, element: Element) -> str:
        """The operator after which everything belongs to `element`, until the next EMC."""
        owners = self.marks[-1]
        element.kids.append((len(self.marks) - 1, len(owners)))
        owners.append(element)
        return f"/{element.tag.role} <</MCID {len(owners) - 1}>> BDC"

    @contextmanager
    def artifact(self, kind: str = "/Layout") -> Iterator[None]:
        """What is drawn inside is decoration or repetition; a screen reader passes over it."""
        if self._inside_artifact:
            yield
            return
        self._inside_artifact = True
        self.canvas.addLiteral(f"/Artifact <</Type {kind}>> BDC")
        yield
        self.canvas.addLiteral("EMC")
        self._inside_artifact = False

    def write(self, passage: Passage, x: float, y: float, element: Element | None = None) -> None:
        """Draw a passage from its corner, which belongs to `element` where one is given."""
        shown = " ".join([part if isinstance(part, str) else self._shown(part) for part in passage.parts])
        text = f"BT 1 0 0 1 {x:.2f} {y:.2f} Tm {shown} ET"
        if element is not None and not self._inside_artifact:
            text = f"{self._begin(element)} {text} EMC"
        self.canvas.addLiteral(text)

    def _shown(self, part: SetIn | Words) -> str:
        """The operators for what only this document can make operators of."""
        if isinstance(part, SetIn):
            return f"{self._font(part.face, 0)} {part.size:g} Tf"
        text = part.text
        if isinstance(text, PageOf):
            text = str(self.first_pages.get(text.sheet, ELSEWHERE))
        return " ".join(
            f"{self._font(part.face, subset)} {part.size:g} Tf {string} Tj"
            for subset, string in part.face.coded(text, self.document)
        )

    def _font(self, face: Face, subset: int) -> str:
        if (face, subset) not in self._fonts:
            self._fonts[face, subset] = face.called(subset, self.document)
        return self._fonts[face, subset]

    def rule(self, x: float, y: float, width: float, thickness: float, grey: float = 0) -> None:
        """Draw a level line."""
        self.stroke((x, y), (x + width, y), thickness, grey)

    def stroke(
        self, start: tuple[float, float], end: tuple[float, float], thickness: float, grey: float = 0
    ) -> None:
        """Draw a straight line."""
        self._draw(f"{grey:g} G {thickness:g} w {_path(start, end)} S 0 G")

    def frame(self, x: float, y: float, width: float, height: float, thickness: float) -> None:
        """Draw an empty rectangle from its lower left corner; its line stays inside."""
        half = thickness / 2
        inside = _box(x + half, y + half, width - thickness, height - thickness)
        self._draw(f"{thickness:g} w {inside} S")

    def ring(self, x: float, y: float, side: float, thickness: float) -> None:
        """Draw an empty circle from the lower left corner of the square around it; its line stays inside."""
        radius = (side - thickness) / 2
        self._draw(f"{thickness:g} w {_circle(x + side / 2, y + side / 2, radius)} S")

    def cross(self, x: float, y: float, side: float) -> None:
        """Draw a cross inside a square, from its lower left corner."""
        inset = side * 0.2
        near, far = inset, side - inset
        rising = _path((x + near, y + near), (x + far, y + far))
        falling = _path((x + near, y + far), (x + far, y + near))
        self._draw(f"{side * 0.13:.2f} w {rising} {falling} S")

    def bar(self, x: float, y: float, width: float, height: float) -> None:
        """Draw a black rectangle from its lower left corner."""
        self._draw(f"{_box(x, y, width, height)} f")

    def area(self, corners: Sequence[tuple[float, float]], thickness: float, *, black: bool) -> None:
        """Draw a closed figure, black, or white with a black outline."""
        self._draw(f"{0 if black else 1} g {thickness:g} w {_path(*corners)} b 0 g")

    def _draw(self, operators: str) -> None:
        """Draw what these operators say (ISO 32000-1, 8.5); the pen is black before and after."""
        self.canvas.addLiteral(operators)

    def bookmark(self, title: str, level: int, y: float) -> None:
        """Add an outline entry that leads to height `y` of the current page."""
        self._bookmarks += 1
        key = f"place-{self._bookmarks}"
        self.canvas.bookmarkPage(key, fit="XYZ", left=0, top=y, zoom=0)
        self.canvas.addOutlineEntry(title, key, level)

    def turn_page(self) -> None:
        """Close the page, with its place in the parent tree, and open the next one."""
        index = len(self.marks) - 1
        self.canvas.showPage()
        page = self.document.idToObject[page_id(index)]
        page.__NoDefault__ = [*page.__NoDefault__, "StructParents", "Tabs"]
        page.StructParents = index
        page.Contents = pdfdoc.PDFStream(content=page.stream, filters=[pdfdoc.PDFZCompress])
        page.Tabs = pdfdoc.PDFName("S")
        self.marks.append([])


def _path(*corners: tuple[float, float]) -> str:
    """The operators for straight lines from one corner to the next."""
    return " ".join(f"{x:.2f} {y:.2f} {'l' if count else 'm'}" for count, (x, y) in enumerate(corners))


def _circle(x: float, y: float, radius: float) -> str:
    """The operators for a circle around (x, y), in four curves (ISO 32000-1, 8.5.2.2)."""
    reach = radius * QUARTER
    right, left, top, foot = x + radius, x - radius, y + radius, y - radius
    quarters = (
        (right, y + reach, x + reach, top, x, top),
        (x - reach, top, left, y + reach, left, y),
        (left, y - reach, x - reach, foot, x, foot),
        (x + reach, foot, right, y - reach, right, y),
    )
    curves = " ".join(" ".join(f"{place:.2f}" for place in quarter) + " c" for quarter in quarters)
    return f"{right:.2f} {y:.2f} m {curves} h"


def _box(x: float, y: float, width: float, height: float) -> str:
    return f"{x:.2f} {y:.2f} {width:.2f} {height:.2f} re"
