"""Where a rule or a number comes from, and how sure we are of it."""

from collections.abc import Iterable
from enum import StrEnum


class Certainty(StrEnum):
    """How sure a statement of law is, from surest to least sure."""

    STATUTE = "statute"
    COURT = "court"
    SECONDARY = "secondary"
    UNCONFIRMED = "unconfirmed"

    @property
    def confirmed(self) -> bool:
        """Whether the words were read in a statute, a court rule or an opinion."""
        return self in (Certainty.STATUTE, Certainty.COURT)


def weakest(certainties: Iterable[Certainty]) -> Certainty:
    """The least sure of several."""
    return max(certainties, key=_FROM_SUREST.__getitem__)


_FROM_SUREST = {each: place for place, each in enumerate(Certainty)}
