"""What the two own and owe as a table for a spreadsheet: one file for the things, one for the debts.

The first column is named for the group, "asset" or "debt", and holds the number of the row. The last, "id",
is a mark that ties the row to what it was when the table was written: so it is found again where others were
taken out. Each other column is named for a fact. A cell holds what would be typed at its question. An empty
cell says nothing. A row without number and id is the one that is called the same, or a new one. Days are
written with the year first. A spreadsheet may turn them round; what order it put them in is taken from the
days above 12, and where none shows it, is asked about.
"""

import csv
import re
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from datetime import date
from functools import cache
from io import StringIO
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.intake.as_typed import as_typed
from firstpaper.intake.cells import harmless, plain, steady
from firstpaper.intake.engine import asking, put
from firstpaper.intake.entering import MOST_BYTES, Problem
from firstpaper.intake.entering_words import nothing_stands
from firstpaper.intake.kinds import ROWS, AnswerKind, Row, in_row, key_now, place_of
from firstpaper.intake.listing import GROUPS, all_about, not_standing
from firstpaper.intake.reading import read_answer
from firstpaper.intake.reading.day_order import DATED, DayOrder, one_reading, order_of
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.row_names import NAMING, ids, same_row, told_names
from firstpaper.locale import _

BEGINS = "\ufeff"
"""How a table begins that is written here: the mark by which a spreadsheet knows the letters as UTF-8."""

ID = "id"
"""The name of the column that ties a row to what it was when the table was written."""

PARTS = (",", ";", "\t")
"""What may stand between two cells: a spreadsheet writes the one that its country uses."""

_MONTH_AND_TWO = re.compile(r"[^\W\d_]{3,4}\.?[- ]\d{1,2}|\d{1,2}[- ][^\W\d_]{3,4}\.?")
"""What a spreadsheet makes of a month and a year: Apr-12 for April 2012, or for April 12."""

_NUMBERS = (
    AnswerKind.DATE,
    AnswerKind.MONEY,
    AnswerKind.NUMBER,
    AnswerKind.PERCENT,
    AnswerKind.QUANTITY,
)
"""The kinds of answer that a spreadsheet may take for what they are."""


class _Cell(NamedTuple):
    row: int
    column: str
    text: str


@cache
def columns(group: str) -> tuple[str, ...]:
    """The names of the columns after the first, in the order of the questions."""
    return tuple(
        question.key.partition(".*.")[2]
        for topic in all_about(Row(group, 1)).topics
        for question in topic.questions
    )


def amounts(group: str) -> tuple[str, ...]:
    """The names of the columns that hold amounts of money."""
    return tuple(name for name in columns(group) if _kind(group, name) is AnswerKind.MONEY)


def _kind(group: str, name: str) -> AnswerKind:
    return place_of(f"{group}.*.{name}").kind


def table_of(case: Case, group: str) -> str:
    """The things or debts of a case as a table, one row each, with every column."""
    text = StringIO(newline="")
    writer = csv.writer(text, lineterminator="\r\n")
    first, *rest = rows_of(case, group)
    writer.writerow(first)
    texts = {name for name in columns(group) if _kind(group, name) not in _NUMBERS}
    for cells in rest:
        writer.writerow(
            harmless(steady(cell) if name in texts else cell) for name, cell in zip(first, cells, strict=True)
        )
    return BEGINS + text.getvalue()


def rows_of(case: Case, group: str) -> list[list[str]]:
    """The same as rows of plain cells, the names first."""
    found = [[group, *columns(group), ID]]
    for number, mark in enumerate(ids(case, group), 1):
        found.append([str(number), *(_written(key, case) for key in _keys(group, number)), mark])
    return found


def is_table(text: str) -> bool:
    """Whether a text begins as a table does: with the name of a group, and another cell after it."""
    line = text.removeprefix(BEGINS).lstrip().partition("\n")[0]
    return any(line.partition(part)[0].strip(' "').lower() in GROUPS for part in PARTS if part in line)


def facts_from_table(text: str, today: date, onto: Case | None = None) -> tuple[Case, tuple[Problem, ...]]:
    """The facts of a table put into the case `onto` (a new one without it), and every problem found.

    With any problem the case comes back as it was. The line of a problem is the row of the spreadsheet, in
    which the names are row 1; its key is the column.
    """
    return _facts(lambda reader: reader.read(text), today, onto)


def facts_from_rows(
    rows: Sequence[Sequence[str]], today: date, onto: Case | None = None
) -> tuple[Case, tuple[Problem, ...]]:
    """The same from the rows of a workbook, each cell as text."""
    return _facts(lambda reader: reader.read_rows(enumerate(map(list, rows), 1)), today, onto)


