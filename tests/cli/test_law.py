"""`firstpaper law`: what the program knows of the law, how sure it is, and when somebody last looked."""

from collections.abc import Callable
from datetime import date, timedelta
from itertools import pairwise
from typing import Any

import pytest

from firstpaper.cli.words.law_list import checked_law
from firstpaper.law.figure import all_figures
from firstpaper.law.register import all_rules
from firstpaper.law.source import Source, all_sources
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
    "used_by",
]


def listed(run: Run, *options: str) -> list[dict[str, Any]]:
    law: list[dict[str, Any]] = run("law", "--json", *options).envelope["data"]["law"]
    return law


def test_every_figure_and_every_rule_is_listed_with_the_day_of_its_check(run: Run) -> None:
    law = listed(run, "--on", "2026-11-25")
    named = {one["name"] for one in law}
    figures = {each.name for each in all_figures() if _matters(each)}
    assert named == figures | set(all_rules()) | {each.cite for each in all_sources() if _matters_still(each)}
    assert [list(one) for one in law] == [KEYS] * len(law)


def _matters_still(each: Source) -> bool:
    return each.until is None or each.until >= ON


def _matters(each: Any) -> bool:
    return any(value.until is None or value.until >= ON for value in each.values)


def test_a_word_finds_what_is_about_it_by_name_by_words_and_by_section(run: Run) -> None:
    for word in ("residence.county_months", "just before filing", "fam. code 2320"):
        found = run("law", word, "--on", ON.isoformat(), "--json").envelope["data"]["law"]
        assert "residence.county_months" in [one["name"] for one in found]
        assert len(found) < 40
    nothing = run("law", "zzzz", "--json")
    assert (nothing.exit, nothing.envelope["errors"][0]["code"]) == (2, "no_such_law")


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
    assert ("residence.state_months: " in ran.out) is stale
    assert ("Fam. Code 2320: " in ran.out) is stale
    assert "residence.state: " not in ran.out


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
        "numbers, rules and sources of law, as of Wednesday, November 25, 2026. The oldest check comes first."
        in text
    )
    assert (
        "residence.state_months: Months one spouse must have lived in California just before filing for "
        "divorce Value: 6 Source: Fam. Code 2320(a) (read in the law) Last checked on Wed, Nov 25, 2026"
    ) in text
    assert (
        "Source: Lab. Code 1182.12; Department of Industrial Relations notice 2025-118 (read about)" in text
    )
    assert "Fam. Code 2320: How long somebody must have lived here Read in the law Rests on it: " in text
    assert "(not confirmed)" in text
    assert "Begins on Fri, Jan 1, 2027" in text
    assert "Ends with Thu, Dec 31, 2026" in text


@pytest.mark.parametrize("days", ["-1", "many", "1.5"])
def test_a_number_of_days_that_is_none_is_refused(run: Run, days: str) -> None:
    assert run("law", "--stale", days).exit == 2


def test_the_clock_is_asked_where_no_day_is_given(run: Run) -> None:
    assert run("law", "--stale", "36500").exit == 0


def test_a_stale_section_names_the_rules_that_rest_on_it(run: Run) -> None:
    law = run("law", "--on", "2027-11-25", "--stale", "30", "--json").envelope["data"]["law"]
    stale = {one["name"]: one for one in law}

    assert "residence.state" in stale["Fam. Code 2320"]["used_by"]
    assert not any(one["kind"] == "rule" for one in law)


def test_why_prints_the_words_of_the_law_beside_ours(run: Run) -> None:
    text = flat(run("why", "residence.state").out)

    assert "Fam. Code 2320(a): How long somebody must have lived here (a) \u201cExcept as provided in" in text
    assert "resident of this state for six months and of the county" in text
    assert "Read in the law, last checked on Wed, Nov 25, 2026" in text
    assert "lawCode=FAM&sectionNum=2320." in text


def test_why_says_where_nothing_is_quoted_and_from_when_words_hold(run: Run) -> None:
    quoted, newer = flat(run("why", "safety.computer").out), flat(run("why", "nullity.force_from_2027").out)

    assert (
        "common practice: What clerks, servers and lawyers do, with no written source We quote no words"
        in quoted
    )
    assert "Read about, last checked on" in quoted
    assert "Fam. Code 2211(g) (Stats. 2025, ch. 633): " in newer
    assert "These words hold from Fri, Jan 1, 2027 on." in newer
    assert "These words hold up to Thu, Dec 31, 2026." in newer


def test_why_tells_programs_each_source_with_its_words(run: Run) -> None:
    sources = run("why", "residence.state", "--json").envelope["data"]["sources"]

    assert sources[0]["cite"] == "Fam. Code 2320(a)"
    assert sources[0]["words"]["(a)"].startswith("Except as provided")
    assert (sources[0]["certainty"], sources[0]["checked_on"]) == ("statute", "2026-11-25")
