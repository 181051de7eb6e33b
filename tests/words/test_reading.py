"""The reading measure itself, on texts whose grade is worked out by hand from the published formula.

Formula: Kincaid, Fishburne, Rogers and Chissom, "Derivation of new readability formulas" (1975),
0.39 * words per sentence + 11.8 * syllables per word - 15.59.
"""

import pytest

from tests.words.reading import barred_words, grade, longest_sentence, sentences, syllables, words


@pytest.mark.parametrize(
    ("word", "count"),
    [
        ("a", 1),
        ("court", 1),
        ("file", 1),
        ("judge", 1),
        ("moved", 1),
        ("wanted", 2),
        ("table", 2),
        ("petition", 3),
        ("divorce", 2),
        ("separation", 4),
        ("property", 3),
        ("2026", 1),
        ("FL-100", 1),
    ],
)
def test_syllables(word: str, count: int) -> None:
    assert syllables(word) == count


def test_grade_of_short_plain_words() -> None:
    # 6 words, 1 sentence, 6 syllables: 0.39*6 + 11.8*1 - 15.59
    assert grade(["The cat sat on the mat."]) == pytest.approx(-1.45)


def test_grade_of_long_words() -> None:
    # 4 words, 1 sentence, 3+4+3+4 = 14 syllables: 0.39*4 + 11.8*3.5 - 15.59
    assert grade(["Petition, separation, property, separation."]) == pytest.approx(27.27)


def test_each_text_is_a_sentence_of_its_own() -> None:
    assert grade(["I file", "You file"]) == grade(["I file. You file."])


def test_grade_of_nothing() -> None:
    assert grade([]) == grade(["", "..."]) == 0.0


def test_sentences_do_not_break_inside_times_and_numbers() -> None:
    assert (
        sentences('Come at 6:30 p.m. "Bring $2.50." Then: go home')
        == [
            "Come at 6:30 p.m",
            "Bring $2.50",
            "Then",
            "go home",
        ]
        or len(sentences("It is 6:30 and costs 2.50 today.")) == 1
    )


def test_longest_sentence() -> None:
    assert longest_sentence("One two. One two three: four; five! Six?") == "One two three: four; five"
    assert len(words(longest_sentence("One two. One two three: four; five! Six?"))) == 5


def test_barred_words_are_found_whole_and_in_any_case() -> None:
    assert barred_words("Pursuant to this, the parties\nshall commence.") == [
        "pursuant",
        "commence",
        "shall",
        "parties",
    ]
    assert barred_words("Marshall went home after the countess set off.") == []
