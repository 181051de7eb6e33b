"""Blank forms drawn from our editions, with a seed: words, names, order and layout differ from ours.

No official file is at hand. Six families stand for what such files can be like; each draw is another file.
What the fields really mean is known here and nowhere in the file.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from io import BytesIO
from itertools import groupby
from random import Random

from reportlab.lib.pagesizes import letter
from reportlab.pdfgen.canvas import Canvas

from firstpaper.blanks.wanted import Wanted, wanted
from firstpaper.forms.edition import Edition

LEFT, RIGHT, TOP, BOTTOM = 50.0, 562.0, 740.0, 60.0
SIZE = 9.0


class Family(StrEnum):
    """What helps somebody who reads such a file."""

    FULL = "speaking names, full tooltips"
    NAMED = "speaking names, no tooltips"
    SHORT = "numbered names, short tooltips"
    BARE = "meaningless names, no tooltips"
    MIXED = "numbered names, one tooltip in ten of another field"
    MISLEADING = "numbered names, tooltips of other fields"


OTHER_WORDS = {
    "telephone": ["phone", "telephone"],
    "number": ["no.", "number"],
    "date": ["date"],
    "your": ["", "party's", "your"],
    "name": ["name", "name"],
    "we": ["the parties", "we"],
    "you": ["party", "you"],
    "made": ["established", "made"],
    "ask": ["request", "ask"],
    "want": ["request", "want"],
    "box": ["item", "box"],
    "how": ["state how", "how"],
    "is": ["is", "is"],
    "to": ["to", "to be made to"],
    "list": ["list", "statement"],
    "e-mail": ["e-mail", "email"],
    "living": ["residing", "living"],
    "lives": ["resides", "lives"],
}


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawn file, and what each field, by name and state, really is; None for a stranger."""

    pdf: bytes
    truth: Mapping[tuple[str, str], str | None]


_KEPT: dict[tuple[str, date | None, Family, int], Drawn] = {}
"""What was drawn already; an edition is told by its form and its date, since it has no hash."""


def drawn(edition: Edition, family: Family, seed: int) -> Drawn:
    """One blank of that edition."""
    key = (edition.form, edition.edition, family, seed)
    if key not in _KEPT:
        _KEPT[key] = _Drawer(edition, family, Random(f"{edition.form} {family} {seed}")).draw()
    return _KEPT[key]


