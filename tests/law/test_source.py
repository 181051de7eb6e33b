"""The files of authorities are read strictly, and their entries are fit to be shown."""

from datetime import date
from pathlib import Path

import pytest

from firstpaper.data_files import DataFileError
from firstpaper.law.authority import Certainty
from firstpaper.law.source import Source, all_codes, all_sources, load_code

LONGEST_QUOTE = 420
HEAD = "name: A code\ncite: A. Code\naddress: https://example.org/{section}\nsections:\n"
ENTRY = "  '70':\n    about: A thing\n    certainty: statute\n    checked_on: 2026-11-28\n"


def read(tmp_path: Path, text: str) -> tuple[Source, ...]:
    path = tmp_path / "a_code.yaml"
    path.write_text(text, "utf-8")
    code = load_code(path)
    return tuple(code.source(section) for section in code.entries)


def test_an_entry_is_read_with_its_words_by_paragraph(tmp_path: Path) -> None:
    words = "    words:\n      lead: Shall.\n      (a): May.\n      (a)(1):\n"

    (one,) = read(tmp_path, HEAD + ENTRY + words)

    assert (one.cite, one.certainty, one.checked_on) == ("A. Code 70", Certainty.STATUTE, date(2026, 11, 28))
    assert dict(one.words) == {"": "Shall.", "(a)": "May.", "(a)(1)": None}
    assert one.address == "https://example.org/70"
    assert one.has("(a)")
    assert one.has("(a)(1)")
    assert not one.has("(b)")
    assert not one.has("(a)(2)")


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        (HEAD + ENTRY + "    why: Because\n", "a_code.yaml > 70 > why: nothing is known by that name here"),
        (
            HEAD + ENTRY.replace("    certainty: statute\n", ""),
            "a_code.yaml > 70 > certainty: this is missing",
        ),
        (HEAD + ENTRY.replace("statute", "sure"), "a_code.yaml > 70 > certainty: this must be one of"),
        (HEAD + ENTRY.replace("2026-11-28", "soon"), "a_code.yaml > 70 > checked_on"),
        (HEAD + ENTRY + ENTRY, "a_code.yaml > 70: written twice"),
        (HEAD + ENTRY + "    about: Again\n", "written twice"),
        (HEAD + ENTRY + "    words: {(a): 3}\n", "a_code.yaml > 70 > words > (a)"),
        (HEAD + ENTRY + "    words: [a]\n", "a_code.yaml > 70 > words"),
        ("color: red\n" + HEAD + ENTRY, "a_code.yaml > color: nothing is known by that name here"),
    ],
)
def test_a_file_that_is_not_as_it_should_be_is_refused_with_the_place(
    tmp_path: Path, text: str, problem: str
) -> None:
    with pytest.raises(DataFileError) as refused:
        read(tmp_path, text)

    assert problem in str(refused.value)


def test_every_entry_of_every_file_can_be_read() -> None:
    assert all(one.about and one.checked_on >= date(2026, 11, 25) for one in all_sources())


def test_a_quote_is_short_and_is_words_of_the_law_and_not_of_ours() -> None:
    for one in all_sources():
        for paragraph, words in one.words.items():
            place = (one.cite, paragraph)
            assert words is None or 5 < len(words) <= LONGEST_QUOTE, place
            assert not set(words or "") & set("*`{}<>|"), place


def test_sections_stand_in_the_order_of_their_numbers() -> None:
    for code in all_codes():
        if code.cite:
            numbers = [_number(section) for section in code.entries]
            assert numbers == sorted(numbers), code.file


def _number(section: str) -> tuple[int, ...]:
    return tuple(int(part) for part in section.partition(" (")[0].rstrip("abc").split("."))


def test_the_law_of_2027_is_told_apart_from_the_law_of_2026() -> None:
    """The acts of 2025 that change sections on January 1, 2027 say so in the sections themselves."""
    begins = {one.cite for one in all_sources() if one.since == date(2027, 1, 1)}

    assert begins >= {
        "Fam. Code 2040 (Stats. 2025, ch. 48)",
        "Fam. Code 2211 (Stats. 2025, ch. 633)",
        "Code Civ. Proc. 415.20 (Stats. 2025, ch. 563)",
        "Code Civ. Proc. 417.10 (Stats. 2025, ch. 563)",
    }
