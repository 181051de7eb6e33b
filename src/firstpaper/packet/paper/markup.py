"""The sheet markup: a small, strict subset of HTML, read into a tree.

Nothing is repaired. Whatever stands outside the subset is reported with its line, so that a
template is wrong loudly and never prints something other than what it says. The reports name tags
and lines but never repeat the text of a sheet, which may be private.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from html import unescape

ROOT = "sheet"
INLINE = frozenset({"strong", "em", "small", "span", "br", "tick", "done", "line", "page"})
VOID = frozenset({"br", "hr", "pagebreak", "tick", "done", "line", "page", "figure"})
HEADINGS = ("h1", "h2", "h3")
LISTS = frozenset({"ul", "ol"})
MOST_LISTS = 3  # lists inside of lists; deeper ones leave no room for words
MOST_DEEP = 30
MOST_COLUMNS = 8
LEAST_WIDTH = 6  # percent of the column


@dataclass(frozen=True, slots=True)
class Allowed:
    """What one tag may hold: which tags, whether loose text, and which attributes."""

    kids: frozenset[str] = frozenset()
    text: bool = False
    attributes: Mapping[str, str] = field(default_factory=dict)
    required: frozenset[str] = frozenset()


_WORDS = Allowed(INLINE, text=True)
_IN_HEADINGS = INLINE - {"tick", "done", "line", "page"}
_SHORT_TEXT = r'[^"<>]{1,120}'
_BLOCKS = frozenset({"p", "ul", "ol", "hr", "line", "table", "div", "h2", "h3"})

GRAMMAR: Mapping[str, Allowed] = {
    ROOT: Allowed(_BLOCKS | {"h1", "section", "pagebreak", "figure"}),
    "h1": Allowed(_IN_HEADINGS, text=True),
    "h2": Allowed(_IN_HEADINGS, text=True),
    "h3": Allowed(_IN_HEADINGS, text=True),
    "p": Allowed(INLINE, text=True, attributes={"class": "lead"}),
    "strong": _WORDS,
    "em": _WORDS,
    "small": _WORDS,
    "span": Allowed(
        INLINE, text=True, attributes={"lang": r"[a-z]{2,3}(-[A-Z]{2})?"}, required=frozenset({"lang"})
    ),
    "ul": Allowed(frozenset({"li"})),
    "ol": Allowed(frozenset({"li"})),
    "li": Allowed(INLINE | LISTS | {"p"}, text=True),
    "section": Allowed(
        _BLOCKS | {"h1", "figure", "section"},
        attributes={"class": "keep|columns"},
        required=frozenset({"class"}),
    ),
    "div": Allowed(
        INLINE | LISTS | {"p", "h2", "h3", "hr"},
        text=True,
        attributes={"class": "note|warning"},
        required=frozenset({"class"}),
    ),
    "table": Allowed(
        frozenset({"thead", "tbody", "tr"}),
        attributes={"widths": r"\d{1,2}(\.\d+)?( \d{1,2}(\.\d+)?)*|100", "class": "plain"},
    ),
    "thead": Allowed(frozenset({"tr"})),
    "tbody": Allowed(frozenset({"tr"})),
    "tr": Allowed(frozenset({"th", "td"})),
    "th": Allowed(
        INLINE | LISTS | {"p"}, text=True, attributes={"colspan": "[1-9]", "class": "number|label"}
    ),
    "td": Allowed(INLINE | LISTS | {"p"}, text=True, attributes={"colspan": "[1-9]", "class": "number"}),
    "figure": Allowed(attributes={"name": r"[a-z]+(-[a-z0-9]+)*"}, required=frozenset({"name"})),
    "br": Allowed(),
    "hr": Allowed(),
    "pagebreak": Allowed(),
    "tick": Allowed(attributes={"marked": ""}),
    "done": Allowed(attributes={"for": _SHORT_TEXT}, required=frozenset({"for"})),
    "page": Allowed(attributes={"sheet": _SHORT_TEXT}, required=frozenset({"sheet"})),
    "line": Allowed(attributes={"width": r"[1-9]\d?|100"}),
}


@dataclass(slots=True, eq=False)
class Node:
    """One element of a sheet, with its kids in order; a kid is a node or text (unescaped)."""

    tag: str
    attributes: dict[str, str]
    line: int
    kids: "list[Node | str]" = field(default_factory=list)
    in_header: bool = False
    """Whether it stands in the <thead> of a table."""
    kept: bool = False
    """Whether it stands for its words in every sheet that has them, so that nobody may change it."""

    def nodes(self, *tags: str) -> "Iterator[Node]":
        """The kids that are elements, only those with one of `tags` when any is given."""
        return (kid for kid in self.kids if isinstance(kid, Node) and (not tags or kid.tag in tags))

    def walk(self) -> "Iterator[Node]":
        """This element and everything in it, in reading order; of what is kept only its own element."""
        ahead = [self]
        while ahead:
            node = ahead.pop()
            yield node
            if not node.kept:
                ahead.extend(kid for kid in reversed(node.kids) if isinstance(kid, Node))


_TAG = re.compile(r"""</?([a-z][a-z0-9]*)((?:\s+[a-z]+(?:="[^"<>]*")?)*)\s*(/?)>|<!--.*?-->""", re.DOTALL)
_ATTRIBUTE = re.compile(r"""([a-z]+)(?:="([^"]*)")?""")
_PIECE = re.compile(r"<(p|tr|li)\b[^<>]*>[^<]*(?:<(?!/?\1\b|(?:ul|ol|li)\b)[^<]*)*</\1>")
"""A paragraph, a row or an item without a list inside. Most of them stand in the packets of others too."""


def parse(html: str) -> tuple[Node, list[str]]:
    """The tree of `html` and every fault found in it. With faults the tree is only a best effort."""
    reader = _Reader()
    reader.read_by_pieces(html)
    if reader.faults:  # a fault is told with its place in the whole sheet
        reader = _Reader()
        reader.read(html)
    if not reader.faults:
        reader.faults += _faults_of_sense(reader.root)
    return reader.root, reader.faults


def parse_strictly(html: str) -> Node:
    """The tree of `html`.

    Raises:
        ValueError: The html is outside the subset; the message lists every fault.
    """
    root, faults = parse(html)
    if faults:
        raise ValueError("This sheet cannot be drawn. " + " ".join(faults))
    return root


class _Reader:
    """Reads tags and text, keeping the open elements on a stack."""

    def __init__(self, inside: str = ROOT, *, in_header: bool = False) -> None:
        self.root = Node(inside, {}, 1, in_header=in_header)
        self.open = [self.root]
        self.faults: list[str] = []
        self.line = 1

    def read(self, html: str) -> None:
        """Read all of it, tag by tag."""
        self._tags(html, 0, len(html))
        self._end()

    def read_by_pieces(self, html: str) -> None:
        """The same, but for faults, whose places are not right then. A piece that was met before is known."""
        at = 0
        for piece in _PIECE.finditer(html):
            self._tags(html, at, piece.start())
            self._piece(piece.group())
            at = piece.end()
        self._tags(html, at, len(html))
        self._end()

    def _tags(self, html: str, at: int, end: int) -> None:
        for tag in _TAG.finditer(html, at, end):
            self._text(html[at : tag.start()])
            self._tag(tag)
            self.line += tag.group().count("\n")
            at = tag.end()
        self._text(html[at:end])

    def _piece(self, html: str) -> None:
        parent = self.open[-1]
        if node := _kept(html, parent.tag, parent.in_header):
            parent.kids.append(node)
        else:
            self._fault("something is wrong.")
        self.line += html.count("\n")

    def _end(self) -> None:
        for node in self.open[1:]:
            self._fault(f"<{node.tag}> is never closed.", node.line)

    def _fault(self, words: str, line: int | None = None) -> None:
        self.faults.append(f"Line {line or self.line}: {words}")

    def _text(self, text: str) -> None:
        if not text:
            return
        if "<" in text:
            self._fault("a < that starts no tag. Write &lt; for the sign.")
        parent = self.open[-1]
        if GRAMMAR[parent.tag].text:
            parent.kids.append(unescape(text) if "&" in text else text)
        elif not text.isspace():
            where = "outside of a paragraph" if parent.tag == ROOT else f"directly inside <{parent.tag}>"
            self._fault(f"text {where}.")
        self.line += text.count("\n")

    def _tag(self, match: re.Match[str]) -> None:
        name, attributes, slash = match.groups()
        if name is None:
            return
        if name not in GRAMMAR or name == ROOT:
            self._fault(f"<{name}> is not part of the sheet markup.")
        elif match.group().startswith("</"):
            if attributes or slash:
                self._fault(f"</{name}> takes nothing else.")
            self._close(name)
        else:
            self._start(name, attributes, closed=bool(slash))

    def _start(self, name: str, attributes: str, *, closed: bool) -> None:
        parent = self.open[-1]
        if name not in GRAMMAR[parent.tag].kids:
            where = "here" if parent.tag == ROOT else f"inside <{parent.tag}>"
            self._fault(f"<{name}> may not stand {where}.")
        if name in LISTS and sum(node.tag in LISTS for node in self.open) >= MOST_LISTS:
            self._fault(f"lists may stand {MOST_LISTS} deep, not more.")
        if len(self.open) == MOST_DEEP:
            self._fault("tags stand too deep inside each other.")
        node = Node(name, self._attributes(name, attributes), self.line)
        node.in_header = parent.tag == "thead" or parent.in_header
        parent.kids.append(node)
        if closed and name not in VOID:
            self._fault(f"<{name}/> may not be empty; write <{name}>...</{name}>.")
        elif name not in VOID:
            self.open.append(node)

    def _close(self, name: str) -> None:
        if name in VOID:
            if name != self._last_tag():
                self._fault(f"</{name}> closes nothing.")
        elif name not in [node.tag for node in self.open[1:]]:  # what it all stands in is not closed here
            self._fault(f"</{name}> closes nothing.")
        elif self.open[-1].tag == name:
            self.open.pop()
        else:
            self._fault(f"</{name}> comes before <{self.open[-1].tag}> is closed.")
            while self.open.pop().tag != name:
                pass

    def _last_tag(self) -> str:
        """The tag of the element just before, as in `<tick></tick>`."""
        last = self.open[-1].kids[-1] if self.open[-1].kids else ""
        return last.tag if isinstance(last, Node) else ""

    def _attributes(self, tag: str, written: str) -> dict[str, str]:
        if not written and not GRAMMAR[tag].required:
            return {}
        allowed = GRAMMAR[tag]
        found: dict[str, str] = {}
        for name, value in _ATTRIBUTE.findall(written):
            if name not in allowed.attributes:
                self._fault(f"<{tag}> takes no attribute {name}.")
            elif name in found:
                self._fault(f"<{tag}> has {name} twice.")
            elif not re.fullmatch(allowed.attributes[name], value):
                self._fault(f"<{tag}> has a value of {name} that it does not know.")
            found[name] = value
        for name in sorted(allowed.required - set(found)):
            self._fault(f'<{tag}> needs {name}="{allowed.attributes[name]}".')
        return found


@lru_cache(maxsize=4096)
def _kept(html: str, inside: str, in_header: bool) -> Node | None:
    """The element of a piece inside of that tag; None where anything is wrong with it."""
    reader = _Reader(inside, in_header=in_header)
    reader.read(html)
    if reader.faults:
        return None
    (node,) = reader.root.nodes()
    node.kept = True
    return node


def _faults_of_sense(root: Node) -> Iterator[str]:
    """Faults that only show in the whole tree: heading order, empty lists, uneven tables."""
    above = 0
    for node in root.walk():
        if node.tag in HEADINGS:
            level = int(node.tag[1])
            if level > above + 1:
                yield f"Line {node.line}: <{node.tag}> needs an <h{level - 1}> before it."
            above = level
            if not _has_words(node):
                yield f"Line {node.line}: <{node.tag}> is empty."
        elif node.tag in LISTS and not node.kids:
            yield f"Line {node.line}: <{node.tag}> is empty."
        elif node.tag == "table":
            yield from _table_faults(node)


def _has_words(node: Node) -> bool:
    return any(bool(kid.strip()) if isinstance(kid, str) else _has_words(kid) for kid in node.kids)


def rows(table: Node) -> list[Node]:
    """The rows of a table, those of its header among them."""
    return [row for kid in table.nodes() for row in ((kid,) if kid.tag == "tr" else kid.nodes("tr"))]


def columns(row: Node) -> int:
    """How many columns a table row spans."""
    return sum(int(cell.attributes.get("colspan", "1")) for cell in row.nodes())


def _table_faults(table: Node) -> Iterator[str]:
    lines = rows(table)
    where = f"Line {table.line}: the table"
    if not lines or not all(row.kids for row in lines):
        yield f"{where} has an empty row or none."
        return
    width = columns(lines[0])
    if any(columns(row) != width for row in lines):
        yield f"{where} has rows of different widths."
    if width > MOST_COLUMNS:
        yield f"{where} has more than {MOST_COLUMNS} columns."
    heads = list(table.nodes("thead"))
    if len(heads) > 1 or (heads and table.kids[0] is not heads[0]):
        yield f"{where} may have one <thead>, at its start."
    if "widths" in table.attributes:
        widths = [float(share) for share in table.attributes["widths"].split()]
        if len(widths) != width:
            yield f"{where} has {width} columns but {len(widths)} widths."
        if not 99 <= sum(widths) <= 101 or min(widths) < LEAST_WIDTH:
            yield f"{where} needs widths of at least {LEAST_WIDTH} that add up to 100."
    if table.attributes.get("class") != "plain" and not any(any(row.nodes("th")) for row in lines):
        yield f'{where} has no <th>. A screen reader needs one; for mere layout use class="plain".'
