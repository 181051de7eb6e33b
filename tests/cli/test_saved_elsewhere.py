"""Tables that a spreadsheet program has saved again read back as the same facts.

The files beside this were written by `schedule`, and then opened and saved by LibreOffice Calc 7.4.7: a
workbook as a workbook, a CSV as a workbook and again as a CSV with numbers and days recognised, a workbook as
a CSV with semicolons and each cell as it is shown.
"""

from datetime import date
from pathlib import Path

import pytest

from firstpaper.cli.files.facts import FactsFile
from firstpaper.facts import Case
from firstpaper.intake.tables import table_of

TABLES = Path(__file__).with_name("tables")
WRITTEN_HERE = {"asset": "things", "debt": "debts"}
DAY = date(2026, 11, 28)


def facts_in(name: str, onto: Case | None = None) -> Case:
    return FactsFile(TABLES / name).onto(onto, DAY)


@pytest.mark.parametrize("group", WRITTEN_HERE)
def test_they_were_written_as_tables_are_written_now(group: str) -> None:
    name = f"{WRITTEN_HERE[group]}.csv"
    assert table_of(facts_in(name), group) == (TABLES / name).read_bytes().decode()


@pytest.mark.parametrize(
    "how",
    ["saved-again.xlsx", "csv-saved-as-workbook.xlsx", "csv-saved-again.csv", "saved-with-semicolons.csv"],
)
@pytest.mark.parametrize("name", WRITTEN_HERE.values())
def test_a_table_saved_elsewhere_changes_nothing(name: str, how: str) -> None:
    before = facts_in(f"{name}.csv")
    assert facts_in(f"{name}-{how}", before) == before
    assert facts_in(f"{name}-{how}") == before


def test_the_tables_hold_what_spreadsheets_are_known_to_change() -> None:
    savings, _car, short, box = facts_in("things.csv").asset
    assert (savings.last_four, short.words, box.words) == ("0937", "2E5", "Box; @home")
    assert str(savings.acquired_on) == "2012-04"
