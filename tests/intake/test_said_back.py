"""What was understood, said back: dates, periods and addresses in words that read back the same."""

from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.matter import Period
from firstpaper.facts.people import Address
from firstpaper.intake.reading import read_answer
from firstpaper.intake.spoken import echo
from tests.intake.small_bank import TODAY, question

WHOLE = st.dates(date(1900, 1, 1), TODAY).map(Day.of)
PARTIAL = st.one_of(
    st.builds(Day, st.integers(1900, 2025), st.integers(1, 12)), st.builds(Day, st.integers(1900, 2025))
)
DAYS = st.builds(
    lambda day, unsure: Day(day.year, day.month, day.day, unsure), WHOLE | PARTIAL, st.booleans()
)
REASONS = st.sampled_from(
    ["", "work in Nevada", "to care for my mother", "a trip to May, then home", "2 jobs"]
)
PERIODS = st.builds(
    lambda one, two, why, open_end: Period(
        start=min(one, two, key=lambda day: day.earliest),
        end=None if open_end else max(one, two, key=lambda day: day.earliest),
        why=why,
    ),
    DAYS,
    DAYS,
    REASONS,
    st.booleans(),
)


def said_and_read(key: str, value: Any) -> Any:
    return read_answer(question(key), echo(key, value), TODAY)


@given(DAYS)
def test_a_date_said_back_reads_as_the_same_date(day: Day) -> None:
    assert said_and_read("dates.married_on", day) == day


@given(st.lists(PERIODS, min_size=1, max_size=3).map(tuple))
def test_periods_said_back_read_as_the_same_periods(periods: tuple[Period, ...]) -> None:
    assert said_and_read("residence.petitioner.absences", periods) == periods


@pytest.mark.parametrize(
    "address",
    [
        Address(street="1 A St, Apt 4", city="Fresno", state="CA", zip="93701-1234"),
        Address(street="1 A St", city="Fresno", state="NV"),
        Address(street="Calle 5", city="Guadalajara", state="México"),
        Address(street="Calle 5", city="Guadalajara", state="Mexico", zip="44100"),
    ],
)
def test_an_address_said_back_reads_as_the_same_address(address: Address) -> None:
    assert said_and_read("petitioner.mailing", address) == address


@pytest.mark.parametrize(
    "key", ["matter.kind", "custody.legal", "support.petitioner", "residence.petitioner.lives"]
)
def test_a_choice_said_back_reads_as_the_same_choice(key: str) -> None:
    for choice in question(key).choices:
        assert said_and_read(key, choice.value) is choice.value


@pytest.mark.parametrize(
    ("key", "value", "words"),
    [
        ("matter.amended", True, "Yes"),
        ("matter.amended", False, "No"),
        ("dates.married_on", Day(2012, 6, 14), "Thursday, June 14, 2012"),
        ("dates.married_on", Day(2012, 6), "June 2012"),
        ("dates.married_on", Day(2012, None, None, True), "about 2012"),
        ("dates.married_on", DONT_KNOW, "I don't know"),
        ("dates.married_on", None, "not answered yet"),
        ("petitioner.name", "Ana Ruiz", "Ana Ruiz"),
        ("children.how_many", 2, "2"),
        ("property.community_items", ("2018 car", "House"), "2018 car; House"),
        ("petitioner.mailing", Address(street="1 A St", city="Reno", state="NV"), "1 A St, Reno, NV no ZIP"),
    ],
)
def test_answers_in_plain_words(key: str, value: Any, words: str) -> None:
    assert echo(key, value) == words


def test_nothing_is_said_in_the_words_of_the_question() -> None:
    assert echo("children.family", ()) == question("children.family").none


def test_several_choices_are_said_in_their_words() -> None:
    stop = question("safety.dangers")
    first, second = stop.choices[:2]
    assert echo(stop, (first.value, second.value)) == f"{first.words.rstrip('.')}; {second.words.rstrip('.')}"


def test_names_told_stand_in_the_words() -> None:
    case = Case().with_fact("respondent.name", "Daniel {child} Reyes")
    stop = question("residence.respondent.lives", case)
    assert stop.ask == "Where does Daniel {child} Reyes live now?"
    assert "Daniel" not in repr(stop)


def test_a_key_nobody_knows_cannot_be_said() -> None:
    with pytest.raises(KeyError):
        echo("petitioner.nmae", "Ana")
