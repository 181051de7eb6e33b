"""People the children lived with, one a line: the name, what they are to the children, the address."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts.uccjea import Person
from firstpaper.intake import facts_from
from firstpaper.intake.reading import read_answer
from firstpaper.intake.reading.people import read_people
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.spoken import echo
from tests.intake.small_bank import TODAY, question

KEY = "uccjea.people"

READ = {
    "Rosa Vega": ("Rosa Vega", "", ""),
    "Rosa Vega, grandmother": ("Rosa Vega", "grandmother", ""),
    "Rosa Vega, , grandmother,": ("Rosa Vega", "grandmother", ""),
    "Rosa Vega, grandmother, 12 Elm St, Delano, CA 93215": (
        "Rosa Vega",
        "grandmother",
        "12 Elm St, Delano, CA 93215",
    ),
    "Rosa Vega, 12 Elm St, Delano, CA 93215": ("Rosa Vega", "", "12 Elm St, Delano, CA 93215"),
    "Rosa Vega, P.O. Box 7, Delano": ("Rosa Vega", "", "P.O. Box 7, Delano"),
    "Rosa Vega, po box 7": ("Rosa Vega", "", "po box 7"),
    "<b>Rosa</b>, aunt, Calle 5, Oaxaca, México": ("<b>Rosa</b>", "aunt", "Calle 5, Oaxaca, México"),
}
REFUSED = {
    ", grandmother": "nothing in that answer",
    "Rosa Vega, 123-45-6789": "Social Security",
    "Rosa Vega\nAna 4111 1111 1111 1111": "Line 2: There is a long number",
    "R" * 301: "more than 300 letters",
}
PEOPLE = st.builds(
    lambda name, relation, address: Person(name=name, relation=relation, address=address),
    st.sampled_from(["Rosa Vega", "Ana O'Brien-Smythe", "Łukasz"]),
    st.sampled_from(["", "grandmother", "foster parent"]),
    st.sampled_from(["", "12 Elm St, Delano, CA 93215", "PO Box 7, Reno, NV 89501"]),
)


@pytest.mark.parametrize(("typed", "parts"), READ.items(), ids=READ)
def test_a_person_is_read_from_a_line(typed: str, parts: tuple[str, str, str]) -> None:
    (found,) = read_people(typed)
    assert (found.name, found.relation, found.address) == parts


@pytest.mark.parametrize(("typed", "message"), REFUSED.items())
def test_a_line_that_does_not_fit_is_refused_in_plain_words(typed: str, message: str) -> None:
    with pytest.raises(AnswerRefused) as refused:
        read_people(typed)
    assert message in refused.value.message
    assert "6789" not in refused.value.message


@given(st.lists(PEOPLE, max_size=3).map(tuple))
def test_people_said_back_read_as_the_same_people(people: tuple[Person, ...]) -> None:
    assert read_answer(question(KEY), echo(KEY, people), TODAY) == people


def test_a_file_of_facts_may_give_people_by_line_or_by_name() -> None:
    rosa = Person(name="Rosa Vega", relation="aunt", address="12 Elm St, Delano, CA 93215")
    by_name = "uccjea.people: [{name: Rosa Vega, relation: aunt, address: '12 Elm St, Delano, CA 93215'}]"
    by_line = "uccjea.people: ['Rosa Vega, aunt, 12 Elm St, Delano, CA 93215']"
    for source in (by_name, by_line):
        case, problems = facts_from(source, TODAY)
        assert problems == ()
        assert case.uccjea.people == (rosa,)


def test_a_person_without_a_name_is_a_problem_of_that_line() -> None:
    _case, problems = facts_from("uccjea.people: [{relation: aunt}]", TODAY)
    assert [problem.key for problem in problems] == [KEY]
