"""What changes soon is found on its day, and nothing is announced that does not change.

Worked days: Fam. Code 2400(b) sets new limits on January 1, 2027; three months in the county from September
16, 2026 are safe on December 17; four years after November 26, 2022 for force (Fam. Code 2211(e)).
"""

from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.intake import standing
from firstpaper.law.changes import NEAR_DAYS, changes
from firstpaper.law.finding import Outcome, Weight
from firstpaper.law.register import findings
from tests.any_case import typed_case

DAY = timedelta(days=1)
NEW_YEAR = date(2027, 1, 1)
FILING = date(2026, 11, 25)

PLAIN: dict[str, Any] = {
    "safety": {"dangers": []},
    "matter": {"kind": "dissolution", "unions": ["marriage"], "amended": False, "other_case": False},
    "dates": {
        "married_on": "2022-11-26",
        "separation_told_on": "2026-08-30",
        "separation_acted_on": "2026-08-30",
        "back_together": [],
    },
    "court": {"county": "Fresno"},
    "residence": {
        "petitioner": {"lives": "this_county", "state_since": "2009-05-01", "county_since": "2026-09-16"},
        "respondent": {"lives": "other_state"},
    },
    "children": {"family": []},
}
SHORT: dict[str, Any] = PLAIN | {
    "residence": PLAIN["residence"]
    | {"petitioner": PLAIN["residence"]["petitioner"] | {"county_since": "2009"}},
    "shortcuts": {"look_at": ["small"]},
    "summary": {
        "pregnant": False,
        "real_estate": False,
        "lease": "none",
        "debts": 0,
        "community": 0,
        "separate_petitioner": 0,
        "separate_respondent": 0,
        "agreement": True,
        "waive_support": True,
        "both_want": True,
    },
}
FORCED: dict[str, Any] = PLAIN | {
    "matter": PLAIN["matter"] | {"kind": "nullity"},
    "grounds": {"nullity": ["force"], "filer": "spouse", "forced": "petitioner", "stayed_after_force": False},
}


def announced(facts: dict[str, Any], on: date = FILING, days: int = NEAR_DAYS) -> dict[tuple[str, date], Any]:
    return {(one.rule, one.on): one for one in changes(Case.model_validate(facts), on, days)}


def test_the_day_on_which_a_filing_is_safe_is_announced() -> None:
    found = announced(PLAIN)
    freed = found["residence.same_spouse", date(2026, 12, 17)]
    assert [one.weight for one in freed.before] == [Weight.GET_ADVICE]
    assert [one.outcome for one in freed.after] == [Outcome.MET]
    assert freed.lighter
    assert not freed.heavier
    assert freed.says.startswith(
        "From Thursday, December 17, 2026: On Thursday, December 17, 2026 you have lived"
    )


def test_a_law_that_begins_is_announced_from_its_day() -> None:
    found = announced(SHORT)["summary.dissolution", NEW_YEAR]
    assert [one.outcome for one in found.before] == [Outcome.MET]
    assert [one.outcome for one in found.after] == [Outcome.NEED_TO_KNOW]
    assert "were not published when we last looked" in found.says
    assert not found.heavier
    assert not found.lighter


def test_a_last_day_is_announced_on_the_day_after_it() -> None:
    found = announced(FORCED, date(2026, 11, 19))
    passed = found["nullity.last_day", date(2026, 12, 1)]
    assert passed.heavier
    assert "It has passed" in passed.says


def test_words_that_stay_are_announced_by_what_to_do() -> None:
    """Fam. Code 2211(g), operative January 1, 2027: the four years have passed before and after."""
    found = announced(FORCED, date(2026, 12, 20))["nullity.last_day", date(2027, 1, 1)]
    assert [one.says for one in found.before] == [one.says for one in found.after]
    assert found.says.startswith(
        "From Friday, January 1, 2027: A court may still allow it for a good reason."
    )


def test_a_rule_that_falls_silent_is_announced_too() -> None:
    came = {"county_since": "2026-10-10", "previous_county": "Kern", "previous_county_until": "2026-10-09"}
    filer = PLAIN["residence"]["petitioner"] | came  # safe on a Monday
    moved = PLAIN | {"residence": PLAIN["residence"] | {"petitioner": filer}}
    silent = announced(moved)["residence.moved_county", date(2027, 1, 11)]
    assert silent.after == ()
    assert silent.lighter
    assert silent.title == "Moved from one county to another"
    assert silent.says == "From Monday, January 11, 2027: There is nothing more to watch here."


