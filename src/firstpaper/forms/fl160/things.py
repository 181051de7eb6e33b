"""What stands on which line: the things and debts that were listed, by the lines of the sheet.

What is written is in English, the language of the court.
"""

from collections.abc import Iterator
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, CommunityHow, CommunityKind, DebtKind, SeparateHow
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.facts.shared_things import kinds_to_share
from firstpaper.forms.edition import edition_for
from firstpaper.forms.fl160 import COMMUNITY, FORM, SEPARATE
from firstpaper.forms.listed_things import things_of_item_9, things_of_item_10

ASSETS: dict[AssetKind, int] = {
    AssetKind.REAL_ESTATE: 1,
    AssetKind.HOUSEHOLD: 2,
    AssetKind.VALUABLES: 3,
    AssetKind.VEHICLE: 4,
    AssetKind.SAVINGS: 5,
    AssetKind.CHECKING: 6,
    AssetKind.OTHER_DEPOSIT: 7,
    AssetKind.CASH: 8,
    AssetKind.TAX_REFUND: 9,
    AssetKind.LIFE_INSURANCE: 10,
    AssetKind.INVESTMENTS: 11,
    AssetKind.PENSION: 12,
    AssetKind.RETIREMENT_ACCOUNT: 13,
    AssetKind.MONEY_OWED_TO_US: 14,
    AssetKind.BUSINESS: 15,
    AssetKind.DIGITAL: 16,
    AssetKind.PET: 16,
    AssetKind.OTHER: 16,
}
DEBTS: dict[DebtKind, int] = {
    DebtKind.STUDENT_LOAN: 19,
    DebtKind.TAX: 20,
    DebtKind.SUPPORT_OWED: 21,
    DebtKind.UNSECURED_LOAN: 22,
    DebtKind.CREDIT_CARD: 23,
    DebtKind.OTHER: 24,
}
ASSET_LINES, DEBT_LINES = range(1, 17), range(19, 25)
TOLD_OF: dict[CommunityKind, tuple[int, ...]] = {
    CommunityKind.HOME: (1,),
    CommunityKind.HOUSEHOLD: (2,),
    CommunityKind.VEHICLES: (4,),
    CommunityKind.ACCOUNTS: (5, 6, 7),
    CommunityKind.TAX_REFUNDS: (9,),
    CommunityKind.RETIREMENT: (12, 13),
    CommunityKind.BUSINESS: (15,),
    CommunityKind.DIGITAL: (16,),
    CommunityKind.PETS: (16,),
    CommunityKind.DEBTS: tuple(DEBT_LINES),
}
THINGS = {SEPARATE: things_of_item_9, COMMUNITY: things_of_item_10}


class Entry(NamedTuple):
    """One thing: what it is, and for separate property to whom to confirm it."""

    what: str
    confirm_to: str = ""

    @property
    def words(self) -> str:
        """Both in one, as item 9 of the petition has it."""
        return f"{self.what}: {self.confirm_to}" if self.confirm_to else self.what


class Untold(StrEnum):
    """What is known of a line on which nothing listed stands.

    `ANY`: there may be some, for nothing was listed one by one. `SOME`, `DEBTS`: there is some, and it was
    not said what. `NOTHING`: no such thing was told.
    """

    ANY = "any"
    SOME = "some"
    DEBTS = "debts"
    NOTHING = "nothing"


def is_used(case: Case, use: str) -> bool:
    """Whether the petition sends its list of that class of property to this form."""
    if use == SEPARATE:
        return known(case.property.separate_how) is SeparateHow.FL_160
    return known(case.property.community_how) is CommunityHow.FL_160


def listed(case: Case, use: str, on: date) -> dict[int, tuple[Entry, ...]]:
    """What stands on each line that has anything, for one use of the sheet."""
    found: dict[int, list[Entry]] = {}
    for line, entry in _each(case, use, on):
        found.setdefault(line, []).append(entry)
    return {line: tuple(entries) for line, entries in found.items()}


def runs_over(case: Case, use: str, on: date) -> bool:
    """Whether some list is longer than its line on the sheet."""
    edition = edition_for(FORM, on)
    return any(
        not edition.item(f"line.{line}").holds("\n".join(one.words for one in entries))
        for line, entries in listed(case, use, on).items()
    )


def left_to_name(case: Case, use: str) -> dict[int, Untold]:
    """What is still to be named, by line. Where things were listed one by one, that list is whole."""
    if use == SEPARATE:
        listed_any = case.asset or case.debt
        return {} if listed_any else dict.fromkeys((*ASSET_LINES, *DEBT_LINES), Untold.ANY)
    things: tuple[Asset | Debt, ...] = (*case.asset, *case.debt)
    taken = {line_of(thing) for thing in things}
    kinds = kinds_to_share(case)
    if known(case.summary.debts):
        kinds.add(CommunityKind.DEBTS)
    return {
        line: Untold.DEBTS if kind is CommunityKind.DEBTS else Untold.SOME
        for kind in kinds
        if not taken & {*TOLD_OF[kind]}
        for line in TOLD_OF[kind]
    }


def line_of(thing: Asset | Debt) -> int:
    """Where a thing or a debt stands; one of no kind stands with the others of its list."""
    if isinstance(thing, Asset):
        return ASSETS[known(thing.kind) or AssetKind.OTHER]
    return DEBTS[known(thing.kind) or DebtKind.OTHER]


def _each(case: Case, use: str, on: date) -> Iterator[tuple[int, Entry]]:
    for one in THINGS[use](case, on):
        entry = Entry(one.filed, one.owner) if use == SEPARATE else Entry(one.filed)
        yield line_of(one.thing), entry
