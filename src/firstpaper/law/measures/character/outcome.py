"""What a thing or a debt may be in law, and how firmly that can be said. Never a ruling."""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Generic, NamedTuple, TypeVar

from firstpaper.facts.choices import Who

Look = TypeVar("Look")


class Code(StrEnum):
    """To whom a thing belongs, or a debt falls. `NOT_DIVIDED` is what no court divides, such as a degree."""

    COMMUNITY = "community"
    QUASI_COMMUNITY = "quasi_community"
    PETITIONER_SEPARATE = "petitioner_separate"
    RESPONDENT_SEPARATE = "respondent_separate"
    MIXED = "mixed"
    NOT_DIVIDED = "not_divided"
    UNKNOWN = "unknown"

    @property
    def shared(self) -> bool:
        """Whether it is of the community estate, which is divided equally (Fam. Code 63, 2550)."""
        return self in (Code.COMMUNITY, Code.QUASI_COMMUNITY)

    @property
    def separate(self) -> bool:
        """Whether it belongs to one of the two alone."""
        return self in (Code.PETITIONER_SEPARATE, Code.RESPONDENT_SEPARATE)


def separate_of(who: Who) -> Code:
    """Separate property of that spouse; of both together there is none that one code could name."""
    if who is Who.BOTH:
        return Code.UNKNOWN
    return Code.PETITIONER_SEPARATE if who is Who.PETITIONER else Code.RESPONDENT_SEPARATE


class Confidence(StrEnum):
    """How firmly it can be said, firmest first."""

    RULE = "rule"
    PRESUMPTION = "presumption"
    ESTIMATE = "estimate"
    OPEN = "open"

    @property
    def firmness(self) -> int:
        """0 where nothing can be said; more where more can."""
        return len(Confidence) - 1 - list(Confidence).index(self)


class Verdict(NamedTuple):
    """What one row of a table says: the code, why, and what a court may still decide."""

    code: Code
    confidence: Confidence
    says: str
    court: str
    cite: tuple[str, ...] = ()


class Reason(NamedTuple):
    """Why: in plain words, with the authority and the name of the row that said it."""

    says: str
    cite: tuple[str, ...]
    row: str


class Point(StrEnum):
    """What else is to be known about a thing, whatever its code."""

    PLAN_MUST_BE_JOINED = "plan_must_be_joined"
    SEPARATE_MONEY_BACK = "separate_money_back"
    MONEY_IN_THE_OTHERS_PROPERTY = "money_in_the_others_property"
    INJURY_MONEY = "injury_money"
    INJURY_MONEY_MIXED = "injury_money_mixed"
    INJURY_COSTS = "injury_costs"
    TRAINING_BENEFIT = "training_benefit"
    PET = "pet"
    POWER_OF_THE_COURT = "power_of_the_court"
    CLAIMED_BY_OTHERS = "claimed_by_others"
    TITLE_WAS_CHANGED = "title_was_changed"
    LENDER_MAY_STILL_COLLECT = "lender_may_still_collect"
    TAX_BOARD = "tax_board"


class Flag(NamedTuple):
    """A point to be known, in plain words, with its authority."""

    point: Point
    says: str
    cite: tuple[str, ...]


class Alternative(NamedTuple):
    """What the code could be, if the fact that is missing were this."""

    fact: str
    value: str
    codes: tuple[Code, ...]


class Character(NamedTuple):
    """What a listed thing or debt is taken to be.

    `key` is its place in the case, as "asset.2". `missing` are the keys of the facts on which the answer
    still hangs, in the order in which to ask; `alternatives` what the first of them would change.
    `starts_as` is what the law presumes until somebody shows otherwise, where the code is not known.
    """

    key: str
    code: Code
    confidence: Confidence
    reasons: tuple[Reason, ...]
    court: str
    flags: tuple[Flag, ...] = ()
    missing: tuple[str, ...] = ()
    alternatives: tuple[Alternative, ...] = ()
    starts_as: Code | None = None

    @property
    def holds_community(self) -> bool:
        """Whether the community owns some of it for sure."""
        return self.code.shared or self.code is Code.MIXED

    @property
    def holds_separate(self) -> bool:
        """Whether one of the two alone owns some of it for sure."""
        return self.code.separate or self.code is Code.MIXED

    def has(self, point: Point) -> bool:
        """Whether this point was raised."""
        return any(flag.point is point for flag in self.flags)


@dataclass(frozen=True, slots=True)
class Row(Generic[Look]):
    """One row of a table: a named test with its authority. It says nothing where it does not apply."""

    check: Callable[[Look], Verdict | None]
    cite: tuple[str, ...]

    @property
    def name(self) -> str:
        """The name of the test."""
        return self.check.__name__


class Table(Generic[Look]):
    """Rows in order. The first that applies decides."""

    def __init__(self) -> None:
        self.rows: list[Row[Look]] = []

    def row(
        self, *cite: str
    ) -> Callable[[Callable[[Look], Verdict | None]], Callable[[Look], Verdict | None]]:
        """Put a test at the end of the table, with its authority."""

        def declare(check: Callable[[Look], Verdict | None]) -> Callable[[Look], Verdict | None]:
            self.rows.append(Row(check, cite))
            return check

        return declare

    def first(self, look: Look, after: str = "") -> tuple[Verdict, Row[Look]]:
        """What the first row that applies says; of the rows after the one named, where one is named."""
        for row in self._after(after) if after else self.rows:
            verdict = row.check(look)
            if verdict is not None:
                return verdict, row
        raise LookupError("the last row of a table applies to everything")

    def _after(self, name: str) -> list[Row[Look]]:
        return self.rows[[row.name for row in self.rows].index(name) + 1 :]
