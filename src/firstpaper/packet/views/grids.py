"""Answers that a form takes in columns, gathered into tables with the form's own columns."""

import re
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from itertools import groupby
from typing import NamedTuple

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import Edition, shared_columns
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.locale import beside, english, noted
from firstpaper.packet.views.law_behind import law_behind

CHILD_ROW = re.compile(r"(?P<row>children\.\d+)\.(?P<column>name|born_on|age)")
"""The line of a child on the petition, which the edition holds as an item for each of its columns."""

_NUMBERED = re.compile(r"\.\d+\b")
_CAPTIONS = frozenset({"filer", "court", "names", "first", "second"})

_WIDTHS: Mapping[str, float] = {
    "from": 19,
    "to": 19,
    "place": 25,
    "people": 22,
    "relation": 25,
    "name": 30,
    "born_on": 19,
    "age": 10,
    "legal": 24,
    "physical": 24,
    "address": 34,
    "what": 60,
    "confirm_to": 24,
}
"""How wide the columns of a table are beside each other; others are as wide as a name."""
_PLACE, _RING = 11.0, 6.0
FILED = (
    noted("present"),
    noted("parent"),
    noted("parents"),
    noted("No request"),
    noted("Other, as stated on this page"),
    noted("Petitioner and Respondent jointly"),
    noted("Petitioner"),
    noted("Respondent"),
)
"""Words of ours in the columns of a form."""
MOST_DONE = 100


class GridRow(NamedTuple):
    """One line of a table: the number of its item, and its pieces."""

    place: str
    pieces: tuple[str, ...]

    @property
    def done(self) -> str:
        """What is ticked off when it is copied."""
        return f"{self.place} {self.pieces[0]}".strip()[:MOST_DONE]


class Reason(NamedTuple):
    """Why something is written, and the law that says so."""

    because: str
    authority: str


@dataclass(frozen=True, slots=True)
class Grid:
    """A table to copy, with the columns of the form. The reasons hold for all of it.

    `meaning` is what words of ours in it say, for somebody who reads another language.
    """

    columns: tuple[str, ...]
    widths: str
    rows: tuple[GridRow, ...]
    reasons: tuple[Reason, ...]
    meaning: str = ""

    kind = "grid"

    @property
    def placed(self) -> bool:
        """Whether its lines have numbers of their own."""
        return any(row.place for row in self.rows)


def grids(answers: Sequence[ItemAnswer], edition: Edition) -> "Iterator[ItemAnswer | Grid]":
    """The answers in order, those that fill the same columns as one table."""
    for name, group in groupby(answers, key=_columned):
        found = tuple(group)
        if name and (len(found) > 1 or _in_pieces(found[0])):
            yield _grid(found, edition)
        else:
            yield from found


def _in_pieces(answer: ItemAnswer) -> bool:
    """Whether it fills more than one column. An answer in one piece is said in a line, and needs no table."""
    return sum(map(any, zip(*answer.cells, strict=True))) > 1


def _columned(answer: ItemAnswer) -> str:
    """What all lines of one table share; empty for an answer that stands by itself."""
    if answer.action is not Action.WRITE or answer.open_key or answer.continues or answer.note:
        return ""
    if CHILD_ROW.fullmatch(answer.concept):
        return "children"
    if not answer.cells or answer.concept.rpartition(".")[2] in _CAPTIONS:
        return ""
    return f"{_NUMBERED.sub('', answer.concept)} {' '.join(answer.columns)}"


def _grid(answers: tuple[ItemAnswer, ...], edition: Edition) -> Grid:
    names: tuple[str, ...]
    if CHILD_ROW.fullmatch(answers[0].concept):
        names, labels = ("name", "born_on", "age"), shared_columns("child")
        rows = tuple(_child_rows(answers))
    else:
        names = answers[0].columns
        labels = next(item.columns for item in edition.items if item.concept == answers[0].concept)
        rows = tuple(GridRow(_line(answer), cells) for answer in answers for cells in answer.cells)
    full = [
        place for place, cells in enumerate(zip(*(row.pieces for row in rows), strict=True)) if any(cells)
    ]
    return Grid(
        columns=tuple(_head(labels[names[place]]) for place in full),
        widths=_shares([names[place] for place in full], placed=any(row.place for row in rows)),
        rows=tuple(GridRow(row.place, tuple(row.pieces[place] for place in full)) for row in rows),
        reasons=tuple(_reasons(answers)),
        meaning=_sentence(_explained({piece for row in rows for piece in row.pieces})),
    )


def _sentence(parts: Iterable[str]) -> str:
    words = "; ".join(parts)
    return words and f"{words}."


def _explained(pieces: Collection[str]) -> Iterator[str]:
    """The words of ours among the pieces, each with what it means."""
    for words in FILED:
        if words in pieces and (means := meaning(partial(filed, words))):
            yield f"{english(words)}: {means}"


def _head(label: str) -> str:
    """The head of a column: what it is called on the form, and what that means."""
    words = beside(label)
    first = words.find(label)
    return words[:first] + words[first : first + 1].upper() + words[first + 1 :]


def _child_rows(answers: Iterable[ItemAnswer]) -> Iterator[GridRow]:
    lines = groupby(answers, key=lambda one: one.concept.rpartition(".")[0])
    for number, (_row, group) in enumerate(lines, 1):
        yield GridRow(str(number), tuple(answer.value for answer in group))


def _line(answer: ItemAnswer) -> str:
    return answer.item if answer.item[:1].isdigit() and "line" in answer.concept else ""


def _reasons(answers: Iterable[ItemAnswer]) -> Iterator[Reason]:
    """Each reason once, those of the same law together."""
    told = dict.fromkeys((answer.because, law_behind(answer)) for answer in answers)
    for authority, found in groupby(told, key=lambda one: one[1]):
        yield Reason(" ".join(because for because, _law in found), authority)


def _shares(names: Sequence[str], *, placed: bool) -> str:
    """The widths of all columns in percent: the number, the pieces, the ring."""
    wide = [_WIDTHS.get(name, _WIDTHS["name"]) for name in names]
    room = 100 - _RING - (_PLACE if placed else 0)
    shares = [_PLACE] * placed + [round(each / sum(wide) * room, 1) for each in wide] + [_RING]
    return " ".join(f"{share:g}" for share in shares)
