"""A household's packet, drawn and read back."""

from functools import cache

from tests.households.golden import Household, followed, households, packet
from tests.packet.reading_pdf import Leaf, leaves

FOLLOWED = followed()
ALL = tuple(one for one in households() if one.name not in {later.name for later in FOLLOWED})
"""Those whose whole packet is drawn. What the others show lies after the filing: `FOLLOWED` draws that."""


def household(name: str) -> Household:
    """The household of that name on its first filing day."""
    return next(one for one in ALL if one.name == name)


@cache
def pdf(one: Household) -> bytes:
    """Its packet as PDF."""
    return packet(one).pdf()


@cache
def measured(one: Household) -> tuple[Leaf, ...]:
    """The pages with the type they are set in."""
    return tuple(leaves(pdf(one)))


def pages(one: Household) -> tuple[str, ...]:
    """The words of each page, with single spaces."""
    return tuple(leaf.words for leaf in measured(one))


def footed(one: Household, foot: str) -> tuple[str, ...]:
    """The pages whose footer holds these words."""
    return tuple(words for words in pages(one) if foot in words[-len(foot) - 40 :])