def _facts(
    read: "Callable[[_Table], None]", today: date, onto: Case | None
) -> tuple[Case, tuple[Problem, ...]]:
    start = Case.nothing() if onto is None else onto
    reader = _Table(start, today)
    try:
        read(reader)
    except _Refused as refused:
        return start, (refused.problem,)
    return (start, tuple(reader.problems)) if reader.problems else (reader.case, ())


class _Refused(Exception):
    """A table that cannot be read on."""

    def __init__(self, row: int | None, column: str, message: str) -> None:
        super().__init__(message)
        self.problem = Problem(row, column, message)


class _Table:
    """Reads the rows of a table into a case, and keeps every problem met on the way."""

    def __init__(self, case: Case, today: date) -> None:
        self.case = case
        self.problems: list[Problem] = []
        self._today = today
        self._group = ""
        self._names: tuple[str, ...] = ()
        self._order: DayOrder | None = None
        self._marks: list[str] = []
        self._there = 0  # rows that the case had before

    def read(self, text: str) -> None:
        if len(text.encode("utf-8", "replace")) > MOST_BYTES:
            raise _Refused(None, "", _("The file is too large to be a list of things or debts."))
        self.read_rows(_lines(text.removeprefix(BEGINS)))

    def read_rows(self, lines: Iterator[tuple[int, list[str]]]) -> None:
        self._heading(next(lines, (1, []))[1])
        told = [(row, cells) for row, cells in lines if any(cell.strip() for cell in cells)]
        self._order = order_of(cell for _row, cells in told for cell in cells)
        numbers = self._numbers(told)
        for (row, cells), number in zip(told, numbers, strict=True):
            if number:
                self._row(row, number, cells)
        if not self.problems:
            self._look_for_nothing({number: row for (row, _cells), number in zip(told, numbers, strict=True)})

    def _heading(self, cells: Sequence[str]) -> None:
        names = [cell.removeprefix(BEGINS).strip().lower() for cell in cells]
        names[1:] = [_column_now(name, names[0]) for name in names[1:]]
        while names and not names[-1]:
            names.pop()
        if not names or names[0] not in GROUPS:
            raise _Refused(1, "", _no_group())
        self._group, self._names = names[0], tuple(names[1:])
        self._marks = ids(self.case, self._group)
        self._there = len(self.case.fact(self._group))
        for name in dict.fromkeys(self._names):
            if name not in (ID, *columns(self._group)):
                self._problem(1, name, _unknown(name, self._group))
            elif self._names.count(name) > 1:
                self._problem(1, name, _("This column comes twice. Please keep one of them."))

    def _numbers(self, told: Sequence[tuple[int, list[str]]]) -> list[int]:
        """The number of each row: as told, of the thing called the same, or the next free one; 0 for none."""
        most = ROWS[self._group]
        given = [self._told_number(cells) for _row, cells in told]
        taken = {number for number in given if number}
        following = max([self._there, *taken])
        numbers: list[int] = []
        for (row, cells), number in zip(told, given, strict=True):
            one = number if number is not None else self._same(row, cells, taken)
            if one is None:
                following += 1
                one = following
            if not 1 <= one <= most:
                self._problem(row, self._group, _no_room(most))
            elif one in numbers:
                self._problem(row, self._group, _("This number comes twice. Please keep one of the rows."))
            numbers.append(one if 1 <= one <= most and one not in numbers else 0)
            taken.add(one)
        self._look_for_gaps(numbers)
        return numbers

    def _told_number(self, cells: Sequence[str]) -> int | None:
        """The number of the row that its mark stands for, or that it carries; None where neither tells."""
        mark = self._cell_named(cells, ID)
        if mark and self._marks:
            return self._marks.index(mark) + 1 if mark in self._marks else None
        return _number(cells[0])

    def _same(self, row: int, cells: Sequence[str], taken: Collection[int]) -> int | None:
        """The thing in the case that is called as this row is. One that had a mark must still be there."""
        one = same_row(self.case, self._group, self._called(cells), taken)
        if one is None and self._marks and self._cell_named(cells, ID):
            self._problem(row, ID, _gone())
        return one

    def _called(self, cells: Sequence[str]) -> dict[str, str]:
        """What the row tells of that by which a thing is known."""
        texts = {name: plain(self._cell_named(cells, name)) for name in NAMING[self._group]}
        return told_names(texts, self._group, self._today)

    def _cell_named(self, cells: Sequence[str], name: str) -> str:
        if name not in self._names:
            return ""
        at = self._names.index(name) + 1
        return cells[at].strip() if at < len(cells) else ""

    def _look_for_gaps(self, numbers: Collection[int]) -> None:
        beyond = max([self._there, *numbers])
        if missing := set(range(self._there + 1, beyond + 1)) - set(numbers):
            words = _("There is no number {number}. Please number the rows 1, 2, 3 and so on.")
            self._problem(None, self._group, words.format(number=min(missing)))

    def _look_for_nothing(self, row_of: Mapping[int, int]) -> None:
        """Name the new rows of which nothing stands."""
        for group, number in not_standing(self.case):
            if group == self._group and number > self._there:
                self._problem(row_of[number], "", nothing_stands())

    def _row(self, row: int, number: int, cells: Sequence[str]) -> None:
        if any(cell.strip() for cell in cells[len(self._names) + 1 :]):
            self._problem(row, "", _("This row has more cells than there are names in the first row."))
        told = 0
        for name, cell in zip(self._names, cells[1:], strict=False):
            if cell.strip() and name in columns(self._group):
                told += 1
                self._cell(_Cell(row, name, cell), f"{self._group}.{number}.{name}")
        if not told and number > self._there:
            self._problem(row, "", _("There is only a number in this row. Say what it is, or take it out."))

    def _cell(self, cell: _Cell, key: str) -> None:
        asked = asking(key, self.case)
        assert asked is not None
        if asked.kind in DATED and _MONTH_AND_TWO.fullmatch(cell.text.strip()):
            self._problem(cell.row, cell.column, _cut_short())
            return
        try:
            text = one_reading(asked.kind, plain(cell.text), self._order)
            self.case = put(self.case, key, read_answer(asked, text, self._today, written=True))
        except AnswerRefused as refused:
            self._problem(cell.row, cell.column, refused.message)

    def _problem(self, row: int | None, column: str, message: str) -> None:
        self.problems.append(Problem(row, column, message))


