"""Every row of the worked tables of law has a case, and the case is found by the row.

The rows were worked by hand from the sections that each table names. S and K are months of residence in the
state and the county (Fam. Code 2320), V who of two spouses qualifies, N the last day of a nullity (2211), L
the length of a marriage (2330), R the last day to respond (2020), W the end of the six months (2339). The
tables without letters follow. This file holds no dates: it only says where each row is proved.
"""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import yaml

from tests.law.rule_cases import CASE_FILES

TESTS = Path(__file__).parents[1]
COUNTING, MEASURES = "counting/cases", "law/measures/cases"

LETTERED = {
    "S": (13, f"{COUNTING}/residence_six_months.yaml"),
    "K": (9, f"{COUNTING}/residence_three_months.yaml"),
    "L": (7, f"{COUNTING}/length_of_marriage.yaml"),
    "R": (25, f"{MEASURES}/response_due.yaml"),
    "W": (11, f"{MEASURES}/earliest_end.yaml"),
}
"""Tables whose cases carry the name of their row, with the number of rows."""

RULES = {
    "V1": (
        "residence.same_spouse",
        "the petitioner has both halves and the other side lives outside California",
    ),
    "V2": (
        "residence.same_spouse",
        "the other side has both halves, so a petitioner who is new here may file",
    ),
    "V3": (
        "residence.same_spouse",
        "one has the state and the other has the county, and the halves do not add up",
    ),
    "V4": (
        "residence.same_spouse",
        "a newcomer whose spouse lives elsewhere can wait or ask for a legal separation",
    ),
    "V5": (
        "residence.same_spouse",
        "partners registered in California who both live elsewhere are not tested",
    ),
    "V6": ("residence.same_spouse", "the same-sex route is open, so nobody has to have lived here"),
    "V6, county": ("residence.venue", "the same-sex route in another county than that of the wedding"),
    "N1": (
        "nullity.last_day",
        "born in June 2005 and under age at the wedding, the spouse has until the 22nd birthday",
    ),
    "N2": ("nullity.last_day", "for the same wedding a parent had to file before the 18th birthday"),
    "N3": ("nullity.last_day", "force, the target is Thanksgiving and the court opens again on Monday"),
    "child since May 25": (
        "children.home_state",
        "here since May 25 is six months to the day on November 25",
    ),
    "child since May 26": ("children.home_state", "here since May 26 is one day too new on November 25"),
    "baby born here": ("children.home_state", "a baby born here on September 1 and always here"),
    "left July 1": ("children.home_state", "left on July 1 after five years, and a parent stayed"),
    "left May 20": ("children.home_state", "left on May 20, so no longer on November 25"),
}
"""Rows that a rule answers, with the rule and the name of its case."""

TABLES = {
    "fee waiver filed 2026-11-23": (f"{COUNTING}/court_days.yaml", "fee waiver asked for on 2026-11-23"),
    "fee waiver filed 2026-12-18": (f"{COUNTING}/court_days.yaml", "fee waiver asked for on 2026-12-18"),
    "dismissal filed 2026-11-25": (f"{MEASURES}/dismissal.yaml", "filed on the day before Thanksgiving 2026"),
    "dismissal filed 2026-12-01": (f"{MEASURES}/dismissal.yaml", "filed on December 1, 2026"),
    "dismissal filed 2024-02-29": (f"{MEASURES}/dismissal.yaml", "filed on February 29, 2024"),
    "disclosure filed 2026-11-25": (f"{MEASURES}/disclosure.yaml", "sixty days from filing end on a Sunday"),
    "disclosure filed 2026-10-26": (f"{MEASURES}/disclosure.yaml", "sixty days end on Christmas Day"),
    "disclosure filed 2026-05-05": (f"{MEASURES}/disclosure.yaml", "sixty days end on the Fourth of July"),
    "disclosure filed 2026-09-14": (f"{MEASURES}/disclosure.yaml", "sixty days end on an ordinary Friday"),
    "published, response 2026-10-26": (f"{MEASURES}/disclosure.yaml", "published, and a response comes"),
    "published, response 2026-11-25": (
        f"{MEASURES}/disclosure.yaml",
        "published, and the thirty days end on",
    ),
    "N3, the plain count": (f"{COUNTING}/periods_of_months.yaml", "N3 "),
    "N4": (f"{COUNTING}/periods_of_months.yaml", "N4 "),
    "N5": (f"{COUNTING}/periods_of_months.yaml", "N5 "),
    "N6": (f"{COUNTING}/periods_of_months.yaml", "N6 "),
}
"""Rows that a table of cases answers, with the beginning of the case's name."""


def _names(path: str) -> list[str]:
    table: dict[str, Any] = yaml.safe_load((TESTS / path).read_text("utf-8"))
    assert table["authority"].strip()
    return list(table["cases"])


def _rows() -> Iterator[Any]:
    for letter, (many, path) in LETTERED.items():
        yield from (
            pytest.param(path, f"{letter}{number} ", id=f"{letter}{number}") for number in range(1, many + 1)
        )
    yield from (pytest.param(path, name, id=row) for row, (path, name) in TABLES.items())


@pytest.mark.parametrize(("path", "begins"), list(_rows()))
def test_a_row_has_its_case_in_a_table(path: str, begins: str) -> None:
    assert [name for name in _names(path) if name.startswith(begins)], begins


@pytest.mark.parametrize(("rule", "name"), [pytest.param(*found, id=row) for row, found in RULES.items()])
def test_a_row_has_its_case_at_a_rule(rule: str, name: str) -> None:
    (cases,) = [each.cases for each in CASE_FILES if each.rule == rule]
    assert name in [case.name for case in cases]


def test_the_lettered_tables_hold_no_row_that_is_not_listed_here() -> None:
    for letter, (many, path) in LETTERED.items():
        rows = {name.split()[0] for name in _names(path) if name[0] == letter and name[1].isdigit()}
        assert rows == {f"{letter}{number}" for number in range(1, many + 1)}
