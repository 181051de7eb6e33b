"""The papers to gather for each thing and debt that was listed, by name (common practice, no source)."""

from collections.abc import Iterator, Mapping
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, DebtKind
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.law.measures.character import Character, asset_characters, debt_characters
from firstpaper.law.measures.character.looks import PLANS
from firstpaper.law.property_words import kind_words, thing_words
from firstpaper.locale import _


class Papers(NamedTuple):
    """A listed thing by name, and what to gather for it. No private note of the filer is among it."""

    name: str
    papers: tuple[str, ...]


def papers(case: Case, on: date) -> tuple[Papers, ...]:
    """What to gather for each listed thing, then for each listed debt."""
    listed: Iterator[tuple[Asset | Debt, Character]] = (
        (case.fact(one.key), one) for one in (*asset_characters(case, on), *debt_characters(case, on))
    )
    return tuple(
        Papers(
            _name(case, thing, one),
            tuple(_of_asset(thing, one) if isinstance(thing, Asset) else _of_debt(thing)),
        )
        for thing, one in listed
    )


def _name(case: Case, thing: Asset | Debt, one: Character) -> str:
    """Its words, with its kind where the words are the filer's own, and the last four digits."""
    name, ending = thing_words(case, one.key), known(thing.last_four)
    kind, told = known(thing.kind), known(thing.words)
    if told and isinstance(kind, AssetKind | DebtKind) and kind_words(kind).casefold() not in name.casefold():
        name = _("{thing} ({kind})").format(thing=name, kind=kind_words(kind))
    return _("{thing}, ending {digits}").format(thing=name, digits=ending) if ending else name


def _of_asset(asset: Asset, one: Character) -> Iterator[str]:
    kind, put_in = known(asset.kind), known(asset.contributions)
    if kind:
        yield _of_owned()[kind]
    if (one.holds_separate or put_in) and kind is not AssetKind.PENSION:
        yield _("papers that show whose money it was: a will, a deed, letters, old statements")
    if kind in PLANS and not one.code.separate:
        yield _("the plan's full name and address, and what it says of a divorce")
    if kind is AssetKind.PENSION and one.holds_separate:
        yield _("the dates of the work it comes from")
    if kind is AssetKind.RETIREMENT_ACCOUNT and one.holds_separate:
        yield _("its balance on the wedding day and on the day you separated")


def _of_debt(debt: Debt) -> Iterator[str]:
    kind = known(debt.kind)
    if kind:
        yield _of_owed()[kind]


def _of_owned() -> Mapping[AssetKind, str]:
    account = _("the newest statement")
    return {
        AssetKind.REAL_ESTATE: _("the deed, the newest loan statement, the property tax bill"),
        AssetKind.HOUSEHOLD: _("a list of what is worth money"),
        AssetKind.VALUABLES: _("a receipt or an appraisal, and photos"),
        AssetKind.VEHICLE: _("the title or registration, and the newest paper on the loan or lease"),
        AssetKind.SAVINGS: account,
        AssetKind.CHECKING: account,
        AssetKind.OTHER_DEPOSIT: account,
        AssetKind.CASH: _("a note of how much, where it is and since when"),
        AssetKind.TAX_REFUND: _("the tax return or letter that shows it"),
        AssetKind.LIFE_INSURANCE: _("the page of the policy that shows its cash value, and any loan on it"),
        AssetKind.INVESTMENTS: _("the newest statement; for options, the grant papers"),
        AssetKind.PENSION: _("the newest statement, and the summary of the plan"),
        AssetKind.RETIREMENT_ACCOUNT: _("the newest statement, and the summary of the plan"),
        AssetKind.MONEY_OWED_TO_US: _("the note or letters that show it, and what was paid on it"),
        AssetKind.BUSINESS: _("its newest tax papers and its own books"),
        AssetKind.DIGITAL: _("a statement of what is held, and where"),
        AssetKind.PET: _("papers that show whose it is, and who has cared for it"),
        AssetKind.OTHER: _("what shows that it is yours, and what it is worth"),
    }


def _of_owed() -> Mapping[DebtKind, str]:
    return {
        DebtKind.STUDENT_LOAN: _("the newest statement, and the date and school of the loan"),
        DebtKind.TAX: _("the tax letter, and the return for that year"),
        DebtKind.SUPPORT_OWED: _("the order, and what was paid on it"),
        DebtKind.UNSECURED_LOAN: _("the contract or letters, and the newest statement"),
        DebtKind.CREDIT_CARD: _("the newest statement, and one from the day you parted"),
        DebtKind.OTHER: _("the newest bill or statement"),
    }
