"""Text that a person typed: cleaned at the door, and refused where it holds what no file should.

Cleaning removes what nobody means to type (terminal escapes, control characters, invisible and
direction-changing characters) and joins accents to their letters. Refusing is for secrets: a whole
social security or account number has no place in papers for the public file (Cal. Rules of Court
1.201; Fam. Code 2024.5), so it does not enter the case file either.
"""

import re
import unicodedata
from typing import Annotated

from pydantic import AfterValidator, BeforeValidator

LONGEST_NAME = 300
LONGEST_LINE = 500
LONGEST_PARAGRAPH = 5000
_LONGEST_TYPED = 100_000
"""More than this is not even looked at."""

_TERMINAL_ESCAPE = r"\x1b(?:\][^\x07\x1b]*(?:\x07|\x1b\\)?|[\[(][0-?]*[ -/]*[@-~]?|[@-Z\\^_])?"
_BETWEEN = r"(?:[^\S\n]|[-./_\u2010-\u2015\u2212]){1,3}"
_SOCIAL_SECURITY = rf"(?<!\d)\d{{3}}{_BETWEEN}\d{{2}}{_BETWEEN}\d{{4}}(?!\d)"
_LONG_NUMBER = (
    rf"(?<!\d)(?:\d{{7,}}|\d{{3,4}}(?:{_BETWEEN}\d{{4}}){{2,}}"
    rf"|\d{{4}}{_BETWEEN}\d{{6}}{_BETWEEN}\d{{5}})(?!\d)"
)
_JOINERS = "\u200c\u200d"
_MASK = r"(?i)^(?:[xX*#\u2022.\u2026\s-]+|ending (?:in )?)+"
_FOUR_DIGITS = r"[0-9]{4}"


def clean(value: object) -> object:
    """Text without terminal escapes, control, invisible or direction-changing characters."""
    if not isinstance(value, str):
        return value
    if len(value) > _LONGEST_TYPED:
        raise ValueError(f"too_long:{LONGEST_PARAGRAPH}")
    text = value if value.isprintable() else _printable(value)
    return unicodedata.normalize("NFC", text).strip()


def _printable(text: str) -> str:
    text = re.sub(_TERMINAL_ESCAPE, "", text.replace("\r\n", "\n").replace("\r", "\n"))
    kept = (c for c in text if c in "\n\t" or c in _JOINERS or unicodedata.category(c) not in _NEVER)
    return "".join(_SPACES.get(unicodedata.category(c), c) for c in kept).replace("\t", " ")


_SPACES = {"Zs": " ", "Zl": "\n", "Zp": "\n"}
"""One space for all that look like one, and one end of a line."""
_NEVER = frozenset({"Cc", "Cf", "Cs", "Co", "Cn"})


def in_latin_letters(text: str) -> bool:
    """Whether all its letters are Latin ones, accents or not; also signs set among them, as in Kaʻiulani."""
    if text.isascii():
        return True
    names = (unicodedata.name(letter, "") for letter in text if letter.isalpha())
    return all(any(script in name for script in _LATIN) for name in names)


_LATIN = ("LATIN", "MODIFIER LETTER", "ORDINAL INDICATOR")


def in_one_case(text: str) -> bool:
    """Whether it is written in small letters only, or in capitals only, and is no abbreviation."""
    return len(text) > _LONGEST_ABBREVIATION and (text.islower() or text.isupper())


_LONGEST_ABBREVIATION = 3


def _one_line(text: str) -> str:
    return " ".join(text.split())


def _one_apostrophe(text: str) -> str:
    """The apostrophe of a keyboard for all that stand for it, so that a name is spelled in one way."""
    return text.translate(_APOSTROPHES)


_APOSTROPHES = dict.fromkeys(map(ord, "\u2018\u2019\u02bc\u00b4`"), "'")


def _no_social_security_number(text: str) -> str:
    if _has_a_digit(text) and re.search(_SOCIAL_SECURITY, _without_joiners(text)):
        raise ValueError("social_security_number")
    return text


def _no_long_number(text: str) -> str:
    if _has_a_digit(text) and re.search(_LONG_NUMBER, _without_joiners(text)):
        raise ValueError("long_number")
    return text


def _has_a_digit(text: str) -> bool:
    """Whether there is a digit of any script. Most names have none, and need no expression compiled."""
    return any(map(str.isdigit, text))


def _without_joiners(text: str) -> str:
    return text.translate(dict.fromkeys(map(ord, _JOINERS)))


def _last_four(text: str) -> str:
    digits = re.sub(_MASK, "", text)
    if sum(character.isdigit() for character in text) > 4:
        raise ValueError("long_number")
    if re.fullmatch(_FOUR_DIGITS, digits) is None:
        raise ValueError("not_last_four")
    return digits


def _no_longer_than(limit: int) -> AfterValidator:
    def check(text: str) -> str:
        if len(text) > limit:
            raise ValueError(f"too_long:{limit}")
        return text

    return AfterValidator(check)


def _not_empty(text: str) -> str:
    if not text:
        raise ValueError("empty")
    return text


_CLEAN = BeforeValidator(clean)
_LINE = AfterValidator(_one_line)
_NO_SOCIAL_SECURITY = AfterValidator(_no_social_security_number)
_NO_LONG_NUMBER = AfterValidator(_no_long_number)
_NOT_EMPTY = AfterValidator(_not_empty)

_ONE_APOSTROPHE = AfterValidator(_one_apostrophe)

Name = Annotated[
    str,
    _CLEAN,
    _LINE,
    _ONE_APOSTROPHE,
    _no_longer_than(LONGEST_NAME),
    _NO_SOCIAL_SECURITY,
    _NO_LONG_NUMBER,
    _NOT_EMPTY,
]
"""The name of a person or a place, on one line, with one kind of apostrophe."""

Line = Annotated[str, _CLEAN, _LINE, _no_longer_than(LONGEST_LINE), _NO_SOCIAL_SECURITY, _NO_LONG_NUMBER]
"""One line of free text; empty means that the person answered "nothing"."""

CaseLine = Annotated[str, _CLEAN, _LINE, _no_longer_than(LONGEST_LINE), _NO_SOCIAL_SECURITY]
"""One line about a court case, in which its long number is expected."""

Paragraph = Annotated[str, _CLEAN, _no_longer_than(LONGEST_PARAGRAPH), _NO_SOCIAL_SECURITY, _NO_LONG_NUMBER]
"""Free text over several lines; empty means that the person answered "nothing"."""

AddressLine = Annotated[str, _CLEAN, _LINE, _no_longer_than(200), _NO_SOCIAL_SECURITY]
"""One line of an address: long box and ZIP numbers are expected."""

AddressPart = Annotated[AddressLine, _NOT_EMPTY]
"""A line without which an address is none: the street or box, and the city."""

Number = Annotated[str, _CLEAN, _LINE, _no_longer_than(100), _NO_SOCIAL_SECURITY]
"""A telephone number, a case number or an e-mail address: text in which digits are expected."""

LastFour = Annotated[str, _CLEAN, _LINE, AfterValidator(_last_four)]
"""The last four digits of an account number, also from "XXXX1234". More is refused, never cut and kept."""
