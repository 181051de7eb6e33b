"""The residence bars, against days worked out elsewhere in this project's cases and by hand."""

from datetime import date

import pytest

from firstpaper.facts import Case, Day
from firstpaper.packet.pictures.chart import Chart, Fill, Mark, Span
from firstpaper.packet.pictures.residence import residence
from firstpaper.packet.pictures.words import alt_of, text_of

D = Day.parse
ON = date(2026, 7, 10)

FACTS = {
    "matter.kind": "dissolution",
    "matter.unions": ("marriage",),
    "court.county": "Yolo",
    "respondent.name": "Peter Hart",
    "residence.petitioner.lives": "this_county",
    "residence.petitioner.state_since": D("2026-01-15"),
    "residence.petitioner.county_since": D("2026-01-15"),
    "residence.respondent.lives": "other_state",
}


def case(**changed: object) -> Case:
    told = Case()
    for key, value in {**FACTS, **{key.replace("__", "."): value for key, value in changed.items()}}.items():
        told = told.with_fact(key, value)
    return told


def picture(told: Case, on: date = ON) -> Chart:
    found = residence(told, on)
    assert found is not None
    return found


def test_the_bar_is_black_up_to_the_filing_and_white_up_to_the_safe_day() -> None:
    # Fam. Code 2320(a); Gov. Code 6803, 6804. January 15 plus six months is July 15, day 181; day 182 is
    # July 16; the day after the longer count is July 17, 2026.
    state, county, *_others = picture(case()).rows
    assert state.spans == (
        Span(date(2026, 1, 15), ON),
        Span(date(2026, 7, 11), date(2026, 7, 17), Fill.WHITE),
    )
    assert state.marks == (Mark(date(2026, 7, 17), Fill.WHITE),)
    assert county.spans == state.spans  # both up to the day of the filing, which is July 17 too
    assert county.marks == (Mark(date(2026, 4, 17)),)  # 91 days are April 16


def test_the_line_is_the_first_day_right_for_a_filing() -> None:
    line = picture(case()).line
    assert line is not None
    assert line.day == date(2026, 7, 17)
    assert "Fri, Jul 17, 2026" in line.words


def test_the_words_say_every_day_and_who_does_not_live_here() -> None:
    chart = picture(case())
    assert alt_of(chart) == (
        "This picture shows how long each of you has lived here, against a filing on Fri, Jul 17, 2026. "
        "You have lived in California since Thu, Jan 15, 2026. "
        "That is long enough from Fri, Jul 17, 2026 on. "
        "You have lived in Yolo County since Thu, Jan 15, 2026. "
        "That is long enough from Fri, Apr 17, 2026 on. "
        "For Peter Hart, no time in California can be counted. "
        "For Peter Hart, no time in Yolo County can be counted."
    )
    assert max(map(len, text_of(chart).splitlines())) <= 78
    assert text_of(chart).count("\n- ") == 4


def test_a_day_told_in_part_is_striped_until_its_last_possible_day() -> None:
    told = case(residence__petitioner__county_since=D("2026-03"))
    county = picture(told).rows[1]
    assert county.spans[0] == Span(date(2026, 3, 1), date(2026, 3, 31), Fill.STRIPED)
    assert county.spans[1].first == date(2026, 3, 31)
    assert "Since March 2026" in county.notes


@pytest.mark.parametrize(
    ("on", "shown"),
    [(date(2026, 7, 10), True), (date(2026, 9, 14), True), (date(2026, 9, 15), False)],
)
def test_nothing_is_shown_once_one_of_them_has_long_met_both_halves(on: date, shown: bool) -> None:
    # the safe day is July 17; sixty days later is September 15
    assert (residence(case(), on) is not None) is shown


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("matter.kind", "legal_separation"),
        ("matter.kind", "nullity"),
        ("matter.unions", ("partners_california",)),
        ("matter.amended", True),
        ("record.filed_on", D("2026-07-01")),
    ],
)
def test_nothing_is_shown_where_no_time_here_is_asked_for(key: str, value: object) -> None:
    assert residence(case(**{key.replace(".", "__"): value}), ON) is None


def test_nothing_is_shown_where_nothing_was_told() -> None:
    assert residence(Case(), ON) is None
    assert residence(Case().with_fact("matter.kind", "dissolution"), ON) is None


def test_the_filer_stays_you_and_a_missing_name_is_said() -> None:
    told = case(respondent__name=None)
    titles = [row.title for row in picture(told).rows]
    assert titles == [
        "You in California",
        "You in Yolo County",
        "The other side in California",
        "The other side in Yolo County",
    ]
