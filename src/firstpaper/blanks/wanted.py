"""What a form could be filled in with: each item of an edition, a table cell by cell."""

from collections.abc import Iterator
from typing import NamedTuple

from firstpaper.forms.edition import Edition, Item, ItemKind

NO_FIELD = (ItemKind.STATEMENT,)


class Wanted(NamedTuple):
    """One thing that needs a field: an item, or one cell of it.

    `cell` is the name of its column, empty where the item is one piece; `row` counts the rows of the item
    from 1. `words` say what it is, `part` under which heading it stands, `item` its number where that is
    known. `whole` is what the item of a cell is called.
    """

    concept: str
    kind: ItemKind
    words: str
    part: str = ""
    item: str = ""
    cell: str = ""
    row: int = 1
    whole: str = ""

    @property
    def key(self) -> str:
        """What maps call it, as in "child.a.home.1/2/place" or "cap.name"."""
        return f"{self.concept}/{self.row}/{self.cell}" if self.cell else self.concept

    @property
    def named(self) -> str:
        """What it is, for a person who looks at a proof."""
        return f"{self.whole}: {self.words}" if self.cell else self.words

    @property
    def is_box(self) -> bool:
        """Whether it is marked and not written."""
        return self.kind is ItemKind.BOX

    @property
    def by_hand(self) -> bool:
        """Whether a person writes it by hand, on the day of signing."""
        return self.kind is ItemKind.SIGNATURE or self.concept.endswith("signing.date")


def wanted(edition: Edition) -> tuple[Wanted, ...]:
    """Everything on that edition that can have a field, in printed order."""
    return tuple(one for item in edition.items if item.kind not in NO_FIELD for one in _of_item(item))


def _of_item(item: Item) -> Iterator[Wanted]:
    label = item.label.format(number=item.row)
    number = item.item or item.was
    if not item.columns:
        yield Wanted(item.concept, item.kind, label, item.part, number)
        return
    for row in range(1, item.times + 1):
        for cell, words in item.columns.items():
            yield Wanted(item.concept, item.kind, words, item.part, number, cell, row, label)
