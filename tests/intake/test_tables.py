"""Things and debts as a table: what is written reads back as the same facts; no cell runs as a formula."""

import csv
from io import StringIO
from typing import Any

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from pydantic import ValidationError

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.schedule import MOST_LISTED, Contribution
from firstpaper.intake.as_typed import as_typed
from firstpaper.intake.engine import asking
from firstpaper.intake.entering import Problem
from firstpaper.intake.kinds import AnswerKind, Row, place_of
from firstpaper.intake.listing import listed, not_standing, with_told, without_row
from firstpaper.intake.loading import listing
from firstpaper.intake.question import Question
from firstpaper.intake.reading import read_answer
from firstpaper.intake.row_names import ids
from firstpaper.intake.tables import BEGINS, columns, facts_from_table, table_of
from tests.intake.small_bank import TODAY

QUESTIONS = [one for topic in listing().topics for one in topic.questions if one.each]
RUNS = tuple("=+-@\t\r＝＋－＠")


def read(text: str, onto: Case | None = None) -> Case:
    case, problems = facts_from_table(text, TODAY, onto)
    assert problems == ()
    return case


def refused(text: str, onto: Case | None = None) -> list[Problem]:
    case, problems = facts_from_table(text, TODAY, onto)
    assert case == (onto or Case.nothing())
    assert problems
    return list(problems)


def cells_of(text: str) -> list[list[str]]:
    return list(csv.reader(StringIO(text.removeprefix(BEGINS), newline="")))


THINGS = """asset,kind,words,value,acquired_on,contributions
1,checking,"Credit Union, Fresno","1,200",3/2015,
2,real_estate,House,420000,about 2013,"me, $20,000, down payment, papers
respondent, 500, loan"
"""


def test_a_table_is_read_as_typed() -> None:
    case = read(THINGS)
    assert [one.words for one in case.asset] == ["Credit Union, Fresno", "House"]
    assert case.asset[0].value == 1200
    assert case.asset[1].acquired_on == Day(2013, unsure=True)
    assert [one.amount for one in case.asset[1].contributions or ()] == [20_000, 500]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "text",
    [
        BEGINS + THINGS,
        THINGS.replace("\n", "\r\n"),
        THINGS.replace("asset,kind", "Asset , KIND").replace("value,", "value ,"),
        THINGS + ",,,,,\n\n",
        THINGS.replace(",contributions\n", ",contributions,,\n"),
    ],
)
def test_marks_line_ends_capitals_and_empty_rows_do_not_matter(text: str) -> None:
    assert read(text) == read(THINGS)


def test_a_number_means_that_row_and_no_number_a_new_one() -> None:
    before = read(THINGS)
    case = read("asset,words,value\n,Piano,900\n1,,1300\n,Sofa,\n", before)
    assert [one.words for one in case.asset] == ["Credit Union, Fresno", "House", "Piano", "Sofa"]
    assert case.asset[0].value == 1300


@pytest.mark.parametrize(
    ("text", "row", "column", "says"),
    [
        ("", 1, "", "must be asset or debt"),
        ("kind,words\nchecking,Bank\n", 1, "", "must be asset or debt"),
        ("asset,acquired_on\n1,Apr-12\n", 2, "acquired_on", "can be read in two ways"),
        ("asset,acquired_on\n1,12-Apr\n", 2, "acquired_on", "can be read in two ways"),
        ("asset,kind\n1,chec\n", 2, "kind", "Write one of these: real_estate,"),
        ("asset,knd\n1,checking\n", 1, "knd", "Did you mean kind?"),
        ("debt,value\n1,5\n", 1, "value", "no fact with this name"),
        ("asset,kind,kind\n1,cash,cash\n", 1, "kind", "comes twice"),
        ("asset,kind\n1,chequing\n", 2, "kind", "not one of the answers"),
        ("asset,value\n1,5\n\n2,much\n", 4, "value", "amount in dollars"),
        ("asset,words\n1,Card 4111 1111 1111 1111\n", 2, "words", "only the last 4 digits"),
        ("debt,last_four\n1,123-45-6789\n", 2, "last_four", "only the last 4 digits"),
        ("asset,words\n1," + "x" * 501 + "\n", 2, "words", "fewer words"),
        ("asset,words\n1," + "x" * 30_000 + "\n", 2, "words", "too long"),
        ("asset,words\n1," + "x" * 200_000 + "\n", 2, "", "cannot be read from here"),
        ("asset,words\n1,Piano,extra\n", 2, "", "more cells"),
        ("asset,words\n1,Piano\n1,Sofa\n", 3, "asset", "comes twice"),
        ("asset,words\nx,Piano\n", 2, "asset", "number of the row"),
        ("asset,words\n0,Piano\n", 2, "asset", "number of the row"),
        ("asset,words\n100,Piano\n", 2, "asset", "number of the row"),
        ("asset,words\n1,Piano\n3,Sofa\n", None, "asset", "There is no number 2"),
        ("asset,words\n1,\n", 2, "", "only a number"),
        ("asset,words\n2,Our car\n1,\n", 3, "", "only a number"),
        ("asset,words,shares\n1,,5\n2,Our car,\n", 2, "", "can stand alone"),
        ('asset,words\n1,"Piano\n', 2, "", "cannot be read from here"),
        ('asset,words\n1,"Piano" old\n', 2, "", "cannot be read from here"),
        ("asset,words\n" + ",Spoon\n" * (MOST_LISTED + 1), 101, "asset", "number of the row"),
        ("asset,words\n" + "\n" * 2000, 1001, "", "too many rows"),
        ("asset," + "x" * 1_100_000, None, "", "too large"),
        ("asset,acquired_on\n1,Jun-19\n", 2, "acquired_on", ""),
        ("asset,acquired_on\n1,2026-12-01\n", 2, "acquired_on", "still to come"),
        ("asset,acquired_on\n1,03/04/2016\n", 2, "acquired_on", "can be read two ways"),
        ("asset,acquired_on\n1,03/04/2016\n2,23/04/2016\n3,04/23/2016\n", 2, "acquired_on", "two ways"),
    ],
)
def test_what_cannot_be_used_is_named_by_row_and_column(
    text: str, row: int | None, column: str, says: str
) -> None:
    found = [one for one in refused(text) if (one.line, one.key) == (row, column)]
    assert any(says in one.message for one in found), refused(text)


