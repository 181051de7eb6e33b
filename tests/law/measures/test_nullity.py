"""Time limits of a nullity, against an outside date library and the law's own shape.

Fam. Code 2211(a)(1), (d)-(f): four years; Code Civ. Proc. 12a: a last day on which the court is closed
moves to the next day it is open. python-dateutil adds the years in its own way.
"""

from datetime import date, timedelta

import pytest
from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.choices import NullityFiler, NullityGround
from firstpaper.law.figure import court_calendar
from firstpaper.law.measures.nullity import (
    VOID,
    Runs,
    bar_key,
    barred,
    concerned_key,
    defeated,
    filer_may,
    time_limit,
)

ON = date(2026, 11, 25)
STARTS = st.dates(date(2019, 1, 1), date(2035, 12, 31))
FOUR_YEARS = relativedelta(years=4)
COUNTED = {
    NullityGround.FORCE: "dates.married_on",
    NullityGround.PHYSICAL_INCAPACITY: "dates.married_on",
    NullityGround.FRAUD: "grounds.discovered_on",
}


@given(st.sampled_from(sorted(COUNTED)), STARTS)
def test_four_years_agree_with_dateutil_and_end_on_an_open_day(ground: NullityGround, start: date) -> None:
    limit = time_limit(Case().with_fact(COUNTED[ground], start), ground, ON)

    assert limit.last_day == start + FOUR_YEARS
    assert limit.rolled is not None
    assert limit.last_day <= limit.rolled <= limit.last_day + timedelta(days=5)
    assert court_calendar().is_court_day(limit.rolled)


@given(st.sampled_from(sorted(COUNTED)), STARTS, st.integers(-40, 40))
def test_a_filing_is_in_time_up_to_the_moved_day_and_never_after(
    ground: NullityGround, start: date, days: int
) -> None:
    case = Case().with_fact(COUNTED[ground], start)
    rolled = time_limit(case, ground, ON).rolled
    assert rolled is not None

    filed = max(rolled + timedelta(days=days), date(2026, 1, 1))

    assert time_limit(case, ground, filed).may_file is (filed <= rolled)


@given(st.sampled_from(sorted(COUNTED)), st.integers(2019, 2035), st.integers(1, 12), STARTS)
def test_a_month_told_without_a_day_never_says_more_than_each_of_its_days(
    ground: NullityGround, year: int, month: int, filed: date
) -> None:
    filed = max(filed, date(2026, 1, 1))
    told = time_limit(Case().with_fact(COUNTED[ground], f"{year}-{month:02d}"), ground, filed).may_file
    first = date(year, month, 1)
    each = {
        time_limit(Case().with_fact(COUNTED[ground], day), ground, filed).may_file
        for day in (first, first + relativedelta(day=31))
    }

    assert told is (each.pop() if len(each) == 1 else None)


@given(STARTS)
def test_a_late_petition_for_force_needs_permission_from_2027_and_has_no_way_before(start: date) -> None:
    case = Case().with_fact("dates.married_on", start)
    for filed in (date(2026, 12, 31), date(2027, 1, 1)):
        limit = time_limit(case, NullityGround.FORCE, filed)
        late = limit.rolled is not None and filed > limit.rolled

        assert limit.needs_permission is (late and filed.year == 2027)


@pytest.mark.parametrize("ground", list(NullityGround))
def test_a_case_that_tells_nothing_is_answered_by_nothing_certain(ground: NullityGround) -> None:
    limit = time_limit(Case(), ground, ON)

    assert (limit.runs is Runs.WITHOUT_LIMIT) is (ground in VOID)
    assert limit.may_file is (True if ground in VOID else None)
    assert filer_may(Case(), ground) is None
    assert bool(limit.unsure) is (ground not in VOID)


@pytest.mark.parametrize("ground", list(NullityGround))
@pytest.mark.parametrize("filer", list(NullityFiler))
def test_every_filer_of_every_ground_has_an_answer_and_real_facts(
    ground: NullityGround, filer: NullityFiler
) -> None:
    case = Case().with_fact("grounds.filer", filer)

    assert filer_may(case, ground) in (True, False, None)
    for key in (bar_key(ground), concerned_key(ground)):
        assert key is None or case.fact(key) is None


def told(**grounds: object) -> Case:
    return Case.model_validate({"grounds": grounds})


