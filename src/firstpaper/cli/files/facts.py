"""A file with facts: YAML, a table as CSV, or a workbook. Read once, put onto each case that it is for."""

import sys
from collections.abc import Sequence
from datetime import date
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.files.plain_text import plain_text
from firstpaper.cli.files.workbook import is_workbook, rows_in
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.intake import Problem

MOST_TEXT = 2_000_000
"""Characters read of a file: more than any file of facts may have, so that a larger one is refused."""
PIPE = Path("-")
"""Stands for what is piped in."""
TABLES = (".csv", ".tsv")
_UNREADABLE = "\ufffd"


class FactsUnreadable(UserError):
    """The file of facts {path} could not be opened: {reason}.

    Nothing was changed. Check the name and the folder, and try again.
    """

    code = "facts_unreadable"


class FactsRefused(UserError):
    """{count} in {path} cannot be used, so nothing from it was taken and nothing was saved.

    Please correct each line named here, and try again:
    """

    code = "facts_refused"

    def __init__(self, path: Path, problems: "Sequence[Problem]", *, table: bool) -> None:
        count = _n("{count} line", "{count} lines", len(problems)).format(count=len(problems))
        super().__init__(path=path, count=count)
        self.problems = problems
        self._say = _problem_in_table if table else _problem

    @property
    def message(self) -> str:
        """The message, and every problem with its line and the key of the fact."""
        return "\n".join([super().message, *(f"  - {self._say(one)}" for one in self.problems)])


class FactsFile:
    """The facts in one file. What is piped in is read when it is first needed."""

    def __init__(self, path: Path) -> None:
        self.path = path

    @property
    def name(self) -> str:
        """The name of the file, without its folder."""
        return self.path.name

    @cached_property
    def is_table(self) -> bool:
        """Whether it is a table of things or debts."""
        from firstpaper.intake.tables import is_table

        named = is_workbook(self.path) or self.path.suffix.lower() in TABLES
        return named or is_table(self._text)

    def onto(self, case: "Case | None", day: date) -> "Case":
        """The case with these facts. Raises FactsRefused with everything in them that is wrong."""
        after, problems = self._read(case, day)
        if problems:
            raise FactsRefused(self.path, problems, table=self.is_table)
        return after

    def _read(self, case: "Case | None", day: date) -> "tuple[Case, Sequence[Problem]]":
        from firstpaper.intake import facts_from
        from firstpaper.intake.tables import facts_from_rows, facts_from_table

        if is_workbook(self.path):
            return facts_from_rows(self._rows, day, case)
        return (facts_from_table if self.is_table else facts_from)(self._text, day, case)

    @cached_property
    def _rows(self) -> list[list[str]]:
        return rows_in(self.path)

    @cached_property
    def _text(self) -> str:
        return _piped() if self.path == PIPE else plain_text(self.path, MOST_TEXT, FactsUnreadable)


def _piped() -> str:
    text = sys.stdin.read(MOST_TEXT)
    if _UNREADABLE in text:
        raise FactsUnreadable(path=PIPE, reason=_("it is not plain text in UTF-8"))
    return text


def _problem_in_table(one: "Problem") -> str:
    if one.line and one.key:
        return _("Row {row}, column {column}: {message}").format(
            row=one.line, column=one.key, message=one.message
        )
    place = _("Row {row}").format(row=one.line) if one.line else _("The table")
    return f"{place}: {one.message}"


def _problem(one: "Problem") -> str:
    place = _("Line {line}").format(line=one.line) if one.line else _("The file")
    return f"{place}, {one.key}: {one.message}" if one.key else f"{place}: {one.message}"