@pytest.mark.parametrize(("other", "day"), [("04/23/2016", Day(2016, 3, 4)), ("23/04/2016", Day(2016, 4, 3))])
def test_another_cell_shows_how_a_spreadsheet_turned_the_days(other: str, day: Day) -> None:
    assert read(f"asset,acquired_on\n1,03/04/2016\n2,{other}\n").asset[0].acquired_on == day


def test_every_problem_is_told_and_nothing_is_half_taken() -> None:
    before = read(THINGS)
    found = refused("asset,kind,value\n1,cash,much\n2,boat,5\n9,cash,1\n", before)
    assert [(one.line, one.key) for one in found] == [(None, "asset"), (2, "value"), (3, "kind")]


@pytest.mark.parametrize("part", [";", "\t"])
def test_a_table_of_another_country_parts_its_cells_otherwise(part: str) -> None:
    assert read(f"asset{part}kind{part}words\n1{part}cash{part}Box, small\n").asset[0].words == "Box, small"


def test_the_same_table_twice_adds_nothing_even_without_numbers() -> None:
    text = "asset,kind,words,last_four\n,cash,Box,\n,cash,Box,\n,checking,Bank,1111\n,checking,Bank,2222\n"
    once = read(text)
    assert len(once.asset) == 4
    assert read(text, once) == once
    assert len(read("asset,kind,words,last_four\n,checking,Bank,3333\n", once).asset) == 5


def test_a_row_is_found_again_by_its_mark_where_another_was_taken_out() -> None:
    before = read(THINGS)
    written = table_of(before, "asset").replace(",420000,", ",430000,")
    left = without_row(before, Row("asset", 1))
    rows = [line for line in written.split("\r\n") if "House" in line or line.startswith(f"{BEGINS}asset")]
    after = read("\r\n".join(rows), left)
    assert [(one.words, one.value) for one in after.asset] == [("House", 430000)]
    assert read("\r\n".join(rows), after) == after
    assert [(one.line, one.key) for one in refused(written, left)] == [(2, "id")]


def test_a_renamed_row_keeps_its_place_and_a_second_time_changes_nothing() -> None:
    before = read(THINGS)
    text = table_of(before, "asset").replace("House", "House in Fresno")
    after = read(text, before)
    assert [one.words for one in after.asset] == ["Credit Union, Fresno", "House in Fresno"]
    assert read(text, after) == after


def test_a_month_alone_is_written_so_that_no_spreadsheet_makes_a_day_of_it() -> None:
    cells = cells_of(table_of(read("asset,kind,acquired_on\n1,cash,4/2012\n"), "asset"))
    assert "in April 2012" in cells[1]


def test_a_long_number_is_not_said_back() -> None:
    assert "4111" not in " ".join(one.message for one in refused("asset,words\n1,4111111111111111\n"))


def test_an_empty_list_gives_a_table_to_fill_in() -> None:
    (heading,) = cells_of(table_of(Case(), "debt"))
    assert heading == ["debt", *columns("debt"), "id"]
    assert heading[1] == "kind"
    assert len(columns("asset")) == len(set(columns("asset")))


# --- there and back ------------------------------------------------------------------------------------

