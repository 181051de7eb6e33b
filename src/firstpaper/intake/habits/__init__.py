"""How people write in the language spoken: what the readers take beside the English words.

A file a language, by the name of its catalog; English has none, because its words are in the readers. A wrong
reading costs more than a second question, so that only what can mean one thing stands in a file.
"""

import re
import unicodedata
from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path
from typing import NamedTuple

from firstpaper.data_files import read_file
from firstpaper.locale import language

FOLDER = Path(__file__).parent
_OPENING = "¿¡"
_COMMA_CENTS = r"(\$? ?)(\d{1,3}(?:\.\d{3})+|\d+),(\d{2})"


class Habits(NamedTuple):
    """One language: whether it puts the day first, and may put a comma before cents; its words, and what to
    read instead of others.

    Every word is without accents.
    """

    day_first: bool
    comma_cents: bool
    words: Mapping[str, frozenset[str]]
    commands: Mapping[str, str]
    instead: Mapping[str, Mapping[str, str]]
    countries: Mapping[str, str]
    small_words: frozenset[str]


NONE = Habits(False, False, {}, {}, {}, {}, frozenset())
SMALL_SHARE = 0.2
"""Of the words of a text: as many small words of a language, and it is written in it. Prose has about twice
as many; our own count."""


def day_comes_first() -> bool:
    """Whether people who read this language put the day before the month."""
    return habits().day_first


def means(kind: str, folded: str) -> bool:
    """Whether the whole text is one of the words for `kind`, such as "yes"."""
    return bare(folded) in habits().words.get(kind, ())


def command_named(folded: str) -> str | None:
    """The English word of the command that this whole line is; None where it is none."""
    return habits().commands.get(bare(folded))


def plainly(kind: str, folded: str) -> str:
    """The text with what people write in answers of this kind put as the readers know it."""
    table = habits().instead.get(kind)
    if not table:
        return folded
    read = _pattern(tuple(table)).sub(lambda found: table[found[0]], bare(folded))
    return " ".join(read.split())


def thousands(folded: str) -> str:
    """An amount in which a word stands for three noughts, in digits: "2450" for "2 mil 450"."""
    words = habits().words.get("thousand")
    if not words:
        return folded
    found = re.fullmatch(rf"(\$?) ?(\d{{1,3}})? ?(?:{'|'.join(words)})(?: (\d{{1,3}}))?", folded)
    return f"{found[1]}{int(found[2] or 1) * 1000 + int(found[3] or 0)}" if found else folded


def with_a_point(folded: str) -> str:
    """An amount with a comma before its cents, as in "2.450,75", with a point there; others as they are."""
    found = re.fullmatch(_COMMA_CENTS, folded) if habits().comma_cents else None
    return f"{found[1]}{found[2].replace('.', '')}.{found[3]}" if found else folded


def country(typed: str) -> str:
    """The English name of a country, which the court reads; as it was typed where it is no other name."""
    return habits().countries.get(bare(typed.casefold().strip(" .")), typed)


def written_in_it(text: str) -> bool:
    """Whether a text is written in the language spoken, by its small words; never where that is English.

    A capital letter marks a name, such as Los Angeles, which says nothing.
    """
    words = re.findall(r"[^\W\d_]+", text)
    small = sum(bare(word) in habits().small_words for word in words)
    return small > 0 and small >= SMALL_SHARE * len(words)


def habits() -> Habits:
    """Those of the language spoken."""
    return _of(language())


def bare(text: str) -> str:
    """Text without accents, opening marks, and marks at its end."""
    apart = unicodedata.normalize("NFD", text.strip(_OPENING).rstrip(" .!?"))
    return "".join(letter for letter in apart if not unicodedata.combining(letter))


@cache
def _of(tongue: str) -> Habits:
    path = FOLDER / f"{tongue}.yaml"
    if not tongue.isalpha() or not path.is_file():
        return NONE
    told = read_file(path, as_written=True)
    return Habits(
        told.get("day_first") == "true",
        told.get("comma_cents") == "true",
        {name: _bare_words(told.get(name, ())) for name in ("yes", "no", "nothing", "thousand")},
        {word: name for name, words in told.get("commands", {}).items() for word in _bare_words(words)},
        {kind: _bare_keys(table) for kind, table in told.get("instead", {}).items()},
        {bare(name.casefold()): english for name, english in told.get("countries", {}).items()},
        _bare_words(told.get("small_words", ())),
    )


def _bare_words(words: Iterable[str]) -> frozenset[str]:
    return frozenset(bare(word.casefold()) for word in words)


def _bare_keys(table: Mapping[str, str]) -> dict[str, str]:
    return {bare(word.casefold()): bare(other) for word, other in table.items()}


@cache
def _pattern(words: tuple[str, ...]) -> re.Pattern[str]:
    longest_first = "|".join(re.escape(word) for word in sorted(words, key=len, reverse=True))
    return re.compile(rf"(?<!\w)(?:{longest_first})(?!\w)")
