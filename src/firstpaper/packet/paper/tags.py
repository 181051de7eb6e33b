"""The structure tree of a tagged PDF (ISO 32000-1, 14.7 and 14.8): what a screen reader reads.

What is laid out carries a `Tag`, which says what it is. When it is drawn, that becomes an `Element`.
"""

from collections.abc import Callable, Sequence
from functools import cache
from typing import Any, NamedTuple

from reportlab.pdfbase.pdfdoc import PDFString


class Tag(NamedTuple):
    """What something is: its role, what else belongs to that, its language, and words for what has none."""

    role: str
    attributes: str = ""
    lang: str = ""
    alt: str = ""


class Element:
    """A structure element: a tag, and its kids in reading order.

    A kid is another element or a mark, the pair (page index, marked-content number).
    """

    __slots__ = ("kids", "number", "parent", "tag")

    def __init__(self, tag: Tag) -> None:
        self.tag = tag
        self.parent: Element | None = None
        self.kids: list[Element | tuple[int, int]] = []
        self.number = 0

    def join(self, above: "Element") -> None:
        """Join the tree, as the last so far in `above`."""
        self.parent = above
        above.kids.append(self)

    def written(self, in_pdf: Callable[[str], str], pages: Sequence[int], tree: int) -> str:
        """The element as the text of a PDF object.

        Args:
            in_pdf: How words are written in the file.
            pages: The object numbers of the pages.
            tree: The object number of the tree, which is the parent of its root.
        """
        parent = tree if self.parent is None else self.parent.number
        home, kids = None, list[str]()
        for kid in self.kids:
            if isinstance(kid, Element):
                kids.append(f"{kid.number} 0 R")
                continue
            page, mark = kid
            home = page if home is None else home  # of its marks there, the number alone is enough
            kids.append(str(mark) if page == home else f"<</Type/MCR/Pg {pages[page]} 0 R/MCID {mark}>>")
        role, attributes, lang, alt = self.tag
        words = f"<</Type/StructElem/S/{role}/P {parent} 0 R/K[{' '.join(kids)}]"
        if home is not None:
            words += f"/Pg {pages[home]} 0 R"
        if attributes:
            words += f"/A<<{attributes}>>"
        if lang:
            words += f"/Lang({lang})"
        if alt:
            words += f"/Alt{in_pdf(alt)}"
        return words + ">>"


SECTION, DIVISION, PARAGRAPH = Tag("Sect"), Tag("Div"), Tag("P")

Meaning = Tag | Element | None
"""What something is to a screen reader. None is where it belongs to what is around it."""


def for_all_parts(what: Meaning) -> Meaning:
    """What the parts of something are together: one element, however many pages they stand on."""
    return Element(what) if isinstance(what, Tag) else what


def page_id(index: int) -> str:
    """The library's name for the page with this index (from 0)."""
    return f"Page{index + 1}"


def write_tree(document: Any, drawn: Sequence[Element], marks: Sequence[list[Element]]) -> None:
    """Put the structure tree and its parent tree into the document.

    Args:
        document: A document whose pages are all closed.
        drawn: All elements, the root first.
        marks: For each page, the element that owns each marked-content number.
    """

    @cache
    def in_pdf(words: str) -> str:
        written: bytes = PDFString(words).format(document)
        return written.decode("ascii")

    pages = [int(document.idToObjectNumberAndVersion[page_id(index)][0]) for index in range(len(marks))]
    first = document.objectcounter + 1  # the document counts what it is given
    for number, element in enumerate(drawn, first):
        element.number = number
    tree = first + len(drawn)
    for element in drawn:
        document.Reference(element.written(in_pdf, pages, tree).encode("ascii"), f"element-{element.number}")
    owners = " ".join(
        f"{index} [{' '.join(f'{owner.number} 0 R' for owner in on_page)}]"
        for index, on_page in enumerate(marks)
    )
    root = f"<</Type/StructTreeRoot/K {first} 0 R/ParentTree <</Nums[{owners}]>>>>"
    document.Catalog.StructTreeRoot = document.Reference(root.encode("ascii"), "structure-tree")
    document.Catalog.MarkInfo = b"<</Marked true>>"
