"""What was listed thing by thing, as the papers name it: its words and last four digits, never an amount.

What is filed is in English, the language of the court. A thing that nobody can place for sure says so.
"""

from collections.abc import Iterable, Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, CommunityHow, DebtKind, Who
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
CAME_TO = {Who.PETITIONER: "Petitioner", Who.RESPONDENT: "Respondent"}
DOUBTS = {
    Code.MIXED: "community and separate parts to be determined",
    Code.UNKNOWN: "character to be determined",
}
ASSET_NAMES: dict[AssetKind, str] = {
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
}
DEBT_NAMES: dict[DebtKind, str] = {
    DebtKind.STUDENT_LOAN: "Student loan",
    DebtKind.TAX: "Taxes owed",
    DebtKind.SUPPORT_OWED: "Support owed",
    DebtKind.UNSECURED_LOAN: "Unsecured loan",
    DebtKind.CREDIT_CARD: "Credit card",
    DebtKind.OTHER: "Other debt",
}
"""How a debt is named that the filer gave no words for; a thing likewise, by `ASSET_NAMES`."""


class Listed(NamedTuple):
    """One thing or debt, with what it is taken to be."""

    thing: Asset | Debt
    character: Character

    @property
    def words(self) -> str:
        """Its own words, or else its kind; empty where neither was told."""
        return known(self.thing.words) or _kind_named(self.thing)

    @property
    def name(self) -> str:
        """The words with the last four digits of an account."""
        ending = known(self.thing.last_four)
        return f"{self.words} ending {ending}" if self.words and ending else self.words

    @property
    def filed(self) -> str:
        """The name with any doubt about what it is, as it is filed."""
        return self.in_doubt(self.name)

    def in_doubt(self, named: str) -> str:
        """The thing under this name, with any doubt about what it is in brackets."""
        doubt = DOUBTS.get(self.character.code)
        return f"{named} ({doubt})" if doubt else named

    def is_called(self, typed: str) -> bool:
        """Whether the filer's own words name it."""
        return _folded(typed) in (_folded(self.name), _folded(known(self.thing.words) or ""))

    @property
    def owner(self) -> str:
        """Whom to confirm it to, as the form names that spouse; where that is not sure, whom it came to."""
        return OWNERS.get(self.character.code) or CAME_TO.get(self._came_to, "to be determined")

    @property
    def _came_to(self) -> Who:
        return known(self.thing.by) or Who.BOTH

    @property
    def doubtful(self) -> bool:
        """Whether nobody can say for sure that it is, or is not, community property."""
        return self.character.code in DOUBTS


def listed_things(case: Case, asked: Plea, on: date) -> tuple[Listed, ...]:
    """The things and debts with a name for which the petition asks that, in the order listed."""
    return tuple(one for one in _all(case, on) if one.name and plea(one.character) is asked)


def things_of_item_9(case: Case, on: date) -> tuple[Listed, ...]:
    """What item 9 asks to be confirmed: what is one person's own, and what no other item would take.

    Where the filer says in item 10 that there is nothing of both, a thing that nobody can place for sure
    stands here, with its doubt in brackets. Else it would stand nowhere.
    """
    sure = listed_things(case, Plea.CONFIRM, on)
    return (*sure, *_doubtful(case, on)) if _item_10_is_none(case) else sure


def things_of_item_10(case: Case, on: date) -> tuple[Listed, ...]:
    """What item 10 asks the judge to decide about."""
    return listed_things(case, Plea.DETERMINE, on)


def not_typed(things: Iterable[Listed], typed: Iterable[str]) -> tuple[Listed, ...]:
    """The things that the filer did not also type in a list of their own words."""
    typed = tuple(typed)
    return tuple(one for one in things if not any(map(one.is_called, typed)))


def as_filed(typed: Iterable[str], things: Iterable[Listed]) -> tuple[str, ...]:
    """What the filer typed, with the doubt about a thing that was listed under the same name."""
    things = tuple(things)
    return tuple(
        next((one.in_doubt(words) for one in things if one.is_called(words)), words) for words in typed
    )


def typed(case: Case) -> tuple[str, ...]:
    """Everything that the filer typed in the lists for items 9 and 10, so that nothing is listed twice."""
    told = case.property
    lists = (told.separate_petitioner, told.separate_respondent, told.community_items)
    return tuple(item for each in lists for item in known(each) or () if item)


def doubts(case: Case, on: date) -> str:
    """Why some things are not asked to be confirmed to one of the two, for the worksheet; often empty."""
    things = _doubtful(case, on)
    if not things:
        return ""
    if _item_10_is_none(case):
        return _(
            "It is not clear who owns these: {things}. You marked in item 10 that nothing belongs to you "
            "both. So list them here. The words in brackets say that it is not settled. Look again at item "
            "10 before you sign."
        ).format(things=_named(case, things))
    return _(
        "It is not clear who owns these: {things}. Leave them out of item 9 and list them in item 10. The "
        "judge decides."
    ).format(things=_named(case, things))


def taken_in(case: Case, on: date) -> str:
    """Why some things stand with the community property though that is not sure, for the worksheet."""
    things = things_of_item_10(case, on)
    said = []
    if doubtful := [one for one in things if one.doubtful]:
        said.append(
            _(
                "It is not clear who owns these: {things}. List them here. The words in brackets say that it "
                "is not settled."
            ).format(things=_named(case, doubtful))
        )
    if loans := [one for one in things if is_training_loan(one.character)]:
        said.append(
            _("A judge usually gives a student loan to the one who went to school: {things}.").format(
                things=_named(case, loans)
            )
        )
    return " ".join(said)


def _kind_named(thing: Asset | Debt) -> str:
    if isinstance(thing, Asset):
        kind = known(thing.kind)
        return ASSET_NAMES[kind] if kind else ""
    owed = known(thing.kind)
    return DEBT_NAMES[owed] if owed else ""


def _doubtful(case: Case, on: date) -> tuple[Listed, ...]:
    return tuple(one for one in things_of_item_10(case, on) if one.doubtful)


def _item_10_is_none(case: Case) -> bool:
    return known(case.property.community_how) is CommunityHow.NONE


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
