"""The homes of each child over the years that the declaration covers."""

from datetime import date

import pytest

from firstpaper.facts import Case, Day
from firstpaper.facts.children import Home
from firstpaper.locale import speaking
from firstpaper.packet.pictures.chart import Chart, Fill, Span
from firstpaper.packet.pictures.homes import strips
from firstpaper.packet.pictures.words import alt_of, text_of

D = Day.parse
ON = date(2026, 11, 25)
DELANO = Home(start=D("2015-05"), end=D("2022-06-30"), place="Delano", state="CA", with_whom="both")
BAKERSFIELD = Home(start=D("2022-08-01"), end=D("2026-09-16"), place="Bakersfield", state="CA")
SANTA_MARIA = Home(start=D("2026-06-01"), place="Santa Maria", state="CA")


def case(*homes: Home, born: str = "2016-02-29", **more: object) -> Case:
    told = Case()
    facts = {
        "safety.dangers": (),
        "child.1.name": "Lucia",
        "child.1.born_on": D(born),
        "child.1.parentage": "born_to_both",
        "child.1.homes": homes,
        **more,
    }
    for key, value in facts.items():
        told = told.with_fact(key, value)
    return told


def strip(told: Case) -> Chart:
    ((name, chart),) = strips(told, ON)
    assert name == "Lucia"
    return chart


def test_homes_stand_newest_first_with_gaps_and_doubles_in_their_place() -> None:
    chart = strip(case(DELANO, BAKERSFIELD, SANTA_MARIA))
    assert [(row.title, row.notes[0]) for row in chart.rows] == [
        ("Santa Maria, CA", "Mon, Jun 1, 2026 to now"),
        ("Two homes at once", "Mon, Jun 1, 2026 to Wed, Sep 16, 2026"),
        ("Bakersfield, CA", "Mon, Aug 1, 2022 to Wed, Sep 16, 2026"),
        ("No home told", "Fri, Jul 1, 2022 to Sun, Jul 31, 2022"),
        ("Delano, CA", "May 2015 to Thu, Jun 30, 2022"),
    ]
    assert chart.rows[3].notes[1] == "31 days"


def test_the_strip_covers_five_years_or_the_life() -> None:
    # Fam. Code 3429(a): the last five years
    assert (strip(case(SANTA_MARIA)).first, strip(case(SANTA_MARIA)).last) == (date(2021, 11, 25), ON)
    baby = strip(case(SANTA_MARIA, born="2026-06-01"))
    assert (baby.first, baby.last) == (date(2026, 6, 1), ON)


def test_a_gap_is_white_and_a_home_black() -> None:
    chart = strip(case(BAKERSFIELD, SANTA_MARIA))
    gap = chart.rows[-1]
    assert gap.spans == (Span(date(2021, 11, 25), date(2022, 7, 31), Fill.WHITE),)
    assert chart.rows[0].spans == (Span(date(2026, 6, 1), ON),)


def test_a_date_told_in_part_is_striped() -> None:
    vague = Home(start=D("2023"), end=D("2024-05"), place="Delano", state="CA")
    home = next(row for row in strip(case(vague)).rows if row.title == "Delano, CA")
    assert home.spans == (
        Span(date(2023, 1, 1), date(2023, 12, 31), Fill.STRIPED),
        Span(date(2023, 12, 31), date(2024, 5, 1)),
        Span(date(2024, 5, 1), date(2024, 5, 31), Fill.STRIPED),
    )


def test_a_home_whose_days_are_all_open_is_striped_whole() -> None:
    vague = Home(start=D("2024"), end=D("2024"), place="Delano", state="CA")
    home = next(row for row in strip(case(vague)).rows if row.title == "Delano, CA")
    assert home.spans == (Span(date(2024, 1, 1), date(2024, 12, 31), Fill.STRIPED),)


def test_a_home_that_ended_before_is_left_out() -> None:
    old = Home(start=D("2017-01-01"), end=D("2019-01-01"), place="Reno", state="NV")
    assert "Reno" not in alt_of(strip(case(old, SANTA_MARIA)))


def test_every_stretch_is_in_the_words_and_the_text_fits_a_terminal() -> None:
    chart = strip(case(DELANO, BAKERSFIELD, SANTA_MARIA))
    said = alt_of(chart)
    for words in ("Santa Maria", "Bakersfield", "Delano", "May 2015", "Jul 1, 2022 to Sun, Jul 31, 2022"):
        assert words in said
    assert "right for a child who lives in both" in said
    assert max(map(len, text_of(chart).splitlines())) <= 78


def test_a_home_that_must_stay_private_shows_its_state_alone() -> None:
    afraid = case(
        BAKERSFIELD,
        SANTA_MARIA,
        **{"safety.dangers": ("violence",), "dates.separation_told_on": D("2026-09-10")},
    )
    said = alt_of(strip(afraid))
    assert "Santa Maria" not in said
    assert "Bakersfield" not in said
    assert "CA: from Mon, Jun 1, 2026 until now." in said


def test_children_of_whom_no_home_was_told_have_no_strip() -> None:
    assert strips(case(), ON) == ()
    assert strips(Case(), ON) == ()


def test_each_child_has_its_own() -> None:
    two = case(SANTA_MARIA)
    for key, value in {
        "child.2.name": "Mateo",
        "child.2.born_on": D("2019-11-02"),
        "child.2.parentage": "born_to_both",
        "child.2.homes": (BAKERSFIELD,),
    }.items():
        two = two.with_fact(key, value)
    assert [name for name, _chart in strips(two, ON)] == ["Lucia", "Mateo"]


def test_children_with_the_same_homes_share_one_strip_that_says_with_whom() -> None:
    home = SANTA_MARIA.model_copy(update={"with_whom": "both of us"})
    two = case(home)
    for key, value in {
        "child.2.name": "Mateo",
        "child.2.born_on": D("2015-06-02"),
        "child.2.parentage": "born_to_both",
        "child.2.homes": (home,),
    }.items():
        two = two.with_fact(key, value)
    ((name, chart),) = strips(two, ON)
    assert name == "Mateo and Lucia"
    assert "with the two of you" in chart.rows[0].notes


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("me", "con usted"),
        ("both of us and Ruth Bell", "con ustedes dos y Ruth Bell"),
        ("Ruth Bell", "con Ruth Bell"),
    ],
)
def test_whoever_typed_is_spoken_to_in_the_language_of_the_sheet(typed: str, said: str) -> None:
    with speaking("es"):
        home = SANTA_MARIA.model_copy(update={"with_whom": typed})
        assert said in strip(case(home)).rows[0].notes