@pytest.mark.parametrize(
    ("on", "days", "told"),
    [
        (NEW_YEAR - 61 * DAY, NEAR_DAYS, False),
        (NEW_YEAR - 60 * DAY, NEAR_DAYS, True),
        (NEW_YEAR - DAY, NEAR_DAYS, True),
        (NEW_YEAR - DAY, 0, False),
        (NEW_YEAR, NEAR_DAYS, False),
    ],
)
def test_the_window_begins_after_the_filing_day_and_ends_with_its_last(
    on: date, days: int, told: bool
) -> None:
    assert (("summary.dissolution", NEW_YEAR) in announced(SHORT, on, days)) is told


def test_words_that_were_steady_and_change_on_one_day_are_announced() -> None:
    poor = PLAIN | {
        "shortcuts": {"look_at": ["fee_waiver"]},
        "waiver": {"benefits": [], "household": 1, "income": 900, "short_of_needs": False},
    }
    found = announced(poor, date(2026, 12, 15))["fees.waiver", NEW_YEAR]
    assert [one.outcome for one in found.before] == [one.outcome for one in found.after] == [Outcome.MET]
    assert "The limit for 2027 may be higher" in found.says
    assert not found.lighter
    assert not found.heavier


def test_a_day_that_the_filer_told_is_looked_at_when_it_comes() -> None:
    said = PLAIN | {"dates": PLAIN["dates"] | {"separation_told_on": "2026-12-10"}}
    assert ("dates.future", date(2026, 12, 10)) in announced(said)
    child = {"name": "Ana Vale", "born_on": "2026-12-10", "parentage": "born_to_both"}
    born = PLAIN | {"children": {"family": ["minor_together"], "how_many": 1}, "child": [child]}
    assert ("children.listed", date(2026, 12, 10)) in announced(born)


def test_that_the_clerk_is_closed_on_a_day_is_no_change_of_the_case() -> None:
    told = PLAIN | {"record": {"court_closed": [{"first": "2026-12-08", "last": "2026-12-09"}]}}
    for case in (PLAIN, SHORT, told):
        assert "dates.filing_day" not in {rule for rule, _day in announced(case)}


def test_words_that_count_from_the_filing_are_no_change() -> None:
    moved = {rule for rule, _day in announced(SHORT)}
    assert not moved & {"disclosure.due", "waiting.earliest_end", "marriage.length", "residence.state"}


@given(typed_case(), st.dates(date(2026, 6, 1), date(2027, 6, 1)))
@settings(max_examples=15, deadline=None)
def test_a_change_is_what_the_rules_say_on_the_eve_and_on_the_day(told: Case, on: date) -> None:
    case = standing(told)
    for change in changes(case, on):
        assert on < change.on <= on + NEAR_DAYS * DAY
        assert change.before == findings(case, change.on - DAY, [change.rule], closed_too=True)
        assert change.after == findings(case, change.on, [change.rule], closed_too=True)
        assert change.before != change.after


@given(typed_case(), st.dates(date(2026, 6, 1), date(2027, 6, 1)))
@settings(max_examples=8, deadline=None)
def test_no_day_is_missed_on_which_a_filing_is_stopped_or_freed(told: Case, on: date) -> None:
    case = standing(told)
    told = {(change.rule, change.on) for change in changes(case, on)}
    stops = [
        {one.id for one in findings(case, on + n * DAY, closed_too=True) if one.weight is Weight.STOP}
        for n in range(NEAR_DAYS + 1)
    ]
    turned = {(rule, on + n * DAY) for n in range(1, NEAR_DAYS + 1) for rule in stops[n - 1] ^ stops[n]}
    assert turned <= told


def test_what_changes_before_the_clerk_opens_is_no_change() -> None:
    """Three months in the county from August 28, 2026 are safe on a Sunday, after a Friday of court holiday.

    Code Civ. Proc. 135 and Gov. Code 6700, by way of the published list of court holidays of 2026.
    """
    here = PLAIN["residence"]["petitioner"] | {"county_since": "2026-08-28"}
    case = standing(Case.model_validate(PLAIN | {"residence": PLAIN["residence"] | {"petitioner": here}}))
    friday, saturday = date(2026, 11, 27), date(2026, 11, 28)
    assert saturday + DAY in {one.on for one in changes(case, date(2026, 11, 25))}
    assert saturday + DAY not in {one.on for one in changes(case, friday)}
    assert saturday + DAY not in {one.on for one in changes(case, saturday)}
