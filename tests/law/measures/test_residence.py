"""The measures of residence. Dates are worked out by hand from Fam. Code 2320(a) and Gov. Code 6803, 6804."""

from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.counting import ResidenceBand
from firstpaper.facts import Case
from firstpaper.facts.choices import Who
from firstpaper.law.measures.residence import (
    Route,
    day_that_counts,
    residence_route,
    spouse_residence,
    who_qualifies,
)

TODAY = date(2026, 11, 25)
LONG = {"lives": "this_county", "state_since": "2015-01-01", "county_since": "2015-01-01"}
NEW = {"lives": "this_county", "state_since": "2026-09-01", "county_since": "2026-09-01"}
AWAY = {"lives": "other_state"}
ABROAD = {"lives": "abroad"}
SAME_SEX = {"same_sex": True, "wedding_county": "Alameda", "not_dissolvable_at_home": True}


def household(petitioner: Any, respondent: Any, *, exception: Any = None, **matter: Any) -> Case:
    return Case.model_validate(
        {
            "matter": {"kind": "dissolution", "unions": ["marriage"], **matter},
            "residence": {"petitioner": petitioner, "respondent": respondent, "exception": exception or {}},
        }
    )


@pytest.mark.parametrize(
    ("case", "route"),
    [
        (household(LONG, AWAY), Route.SPOUSE),
        (household(NEW, LONG), Route.SPOUSE),
        (household(NEW, AWAY), Route.NONE),
        (household({}, {}), Route.NONE),
        (household(NEW, AWAY, kind="legal_separation"), Route.NOT_NEEDED),
        (household(NEW, AWAY, kind="nullity"), Route.NOT_NEEDED),
        (household(AWAY, AWAY, unions=["partners_california"]), Route.CALIFORNIA_PARTNERSHIP),
        (household(LONG, AWAY, unions=["partners_california"], kind="nullity"), Route.CALIFORNIA_PARTNERSHIP),
        (household(AWAY, AWAY, unions=["partners_elsewhere"]), Route.NONE),
        (household(AWAY, AWAY, unions=["marriage", "partners_california"]), Route.NONE),
        (household(ABROAD, ABROAD, exception=SAME_SEX), Route.SAME_SEX),
        (household(ABROAD, ABROAD, exception=SAME_SEX, kind="legal_separation"), Route.SAME_SEX),
        (household(ABROAD, AWAY, exception=SAME_SEX), Route.NONE),
        (household(AWAY, ABROAD, exception=SAME_SEX), Route.NONE),
        (household(AWAY, NEW, exception=SAME_SEX), Route.NONE),
        (household(ABROAD, ABROAD, exception={**SAME_SEX, "wedding_county": ""}), Route.NONE),
        (
            household(ABROAD, ABROAD, exception={**SAME_SEX, "not_dissolvable_at_home": "don't know"}),
            Route.NONE,
        ),
    ],
)
def test_the_way_into_a_california_court(case: Case, route: Route) -> None:
    assert residence_route(case, TODAY) is route


def test_both_spouses_can_qualify_and_the_petitioner_is_named_first() -> None:
    assert who_qualifies(household(LONG, LONG), TODAY) == (Who.PETITIONER, Who.RESPONDENT)
    assert who_qualifies(household(AWAY, LONG), TODAY) == (Who.RESPONDENT,)


def test_the_later_half_sets_the_safe_day() -> None:
    late = spouse_residence(household({**NEW, "county_since": "2026-11-20"}, AWAY), Who.PETITIONER, TODAY)

    assert late.safe_day == date(2027, 3, 3)  # 182 days from September 1 end on March 2
    assert late.fails
    assert late.unsure == ()


def test_a_spouse_in_another_county_has_a_state_window_and_no_safe_day() -> None:
    told = household({"lives": "california", "state_since": "2015"}, AWAY)
    elsewhere = spouse_residence(told, Who.PETITIONER, TODAY)

    assert elsewhere.state_band is ResidenceBand.MET
    assert elsewhere.county_band is ResidenceBand.NOT_MET
    assert (elsewhere.county, elsewhere.safe_day) == (None, None)
    assert elsewhere.unsure == ("residence.petitioner.state_since",)


def test_dates_do_not_count_for_the_county_before_it_is_told_who_lives_there() -> None:
    told = household({"state_since": "2015-01-01", "county_since": "2015-01-01"}, AWAY)
    spouse = spouse_residence(told, Who.PETITIONER, TODAY)

    assert spouse.county is not None
    assert spouse.county_band is None
    assert not spouse.qualifies
    assert not spouse.fails
    assert spouse.unsure == ("residence.petitioner.lives",)


@pytest.mark.parametrize(
    ("matter", "counts"),
    [
        ({}, TODAY),
        ({"amended": False, "first_filed_on": "2026-08-03"}, TODAY),
        ({"amended": True, "first_kind": "legal_separation", "first_filed_on": "2026-08-03"}, TODAY),
        ({"amended": True, "first_kind": "dissolution", "first_filed_on": "2026-08-03"}, date(2026, 8, 3)),
        ({"amended": True, "first_kind": "nullity", "first_filed_on": "2026-08-03"}, date(2026, 8, 3)),
        ({"amended": True, "first_kind": "dissolution", "first_filed_on": "2026-08"}, None),
        ({"amended": True, "first_kind": "don't know", "first_filed_on": "don't know"}, None),
    ],
)
def test_the_filing_day_that_counts(matter: dict[str, Any], counts: date | None) -> None:
    """Fam. Code 2321(a) moves the day only for a legal separation that is amended."""
    assert day_that_counts(household(NEW, AWAY, **matter), TODAY) == counts


DAYS = st.dates(date(2015, 1, 1), date(2027, 6, 1))


@given(DAYS, DAYS, DAYS)
def test_a_spouse_qualifies_from_the_safe_day_on_and_never_before(
    state: date, county: date, on: date
) -> None:
    told = household({"lives": "this_county", "state_since": state, "county_since": county}, AWAY)
    spouse = spouse_residence(told, Who.PETITIONER, on)

    assert spouse.safe_day is not None
    assert spouse.qualifies == (on >= spouse.safe_day)
    assert spouse.qualifies != spouse.fails


@given(DAYS, DAYS, st.sampled_from(["%Y", "%Y-%m"]))
def test_a_day_told_in_part_never_qualifies_sooner_than_any_day_it_can_be(
    since: date, on: date, parts: str
) -> None:
    whole = household({"lives": "this_county", "state_since": since, "county_since": since}, AWAY)
    part = since.strftime(parts)
    partial = household({"lives": "this_county", "state_since": part, "county_since": part}, AWAY)

    if who_qualifies(partial, on):
        assert who_qualifies(whole, on)


@pytest.mark.parametrize("known_half", ["state_since", "county_since"])
def test_with_one_half_told_there_is_no_safe_day(known_half: str) -> None:
    told = {"lives": "this_county", known_half: "2026-07-01"}
    case = Case.model_validate({"residence": {"petitioner": told}})
    assert spouse_residence(case, Who.PETITIONER, date(2026, 11, 25)).safe_day is None
