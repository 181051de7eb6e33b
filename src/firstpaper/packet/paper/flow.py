"""From the tree of a sheet to blocks, each with what it is to a screen reader."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from html import unescape
from itertools import accumulate
from typing import Any, NamedTuple, TypeVar

from firstpaper.locale import _, language
from firstpaper.packet.paper import markup
from firstpaper.packet.paper.blocks import Block, Item, PageBreak, Remark, Rule, Stack, Text
from firstpaper.packet.paper.columns import Columns
from firstpaper.packet.paper.fonts import clean, face, runs
from firstpaper.packet.paper.lines import (
    MARK_GAP_EMS,
    TICK_EMS,
    Blank,
    Inline,
    LineBreak,
    PageNumber,
    Piece,
    Tick,
    break_lines,
)
from firstpaper.packet.paper.looks import Look, TextLook
from firstpaper.packet.paper.markup import INLINE, Node, columns
from firstpaper.packet.paper.picture import Picture
from firstpaper.packet.paper.table import Cell, Row, Table
from firstpaper.packet.paper.tags import DIVISION, PARAGRAPH, SECTION, Meaning, Tag
from firstpaper.packet.pictures.shapes import Drawing

_BULLET = "•"
_LABEL_GAP_EMS = 0.45
_HEADER_SHARE = 0.3  # a header taller than this part of the page is not repeated
T = TypeVar("T")


class _Tone(NamedTuple):
    """What the inline tags around a piece of text say about it."""

    bold: bool = False
    italic: bool = False
    small: bool = False
    lang: str = ""

    def inside(self, tag: str, lang: str) -> "_Tone":
        return _Tone(
            self.bold or tag == "strong",
            self.italic or tag == "em",
            self.small or tag == "small",
            lang or self.lang,
        )


class _Column(NamedTuple):
    """Where blocks go: how wide it is, and how their paragraphs are set."""

    width: float
    text: str = "p"

    def narrower(self, by: float) -> "_Column":
        """The same column, narrower by so many points."""
        return _Column(self.width - by, self.text)


@dataclass(frozen=True, slots=True)
class Flow:
    """Lays out the content of one sheet. `figures` are the pictures that it may name, each in its parts."""

    look: Look
    figures: Mapping[str, Sequence[Drawing]] = field(default_factory=dict)

    def sheet(self, root: Node, tag: Tag, title: str) -> Stack:
        """All blocks of the sheet of this title."""
        blocks = list(self._blocks(root.kids, _Column(self.look.width)))
        _hold_opening(blocks)
        return Stack(blocks, tag=tag, starts=title)

    def _blocks(self, kids: Sequence[Node | str], column: _Column) -> Iterator[Block]:
        """The blocks of what a node holds; neighbouring words and inline tags form one paragraph."""
        words: list[Node | str] = []
        for kid in kids:
            if isinstance(kid, str) or kid.tag in INLINE:
                words.append(kid)
                continue
            yield from self._loose(words, column)
            words = []
            if kid.tag != "p" or _says_something(kid.kids):
                yield self._once(Flow._block, kid, column)
        yield from self._loose(words, column)

    def _loose(
        self, words: Sequence[Node | str], column: _Column, tag: Meaning = PARAGRAPH
    ) -> Iterator[Block]:
        if _says_something(words):
            yield self._text(words, column, self.look.texts[column.text], tag)

    def _held(self, kids: Sequence[Node | str], column: _Column, tag: Tag) -> Stack:
        """What a cell or the body of a list item holds.

        Where one paragraph is all there is, a screen reader hears the cell or the item itself, with no
        paragraph inside.
        """
        alone = all(map(_runs_on, kids))
        return Stack(list(self._loose(kids, column, None) if alone else self._blocks(kids, column)), tag=tag)

    def _once(self, lay_out: Callable[..., T], node: Node, *place: Any) -> T:
        """What is laid out of a node there; of one that stands in many sheets, what was laid out before."""
        if not node.kept:
            return lay_out(self, node, *place)
        laid_out: T = _kept(lay_out, node, place, self.look, language())
        return laid_out

    def _block(self, node: Node, column: _Column) -> Block:
        match node.tag:
            case "h1" | "h2" | "h3":
                block: Block = self._heading(node, column)
            case "p":
                block = self._text(node.kids, column, self.look.texts[column.text], PARAGRAPH)
                block.stays_with_next = node.attributes.get("class") == "lead"
            case "ul" | "ol":
                block = self._list(node, column)
            case "table":
                block = self._table(node, column)
            case "div":
                block = self._remark(node, column)
            case "section" if node.attributes["class"] == "columns":
                block = self._columns(node, column)
            case "section":
                blocks = list(self._blocks(node.kids, column))
                block = Stack(blocks, whole_below=self.look.height, tag=SECTION)
            case "figure":
                block = self._pictures(node)
            case "pagebreak":
                block = PageBreak()
            case _:
                block = Rule(column.width)
        return block

    def _columns(self, node: Node, column: _Column) -> Columns:
        gap = self.look.column_gap
        half = (column.width - gap) / 2
        blocks = list(self._blocks(node.kids, column._replace(width=half)))
        for block in blocks:
            if isinstance(block, Stack) and block.whole_below:  # a section, not a list
                block.before = max(block.before, 0.8 * gap)
        return Columns(Stack(blocks), half + gap, gap, self.look.whole_row)

    def _heading(self, node: Node, column: _Column) -> Text:
        text = self._text(node.kids, column, self.look.texts[node.tag], Tag(node.tag.upper()))
        text.stays_with_next = True
        text.heads = " ".join(clean(plain(node)).split())
        if node.tag == "h2":
            text.bookmark = text.heads
        return text

    def _text(self, kids: Sequence[Node | str], column: _Column, look: TextLook, tag: Meaning) -> Text:
        items = tuple(self._inline(_trimmed(kids), _Tone(bold=look.bold)))
        lines = break_lines(items, look.size, column.width)
        aligned = 0.5 if look.centered else 0
        return Text(lines, look, column.width, tag, before=look.before, after=look.after, aligned=aligned)

    def _inline(self, kids: Sequence[Node | str], tone: _Tone) -> Iterator[Inline]:
        grey = self.look.small_grey if tone.small else 0
        for kid in kids:
            if isinstance(kid, str):
                for typeface, text in runs(clean(kid), self.look.style, bold=tone.bold, italic=tone.italic):
                    yield Piece(text, typeface, grey, tone.lang)
            elif kid.tag == "br":
                yield LineBreak()
            elif kid.tag == "tick":
                marked = "marked" in kid.attributes
                yield Tick(marked, _("marked box") if marked else _("empty box to mark"))
            elif kid.tag == "done":
                item = clean(unescape(kid.attributes["for"]))
                words = _("circle to tick when copied: {item}").format(item=item)
                yield Tick(False, words, round=True)
            elif kid.tag == "page":
                title = clean(unescape(kid.attributes["sheet"]))
                yield PageNumber(title, face(self.look.style, bold=tone.bold))
            elif kid.tag == "line":
                share = int(kid.attributes.get("width", "0")) / 100
                yield Blank(share, _("blank line to write on"))
            else:
                yield from self._inline(kid.kids, tone.inside(kid.tag, kid.attributes.get("lang", "")))

    def _list(self, node: Node, column: _Column) -> Stack:
        numbered = node.tag == "ol"
        tag = Tag("L", f"/O/List/ListNumbering/{'Decimal' if numbered else 'Disc'}")
        labels = [f"{count}." if numbered else _BULLET for count in range(1, len(node.kids) + 1)]
        size = self.look.texts[column.text].size
        regular = face(self.look.style)
        widest = max(regular.width(label) for label in labels) + _LABEL_GAP_EMS
        indent = size * max(widest, TICK_EMS + MARK_GAP_EMS)
        items = [
            self._once(Flow._item, kid, label, column, indent)
            for kid, label in zip(node.nodes(), labels, strict=True)
        ]
        stack = Stack(items, tag=tag)
        stack.before = stack.after = self.look.texts[column.text].after
        return stack

    def _item(self, node: Node, label: str, column: _Column, indent: float) -> Item:
        """A list item; one that starts with a box to tick has the box as its label."""
        kids = _trimmed(node.kids)
        first: Node | str = kids[0] if kids else ""
        mark: list[Node | str] = [label]
        if isinstance(first, Node) and first.tag == "tick":
            mark, kids = [first], kids[1:]
        body = self._held(kids, column.narrower(indent), Tag("LBody"))
        look = self.look.texts[column.text]
        label_text = self._text(mark, column._replace(width=indent), look, Tag("Lbl"))
        if label == _BULLET:
            label_text.width, label_text.aligned = TICK_EMS * look.size, 0.5
        after = self.look.list_gap if len(body.blocks) < 2 else look.after
        return Item(label_text, body, indent, self.look.list_gap, after)

    def _remark(self, node: Node, column: _Column) -> Remark:
        blocks = list(self._blocks(node.kids, column.narrower(2 * Remark.INDENT)))
        body = Stack(blocks, whole_below=self.look.whole_row)
        return Remark(body, column.width, framed=node.attributes["class"] == "warning")

    def _pictures(self, node: Node) -> Stack:
        name = node.attributes["name"]
        if name not in self.figures:
            message = f"Line {node.line}: the sheet brings no picture {name!r}."
            raise ValueError(message)
        return Stack([Picture(drawing, self.look.style) for drawing in self.figures[name]], tag=DIVISION)

    def _table(self, node: Node, column: _Column) -> Table:
        plain_layout = node.attributes.get("class") == "plain"
        tag = DIVISION if plain_layout else Tag("Table")
        edges = self._edges(node, column.width)
        header, rows = list[Row](), list[Row]()
        for line in markup.rows(node):
            part = header if line.in_header else rows
            part.append(self._once(Flow._row, line, edges, plain_layout))
        if not rows or sum(row.height for row in header) > _HEADER_SHARE * self.look.height:
            header, rows = [], [*header, *rows]
        return Table(header, rows, column.width, not plain_layout, *self.look.table_gaps, tag=tag)

    def _edges(self, table: Node, width: float) -> tuple[float, ...]:
        """The left edge of each column, and the right edge of the last plus the gap between columns."""
        gap = self.look.column_gap
        count = columns(markup.rows(table)[0])
        written = table.attributes.get("widths")
        shares = [float(share) for share in written.split()] if written else [1.0] * count
        total = sum(shares)
        return tuple(accumulate((share / total * (width + gap) for share in shares), initial=0.0))

    def _row(self, node: Node, edges: Sequence[float], plain_layout: bool) -> Row:
        all_heads = len(node.kids) > 1 and all(cell.tag == "th" for cell in node.nodes())
        heads_columns = node.in_header or all_heads
        cells, place = list[Cell](), 0
        for kid in node.nodes():
            span = int(kid.attributes.get("colspan", "1"))
            room = edges[place + span] - edges[place] - self.look.column_gap
            headed = kid.tag == "th" and kid.attributes.get("class") != "label"
            column = _Column(room, "head" if headed else "cell")
            if plain_layout:
                body = Stack(list(self._blocks(kid.kids, column)), tag=DIVISION)
            else:
                body = self._held(kid.kids, column, _cell_tag(kid, span, heads_columns=heads_columns))
            if kid.attributes.get("class") == "number":
                for block in body.blocks:
                    if isinstance(block, Text):
                        block.aligned = 1
            cells.append(Cell(edges[place], body))
            place += span
        return Row(cells, self.look.cell_padding, self.look.whole_row, None if plain_layout else Tag("TR"))


@lru_cache(maxsize=8192)
def _kept(lay_out: Callable[..., T], node: Node, place: tuple[Any, ...], look: Look, _language: str) -> T:
    """What is laid out of such a node, in the language in which its boxes are named. Nobody may change it."""
    return lay_out(Flow(look), node, *place)


def _cell_tag(cell: Node, span: int, *, heads_columns: bool) -> Tag:
    """A TH says whether it heads its column or its row."""
    attributes = f"/ColSpan {span}" if span > 1 else ""
    if cell.tag == "th":
        attributes += "/Scope/Column" if heads_columns else "/Scope/Row"
    return Tag(cell.tag.upper(), "/O/Table" + attributes if attributes else "")


def _hold_opening(blocks: Sequence[Block]) -> None:
    """Keep remarks right below the title of a sheet with what they speak of, as the title itself is kept."""
    for block in blocks:
        if isinstance(block, Remark):
            block.stays_with_next = True
        elif not (isinstance(block, Text) and block.heads):
            return


def plain(node: Node) -> str:
    """The words of a node without its tags."""
    return "".join(
        kid if isinstance(kid, str) else " " if kid.tag == "br" else plain(kid) for kid in node.kids
    )


def _runs_on(kid: Node | str) -> bool:
    """Whether it stands in a line of text."""
    return isinstance(kid, str) or kid.tag in INLINE


def _says_something(kids: Sequence[Node | str]) -> bool:
    """Whether there is more than blank text."""
    return any(isinstance(kid, Node) or bool(kid.strip()) for kid in kids)


def _trimmed(kids: Sequence[Node | str]) -> Sequence[Node | str]:
    """What a node holds, without blank text at the start, so that the first real kid comes first."""
    start = next((count for count, kid in enumerate(kids) if isinstance(kid, Node) or kid.strip()), len(kids))
    return kids[start:]
