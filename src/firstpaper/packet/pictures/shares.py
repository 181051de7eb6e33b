"""A chart of shares: bars cut into parts by whose each part is, with what each bar says in words."""

from decimal import Decimal
from typing import NamedTuple

from firstpaper.packet.pictures.patterns import Pattern


class Part(NamedTuple):
    """A part of a bar, as long as its amount."""

    pattern: Pattern
    amount: Decimal


class Bar(NamedTuple):
    """One bar: the words above it, its parts from left to right, and all of it in a sentence or two."""

    title: str
    parts: tuple[Part, ...]
    says: str

    @property
    def whole(self) -> Decimal:
        """All parts together."""
        return sum((part.amount for part in self.parts), Decimal(0))


class Key(NamedTuple):
    """What a pattern stands for."""

    pattern: Pattern
    words: str


class Shares(NamedTuple):
    """Bars on one scale, and the key to their patterns. `says` is the sentence that comes before theirs."""

    says: str
    bars: tuple[Bar, ...]
    keys: tuple[Key, ...]

    @property
    def sentences(self) -> tuple[str, ...]:
        """The whole chart in sentences."""
        return (self.says, *(bar.says for bar in self.bars))
