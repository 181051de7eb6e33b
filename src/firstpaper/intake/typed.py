"""What a keyboard, a telephone or a word processor does to text, undone before it is read."""

import re
import unicodedata

from firstpaper.facts.text import clean

_DASHES = re.compile("[\u2010-\u2015\u2212\ufe58\ufe63\uff0d]")
_SLASHES = re.compile("[\u2044\u2215\uff0f]")
_APOSTROPHES = re.compile("[\u2018\u2019\u02bc\u00b4`\uff07]")


def tidy(text: str) -> str:
    """Text without control and invisible characters, line breaks kept."""
    cleaned = clean(text)
    assert isinstance(cleaned, str)
    return cleaned


def fold(text: str) -> str:
    """One line in lower case, with plain digits, dashes, slashes, apostrophes and single spaces."""
    text = "".join(_digit(character) for character in tidy(text))
    text = _APOSTROPHES.sub("'", _SLASHES.sub("/", _DASHES.sub("-", text)))
    return " ".join(text.casefold().split())


def _digit(character: str) -> str:
    return str(unicodedata.decimal(character, character)) if character.isdecimal() else character
