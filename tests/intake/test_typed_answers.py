"""What is typed at a question, whatever it is: a fact, or a kind refusal; never a crash, never a secret."""

import time
from typing import Any

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.intake.commands import Command, command_of
from firstpaper.intake.engine import put
from firstpaper.intake.kinds import AnswerKind
from firstpaper.intake.loading import bank
from firstpaper.intake.reading import LONGEST_ANSWER, read_answer
from firstpaper.intake.refusals import AnswerRefused
from tests.intake.small_bank import TODAY, question

OF_EACH_KIND = {
    AnswerKind.YES_NO: "matter.amended",
    AnswerKind.DATE: "dates.married_on",
    AnswerKind.CHOICE: "matter.kind",
    AnswerKind.SEVERAL: "safety.dangers",
    AnswerKind.TEXT: "petitioner.name",
    AnswerKind.PARAGRAPH: "support.other",
    AnswerKind.LINES: "property.community_items",
    AnswerKind.PERIODS: "residence.petitioner.absences",
    AnswerKind.HOMES: "child.1.homes",
    AnswerKind.PEOPLE: "uccjea.people",
    AnswerKind.ADDRESS: "petitioner.mailing",
    AnswerKind.NUMBER: "children.how_many",
    AnswerKind.MONEY: "waiver.income",
    AnswerKind.PERCENT: "income.time_with_petitioner",
    AnswerKind.QUANTITY: "asset.1.shares",
    AnswerKind.CONTRIBUTIONS: "asset.1.contributions",
    AnswerKind.ATTEMPTS: "record.service.attempts",
    AnswerKind.CLOSURES: "record.court_closed",
}


def answer(key: str, typed: str) -> Any:
    return read_answer(question(key), typed, TODAY)


def test_each_kind_is_tried_here() -> None:
    assert set(OF_EACH_KIND) == set(AnswerKind)
    assert all(question(key).kind is kind for kind, key in OF_EACH_KIND.items())


# --- hostile input ------------------------------------------------------------------------------

DATES_AND_WORDS = st.lists(
    st.sampled_from(
        [
            "3/14/2026",
            "March",
            "14",
            ",",
            "2026",
            "to",
            "since",
            "?",
            "about",
            "CA",
            "93701",
            "Fresno",
            "\n",
            "1",
            "no",
        ]
    )
).map(" ".join)
ANY_TEXT = st.one_of(st.text(max_size=300), DATES_AND_WORDS)


@pytest.mark.parametrize("key", OF_EACH_KIND.values(), ids=OF_EACH_KIND)
@given(typed=ANY_TEXT)
@example(typed="\ud800")
@example(typed="\x00\x1b[2J\x9b31m")
@example(typed="9" * 5000)
@example(typed="{petitioner}{0.__class__}%s")
@example(typed="," * 5000)
@example(typed=" to " * 4000)
@example(typed="March " * 2000)
@example(typed="= ")
def test_whatever_is_typed_gives_a_fact_that_fits_or_a_refusal(key: str, typed: str) -> None:
    try:
        value = answer(key, typed)
    except AnswerRefused as refused:
        key, value = "support.other", refused.message
    assert value is not None
    assert Case().with_fact(key, value).fact(key) == value


@pytest.mark.parametrize("key", OF_EACH_KIND.values(), ids=OF_EACH_KIND)
@pytest.mark.parametrize(
    "typed", [" to " * 5000, "," * 20_000, "3/1/2026 to " * 1600, "about " * 3000, "\n" * 20_000]
)
def test_no_answer_takes_long_to_read(key: str, typed: str) -> None:
    began = time.process_time()
    with pytest.raises(AnswerRefused):
        answer(key, typed + "?")
    assert time.process_time() - began < 2


@pytest.mark.parametrize("key", OF_EACH_KIND.values(), ids=OF_EACH_KIND)
def test_an_answer_beyond_any_measure_is_refused_and_never_cut(key: str) -> None:
    with pytest.raises(AnswerRefused, match="too long"):
        answer(key, "a" + " " * LONGEST_ANSWER + "b")


# --- text ---------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("key", "typed", "kept"),
    [
        ("petitioner.name", "  María   José\tO’Neill-Núñez ", "María José O'Neill-Núñez"),
        ("petitioner.name", "Jose\u0301", "José"),
        ("petitioner.name", "\x1b[31mAna\x1b[0m\u202e", "Ana"),
        ("petitioner.name", "<b>Ana</b> {respondent} 💍", "<b>Ana</b> {respondent} 💍"),
        ("petitioner.name", "= Back", "Back"),
        ("petitioner.name", "=don't know them", "don't know them"),
        ("petitioner.name", "= = Ana", "= Ana"),
        ("support.other", "one\ntwo", "one\ntwo"),
        ("support.other", "= none", "none"),
        ("property.community_items", "2018 car\n\n  House \nDebt", ("2018 car", "House", "Debt")),
        ("petitioner.other_names", "Ana Ruiz", ("Ana Ruiz",)),
        ("court.county", "los angeles county", "Los Angeles"),
        ("matter.case_number", "26FL001234567", "26FL001234567"),
        ("petitioner.phone", "(559) 555-0142", "(559) 555-0142"),
    ],
)
def test_text_is_kept_as_typed_but_tidy(key: str, typed: str, kept: Any) -> None:
    assert answer(key, typed) == kept


SECRETS = ("123-45-6789", "123 45 6789", "my number is 123.45.6789", "4111 1111 1111 1111", "000123456789")


