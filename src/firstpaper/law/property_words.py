"""What is owned and owed, in plain words: what a thing is called, what it is taken to be, what is missing."""

from collections.abc import Mapping

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, DebtKind
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


def fact_words(key: str) -> str:
    """A fact that is missing, to stand after "we need to know"."""
    return _fact_words().get(key.rpartition(".")[2], _("more about it"))


def kind_words(kind: AssetKind | DebtKind) -> str:
    """A kind of thing or debt."""
    return _asset_words()[kind] if isinstance(kind, AssetKind) else _debt_words()[kind]


def _fact_words() -> Mapping[str, str]:
    return {
        "kind": _("what it is (or what kind of case you file)"),
        "how": _("how it came to you"),
        "acquired_on": _("the day it came"),
        "incurred_on": _("the day it was taken on"),
        "by": _("which of you got it or took it on"),
        "title": _("whose name is on its paper"),
        "source": _("whose money paid for it"),
        "traced": _("whether papers show whose money it was"),
        "mixed": _("whether money from the marriage went into it"),
        "lived_in": _("where you lived when it came"),
        "in_california": _("whether you both lived in California all through the marriage"),
        "agreement": _("whether you two signed a paper about property"),
        "support_arranged": _("whether there is an order or agreement about support"),
        "earned_from": _("the day the work behind it began"),
        "earned_until": _("the day the work behind it ended"),
        "worked_in": _("whether one of you worked in it in the marriage"),
        "changes_need_both": _("whether the trust can be changed only by both"),
        "used_by_one": _("whether one of you alone uses it"),
        "substantial": _("whether it was a large gift for you two"),
        "living_apart": _("whether you lived apart on the day of the injury"),
        "hurt_by_spouse": _("whether one of you hurt the other"),
        "purpose": _("what the money was for"),
        "for_family": _("whether the family had the good of it"),
        "married_on": _("the wedding day"),
        "registered_on": _("the day you registered"),
        "separation_told_on": _("the date of separation: the day of the words"),
        "separation_acted_on": _("the date of separation: the day of the acts"),
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
