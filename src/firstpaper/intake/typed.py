"""What a keyboard, a telephone or a word processor does to text, undone before it is read."""

import unicodedata

from firstpaper.facts.text import clean

_PLAIN = str.maketrans(
    {
        **dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe58\ufe63\uff0d", "-"),
        **dict.fromkeys("\u2044\u2215\uff0f", "/"),
        **dict.fromkeys("\u2018\u2019\u02bc\u00b4`\uff07", "'"),
    }
)


def tidy(text: str) -> str:
    """Text without control and invisible characters, line breaks kept."""
    cleaned = clean(text)
    assert isinstance(cleaned, str)
    return cleaned


def fold(text: str) -> str:
    """One line in lower case, with plain digits, dashes, slashes, apostrophes and single spaces."""
    text = tidy(text).translate(_PLAIN)
    if not text.isascii():
        text = "".join(map(_digit, text))
    return " ".join(text.casefold().split())


def _digit(character: str) -> str:
    return str(unicodedata.decimal(character, character)) if character.isdecimal() else character
