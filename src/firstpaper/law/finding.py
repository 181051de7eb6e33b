"""What a rule says about a case."""

from collections.abc import Mapping
from datetime import date
from enum import StrEnum
from types import MappingProxyType
from typing import NamedTuple

from firstpaper.law.authority import Certainty

NOTHING: Mapping[str, object] = MappingProxyType({})
NO_DATES: Mapping[str, date] = MappingProxyType({})


class Outcome(StrEnum):
    """How the case stands against the rule."""

    MET = "met"
    CLOSE = "close"
    NOT_MET = "not_met"
    NEED_TO_KNOW = "need_to_know"
    FOR_A_LAWYER = "for_a_lawyer"
    NOT_CHECKED = "could_not_be_checked"


class Weight(StrEnum):
    """How much a finding matters, heaviest first."""

    STOP = "stop"
    GET_ADVICE = "get_advice"
    LOOK_AGAIN = "look_again"
    GOOD_TO_KNOW = "good_to_know"

    @property
    def order(self) -> int:
        """0 for the heaviest."""
        return _HEAVIEST_FIRST.index(self)


_HEAVIEST_FIRST = tuple(Weight)


class Found(NamedTuple):
    """What one rule found: said plainly, with what to do and the working shown.

    `facts` are the keys of the facts used, `dates` and `values` the computed results by name,
    `steps` the counting a person can follow. `cite` names what this finding rests on besides the
    sources of its rule; `certainty` is set only where it is less sure than all of them. `mended_by`
    are the keys of the answers to give again, in this order, where that can mend what stops a filing.
    """

    outcome: Outcome
    weight: Weight
    says: str
    do: str = ""
    facts: tuple[str, ...] = ()
    dates: Mapping[str, date] = NO_DATES
    values: Mapping[str, object] = NOTHING
    steps: tuple[str, ...] = ()
    cite: tuple[str, ...] = ()
    certainty: Certainty | None = None
    mended_by: tuple[str, ...] = ()


class Finding(NamedTuple):
    """A `Found`, stamped with the rule it came from.

    `authority` are the sources of the rule, then those of this finding alone, which `own` repeats.
    """

    id: str
    title: str
    outcome: Outcome
    weight: Weight
    says: str
    do: str
    facts: tuple[str, ...]
    dates: Mapping[str, date]
    values: Mapping[str, object]
    steps: tuple[str, ...]
    authority: tuple[str, ...]
    certainty: Certainty
    not_modelled: str
    part_of: str = ""
    own: tuple[str, ...] = ()
    mended_by: tuple[str, ...] = ()


def safety_first(one: Finding) -> bool:
    """Whether a finding is about somebody's safety and calls for something, so it stands before all."""
    return one.id.startswith("safety.") and one.weight is not Weight.GOOD_TO_KNOW


WAIT_UNTIL = "wait_until"
"""The name of the date of a finding that says to wait until a day, without stopping the filing flatly."""

FIRST_COURT_DAY = "first_court_day"
"""The name of the date of a finding from which on the filing can be made, if nothing else changes."""

FILE_BY = "file_by"
"""The name of the date of a finding that says that the last day to file is near."""

NEEDS_PERMISSION = "needs_permission"
"""The name of the value of a finding that says that a late filing goes on only if a judge allows it."""


def waits(one: Finding) -> bool:
    """Whether a finding says to wait until a day, without stopping the filing flatly."""
    return WAIT_UNTIL in one.dates


def presses(one: Finding) -> bool:
    """Whether a finding says that the last day to file is near, or that a judge must allow a late filing."""
    return FILE_BY in one.dates or NEEDS_PERMISSION in one.values
