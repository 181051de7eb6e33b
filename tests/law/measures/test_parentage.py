"""The two windows of a declaration of parentage, against an outside date library.

Fam. Code 7575(a): within 60 days of the later signature; 7576(a): not later than two years after it took
effect. python-dateutil counts the two years; a declaration signed on February 29 ends on February 28.
"""

from datetime import date, timedelta

from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case, Day
from firstpaper.law.figure import court_calendar
from firstpaper.law.measures.parentage import declaration_windows

ON = date(2026, 11, 25)


@given(st.dates(date(2020, 1, 1), date(2030, 12, 31)))
def test_sixty_days_and_two_years(signed: date) -> None:
    windows = declaration_windows(Case(), Day.of(signed), ON)
    assert windows.rescind_by.target == signed + timedelta(days=60)
    last = signed + relativedelta(years=2)
    assert (windows.challenge_by.closed or windows.challenge_by.target) == last
    assert court_calendar().is_court_day(windows.challenge_by.target)
    assert windows.rescind_by.rolled >= windows.rescind_by.target
    assert windows.challenge_by.rolled >= windows.challenge_by.target


@given(st.integers(2020, 2030), st.integers(1, 12))
def test_a_month_is_counted_from_its_first_day_so_that_no_day_is_lost(year: int, month: int) -> None:
    assert declaration_windows(Case(), Day(year, month), ON) == declaration_windows(
        Case(), Day(year, month, 1), ON
    )
