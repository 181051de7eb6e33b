"""The structure tree of a tagged PDF (ISO 32000-1, 14.7 and 14.8): what a screen reader reads."""

from collections.abc import Iterator, Sequence
from typing import Any

from reportlab.pdfbase.pdfdoc import PDFObject, PDFString


class Element:
    """A structure element: a role, and its kids in reading order.

    A kid is another element or a mark, the pair (page index, marked-content number).
    """

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
        ahead = [self]
        while ahead:
            element = ahead.pop()
            yield element
            ahead.extend(kid for kid in reversed(element.kids) if isinstance(kid, Element))

    def place(self, left: float, foot: float, right: float, top: float) -> None:
        """Join the tree as a drawing that stands here on the page (its BBox)."""
        if self.parent is not None:
            self.parent.kids.append(self)
        self.attributes = f"/O/Layout/BBox[{left:.2f} {foot:.2f} {right:.2f} {top:.2f}]"

    def written(self, document: Any, pages: Sequence[int], tree: int) -> str:
        """The element as the text of a PDF object.

        Args:
            document: The library's document, which knows how words are written.
            pages: The object numbers of the pages.
            tree: The object number of the tree, which is the parent of its root.
        """
        parent = tree if self.parent is None else self.parent.number
        home = next((kid[0] for kid in self.kids if not isinstance(kid, Element)), None)
        kids = " ".join(_kid(kid, home, pages) for kid in self.kids)
        words = f"<</Type/StructElem/S/{self.role}/P {parent} 0 R/K[{kids}]"
        if home is not None:
            words += f"/Pg {pages[home]} 0 R"
        if self.attributes:
            words += f"/A<<{self.attributes}>>"
        if self.lang:
            words += f"/Lang({self.lang})"
        if self.alt:
            words += f"/Alt{PDFString(self.alt).format(document).decode('ascii')}"
        return words + ">>"


def _kid(kid: Element | tuple[int, int], home: int | None, pages: Sequence[int]) -> str:
    """A kid in the tree: by its number alone where it is a mark on the element's own page."""
    if isinstance(kid, Element):
        return f"{kid.number} 0 R"
    page, mark = kid
    return str(mark) if page == home else f"<</Type/MCR/Pg {pages[page]} 0 R/MCID {mark}>>"


class _Raw(PDFObject):
    """A PDF object given by its own text."""

    __RefOnly__ = 1

    def __init__(self, text: str = "") -> None:
        self.text = text

    def format(self, document: Any) -> bytes:
        return self.text.encode("ascii")


def page_id(index: int) -> str:
    """The library's name for the page with this index (from 0)."""
    return f"Page{index + 1}"


def write_tree(document: Any, root: Element, marks: Sequence[list[Element]]) -> None:
    """Put the structure tree and its parent tree into the document.

    Args:
        document: A document whose pages are all closed.
        root: The Document element.
        marks: For each page, the element that owns each marked-content number.
    """
    numbers = document.idToObjectNumberAndVersion

    def numbered(made: _Raw, name: str) -> int:
        document.Reference(made, name)
        return int(numbers[name][0])

    pages = [int(numbers[page_id(index)][0]) for index in range(len(marks))]
    elements = [(element, _Raw()) for element in root.walk()]
    for count, (element, made) in enumerate(elements):
        element.number = numbered(made, f"element-{count}")
    tree = _Raw()
    number = numbered(tree, "structure-tree")
    for element, made in elements:
        made.text = element.written(document, pages, number)
    owners = " ".join(
        f"{index} [{' '.join(f'{owner.number} 0 R' for owner in on_page)}]"
        for index, on_page in enumerate(marks)
    )
    tree.text = f"<</Type/StructTreeRoot/K {root.number} 0 R/ParentTree <</Nums[{owners}]>>>>"
    document.Catalog.StructTreeRoot = tree
    document.Catalog.MarkInfo = _Raw("<</Marked true>>")
