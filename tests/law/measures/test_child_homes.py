"""A child's homes, against a count day by day and an outside date library.

Fam. Code 3429(a): the places where the child has lived during the last five years. Fam. Code 3402(g): six
consecutive months, counted here with python-dateutil, which also ends a month too short on its last day.
"""

from datetime import date, timedelta

from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case, Day
from firstpaper.facts.children import Home
from firstpaper.law.measures.child_homes import (
    Basis,
    Stretch,
    history,
    home_state,
    parent_lives_here,
    since_birth,
)

ON = date(2026, 11, 25)
FIRST = date(2020, 1, 1)
OFFSETS = st.integers(0, (ON - FIRST).days + 40)
DAY = timedelta(days=1)


def home(start: int, days: int, state: str, *, open_end: bool = False) -> Home:
    begins = FIRST + start * DAY
    end = None if open_end else Day.of(begins + days * DAY)
    return Home(start=Day.of(begins), end=end, place="Fresno", state=state)


HOMES = st.lists(
    st.builds(home, OFFSETS, st.integers(0, 900), st.sampled_from(["CA", "NV"]), open_end=st.booleans()),
    min_size=1,
    max_size=5,
).map(lambda lived: tuple(sorted(lived, key=lambda one: one.start.earliest)))


def until(lived: Home) -> date:
    return lived.end.latest if lived.end else ON


def days(stretch: Stretch) -> set[date]:
    return {stretch.first + n * DAY for n in range((stretch.last - stretch.first).days + 1)}


def homes_on(lived: tuple[Home, ...], day: date) -> int:
    return sum(one.start.earliest <= day <= until(one) for one in lived)


@given(HOMES)
def test_the_gaps_are_the_days_without_a_home(lived: tuple[Home, ...]) -> None:
    told = history(lived, None, ON)
    since = ON - relativedelta(years=5)
    window = [since + n * DAY for n in range((ON - since).days + 1)]
    assert set().union(*map(days, told.gaps)) == {day for day in window if not homes_on(lived, day)}
    assert told.complete is (not told.gaps)


@given(HOMES)
def test_overlaps_are_days_with_two_homes_by_more_than_the_day_of_a_move(lived: tuple[Home, ...]) -> None:
    told = history(lived, None, ON)
    doubled = set().union(*map(days, told.overlaps))
    assert all(homes_on(lived, day) > 1 for day in doubled)
    for number, one in enumerate(lived):
        for other in lived[number + 1 :]:
            first = max(one.start.earliest, other.start.earliest, told.since)
            last = min(until(one), until(other), ON)
            assert first >= last or days(Stretch(first, last)) <= doubled


@given(HOMES, st.dates(date(2015, 1, 1), ON))
def test_nothing_is_asked_from_before_the_birth_or_the_five_years(
    lived: tuple[Home, ...], born: date
) -> None:
    told = history(lived, Day.of(born), ON)
    assert told.since == max(born, ON - relativedelta(years=5))
    assert all(told.since <= gap.first <= gap.last <= ON for gap in told.gaps)


@given(st.dates(date(2025, 1, 1), ON), st.dates(ON, date(2028, 12, 31)))
def test_a_child_who_came_and_stayed_has_a_home_state_here_after_six_months(came: date, on: date) -> None:
    lived = (Home(start=Day.of(came), place="Fresno", state="CA"),)
    found = home_state(lived, Day(2012, 1, 1), on, parent_here=True)
    full = came + relativedelta(months=6)
    assert found.basis is (Basis.HERE if full <= on else Basis.NOT_YET)
    assert found.line == full
    assert found.on_the_line is (full == on)


@given(st.dates(date(2025, 1, 1), date(2027, 12, 31)), st.dates(date(2025, 1, 1), date(2028, 12, 31)))
def test_a_child_who_left_counts_for_six_months_more(left: date, on: date) -> None:
    lived = (
        Home(start=Day(2015, 1, 1), end=Day.of(left), place="Fresno", state="CA"),
        Home(start=Day.of(left), place="Reno", state="NV"),
    )
    found = home_state(lived, Day(2012, 1, 1), on, parent_here=True)
    if left < on:
        counts = on <= left + relativedelta(months=6)
        assert found.basis is (Basis.LEFT_LATELY if counts else Basis.ELSEWHERE)


@given(st.dates(date(2026, 1, 1), ON), st.dates(date(2026, 1, 1), ON))
def test_a_baby_born_here_and_always_here_is_at_home_here(born: date, on: date) -> None:
    lived = (Home(start=Day.of(born), place="Fresno", state="CA"),)
    if born <= on:
        found = home_state(lived, Day.of(born), on, parent_here=True)
        assert found.basis in (Basis.SINCE_BIRTH, Basis.HERE)


@given(HOMES, st.booleans() | st.none())
def test_it_is_never_the_home_state_without_a_day_here(lived: tuple[Home, ...], parent: bool | None) -> None:
    away = tuple(one for one in lived if one.state != "CA")
    if away:
        assert home_state(away, None, ON, parent_here=parent).basis is Basis.ELSEWHERE


def lives(petitioner: str | None, respondent: str | None) -> Case:
    return Case.model_validate(
        {"residence": {"petitioner": {"lives": petitioner}, "respondent": {"lives": respondent}}}
    )


def test_a_parent_here_is_enough_and_one_not_told_leaves_it_open() -> None:
    assert parent_lives_here(lives("other_state", "california")) is True
    assert parent_lives_here(lives("this_county", None)) is True
    assert parent_lives_here(lives("other_state", None)) is None
    assert parent_lives_here(lives("abroad", "other_state")) is False


BORN = Day(2022, 3, 1)


def lived(start: str, end: str | None) -> Home:
    return Home(start=Day.parse(start), end=Day.parse(end) if end else None, place="Fresno", state="CA")


def test_a_younger_child_has_the_homes_of_the_older_from_the_birth_on() -> None:
    older = (
        lived("2018-01-01", "2022-02-28"),
        lived("2019", "2022-03-01"),
        lived("2022-03-01", "2023-01-01"),
        lived("2022-02", "2023-01-02"),
        lived("2022-03", None),
        lived("2023-01-02", None),
    )
    assert [(str(one.start), one.end and str(one.end)) for one in since_birth(older, BORN)] == [
        ("2022-03-01", "2022-03-01"),
        ("2022-03-01", "2023-01-01"),
        ("2022-03-01", "2023-01-02"),
        ("2022-03", None),
        ("2023-01-02", None),
    ]


def test_a_month_that_ends_on_the_day_of_birth_is_kept_as_told() -> None:
    (one,) = since_birth((lived("2022-03", None),), Day(2022, 3, 31))
    assert str(one.start) == "2022-03"


def test_without_a_birth_date_every_home_is_kept() -> None:
    older = (lived("2018-01-01", "2022-02-28"), lived("2022-03-01", None))
    assert since_birth(older, None) == older
