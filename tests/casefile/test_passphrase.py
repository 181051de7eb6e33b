"""How strong a passphrase is said to be: never stronger than it is to somebody who knows the filer."""

import pytest

from firstpaper.casefile.passphrase import Strength, prepared, strength

KNOWN = ("Dana", "Okafor", "Fresno", "2009")


@pytest.mark.parametrize(
    "weak",
    [
        "",
        " " * 40,
        "a" * 40,
        "secret",
        "password123",
        "letmein letmein letmein letmein",
        "qwertyuiop asdfghjkl",
        "1234567890",
        "06/12/2009",
        "Dana Okafor Fresno 2009",
        "DANA okafor fresno!",
        "otter",
        "otter violin",
        "P@ss1",
        "the cat sat on the mat",
        "January 14 2015 wedding",
    ],
)
def test_what_the_other_side_or_a_short_search_would_find_is_weak(weak: str) -> None:
    assert strength(weak, KNOWN) is Strength.WEAK


def test_each_word_adds_and_a_word_said_twice_does_not() -> None:
    assert strength("otter marble violin") is Strength.FAIR
    assert strength("otter marble violin lantern") is Strength.STRONG
    assert strength("otter marble violin violin") is Strength.FAIR


def test_a_name_from_the_case_adds_next_to_nothing() -> None:
    assert strength("otter marble violin fresno", KNOWN) is Strength.FAIR
    assert strength("otter marble violin fresno") is Strength.STRONG


def test_words_of_any_alphabet_count() -> None:
    assert strength("выдра мрамор скрипка фонарь") is Strength.STRONG


def test_one_form_counts_however_it_was_typed() -> None:
    assert prepared("e\u0301\u3000x") == prepared("é x")
    assert prepared("  a ") == "  a "