class _Drawer:
    def __init__(self, edition: Edition, family: Family, random: Random) -> None:
        self.edition, self.family, self.random = edition, family, random
        self.out = BytesIO()
        self.canvas = Canvas(self.out, pagesize=letter, invariant=True)
        self.y, self.count = TOP, 0
        self.truth: dict[tuple[str, str], str | None] = {}
        self.above = random.random() < 0.3
        self.swapped = random.choice([0.0, 0.03, 0.1])
        self.salt = random.randrange(100, 900)
        self.all = wanted(edition)

    def draw(self) -> Drawn:
        self._line(f"{self.edition.form}   {self.edition.title.upper()}", bold=True)
        for part, group in groupby(self.all, key=lambda one: one.part):
            self._line(self._said(part), bold=True)
            self._items(list(group))
        self._footer()
        self.canvas.showPage()
        self.canvas.save()
        return Drawn(self.out.getvalue(), self.truth)

    def _items(self, items: list[Wanted]) -> None:
        rows = list(self._rows(items))
        for at in range(len(rows) - 1):
            apart = not rows[at][0].cell and not rows[at + 1][0].cell
            if apart and self.random.random() < self.swapped:
                rows[at], rows[at + 1] = rows[at + 1], rows[at]
        for row in rows:
            if len(row) > 1:
                self._cells(row)
            else:
                self._one(row[0])
        if self.random.random() < 0.3:
            self._stranger()

    def _rows(self, items: list[Wanted]) -> Iterator[list[Wanted]]:
        """The items, those that stand side by side in a table together."""
        for _key, group in groupby(items, key=lambda one: (one.concept, one.row)):
            found = list(group)
            if found[0].cell and not found[0].concept.startswith(("caption", "filer", "court")):
                yield found
            else:
                yield from ([one] for one in found)

    def _one(self, one: Wanted) -> None:
        words = self._said(one.words)
        number = f"{one.item}. " if one.item and one.item[0].isdigit() and self.random.random() < 0.7 else ""
        if one.is_box:
            self._room(16)
            self._box(one, LEFT + 10, self.y)
            self.canvas.drawString(LEFT + 26, self.y + 2, f"{number}{words}"[:100])
            self.y -= 16
        elif self.above:
            self._room(28)
            self.canvas.drawString(LEFT + 10, self.y + 2, f"{number}{words}"[:100])
            self._text(one, LEFT + 10, self.y - 15, 300)
            self.y -= 30
        else:
            self._room(18)
            label = f"{number}{words}:"[:75]
            self.canvas.drawString(LEFT + 10, self.y + 2, label)
            x = LEFT + 16 + self.canvas.stringWidth(label, "Helvetica", SIZE)
            self._text(one, x, self.y - 1, max(60, min(RIGHT - x, 260)))
            self.y -= 18

    def _cells(self, row: list[Wanted]) -> None:
        self._room(34)
        width = (RIGHT - LEFT - 30) / len(row)
        head = row[0].whole
        if row[0].row == 1:
            self.canvas.drawString(LEFT + 10, self.y + 2, self._said(head)[:100])
            self.y -= 14
            for place, one in enumerate(row):
                self.canvas.drawString(
                    LEFT + 20 + place * width, self.y, self._said(one.words)[: int(width / 5)]
                )
            self.y -= 4
        for place, one in enumerate(row):
            self._text(one, LEFT + 20 + place * width, self.y - 14, width - 6)
        self.y -= 18

    def _stranger(self) -> None:
        self._room(16)
        label = self.random.choice(["For court use", "Reserved", "Other (specify)", "Continued"])
        self.canvas.drawString(LEFT + 10, self.y + 2, label)
        name = self._name("other reserved")
        self.canvas.acroForm.textfield(
            name=name,
            tooltip="" if self.family is not Family.FULL else label,
            x=LEFT + 120,
            y=self.y - 1,
            width=120,
            height=13,
            borderWidth=0,
            fontSize=8,
        )
        self.truth[name, ""] = None
        self.y -= 16

    def _box(self, one: Wanted, x: float, y: float) -> None:
        name = self._name(one.key)
        self.canvas.acroForm.checkbox(
            name=name, tooltip=self._tooltip(one), x=x, y=y, size=11, borderWidth=0.5
        )
        self.truth[name, "Yes"] = one.key

    def _text(self, one: Wanted, x: float, y: float, width: float) -> None:
        name = self._name(one.key)
        flags = "multiline" if one.concept.endswith(("words", "rows")) else ""
        self.canvas.acroForm.textfield(
            name=name,
            tooltip=self._tooltip(one),
            x=x,
            y=y,
            width=width,
            height=14,
            borderWidth=0,
            fontSize=9,
            fieldFlags=flags,
        )
        self.truth[name, ""] = one.key

    def _name(self, key: str) -> str:
        self.count += 1
        if self.family in (Family.FULL, Family.NAMED):
            parts = key.replace("/", ".").replace("_", ".").split(".")
            return "form1.Page1." + "".join(part.capitalize() for part in parts) + f"[{self.count}]"
        if self.family is Family.BARE:
            return f"f{(self.count * 7919 + self.salt) % 100003:x}"
        return f"TextField{self.count + self.salt}"

    def _tooltip(self, one: Wanted) -> str:
        if self.family in (Family.NAMED, Family.BARE):
            return ""
        if self.family is Family.MISLEADING or (self.family is Family.MIXED and self.random.random() < 0.1):
            same = [other for other in self.all if other.is_box == one.is_box]
            one = same[(same.index(one) + 1) % len(same)]
        number = f"{one.item}. " if one.item and one.item[0].isdigit() else ""
        if self.family is Family.SHORT:
            words = self._said(one.words).split()
            return " ".join(words)
        return f"{number}{self._said(one.part)}. {self._said(one.words)}"

    def _said(self, words: str) -> str:
        """The words as somebody else would put them."""
        found = []
        for word in words.split():
            bare = word.strip(",:;.()").lower()
            said = self.random.choice(OTHER_WORDS[bare]) if bare in OTHER_WORDS else word
            if len(words.split()) > 4 and self.random.random() < 0.06:
                continue
            found.append(said)
        return " ".join(filter(None, found)) or words

    def _line(self, words: str, *, bold: bool = False) -> None:
        self._room(20)
        self.canvas.setFont("Helvetica-Bold" if bold else "Helvetica", SIZE)
        self.canvas.drawString(LEFT, self.y, words)
        self.canvas.setFont("Helvetica", SIZE)
        self.y -= 18

    def _room(self, needed: float) -> None:
        if self.y - needed < BOTTOM:
            self._footer()
            self.canvas.showPage()
            self.canvas.setFont("Helvetica", SIZE)
            self.y = TOP

    def _footer(self) -> None:
        self.canvas.setFont("Helvetica", 7)
        self.canvas.drawString(LEFT, 40, "Form Adopted for Mandatory Use")
        self.canvas.drawString(
            LEFT, 31, f"{self.edition.form} [Rev. {self.edition.printed or 'January 1, 2016'}]"
        )
        self.canvas.setFont("Helvetica", SIZE)
