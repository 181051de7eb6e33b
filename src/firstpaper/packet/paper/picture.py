"""A picture on a page: one tagged figure with words for those who cannot see it."""

from collections.abc import Iterator
from dataclasses import dataclass

from firstpaper.packet.paper.fonts import clean, runs
from firstpaper.packet.paper.passage import Passage, Words
from firstpaper.packet.paper.pen import Pen
from firstpaper.packet.paper.tags import Element
from firstpaper.packet.pictures.shapes import FONT_SIZE, Area, Drawing, Label, Stroke

OUTLINE = 1.0


@dataclass(slots=True)
class Picture:
    """A drawing that stands between paragraphs, always whole on one page."""

    drawing: Drawing
    style: str
    before: float = 10
    after: float = 10
    stays_with_next: bool = False

    @property
    def height(self) -> float:
        return self.drawing.height

    def split(self, room: float, *, fresh: bool = False) -> None:
        return None

    def draw(self, pen: Pen, x: float, top: float, above: Element) -> None:
        drawing = self.drawing
        box = (x, top - drawing.height, x + drawing.width, top)
        with pen.drawing(above, clean(drawing.alt), box):
            for shape in drawing.shapes:
                match shape:
                    case Stroke(x1, y1, x2, y2, weight, grey):
                        pen.stroke((x + x1, top - y1), (x + x2, top - y2), weight, grey)
                    case Area(corners, black):
                        pen.area([(x + right, top - down) for right, down in corners], OUTLINE, black=black)
                    case Label():
                        pen.write(Passage(self._words(shape)), x + shape.x, top - shape.y)

    def _words(self, label: Label) -> Iterator[Words]:
        """The label in pieces, each in the typeface that has its letters."""
        x = 0.0
        for typeface, text in runs(clean(label.text), self.style, bold=label.bold):
            yield Words(x, 0, text, typeface, FONT_SIZE)
            x += typeface.width(text) * FONT_SIZE
