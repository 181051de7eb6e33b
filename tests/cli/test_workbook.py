"""Things and debts as workbooks: typed cells, nothing that turns into a day, hostile files refused."""

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

import openpyxl
import pytest

from firstpaper.casefile import CaseFile
from tests.cli.person import ON, Ran

Run = Callable[..., Ran]


def book(path: Path, rows: list[list[object]], **formats: str) -> None:
    made = openpyxl.Workbook()
    for cells in rows:
        made.active.append(cells)
    for cell, shown in formats.items():
        made.active[cell].number_format = shown
    made.save(path)


def test_a_workbook_goes_out_as_text_and_amounts_and_comes_in_again(
    run: Run, home: Path, tmp_path: Path
) -> None:
    run(
        "schedule",
        "home.case",
        "add",
        "asset",
        "kind=cash",
        "words== =1+1",
        "value=1200.50",
        "acquired_on=4/2012",
    )
    before = CaseFile.load(home).case
    assert run("schedule", "home.case", "--csv-things", "t.xlsx").exit == 0
    sheet = openpyxl.load_workbook(tmp_path / "t.xlsx").active
    cells = {sheet.cell(1, column).value: sheet.cell(2, column) for column in range(1, sheet.max_column + 1)}
    assert (cells["words"].value, cells["words"].data_type) == ("= =1+1", "s")
    assert (cells["value"].value, cells["value"].data_type) == (1200.5, "n")
    assert (cells["acquired_on"].value, cells["acquired_on"].number_format) == ("in April 2012", "@")
    assert "Nothing changed" in run("enter", "home.case", "t.xlsx").out
    assert CaseFile.load(home).case == before


def test_a_cell_that_shows_only_a_month_is_a_month(run: Run, home: Path, tmp_path: Path) -> None:
    rows: list[list[object]] = [
        ["asset", "kind", "words", "acquired_on", "value"],
        [None, "cash", "Box", datetime(2012, 4, 1), 1200],  # noqa: DTZ001  (a cell knows no zone)
        [None, "cash", "Jar", datetime(2012, 4, 2), 7.25],  # noqa: DTZ001
    ]
    book(tmp_path / "t.xlsx", rows, D2="mmm-yy", D3="m/d/yyyy")
    assert run("enter", "home.case", "t.xlsx", "--on", ON).exit == 0
    box, jar = CaseFile.load(home).case.asset
    assert (str(box.acquired_on), str(jar.acquired_on)) == ("2012-04", "2012-04-02")
    assert (str(box.value), str(jar.value)) == ("1200", "7.25")


def test_every_wrong_cell_is_named(run: Run, home: Path, tmp_path: Path) -> None:
    book(tmp_path / "t.xlsx", [["debt", "kind", "owed"], [None, "boat", "much"]])
    said = run("enter", "home.case", "t.xlsx").said
    assert "Row 2, column kind:" in said
    assert "Row 2, column owed:" in said


@pytest.mark.parametrize("content", [b"", b"PK\x03\x04 not really", b"asset,kind\n,cash\n"])
def test_what_is_no_workbook_is_refused_in_words(
    run: Run, home: Path, tmp_path: Path, content: bytes
) -> None:
    before = home.read_bytes()
    (tmp_path / "t.xlsx").write_bytes(content)
    ran = run("enter", "home.case", "t.xlsx")
    assert ran.exit == 2
    assert "no whole workbook" in ran.said
    assert home.read_bytes() == before


def test_a_workbook_of_somebody_else_is_left_alone(run: Run, home: Path, tmp_path: Path) -> None:
    book(tmp_path / "t.xlsx", [["Budget", "May"], [1, 2]])
    before = (tmp_path / "t.xlsx").read_bytes()
    assert "not a file that this command makes" in run("schedule", "home.case", "--csv-things", "t.xlsx").said
    assert (tmp_path / "t.xlsx").read_bytes() == before
    assert run("schedule", "home.case", "--csv-things", "u.xlsx").exit == 0
    assert run("schedule", "home.case", "--csv-things", "u.xlsx").exit == 0


def test_a_table_can_be_piped_on(run: Run, home: Path, tmp_path: Path) -> None:
    run("schedule", "home.case", "add", "debt", "kind=credit_card", "words=Store")
    ran = run("schedule", "home.case", "--csv-debts", "-")
    assert ran.out.startswith("\ufeffdebt,kind,")
    assert "Keep it safe" in ran.said
    assert not (tmp_path / "-").exists()
