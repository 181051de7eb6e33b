"""Text at the door: what is cleaned away, and what is refused."""

import unicodedata
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from firstpaper.facts.people import Address
from firstpaper.facts.text import (
    LONGEST_LINE,
    LONGEST_NAME,
    LONGEST_PARAGRAPH,
    AddressLine,
    CaseLine,
    Line,
    Name,
    Number,
    Paragraph,
    clean,
)

name, line, paragraph, case_line, address_line, number = (
    TypeAdapter(kind) for kind in (Name, Line, Paragraph, CaseLine, AddressLine, Number)
)


def refusal(kind: TypeAdapter[Any], text: object) -> str:
    """The code with which the text is refused."""
    with pytest.raises(ValidationError) as refused:
        kind.validate_python(text)
    return str(refused.value.errors()[0]["ctx"]["error"])


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        ("  Maria   Elena\tSoto ", "Maria Elena Soto"),
        ("\x1b[31mMaria\x1b[0m", "Maria"),
        ("\x1b]0;a new title\x07Maria", "Maria"),
        ("\x1b]8;;http://example.org\x1b\\Maria\x1b]8;;\x1b\\", "Maria"),
        ("Ma\x00ri\x08a\x7f", "Maria"),
        ("Maria\u202e\u2066\u200b\ufeff", "Maria"),
        ("Jose\u0301", "José"),
        ("Maria\r\nElena\nSoto", "Maria Elena Soto"),
        ("\u0646\u0627\u0645\u200c\u0647\u0627", "\u0646\u0627\u0645\u200c\u0647\u0627"),
        ("Nguyễn Thị Hạnh", "Nguyễn Thị Hạnh"),
        ("O'Neill-Smith, Jr.", "O'Neill-Smith, Jr."),
        ("<b>Maria</b> & {{ 1 }}", "<b>Maria</b> & {{ 1 }}"),
        ("Maria \U0001f600", "Maria \U0001f600"),
    ],
)
def test_cleaning(typed: str, kept: str) -> None:
    """A Persian word keeps its joiner (U+200C); markup and emoji are data, and stay."""
    assert name.validate_python(typed) == kept


@pytest.mark.parametrize("mark", ["\u2018", "\u2019", "\u02bc", "\u00b4", "`", "'"])
def test_a_name_has_one_kind_of_apostrophe(mark: str) -> None:
    assert name.validate_python(f"Sean O{mark}Neil") == "Sean O'Neil"


def test_a_paragraph_has_one_kind_of_space_and_of_line_end() -> None:
    assert paragraph.validate_python("a\xa0b\u3000c\u2028d\u2029e") == "a b c\nd\ne"


@pytest.mark.parametrize("nothing", ["", " ", "\u200b"])
def test_an_address_has_a_street_and_a_city(nothing: str) -> None:
    with pytest.raises(ValidationError):
        Address(street=nothing, city="Fresno")
    with pytest.raises(ValidationError):
        Address(street="1 A St", city=nothing)


def test_a_paragraph_keeps_its_lines() -> None:
    assert paragraph.validate_python("One\r\ntwo\rthree\n\nfour\x1b[2J") == "One\ntwo\nthree\n\nfour"


@pytest.mark.parametrize("nothing", ["", "   ", "\u200b", "\x1b[0m", "\n\t"])
def test_nothing_is_an_answer_except_for_a_name(nothing: str) -> None:
    assert line.validate_python(nothing) == paragraph.validate_python(nothing) == ""
    assert refusal(name, nothing) == "empty"


@pytest.mark.parametrize(
    ("kind", "limit"), [(name, LONGEST_NAME), (line, LONGEST_LINE), (paragraph, LONGEST_PARAGRAPH)]
)
def test_the_longest_text_is_taken_and_one_letter_more_is_not(kind: TypeAdapter[str], limit: int) -> None:
    assert kind.validate_python("é" * limit) == "é" * limit
    assert refusal(kind, "x" * (limit + 1)) == f"too_long:{limit}"