def _lines(text: str) -> Iterator[tuple[int, list[str]]]:
    """The rows of a table with their numbers, as a spreadsheet counts them."""
    row = 0
    try:
        reader = csv.reader(StringIO(text, newline=""), delimiter=_parted_by(text), strict=True)
        for row, cells in enumerate(reader, 1):
            if row > MOST_ROWS:
                raise _Refused(row, "", _("There are too many rows to be the list of one household."))
            yield row, cells or [""]
    except csv.Error:
        raise _Refused(row + 1, "", _not_a_table()) from None


def _parted_by(text: str) -> str:
    """What parts the cells: that which stands after the name of the group in the first row, or a comma."""
    line = text.lstrip().partition("\n")[0]
    return next((part for part in PARTS if line.partition(part)[0].strip(' "').lower() in GROUPS), ",")


MOST_ROWS = 1000
"""Rows read of a table, empty ones counted too. Far fewer can be used."""


def _number(cell: str) -> int | None:
    """The number in the first cell of a row; None where it is empty, 0 where it is no number."""
    text = cell.strip()
    if not text:
        return None
    return int(text) if text.isdecimal() and len(text) <= 4 else 0


def _keys(group: str, number: int) -> tuple[str, ...]:
    return tuple(in_row(f"{group}.*.{name}", number) for name in columns(group))


def _written(key: str, case: Case) -> str:
    value = case.fact(key)
    asked = asking(key, Case.nothing())
    assert asked is not None
    return "" if value is None else as_typed(asked, value)


def _cut_short() -> str:
    return _(
        "A spreadsheet has cut this date short, and it can be read in two ways. For a month alone write: in "
        "April 2012. For a day write all of it: 4/12/2012"
    )


def _gone() -> str:
    return _(
        "The case has no such row any more. Write the table anew from the case. To list this as a new one, "
        "leave its number and its id empty."
    )


def _no_group() -> str:
    return _(
        "The first name in the first row must be asset or debt: a list of what you own, or of what you owe. "
        "Below it stands the number of each row."
    )


def _no_room(most: int) -> str:
    return _("Here stands the number of the row, from 1 to {most}. Leave it empty for a new one.").format(
        most=most
    )


def _not_a_table() -> str:
    return _(
        "The table cannot be read from here on. Look for a quote that is not closed. In a spreadsheet, save "
        "it again as CSV UTF-8."
    )


def _column_now(name: str, group: str) -> str:
    return key_now(f"{group}.1.{name}").removeprefix(f"{group}.1.") if name else name


def _unknown(name: str, group: str) -> str:
    from difflib import get_close_matches  # noqa: PLC0415  (only for a mistake, and slow to load)

    close = get_close_matches(name, columns(group), n=1, cutoff=0.6)
    if not close:
        return _("There is no fact with this name. Please check the spelling.")
    return _("There is no fact with this name. Did you mean {name}?").format(name=close[0])
