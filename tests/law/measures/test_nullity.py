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
from firstpaper.law.measures.nullity import VOID, Runs, bar_key, concerned_key, filer_may, time_limit

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
