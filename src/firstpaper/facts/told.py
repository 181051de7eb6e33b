"""What it means to have been told something.

A fact is in one of three states, and they are never confused:

- ``None``: nobody has asked yet, or the question was skipped.
- ``DONT_KNOW``: the person was asked and said that they do not know.
- a value: the person told us.
"""

from enum import Enum
from typing import Annotated, Final, TypeAlias, TypeVar

from pydantic import Field

T = TypeVar("T")


class DontKnow(Enum):
    """The recorded answer of a person who was asked and does not know."""

    DONT_KNOW = "don't know"


DONT_KNOW: Final = DontKnow.DONT_KNOW

Told: TypeAlias = DontKnow | T | None
"""A fact that may be known, unknown to the person, or not asked yet."""

ToldInWords = Annotated[DontKnow | T | None, Field(union_mode="left_to_right")]
"""The same for text, of which the words for "don't know" could be some."""


def known(fact: DontKnow | T | None) -> T | None:
    """The value, or None where it was not asked or the person does not know."""
    return None if fact is DONT_KNOW else fact
