"""What to do with one item of an official form."""

from dataclasses import dataclass
from enum import StrEnum

from firstpaper.locale import _

Cells = tuple[tuple[str, ...], ...]


class Action(StrEnum):
    """What is done with an item.

    `FILL` is left to the filer: no question asks for it. `OTHERS` is left to somebody else, as to the one who
    serves the papers.
    """

    MARK = "mark"
    WRITE = "write"
    BLANK = "blank"
    SIGN = "sign"
    FILL = "fill"
    OTHERS = "others"


@dataclass(frozen=True, slots=True)
class Answer:
    """The answer to one concept of a form, before an edition says which item that is.

    `value` is the exact text to write, in English, the language of the court; empty for a mark, a
    signature or a blank. `because` says why in the reader's language. `continues` names the sheet
    that takes what does not fit, such as "Attachment 4b". `open_key` is the key of a fact that is
    still missing: what is told so far stands, and nothing is guessed. `cells` are the same words in
    pieces, row by row, where the sheet has columns for them; the edition names the columns. `meaning` is what
    words of ours in `value` say, in a reader's language other than English.
    """

    concept: str
    action: Action
    value: str = ""
    because: str = ""
    authority: str = ""
    continues: str = ""
    open_key: str = ""
    cells: Cells = ()
    meaning: str = ""


@dataclass(frozen=True, slots=True)
class ItemAnswer:
    """An `Answer` placed on an edition of a form.

    `edition` is its date as the sheet shows it, `part` the heading the item stands under, `kind` what
    it is on paper (a statement is printed text with nothing to mark), `note` a doubt about the sheet
    itself, and `confirmed` whether a person has found the item on the official sheet. `item` is empty and
    `page` None where nobody has seen them yet; `was` is then the number on the edition before, as a hint.
    `cells` are the words of `value` in pieces, `columns` the names of the pieces, and `meaning` what it says.
    """

    form: str
    edition: str
    page: int | None
    item: str
    concept: str
    label: str
    action: Action
    value: str
    because: str
    authority: str
    continues: str
    open_key: str = ""
    part: str = ""
    kind: str = ""
    note: str = ""
    was: str = ""
    confirmed: bool = False
    columns: tuple[str, ...] = ()
    cells: Cells = ()
    meaning: str = ""

    @property
    def place(self) -> str:
        """Where it stands, for a person: its number, or in words a part of the sheet that has none."""
        return self.number or _(self.item)

    @property
    def number(self) -> str:
        """Its number on the sheet; empty where it has none, as what stands in the caption."""
        return self.item if any(map(str.isdigit, self.item)) else ""

    @property
    def hint(self) -> str:
        """The number on the edition before, in brackets: "(d)(1)" for what was item d(1)."""
        letter, bracket, number = self.was.partition("(")
        return f"({letter}){bracket}{number}" if self.was else ""

    @property
    def rows(self) -> tuple[dict[str, str], ...]:
        """Its cells row by row, by the name of the column; empty where it is one piece."""
        return tuple(dict(zip(self.columns, row, strict=True)) for row in self.cells)


def mark(concept: str, because: str, authority: str = "", *, continues: str = "") -> Answer:
    """Mark this box."""
    return Answer(concept, Action.MARK, "", because, authority, continues)


def write(
    concept: str,
    value: str,
    because: str = "",
    authority: str = "",
    *,
    continues: str = "",
    cells: Cells = (),
    meaning: str = "",
) -> Answer:
    """Write exactly this."""
    return Answer(concept, Action.WRITE, value, because, authority, continues, cells=cells, meaning=meaning)


def blank(concept: str, because: str = "", authority: str = "") -> Answer:
    """Leave this empty."""
    return Answer(concept, Action.BLANK, "", because, authority)


def sign(concept: str, because: str = "", authority: str = "") -> Answer:
    """Sign or date this by hand, on the day of signing."""
    return Answer(concept, Action.SIGN, "", because, authority)


def fill(concept: str, because: str, authority: str = "") -> Answer:
    """Fill this in yourself: no question asks for it."""
    return Answer(concept, Action.FILL, "", because, authority)


def others(concept: str, because: str, authority: str = "") -> Answer:
    """Somebody else writes, marks or signs this; `because` says who."""
    return Answer(concept, Action.OTHERS, "", because, authority)


def mark_if(  # a box with two sides: why it is marked, or why it is not
    concept: str, condition: bool, because: str, otherwise: str = "", authority: str = ""
) -> Answer:
    """Mark this box where the condition holds, else leave it empty."""
    return mark(concept, because, authority) if condition else blank(concept, otherwise)
