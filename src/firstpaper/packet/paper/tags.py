"""The structure tree of a tagged PDF (ISO 32000-1, 14.7 and 14.8): what a screen reader reads."""

from collections.abc import Iterable, Iterator
from typing import Any

from reportlab.pdfbase.pdfdoc import PDFObject, PDFString


class Element(PDFObject):
    """A structure element: a role, and its kids in reading order.

    A kid is another element or a mark, the pair (page index, marked-content number).
    """

    __RefOnly__ = 1
    __slots__ = ("alt", "attributes", "kids", "lang", "number", "parent", "role")

    def __init__(self, role: str, parent: "Element | None", attributes: str = "") -> None:
        self.role = role
        self.parent = parent
        self.attributes = attributes
        self.alt = ""
        self.lang = ""
        self.kids: list[Element | tuple[int, int]] = []
        self.number = 0
        if parent is not None:
            parent.kids.append(self)

    @classmethod
    def drawing(cls, parent: "Element", alt: str) -> "Element":
        """A drawing inside a line of text. It joins its parent's kids when it is drawn, between the
        text before it and the text after it."""
        figure = cls("Figure", None)
        figure.parent = parent
        figure.alt = alt
        return figure

    def walk(self) -> "Iterator[Element]":
        """This element and everything below it, in reading order."""
        yield self
        for kid in self.kids:
            if isinstance(kid, Element):
                yield from kid.walk()

    def place(self, left: float, foot: float, right: float, top: float) -> None:
        """Join the tree as a drawing that stands here on the page (its BBox)."""
        if self.parent is not None:
            self.parent.kids.append(self)
        self.attributes = f"/O/Layout/BBox[{left:.2f} {foot:.2f} {right:.2f} {top:.2f}]"

    def format(self, document: Any) -> bytes:
        """The element as a PDF object. The tree must have been numbered by `write_tree`."""
        parent = self.parent.number if self.parent is not None else _number(document, _TREE)
        home = next((kid[0] for kid in self.kids if not isinstance(kid, Element)), None)
        kids = " ".join(_kid(document, kid, home) for kid in self.kids)
        words = f"<</Type/StructElem/S/{self.role}/P {parent} 0 R/K[{kids}]"
        if home is not None:
            words += f"/Pg {_number(document, page_id(home))} 0 R"
        if self.attributes:
            words += f"/A<<{self.attributes}>>"
        if self.lang:
            words += f"/Lang({self.lang})"
        alt = b"/Alt" + bytes(PDFString(self.alt).format(document)) if self.alt else b""
        return words.encode("ascii") + alt + b">>"


def _kid(document: Any, kid: Element | tuple[int, int], home: int | None) -> str:
    """A kid in the tree: by its number alone where it is a mark on the element's own page."""
    if isinstance(kid, Element):
        return f"{kid.number} 0 R"
    index, mark = kid
    if index == home:
        return str(mark)
    return f"<</Type/MCR/Pg {_number(document, page_id(index))} 0 R/MCID {mark}>>"


class _Raw(PDFObject):
    """A PDF object given by its own text."""

    __RefOnly__ = 1

    def __init__(self, text: str) -> None:
        self.text = text

    def format(self, document: Any) -> bytes:
        return self.text.encode("ascii")


_TREE = "structure-tree"


def page_id(index: int) -> str:
    """The library's name for the page with this index (from 0)."""
    return f"Page{index + 1}"


def _number(document: Any, name: str) -> int:
    number: int = document.idToObjectNumberAndVersion[name][0]
    return number


def write_tree(document: Any, root: Element, marks: Iterable[list[Element]]) -> None:
    """Put the structure tree and its parent tree into the document.

    Args:
        document: A document whose pages are all closed.
        root: The Document element.
        marks: For each page, the element that owns each marked-content number.
    """
    for count, element in enumerate(root.walk()):
        name = f"element-{count}"
        document.Reference(element, name)
        element.number = _number(document, name)
    pages = " ".join(
        f"{index} [{' '.join(f'{owner.number} 0 R' for owner in owners)}]"
        for index, owners in enumerate(marks)
    )
    parents = f"<</Nums[{pages}]>>"
    tree = _Raw(f"<</Type/StructTreeRoot/K {root.number} 0 R/ParentTree {parents}>>")
    document.Reference(tree, _TREE)
    document.Catalog.StructTreeRoot = tree
    document.Catalog.MarkInfo = _Raw("<</Marked true>>")
