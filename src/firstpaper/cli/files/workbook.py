"""Tables as workbooks (.xlsx), through openpyxl where it is installed.

Each cell is written as text, so that nothing turns into a day by itself; only amounts are numbers. A cell
that holds a day is read by how it is shown: a month alone stays a month alone.
"""

from collections.abc import Sequence
from datetime import date, datetime
from pathlib import Path
from typing import Any

from firstpaper.errors import UserError
from firstpaper.locale import _

ENDING = ".xlsx"
WORKBOOK = b"PK\x03\x04"
"""How a workbook begins."""
LARGEST = 5_000_000
MOST_ROWS, MOST_COLUMNS = 1001, 200
AMOUNT = "#,##0.00"
TEXT = "@"


class NoWorkbooks(UserError):
    """Workbooks such as {path} cannot be read or written here: a part of Firstpaper is not installed.

    Nothing was changed. Install it with: pip install "firstpaper[sheets]". Or save the table as CSV.
    """

    code = "no_workbooks"


class WorkbookUnreadable(UserError):
    """The workbook {path} could not be read: {reason}.

    Nothing was changed. Open it in your spreadsheet, look at its first sheet, and save it again as .xlsx or
    CSV.
    """

    code = "workbook_unreadable"


def is_workbook(path: Path) -> bool:
    """Whether the file is named as one."""
    return path.suffix.lower() == ENDING


def rows_in(path: Path) -> list[list[str]]:
    """The rows of the first sheet, each cell as it would be typed. Raises a UserError."""
    from io import BytesIO
    from zipfile import BadZipFile

    library = _library(path)
    try:
        with path.open("rb") as file:
            data = file.read(LARGEST + 1)
    except OSError as error:
        raise WorkbookUnreadable(path=path, reason=error.strerror or type(error).__name__) from error
    if len(data) > LARGEST:
        raise WorkbookUnreadable(path=path, reason=_("it is too large to be a list of things or debts"))
    try:
        book = library.load_workbook(BytesIO(data), read_only=True, data_only=False)
        cells = book.worksheets[0].iter_rows(max_row=MOST_ROWS, max_col=MOST_COLUMNS)
        return [[_typed(cell) for cell in row] for row in cells]
    except (BadZipFile, KeyError, ValueError, IndexError, TypeError, OSError, AttributeError) as error:
        raise WorkbookUnreadable(path=path, reason=_("it is no whole workbook")) from error


def refuse_other_workbooks(path: Path, group: str) -> None:
    """Raise NotOurOutput where a workbook lies there that is no table of that group."""
    from firstpaper.casefile.errors import NotOurOutput

    if not path.is_file() or not path.stat().st_size:
        return
    try:
        rows = rows_in(path)
    except WorkbookUnreadable as error:
        raise NotOurOutput(path=path) from error
    if not rows or rows[0][:1] != [group]:
        raise NotOurOutput(path=path)


def workbook(rows: Sequence[Sequence[str]], amounts: Sequence[str], path: Path) -> bytes:
    """The rows as a workbook, the names in the first one; columns named in `amounts` hold numbers."""
    from io import BytesIO

    book = _library(path).Workbook(write_only=False)
    sheet = book.active
    first = list(rows[0])
    for at, cells in enumerate(rows, 1):
        for column, text in enumerate(cells, 1):
            _put(sheet.cell(at, column), text, number=at > 1 and first[column - 1] in amounts)
    sheet.freeze_panes = "B2"
    held = BytesIO()
    book.save(held)
    return held.getvalue()


def _put(cell: Any, text: str, *, number: bool) -> None:
    if number and text.replace(".", "", 1).isdecimal():
        cell.value, cell.number_format = float(text), AMOUNT
        return
    cell.number_format = TEXT
    if text:
        cell.value = text
        cell.data_type = "s"  # also what begins as a formula does


def _typed(cell: Any) -> str:
    value = cell.value
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, datetime | date):
        return _day(value, str(cell.number_format).lower())
    if isinstance(value, float):
        return f"{value:.2f}".removesuffix(".00")
    return str(value)


def _day(value: date, shown: str) -> str:
    """A day as it is shown in the sheet: where only the month and the year show, they alone were typed."""
    return f"in {value:%B} {value.year}" if "d" not in shown else value.isoformat()[:10]


def _library(path: Path) -> Any:
    try:
        import openpyxl
    except ImportError as error:
        raise NoWorkbooks(path=path) from error
    return openpyxl