@pytest.mark.parametrize("secret", SECRETS)
@pytest.mark.parametrize(
    "key", ["petitioner.name", "support.other", "property.community_items", "petitioner.other_names"]
)
def test_a_secret_number_is_refused_and_not_repeated(key: str, secret: str) -> None:
    with pytest.raises(AnswerRefused, match="last 4 digits") as refused:
        answer(key, f"Checking\n{secret}")
    assert not any(digits in str(refused.value) for digits in ("123", "6789", "4111"))
    assert "public" in refused.value.message


def test_the_last_four_digits_are_taken() -> None:
    assert answer("property.community_items", "Checking account ending 4471") == (
        "Checking account ending 4471",
    )


@pytest.mark.parametrize(
    ("key", "typed", "says"),
    [
        ("petitioner.name", "x" * 301, "more than 300 letters"),
        ("support.other", "x" * 5001, "more than 5000 letters"),
        ("property.community_items", "x" * 501, "more than 500 letters"),
        ("property.community_items", "x\n" * 201, "more than 200 lines"),
        ("petitioner.name", "", "Nothing was typed"),
        ("petitioner.name", "\u200b \t", "Nothing was typed"),
        ("petitioner.name", "=", "Nothing was typed"),
        ("petitioner.email", "", "type: none"),
        ("court.county", "Freson", "Did you mean Fresno"),
        ("court.county", "Oakland", "the county, not the city"),
    ],
)
def test_text_that_does_not_fit_is_refused(key: str, typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        answer(key, typed)


# --- nothing, and not knowing -------------------------------------------------------------------


@pytest.mark.parametrize("typed", ["none", "None.", "0", "no", "nothing", "n/a", "NONE", "ninguno"])
def test_nothing_is_an_answer_where_there_are_words_for_it(typed: str) -> None:
    assert answer("children.family", typed) == ()
    assert answer("property.community_items", typed) == ()
    assert answer("support.other", typed) == ""
    assert answer("residence.petitioner.absences", typed) == ()


def test_nothing_can_be_said_in_the_words_shown() -> None:
    assert answer("children.family", question("children.family").none or "") == ()


@pytest.mark.parametrize("key", ["matter.unions", "grounds.nullity"])
def test_nothing_is_no_answer_where_there_are_no_words_for_it(key: str) -> None:
    with pytest.raises(AnswerRefused, match="answer"):
        answer(key, "none")


def test_a_person_may_be_called_none() -> None:
    assert answer("petitioner.name", "None") == "None"


@pytest.mark.parametrize("stop", bank().topics, ids=lambda topic: topic.name)
@pytest.mark.parametrize("typed", ["don't know", "I don’t know.", "dont know", "IDK", "not sure"])
def test_not_knowing_is_an_answer_everywhere(stop: Any, typed: str) -> None:
    for asked in stop.questions:
        assert answer(asked.key.replace("*", "1"), typed) is DONT_KNOW


@pytest.mark.parametrize("typed", ["?", " ?? "])
def test_a_question_mark_alone_is_never_an_answer(typed: str) -> None:
    for key in ("petitioner.name", "court.branch", "dates.married_on", "safety.understood"):
        with pytest.raises(AnswerRefused, match="type: don't know"):
            answer(key, typed)


# --- commands -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed", "command"),
    [
        ("back", Command.BACK),
        (" BACK. ", Command.BACK),
        ("why?", Command.WHY),
        ("skip", Command.SKIP),
        ("review", Command.REVIEW),
        ("leave", Command.LEAVE),
        ("quit", Command.LEAVE),
        ("help!", Command.HELP),
        ("change", Command.CHANGE),
        ("?", Command.HELP),
        ("??", Command.HELP),
        ("I do not know", Command.DONT_KNOW),
        ("i don\u2019t know", Command.DONT_KNOW),
    ],
)
def test_a_line_that_is_one_of_the_words_is_a_command(typed: str, command: Command) -> None:
    assert command_of(typed) is command


@pytest.mark.parametrize(
    "typed", ["= back", "=skip", "Back Street 1", "Dr. Back", "back\nbone", "", "1", "no"]
)
def test_anything_else_is_an_answer(typed: str) -> None:
    assert command_of(typed) is None


@given(st.text(max_size=60))
def test_any_line_is_a_command_or_not(typed: str) -> None:
    assert command_of(typed) in (None, *Command)
    assert command_of("=" + typed) is None


# --- put ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("petitioner.name", 5),
        ("petitioner.name", ""),
        ("petitioner.nmae", "Ana"),
        ("petitioner", {"name": "Ana"}),
        ("child.0.name", "Ana"),
        ("child.01.name", "Ana"),
        ("child.31.name", "Ana"),
        ("child.*.name", "Ana"),
        ("child.1", "Ana"),
        ("", "Ana"),
        ("petitioner.__class__", "Ana"),
        ("matter.kind", "annulment"),
        ("dates.married_on", "2026-02-30"),
        ("children.how_many", 0),
        ("children.how_many", 31),
        ("safety.dangers", ["afraid", "nobody"]),
    ],
)
def test_a_value_that_does_not_fit_is_not_put(key: str, value: Any) -> None:
    with pytest.raises(AnswerRefused) as refused:
        put(Case(), key, value)
    assert "Ana" not in refused.value.message


def test_an_answer_is_put_taken_back_and_known_not_to_be_known() -> None:
    case = put(Case(), "dates.married_on", Day(2012, 6, 14))
    assert case.dates.married_on == Day(2012, 6, 14)
    assert put(case, "dates.married_on", DONT_KNOW).dates.married_on is DONT_KNOW
    assert put(case, "dates.married_on", None).dates.married_on is None
