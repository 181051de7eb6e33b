"""Homes of a child, one a line: the days, the city, the state or country, and with whom."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case, Day
from firstpaper.facts.children import Home
from firstpaper.intake import facts_from
from firstpaper.intake.reading import read_answer
from firstpaper.intake.reading.homes import read_homes
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.spoken import echo
from tests.intake.small_bank import TODAY, question
from tests.intake.test_said_back import DAYS


def home(start: str, end: str | None, place: str, state: str, with_whom: str = "") -> Home:
    return Home(
        start=Day.parse(start),
        end=Day.parse(end) if end else None,
        place=place,
        state=state,
        with_whom=with_whom,
    )


READ = {
    "8/2019 to 6/2024, Portland, OR, with both of us": home(
        "2019-08", "2024-06", "Portland", "OR", "both of us"
    ),
    "8/2019 to 6/2024 Portland, Oregon with my mother": home(
        "2019-08", "2024-06", "Portland", "OR", "my mother"
    ),
    "since 7/1/2024, Fresno, CA": home("2024-07-01", None, "Fresno", "CA"),
    "since 7/1/2024, Fresno CA, with Ana, Ben": home("2024-07-01", None, "Fresno", "CA", "Ana, Ben"),
    "2020 to now, Oaxaca, Mexico, my aunt": home("2020", None, "Oaxaca", "Mexico", "my aunt"),
    "2020 to 2021, Baja California, Mexico": home("2020", "2021", "Baja California", "Mexico"),
    "2020 to 2021, Tijuana, Baja California, Mexico": home(
        "2020", "2021", "Tijuana, Baja California", "Mexico"
    ),
    "2020 to 2021, New York, NY, with Dad": home("2020", "2021", "New York", "NY", "Dad"),
    "2020 to 2021, New York, New York": home("2020", "2021", "New York", "NY"),
    "2020 to 2021, Washington, DC": home("2020", "2021", "Washington", "DC"),
    "2020 to 2021, Washington DC": home("2020", "2021", "Washington", "DC"),
    "2020 to 2021, Atlanta, Georgia": home("2020", "2021", "Atlanta", "GA"),
    "2020 to 2021, Kansas City, MO": home("2020", "2021", "Kansas City", "MO"),
    "about 2020 to 2021, Reno, NV, con mi abuela": home("2020?", "2021", "Reno", "NV", "mi abuela"),
    "2020 to 2021, Reno, NV, 🏠 <b>Ana</b>": home("2020", "2021", "Reno", "NV", "🏠 <b>Ana</b>"),
}
REFUSED = {
    "2020 to 2021": "city and the state",
    "2020 to 2021, Paris": "city and the state",
    "2020 to 2021, CA": "city and the state",
    "2020 to 2021, Mexico": "city and the state",
    "2020 to 2021, with my mother": "city and the state",
    "Fresno, CA": "both days on one line",
    "12/1/2026 to 12/5/2026, Fresno, CA": "still to come",
    "2021 to 2020, Fresno, CA": "before the start",
    "2020 to 2021, account 1234567890, Reno, NV": "long number",
}


@pytest.mark.parametrize(("typed", "lived"), READ.items(), ids=READ)
def test_a_home_is_read(typed: str, lived: Home) -> None:
    assert read_homes(typed, TODAY, not_after_today=True) == (lived,)


@pytest.mark.parametrize(("typed", "why"), REFUSED.items(), ids=REFUSED)
def test_what_is_no_home_is_refused_with_what_to_type(typed: str, why: str) -> None:
    with pytest.raises(AnswerRefused) as refused:
        read_homes(typed, TODAY, not_after_today=True)
    assert why in refused.value.message


def test_several_homes_are_read_in_the_order_typed_and_a_bad_line_is_named() -> None:
    first, second = list(READ)[:2]
    assert read_homes(f"{first}\n{second}", TODAY) == (READ[first], READ[second])
    with pytest.raises(AnswerRefused) as refused:
        read_homes(f"{first}\nParis", TODAY)
    assert refused.value.message.startswith("Line 2:")


HOMES = st.builds(
    lambda one, two, place, state, who, open_end: Home(
        start=min(one, two, key=lambda day: day.earliest),
        end=None if open_end else max(one, two, key=lambda day: day.earliest),
        place=place,
        state=state,
        with_whom=who,
    ),
    DAYS,
    DAYS,
    st.sampled_from(["Fresno", "New York", "Baja California", "Oklahoma City"]),
    st.sampled_from(["CA", "NY", "Mexico", "Georgia"]).map(lambda name: "GA" if name == "Georgia" else name),
    st.sampled_from(["", "both of us", "Ana Vale, her sister", "my mother"]),
    st.booleans(),
)


@given(st.lists(HOMES, min_size=1, max_size=3).map(tuple))
def test_homes_said_back_read_as_the_same_homes(lived: tuple[Home, ...]) -> None:
    key = "child.1.homes"
    assert read_answer(question(key), echo(key, lived), TODAY) == lived


def entered(homes: str) -> tuple[Case, list[str]]:
    case, problems = facts_from(f"child:\n  - name: Ana Vale\n    homes: {homes}\n", TODAY)
    return case, [problem.message for problem in problems]


def test_homes_in_a_file_of_facts_by_name_or_as_typed() -> None:
    by_name, _none = entered(
        "[{start: 8/2019, end: 6/2024, place: Portland, state: OR, with_whom: both of us}]"
    )
    as_typed, _none = entered('["8/2019 to 6/2024, Portland, OR, with both of us"]')
    assert by_name == as_typed
    assert by_name.child[0].homes == (home("2019-08", "2024-06", "Portland", "OR", "both of us"),)


@pytest.mark.parametrize(
    ("homes", "why"),
    [
        ("[{start: 2019, state: OR}]", "no place"),
        ("[{start: 2019, place: Portland}]", "no state"),
        ("[{place: Portland, state: OR}]", "start of this period is missing"),
        ("[{start: 2019, place: Portland, state: OR, street: 1 A St}]", "Only these names"),
        ("[Portland]", "both days on one line"),
    ],
)
def test_a_home_in_a_file_of_facts_that_cannot_be_used_says_why(homes: str, why: str) -> None:
    case, problems = entered(homes)
    assert case == Case()
    assert len(problems) == 1
    assert why in problems[0]
