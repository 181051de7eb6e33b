"""What is owned and owed, in plain words: what a thing is called, what it is taken to be, what is missing."""

from collections.abc import Mapping

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, CommunityKind, DebtKind
from firstpaper.law.measures.character import Code
from firstpaper.locale import _

LONGEST = 60
"""How many letters of a thing's own words are shown in a row of things."""


def thing_words(case: Case, key: str) -> str:
    """The thing or debt at a key such as "asset.2": its own words, else its kind, else its number."""
    name, number = key.split(".")[:2]
    if name == "asset":
        asset = case.asset[int(number) - 1]
        kind, told = _asset_words().get(known(asset.kind)), known(asset.words)
        return _shown(told or kind or _("thing number {number}").format(number=number))
    debt = case.debt[int(number) - 1]
    kind, told = _debt_words().get(known(debt.kind)), known(debt.words)
    return _shown(told or kind or _("debt number {number}").format(number=number))


def _shown(words: str) -> str:
    return words if len(words) <= LONGEST else f"{words[: LONGEST - 1].rstrip()}…"


def code_words(code: Code, *, debt: bool = False) -> str:
    """What a thing or a debt is taken to be, to stand after a colon."""
    if debt:
        return {
            Code.COMMUNITY: _("a debt of you both"),
            Code.PETITIONER_SEPARATE: _("your own debt"),
            Code.RESPONDENT_SEPARATE: _("the other side's own debt"),
        }.get(code, _("not known yet"))
    return {
        Code.COMMUNITY: _("community property, which belongs to you both"),
        Code.QUASI_COMMUNITY: _("quasi-community property, which is shared like community property"),
        Code.PETITIONER_SEPARATE: _("your separate property"),
        Code.RESPONDENT_SEPARATE: _("the other side's separate property"),
        Code.MIXED: _("part community, part separate"),
        Code.NOT_DIVIDED: _("not property that is divided"),
        Code.UNKNOWN: _("not known yet"),
    }[code]


def kind_words(kind: AssetKind | DebtKind) -> str:
    """A kind of thing or debt."""
    return _asset_words()[kind] if isinstance(kind, AssetKind) else _debt_words()[kind]


def large_kinds() -> Mapping[CommunityKind, str]:
    """What is mostly worth a lawyer's look, by its kind in the petition, to stand in a row of things."""
    return {
        CommunityKind.HOME: _("a home or land"),
        CommunityKind.RETIREMENT: _("a pension or retirement plan"),
        CommunityKind.ACCOUNTS: _("stock or options"),
        CommunityKind.BUSINESS: _("a business"),
    }


def _asset_words() -> Mapping[AssetKind | None, str]:
    return {
        AssetKind.REAL_ESTATE: _("house or land"),
        AssetKind.HOUSEHOLD: _("furniture and things at home"),
        AssetKind.VALUABLES: _("jewelry, art or antiques"),
        AssetKind.VEHICLE: _("car, boat or trailer"),
        AssetKind.SAVINGS: _("savings account"),
        AssetKind.CHECKING: _("checking account"),
        AssetKind.OTHER_DEPOSIT: _("credit union or other account"),
        AssetKind.CASH: _("cash"),
        AssetKind.TAX_REFUND: _("tax refund"),
        AssetKind.LIFE_INSURANCE: _("life insurance with cash value"),
        AssetKind.INVESTMENTS: _("stocks, bonds or funds"),
        AssetKind.PENSION: _("pension"),
        AssetKind.RETIREMENT_ACCOUNT: _("retirement account"),
        AssetKind.MONEY_OWED_TO_US: _("money that somebody owes you"),
        AssetKind.BUSINESS: _("business"),
        AssetKind.DIGITAL: _("digital money or online account"),
        AssetKind.PET: _("pet"),
        AssetKind.OTHER: _("other thing"),
    }


def _debt_words() -> Mapping[DebtKind | None, str]:
    return {
        DebtKind.STUDENT_LOAN: _("student loan"),
        DebtKind.TAX: _("tax debt"),
        DebtKind.SUPPORT_OWED: _("support owed to another family"),
        DebtKind.UNSECURED_LOAN: _("loan"),
        DebtKind.CREDIT_CARD: _("credit card"),
        DebtKind.OTHER: _("other debt"),
    }
