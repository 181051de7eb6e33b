"""What stands on which line: the things and debts that were listed, by the lines of the sheet.

What is written is in English, the language of the court.
"""

from collections.abc import Iterator
from datetime import date
from enum import StrEnum

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, CommunityKind, DebtKind, Proposal
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.forms.edition import edition_for
from firstpaper.forms.fl160 import COMMUNITY, FORM, SEPARATE
from firstpaper.law.measures.character import Character, Code, asset_characters, debt_characters

LINES: dict[StrEnum, int] = {
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
    DebtKind.STUDENT_LOAN: 19,
    DebtKind.TAX: 20,
    DebtKind.SUPPORT_OWED: 21,
    DebtKind.UNSECURED_LOAN: 22,
    DebtKind.CREDIT_CARD: 23,
    DebtKind.OTHER: 24,
}
OTHER_ASSETS, OTHER_DEBTS = 16, 24
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
OWNERS = {Code.PETITIONER_SEPARATE: "Petitioner", Code.RESPONDENT_SEPARATE: "Respondent"}
PROPOSED = {Proposal.PETITIONER: "Petitioner", Proposal.RESPONDENT: "Respondent"}


def listed(case: Case, use: str, on: date) -> dict[int, tuple[str, ...]]:
    """The words of each line that has any, for one use of the sheet."""
    found: dict[int, list[str]] = {}
    for line, words in _each(case, use, on):
        found.setdefault(line, []).append(words)
    return {line: tuple(words) for line, words in found.items()}


def runs_over(case: Case, use: str, on: date) -> bool:
    """Whether some list is longer than its line on the sheet."""
    edition = edition_for(FORM, on)
    return any(
        not edition.item(f"line.{line}").holds("\n".join(words))
        for line, words in listed(case, use, on).items()
    )


def told_of(case: Case) -> frozenset[int]:
    """The lines of which the filer said that there is something, without saying what."""
    kinds = known(case.property.community_kinds) or ()
    return frozenset(line for kind in kinds for line in TOLD_OF[kind])


def _each(case: Case, use: str, on: date) -> Iterator[tuple[int, str]]:
    things: tuple[Asset | Debt, ...] = (*case.asset, *case.debt)
    characters = (*asset_characters(case, on), *debt_characters(case, on))
    for thing, character in zip(things, characters, strict=True):
        words = _words(thing)
        if words and _belongs(character, use):
            kind = known(thing.kind)
            other = OTHER_ASSETS if isinstance(thing, Asset) else OTHER_DEBTS
            line = LINES[kind] if kind else other
            yield line, f"{words}{_owner(thing, character)}" if use == SEPARATE else words


def _belongs(character: Character, use: str) -> bool:
    """Part community, part separate: on both. What nobody can tell yet goes on the one for community."""
    if use == COMMUNITY:
        return not character.code.separate and character.code is not Code.NOT_DIVIDED
    return character.code.separate or character.code is Code.MIXED


def _words(thing: Asset | Debt) -> str:
    words, ending = known(thing.words) or "", known(thing.last_four)
    return f"{words} ending {ending}".strip() if ending and words else words


def _owner(thing: Asset | Debt, character: Character) -> str:
    """Whom to confirm it to, in the last column."""
    proposal = known(thing.proposal)
    owner = OWNERS.get(character.code) or (PROPOSED.get(proposal) if proposal else None)
    column = "F" if isinstance(thing, Asset) else "D"
    return f" (column {column}: {owner})" if owner else ""
