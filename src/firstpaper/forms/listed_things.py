"""What was listed thing by thing, as the papers name it: its words and last four digits, never an amount.

What is filed is in English, the language of the court. A thing that nobody can place for sure says so.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, DebtKind
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.law.measures.character import (
    Character,
    Code,
    Plea,
    asset_characters,
    debt_characters,
    is_training_loan,
    plea,
)
from firstpaper.law.property_words import thing_words
from firstpaper.locale import _, _n

MOST_NAMED = 3
"""How many things a reason names."""

OWNERS = {Code.PETITIONER_SEPARATE: "Petitioner", Code.RESPONDENT_SEPARATE: "Respondent"}
DOUBTS = {
    Code.MIXED: "community and separate parts to be determined",
    Code.UNKNOWN: "character to be determined",
}
KINDS: dict[StrEnum, str] = {
    AssetKind.REAL_ESTATE: "Real estate",
    AssetKind.HOUSEHOLD: "Household furniture and furnishings",
    AssetKind.VALUABLES: "Jewelry, art or antiques",
    AssetKind.VEHICLE: "Vehicle",
    AssetKind.SAVINGS: "Savings account",
    AssetKind.CHECKING: "Checking account",
    AssetKind.OTHER_DEPOSIT: "Deposit account",
    AssetKind.CASH: "Cash",
    AssetKind.TAX_REFUND: "Tax refund",
    AssetKind.LIFE_INSURANCE: "Life insurance",
    AssetKind.INVESTMENTS: "Stocks, bonds or funds",
    AssetKind.PENSION: "Pension",
    AssetKind.RETIREMENT_ACCOUNT: "Retirement account",
    AssetKind.MONEY_OWED_TO_US: "Money owed by others",
    AssetKind.BUSINESS: "Business interest",
    AssetKind.DIGITAL: "Digital assets",
    AssetKind.PET: "Pet",
    AssetKind.OTHER: "Other asset",
    DebtKind.STUDENT_LOAN: "Student loan",
    DebtKind.TAX: "Taxes owed",
    DebtKind.SUPPORT_OWED: "Support owed",
    DebtKind.UNSECURED_LOAN: "Unsecured loan",
    DebtKind.CREDIT_CARD: "Credit card",
    DebtKind.OTHER: "Other debt",
}
"""How a thing is named that the filer gave no words for."""


@dataclass(frozen=True, slots=True)
class Listed:
    """One thing or debt, with what it is taken to be."""

    thing: Asset | Debt
    character: Character

    @property
    def words(self) -> str:
        """Its own words, or else its kind; empty where neither was told."""
        kind = known(self.thing.kind)
        return known(self.thing.words) or (KINDS[kind] if kind else "")

    @property
    def name(self) -> str:
        """The words with the last four digits of an account."""
        ending = known(self.thing.last_four)
        return f"{self.words} ending {ending}" if self.words and ending else self.words

    @property
    def filed(self) -> str:
        """The name with any doubt about what it is, as it is filed."""
        doubt = DOUBTS.get(self.character.code)
        return f"{self.name} ({doubt})" if doubt else self.name

    @property
    def owner(self) -> str:
        """Whom to confirm it to, as the form names that spouse; empty where that is not sure."""
        return OWNERS.get(self.character.code, "")

    @property
    def doubtful(self) -> bool:
        """Whether nobody can say for sure that it is, or is not, community property."""
        return self.character.code in DOUBTS


def listed_things(case: Case, asked: Plea, on: date) -> tuple[Listed, ...]:
    """The things and debts with a name for which the petition asks that, in the order listed."""
    return tuple(one for one in _all(case, on) if one.name and plea(one.character) is asked)


def not_typed(things: Iterable[Listed], typed: Iterable[str]) -> tuple[Listed, ...]:
    """The things that the filer did not also type in a list of their own words."""
    seen = {_folded(words) for words in typed}
    return tuple(
        one for one in things if not {_folded(one.name), _folded(known(one.thing.words) or "")} & seen
    )


def typed(case: Case) -> tuple[str, ...]:
    """Everything that the filer typed in the lists for items 9 and 10, so that nothing is listed twice."""
    told = case.property
    lists = (told.separate_petitioner, told.separate_respondent, told.community_items)
    return tuple(item for each in lists for item in known(each) or () if item)


def doubts(case: Case, on: date) -> str:
    """Why some things are not asked to be confirmed to one of the two, for the worksheet; often empty."""
    things = [one for one in listed_things(case, Plea.DETERMINE, on) if one.doubtful]
    if not things:
        return ""
    return _(
        "Nobody can say yet whose these are: {things}. So they are not here. Item 10 takes them, and the "
        "judge decides."
    ).format(things=_named(case, things))


def taken_in(case: Case, on: date) -> str:
    """Why some things stand with the community property though that is not sure, for the worksheet."""
    things = listed_things(case, Plea.DETERMINE, on)
    said = []
    if doubtful := [one for one in things if one.doubtful]:
        said.append(
            _(
                "Nobody can say yet whose these are: {things}. They stand here, and the words in brackets "
                "keep the question open."
            ).format(things=_named(case, doubtful))
        )
    if loans := [one for one in things if is_training_loan(one.character)]:
        said.append(
            _("A judge usually gives this loan to the one who was trained: {things}.").format(
                things=_named(case, loans)
            )
        )
    return " ".join(said)


def _named(case: Case, things: Iterable[Listed]) -> str:
    names = [thing_words(case, one.character.key) for one in things]
    more = len(names) - MOST_NAMED
    if more > 0:
        names = [*names[:MOST_NAMED], _n("{count} more", "{count} more", more).format(count=more)]
    return "; ".join(names)


def _all(case: Case, on: date) -> Iterator[Listed]:
    for character in asset_characters(case, on):
        yield Listed(case.asset[_place(character)], character)
    for character in debt_characters(case, on):
        yield Listed(case.debt[_place(character)], character)


def _place(character: Character) -> int:
    return int(character.key.partition(".")[2]) - 1


def _folded(words: str) -> str:
    return " ".join(words.casefold().replace(",", " ").split()).rstrip(" .")