def test_on_the_last_day_that_can_be_a_month_told_alone_leaves_it_open() -> None:
    """Found out in November 2022: four years end between November 1 and Monday, November 30, 2026."""
    case = told(filer="spouse", discovered_on="2022-11")
    assert time_limit(case, NullityGround.FRAUD, date(2026, 11, 30)).may_file is None
    assert time_limit(case, NullityGround.FRAUD, date(2026, 12, 1)).may_file is False


@pytest.mark.parametrize("filer", list(NullityFiler))
def test_only_an_earlier_spouse_has_all_time_on_the_earlier_marriage(filer: NullityFiler) -> None:
    """Fam. Code 2211(b): either party during the life of the other, or the former spouse."""
    limit = time_limit(told(filer=filer), NullityGround.PRIOR_SPOUSE, ON)
    endless = filer is NullityFiler.FORMER_SPOUSE
    assert limit.runs is (Runs.WITHOUT_LIMIT if endless else Runs.WHILE_BOTH_LIVE)
    assert limit.may_file is (True if endless else None)


def test_an_earlier_spouse_gains_no_time_on_another_ground() -> None:
    case = told(filer="former_spouse").with_fact("dates.married_on", "2024-01-10")
    assert time_limit(case, NullityGround.FORCE, ON).runs is Runs.TO_A_DAY


@pytest.mark.parametrize(
    ("ground", "case"),
    [
        (NullityGround.INCEST, told(filer="spouse")),
        (NullityGround.UNSOUND_MIND, told(filer="spouse", both_alive=True)),
        (NullityGround.FORCE, told(filer="spouse")),
    ],
)
def test_permission_is_never_needed_where_no_day_has_passed(ground: NullityGround, case: Case) -> None:
    assert time_limit(case, ground, date(2027, 1, 4)).needs_permission is False


@pytest.mark.parametrize(
    ("ground", "case", "first"),
    [
        (
            NullityGround.FRAUD,
            told(filer="spouse", discovered_on="2024-01-10"),
            "Wed, Jan 10, 2024: the facts were found out",
        ),
        (
            NullityGround.FORCE,
            told(filer="spouse").with_fact("dates.married_on", "2024-01-10"),
            "Wed, Jan 10, 2024: the marriage began",
        ),
        (
            NullityGround.UNDER_AGE,
            told(filer="spouse", minor_born_on="2005-06-10"),
            "Fri, Jun 10, 2005: born",
        ),
    ],
)
def test_the_counting_begins_with_what_started_the_time(
    ground: NullityGround, case: Case, first: str
) -> None:
    steps = time_limit(case, ground, ON).steps
    assert steps[0] == first
    assert "later" in steps[1]


@pytest.mark.parametrize("ground", [NullityGround.BIGAMY, NullityGround.INCEST, NullityGround.PRIOR_SPOUSE])
def test_either_spouse_may_file_on_a_ground_about_both(ground: NullityGround) -> None:
    assert filer_may(told(filer="spouse"), ground) is True


def test_a_spouse_of_unsound_mind_may_file_and_the_other_is_left_open() -> None:
    assert filer_may(told(filer="spouse", unsound="petitioner"), NullityGround.UNSOUND_MIND) is True
    assert filer_may(told(filer="spouse", unsound="respondent"), NullityGround.UNSOUND_MIND) is None


@pytest.mark.parametrize("ground", list(NullityGround))
def test_nothing_bars_a_ground_that_has_no_bar(ground: NullityGround) -> None:
    assert barred(told(), ground) is (None if bar_key(ground) else False)


@pytest.mark.parametrize(
    ("ground", "case", "by"),
    [
        # Fam. Code 2211(e): only the one whose consent was forced
        (NullityGround.FORCE, told(filer="former_spouse"), "grounds.filer"),
        (NullityGround.FORCE, told(filer="spouse", forced="respondent"), "grounds.filer"),
        # Fam. Code 2210(e): unless they lived together freely afterwards
        (NullityGround.FORCE, told(filer="spouse", stayed_after_force=True), "grounds.stayed_after_force"),
        # Fam. Code 2210(a): a bar comes first, whoever files
        (
            NullityGround.UNDER_AGE,
            told(filer="former_spouse", court_allowed_minor=True),
            "grounds.court_allowed_minor",
        ),
        # Fam. Code 2211(a)(2): a parent may file for a minor
        (NullityGround.UNDER_AGE, told(filer="parent_or_guardian"), None),
    ],
)
def test_a_ground_is_shut_by_the_answer_that_shuts_it(
    ground: NullityGround, case: Case, by: str | None
) -> None:
    assert defeated(case, ground, ON) == by
