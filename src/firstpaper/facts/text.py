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

_TERMINAL_ESCAPE = re.compile(r"\x1b(?:\][^\x07\x1b]*(?:\x07|\x1b\\)?|[\[(][0-?]*[ -/]*[@-~]?|[@-Z\\^_])?")
_SOCIAL_SECURITY = re.compile(r"(?<!\d)\d{3}[-\s.]\d{2}[-\s.]\d{4}(?!\d)")
_LONG_NUMBER = re.compile(r"(?<!\d)(?:\d{7,}|\d{3,4}(?:[ -]\d{4}){2,})(?!\d)")
_JOINERS = "\u200c\u200d"


def clean(value: object) -> object:
    """Text without terminal escapes, control, invisible or direction-changing characters."""
    if not isinstance(value, str):
        return value
    text = _TERMINAL_ESCAPE.sub("", value.replace("\r\n", "\n").replace("\r", "\n"))
    kept = (c for c in text if c in "\n\t" or c in _JOINERS or unicodedata.category(c) not in _NEVER)
    return unicodedata.normalize("NFC", "".join(kept)).replace("\t", " ").strip()


_NEVER = frozenset({"Cc", "Cf", "Cs", "Co", "Cn"})


def _one_line(text: str) -> str:
    return " ".join(text.split())


def _no_secret_number(text: str) -> str:
    if _SOCIAL_SECURITY.search(text):
        raise ValueError("social_security_number")
    if _LONG_NUMBER.search(text):
        raise ValueError("long_number")
    return text


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
_NO_SECRET = AfterValidator(_no_secret_number)
_NOT_EMPTY = AfterValidator(_not_empty)

Name = Annotated[str, _CLEAN, _LINE, _no_longer_than(LONGEST_NAME), _NO_SECRET, _NOT_EMPTY]
"""The name of a person or a place, on one line."""

Line = Annotated[str, _CLEAN, _LINE, _no_longer_than(LONGEST_LINE), _NO_SECRET]
"""One line of free text; empty means that the person answered "nothing"."""

Paragraph = Annotated[str, _CLEAN, _no_longer_than(LONGEST_PARAGRAPH), _NO_SECRET]
"""Free text over several lines; empty means that the person answered "nothing"."""

AddressLine = Annotated[str, _CLEAN, _LINE, _no_longer_than(200)]
"""One line of an address: long box and ZIP numbers are expected."""

Number = Annotated[str, _CLEAN, _LINE, _no_longer_than(100)]
"""A telephone number, a case number or an e-mail address: text in which digits are expected."""