PARTED = ("a;=1", "a; =1", "a;'=1", ";-", ";;@x;+", "=1;=2", "a;b")
ODD = st.sampled_from(
    ["none", "don't know", "= 5", "=1+1", "'=1", "''", "'Tis", "+", "-3", "@x", "no", "0", "＝1", *PARTED]
)
WORDS = st.one_of(ODD, st.text(min_size=1, max_size=40))
BY_KIND: dict[AnswerKind, st.SearchStrategy[Any]] = {
    AnswerKind.YES_NO: st.booleans(),
    AnswerKind.DATE: st.one_of(
        st.dates().filter(lambda day: 1900 < day.year < 2026).map(Day.of),
        st.builds(Day, st.integers(1900, 2025), st.integers(1, 12), st.none(), st.booleans()),
        st.builds(Day, st.integers(1900, 2025), unsure=st.booleans()),
    ),
    AnswerKind.MONEY: st.decimals(0, 999_999_999, places=2),
    AnswerKind.QUANTITY: st.integers(0, 1200),
    AnswerKind.TEXT: WORDS,
    AnswerKind.PARAGRAPH: st.one_of(st.just(""), st.lists(WORDS, min_size=1, max_size=3).map("\n".join)),
    AnswerKind.LINES: st.lists(WORDS, max_size=3).map(tuple),
    AnswerKind.CONTRIBUTIONS: st.lists(
        st.builds(
            Contribution,
            by=st.sampled_from(["petitioner", "respondent", "both"]),
            amount=st.decimals(0, 999_999, places=2),
            toward=st.sampled_from(["down_payment", "principal", "improvement"]),
            traced=st.sampled_from([True, False, None, DONT_KNOW]),
        ),
        max_size=3,
    ).map(tuple),
}


@st.composite
def fact(draw: st.DrawFn) -> tuple[Question, Any]:
    """A question about a row, and a fact that its model takes."""
    question = draw(st.sampled_from(QUESTIONS))
    values = [st.sampled_from([one.value for one in question.choices])] if question.choices else []
    if question.key.endswith("last_four"):
        values = [st.from_regex(r"[0-9]{4}", fullmatch=True)]
    value = draw(st.one_of(st.just(DONT_KNOW), *(values or [BY_KIND[question.kind]])))
    place = place_of(question.key)
    try:
        value = getattr(place.model.model_validate({place.field: value}), place.field)
    except ValidationError:
        assume(False)
    assume(value != "" or question.none)
    assume(not isinstance(value, tuple) or "" not in value)
    return question, value


@given(fact())
def test_a_fact_is_written_as_it_would_be_typed(told: tuple[Question, Any]) -> None:
    question, value = told
    one = asking(question.key.replace("*", "1"), Case())
    assert one is not None
    assert read_answer(one, as_typed(one, value), TODAY) == value


@settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(st.tuples(st.integers(1, 3), fact()), max_size=12))
def test_what_is_written_reads_back_as_the_same_facts(told: list[tuple[int, tuple[Question, Any]]]) -> None:
    case = Case()
    for number, (question, value) in told:
        case = case.with_fact(question.key.replace("*", str(number)), value)
    for row in reversed(not_standing(case)):
        case = without_row(case, row)
    again = Case()
    for group in ("asset", "debt"):
        text = table_of(case, group)
        assert not [cell for row in cells_of(text) for cell in row if cell.startswith(RUNS)]
        again = read(text, again)
    assert listed(again) == listed(case)


@given(st.text(max_size=400))
def test_whatever_is_in_the_file_gives_facts_or_problems(text: str) -> None:
    for whole in (text, f"asset,words,value\n{text}", f'debt,owed\n1,"{text}"\n'):
        case, problems = facts_from_table(whole, TODAY)
        assert problems or case is not None
        assert not problems or case == Case.nothing()


@pytest.mark.parametrize("words", ["a;=cmd|x", "a; +1", "=1;=2", "a;b;@x"])
def test_no_cell_runs_in_a_spreadsheet_that_parts_cells_at_a_semicolon(words: str) -> None:
    case = with_told(Case(), "asset.1.words", words)
    cell = cells_of(table_of(case, "asset"))[1][2]
    assert not [part for part in cell.split(";") if part.lstrip(" ").startswith(("=", "+", "-", "@"))]
    assert read(table_of(case, "asset")).asset[0].words == words


@pytest.mark.parametrize("words", ["0937", "12-4", "3/4", "2E5", "1.5", "'007", "10 000", "8:30"])
def test_words_of_which_a_spreadsheet_makes_a_number_or_a_day_are_kept(words: str) -> None:
    case = with_told(Case(), "asset.1.words", words)
    assert cells_of(table_of(case, "asset"))[1][2] == f"'{words}"
    assert read(table_of(case, "asset")).asset[0].words == words


def test_a_mark_is_no_number_to_a_spreadsheet() -> None:
    case = read("asset,words\n" + "".join(f",Thing {number}\n" for number in range(60)))
    assert all(mark[0].isalpha() and mark[0] not in "eE" for mark in ids(case, "asset"))


def test_a_formula_is_kept_as_the_words_it_is() -> None:
    words = '=HYPERLINK("http://example.invalid","x")'
    case = with_told(Case(), "asset.1.words", words)
    assert cells_of(table_of(case, "asset"))[1][2] == f"'= {words}"
    assert read(table_of(case, "asset")).asset[0].words == words
