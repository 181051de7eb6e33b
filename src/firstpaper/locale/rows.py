"""Words joined into a row or a sentence, as the language spoken does it."""

import re
from collections.abc import Iterable, Sequence
from functools import reduce

from firstpaper.locale import _, _c


def in_a_row(parts: Sequence[str]) -> str:
    """The parts in a row, as in "a", "a and b" or "a, b and c"."""
    if len(parts) < 2:
        return "".join(parts)
    *others, last = parts
    words = _c("before the sound i", "{first} and {last}") if _I.match(last) else _("{first} and {last}")
    return words.format(first=_(", ").join(others), last=last)


_I = re.compile(r"(?:h?[ií](?![aeoáéó])|y(?![aeiouáéíóú]))", re.IGNORECASE)
"""What begins with the sound i, before which some languages have another word for "and"."""


def either(parts: Iterable[str]) -> str:
    """The parts as one or the other, as in "a or b". There must be at least one."""
    return reduce(lambda first, last: _("{first} or {last}").format(first=first, last=last), parts)


def as_sentence(words: str) -> str:
    """Words that can go on after a colon, as a sentence of their own."""
    return words[:1].upper() + words[1:]
