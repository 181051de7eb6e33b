"""Passphrases: the same one however it is typed, and an honest word on how strong it is."""

import re
import unicodedata
from collections.abc import Collection
from enum import StrEnum

LONGEST = 1000

_A_WORD = 11.0
"""Bits that one everyday word is worth: people draw from about two thousand."""

_A_SHORT_WORD = 6.0
"""Of the words of three letters and less, people use about sixty."""

_SHORT = 3
_A_LETTER = 4.7
_A_DIGIT = 2.0
"""People choose years and dates."""

_A_SIGN = 5.0
_LETTERS_A_WORD = 6

_KEYBOARD_RUNS = ("abcdefghijklmnopqrstuvwxyz", "qwertyuiop", "asdfghjkl", "zxcvbnm", "01234567890")
# fmt: off
_TRIED_FIRST = frozenset((
    "password", "passphrase", "secret", "letmein", "welcome", "iloveyou", "love", "admin", "login",
    "master", "dragon", "monkey", "football", "baseball", "sunshine", "princess", "shadow",
    "superman", "batman", "mustang", "hello", "freedom", "whatever", "divorce", "court", "petition",
    "firstpaper", "wedding", "birthday", "january", "february", "march", "april", "june", "july", "august",
    "september", "october", "november", "december",
))
# fmt: on
_PART = re.compile(r"[^\W\d_]+|\d+|.", re.DOTALL)


class Strength(StrEnum):
    """How long a passphrase holds, where each guess costs a computer about a tenth of a second."""

    WEAK = "weak"
    """A person who knows you, or one computer in a few days."""
    FAIR = "fair"
    """No person by hand, but many fast computers in weeks."""
    STRONG = "strong"
    """Years, even for many fast computers."""


def prepared(passphrase: str) -> str:
    """The passphrase in the one form that counts (RFC 8265, OpaqueString): accents joined, plain spaces."""
    spaced = "".join(" " if unicodedata.category(c) == "Zs" else c for c in passphrase)
    return unicodedata.normalize("NFC", spaced)


def strength(passphrase: str, known: Collection[str] = ()) -> Strength:
    """How strong a passphrase is. `known` are words that the other side would try first, such as names.

    Counts low on purpose: a run of letters is taken for everyday words, and a word that is known, a year
    that is known, a repeat or a row of keys adds next to nothing.
    """
    bits = _bits(prepared(passphrase).casefold(), {word.casefold() for word in known})
    if bits < 3 * _A_WORD:
        return Strength.WEAK
    return Strength.FAIR if bits < 4 * _A_WORD else Strength.STRONG


def _bits(text: str, known: Collection[str]) -> float:
    total = 0.0
    seen: set[str] = set()
    for part in _PART.findall(text):
        total += 0.0 if part in seen else 1.0 if _easy(part, known) else _worth(part)
        seen.add(part)
    return total


def _easy(part: str, known: Collection[str]) -> bool:
    if part in known or part in _TRIED_FIRST or len(set(part)) <= len(part) // 3:
        return True
    return len(part) > 2 and any(part in run or part[::-1] in run for run in _KEYBOARD_RUNS)


def _worth(part: str) -> float:
    if part.isdecimal():
        return _A_DIGIT * len(part)
    if not part[0].isalpha():
        return 0.0 if part.isspace() else _A_SIGN
    if 1 < len(part) <= _SHORT:
        return _A_SHORT_WORD
    words = -(-len(part) // _LETTERS_A_WORD)
    return min(_A_LETTER * len(part), _A_WORD * words)
