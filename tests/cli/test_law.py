"""`firstpaper law`: what the program knows of the law, how sure it is, and when somebody last looked."""

from collections.abc import Callable
from datetime import date, timedelta
from itertools import pairwise
from typing import Any

import pytest

from firstpaper.cli.law_list import checked_law
from firstpaper.law.figure import all_figures
from firstpaper.law.register import all_rules
from tests.cli.person import Ran, flat

Run = Callable[..., Ran]
ON = date(2026, 11, 25)
NEW_YEAR = date(2027, 1, 1)
CHECKED = date(2026, 11, 25)
KEYS = [
    "kind",
    "name",
    "what",
    "value",
    "authority",
    "certainty",
    "since",
    "until",
    "checked_on",
    "age_days",
]


def listed(run: Run, *options: str) -> list[dict[str, Any]]:
    law: list[dict[str, Any]] = run("law", "--json", *options).envelope["data"]["law"]
    return law


def test_every_figure_and_every_rule_is_listed_with_the_day_of_its_check(run: Run) -> None:
    law = listed(run, "--on", "2026-11-25")
    named = {one["name"] for one in law}
    assert named == {each.name for each in all_figures() if _matters(each)} | set(all_rules())
    assert [list(one) for one in law] == [KEYS] * len(law)


def _matters(each: Any) -> bool:
    return any(value.until is None or value.until >= ON for value in each.values)


def test_the_oldest_check_comes_first() -> None:
    law = checked_law(ON)
    assert all(one.checked_on <= other.checked_on for one, other in pairwise(law))


def test_a_value_of_the_past_is_left_out_and_one_to_come_is_told(run: Run) -> None:
    spans = [
        one for one in listed(run, "--on", "2026-11-25") if one["name"] == "fee_waiver.poverty_guideline"
    ]
    assert [one["since"] for one in spans] == ["2026-01-13"]
    orders = [one for one in checked_law(ON) if one.name == "restraining_orders.text"]
    assert [one.since for one in orders] == [date(2026, 1, 1), NEW_YEAR]
    assert [one.since for one in checked_law(NEW_YEAR) if one.name == "restraining_orders.text"] == [NEW_YEAR]


@pytest.mark.parametrize(("days", "stale"), [(0, False), (1, False), (30, True)])
def test_a_check_is_stale_when_it_is_more_than_so_many_days_old(run: Run, days: int, stale: bool) -> None:
    on = CHECKED + timedelta(days=31 if stale else days)
    ran = run("law", "--on", on.isoformat(), "--stale", str(days))
    assert ran.exit == (1 if stale else 0)
    assert ("was checked within" in flat(ran.out)) is not stale
    assert ("residence.state: " in ran.out) is stale


def test_a_stale_check_is_exit_1_for_programs_too(run: Run) -> None:
    document = run("law", "--on", "2027-11-25", "--stale", "300", "--json").envelope
    assert (document["exit"], document["errors"]) == (1, [])
    assert document["data"]["law"][0]["age_days"] > 300
    fresh = run("law", "--on", "2026-11-25", "--stale", "0", "--json").envelope
    assert (fresh["exit"], fresh["data"]["law"]) == (0, [])
    assert fresh["data"]["oldest_check"] == min(one.checked_on for one in checked_law(ON)).isoformat()


def test_a_person_reads_value_source_certainty_and_day(run: Run) -> None:
    text = flat(run("law", "--on", "2026-11-25").out)
    assert (
        "numbers and rules of law, as of Wednesday, November 25, 2026. The oldest check comes first." in text
    )
    assert (
        "residence.state_months: Months one spouse must have lived in California just before filing for "
        "divorce Value: 6 Source: Fam. Code 2320(a) (read in the law) Last checked on Wed, Nov 25, 2026"
    ) in text
    assert "Source: Gov. Code 68632(b), as amended by Stats. 2022, ch. 57 (read about)" in text
    assert "(not confirmed)" in text
    assert "Begins on Fri, Jan 1, 2027" in text
    assert "Ends with Thu, Dec 31, 2026" in text


@pytest.mark.parametrize("days", ["-1", "many", "1.5"])
def test_a_number_of_days_that_is_none_is_refused(run: Run, days: str) -> None:
    assert run("law", "--stale", days).exit == 2


def test_the_clock_is_asked_where_no_day_is_given(run: Run) -> None:
    assert run("law", "--stale", "36500").exit == 0