SOCIAL_SECURITY_NUMBERS = [
    "123-45-6789",
    "My number is 123-45-6789.",
    "123 45 6789",
    "123.45.6789",
    "123/45/6789",
    "123_45_6789",
    "123 - 45 - 6789",
    "123\u201345\u20136789",
    "123\u00a045\u00a06789",
    "123\u200d-45\u200b-6789",
    "１２３-45-6789",
]


@pytest.mark.parametrize("text", SOCIAL_SECURITY_NUMBERS)
@pytest.mark.parametrize("kind", [name, line, paragraph, case_line])
def test_a_social_security_number_is_refused(kind: TypeAdapter[str], text: str) -> None:
    """Cal. Rules of Court, rule 1.201(a)(1)."""
    assert refusal(kind, text) == "social_security_number"


LONG_NUMBERS = [
    "123456789",
    "account 1234567",
    "4111 1111 1111 1111",
    "4111-1111-1111-1111",
    "4111.1111.1111.1111",
    "4111\u20131111\u20131111\u20131111",
    "3782 822463 10005",
    "12345\u200d6789",
]


@pytest.mark.parametrize("text", LONG_NUMBERS)
@pytest.mark.parametrize("kind", [name, line, paragraph])
def test_a_whole_account_number_is_refused(kind: TypeAdapter[str], text: str) -> None:
    """Cal. Rules of Court, rule 1.201(a)(2): the last four digits only."""
    assert refusal(kind, text) == "long_number"


@pytest.mark.parametrize(
    "text",
    [
        "Example Bank, ending 4821",
        "Visa card 0937, loan 2210",
        "559-555-0142",
        "(559) 555-0142",
        "6/14/2012 to 2026-01-05",
        "2019, 2020, 2021",
        "1420 Olive Street, Fresno, CA 93728-1234",
        "2019 car, plate 7ABC123",
        "Worth $1,250,000",
    ],
)
def test_other_numbers_are_taken(text: str) -> None:
    assert line.validate_python(text) == paragraph.validate_python(text) == text


@pytest.mark.parametrize("text", ["37-2020-00012345-CU", "Case 200000001234567, open", "RFL2100123"])
def test_a_court_case_has_its_long_number(text: str) -> None:
    assert case_line.validate_python(text) == text


@pytest.mark.parametrize("text", ["12345678 Long Road, Apt 1234567", "PO Box 1234567"])
def test_an_address_has_its_long_number(text: str) -> None:
    assert address_line.validate_python(text) == text


@pytest.mark.parametrize("text", ["+1 559 555 0142", "15595550142", "26FL001234", "maria1234567@example.org"])
def test_a_telephone_number_an_email_address_or_a_case_number_has_digits(text: str) -> None:
    assert number.validate_python(text) == text


@pytest.mark.parametrize("value", [5, None, ["Maria"], b"\xff", True])
def test_only_text_is_text(value: object) -> None:
    with pytest.raises(ValidationError):
        name.validate_python(value)


@given(st.text())
def test_cleaning_twice_changes_nothing_more(text: str) -> None:
    once = clean(text)
    assert clean(once) == once


@given(st.text())
def test_nothing_that_moves_a_cursor_or_hides_is_left(text: str) -> None:
    kept = clean(text)
    assert isinstance(kept, str)
    left = {unicodedata.category(letter) for letter in kept if letter not in "\n\u200c\u200d"}
    assert left.isdisjoint({"Cc", "Cf", "Cs", "Co", "Cn"})
    assert unicodedata.is_normalized("NFC", kept)


@given(st.from_regex(r"[0-9]{3}-[0-9]{2}-[0-9]{4}", fullmatch=True), st.text(st.characters(categories=["L"])))
def test_no_word_around_it_hides_a_social_security_number(digits: str, word: str) -> None:
    assert refusal(line, f"{word} {digits} {word}"[:LONGEST_LINE]) == "social_security_number"
