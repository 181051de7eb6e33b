"""Words that the money pages share: who is meant, how firm a thing is, what an unknown fact could be."""

from collections.abc import Iterable, Mapping
from decimal import Decimal
from fractions import Fraction

from firstpaper.facts import Case
from firstpaper.facts.choices import DebtPurpose, LivedIn, MoneySource, TitleForm, Who
from firstpaper.facts.money import in_dollars
from firstpaper.law.measures.character import Alternative, Code, Confidence
from firstpaper.law.measures.character.times import Earned, Time
from firstpaper.law.property_words import code_words, fact_words, thing_words
from firstpaper.locale import _


def dollars(amount: Decimal | None) -> str:
    """An amount, also below zero; words where it is not known."""
    if amount is None:
        return _("not known")
    return f"-{in_dollars(-amount)}" if amount < 0 else in_dollars(amount)


def percent(part: Fraction) -> str:
    """A part in percent, to two places."""
    exact = Decimal(part.numerator) * 100 / Decimal(part.denominator)
    return f"{exact:.2f}%"


def listed_name(case: Case, key: str) -> str:
    """A thing or debt at the head of a line: its first letter is a capital."""
    words = thing_words(case, key)
    return words[:1].upper() + words[1:]


def who(one: Who) -> str:
    """A spouse as the filer is spoken to."""
    return {
        Who.PETITIONER: _("you"),
        Who.RESPONDENT: _("the other side"),
        Who.BOTH: _("both of you"),
    }[one]


def sure_words(confidence: Confidence) -> str:
    """How firmly it can be said."""
    return {
        Confidence.RULE: _("The law says so, if the facts are as you told us."),
        Confidence.PRESUMPTION: _("The law assumes this unless someone proves otherwise."),
        Confidence.ESTIMATE: _("How large each part is can only be estimated."),
        Confidence.OPEN: _("Nobody can say yet."),
    }[confidence]


def short_sure(confidence: Confidence) -> str:
    """The same in a few words, for a table."""
    return {
        Confidence.RULE: _("by rule"),
        Confidence.PRESUMPTION: _("presumed"),
        Confidence.ESTIMATE: _("parts to be worked out"),
        Confidence.OPEN: _("open"),
    }[confidence]


def missing_words(case: Case, keys: Iterable[str]) -> tuple[str, ...]:
    """Facts that are missing, each with the thing it is about."""
    return tuple(dict.fromkeys(_missing(case, key) for key in keys))


def _missing(case: Case, key: str) -> str:
    words = {**_money_facts()}.get(key.rpartition(".")[2], "") or fact_words(key)
    if key.startswith(("asset.", "debt.")):
        return _("{thing}: {fact}").format(thing=thing_words(case, key), fact=words)
    return words


def _money_facts() -> Mapping[str, str]:
    return {
        "value": _("what it is worth"),
        "owed": _("what is owed on it"),
        "contributions": _("what separate money went into it"),
        "price": _("what it was bought for"),
        "down_payment": _("the down payment"),
        "principal_before": _("what was paid on the loan itself before the wedding"),
        "principal_during": _("what was paid on the loan itself in the marriage"),
        "principal_after": _("what was paid on the loan itself after you separated"),
        "value_at_wedding": _("what it was worth at the wedding"),
        "refinanced": _("whether there was ever a new loan on it"),
        "improved": _("whether it was built on or made better"),
        "rented_out": _("whether it was rented out or used for business"),
        "paid_after": _("how much was paid on it since you separated"),
        "paid_after_by": _("who paid on it since you separated"),
        "used_after_by": _("who alone has used it since you separated"),
        "used_after_months": _("for how many months"),
        "used_after_value": _("what a month of its use is worth"),
        "petitioner_net": _("what you have left of your pay in a month"),
        "respondent_net": _("what the other side has left of their pay in a month"),
        "time_with_petitioner": _("how much of the time the children are with you"),
        "family": _("the children you have together"),
    }


def codes_words(codes: Iterable[Code], *, debt: bool) -> str:
    """What it could be, to stand after a colon."""
    return _(" or ").join(_could_be(code, debt) for code in codes)


def _could_be(code: Code, debt: bool) -> str:
    if debt and code is not Code.UNKNOWN:
        return code_words(code, debt=True)
    return {
        Code.COMMUNITY: _("community"),
        Code.QUASI_COMMUNITY: _("quasi-community"),
        Code.PETITIONER_SEPARATE: _("yours alone"),
        Code.RESPONDENT_SEPARATE: _("the other side's alone"),
        Code.MIXED: _("part community, part separate"),
        Code.NOT_DIVIDED: _("not divided"),
        Code.UNKNOWN: _("still open"),
    }[code]


def supposed(one: Alternative) -> str:
    """A value that an unknown fact could have, to stand after "If"."""
    if one.fact.rpartition(".")[2] == "title":
        return _titles().get(one.value, one.value)
    return _values().get(one.value, one.value)


def _titles() -> Mapping[str, str]:
    return {
        TitleForm.PETITIONER: _("your name alone"),
        TitleForm.RESPONDENT: _("the other side's name alone"),
        TitleForm.JOINT: _("both your names"),
        TitleForm.NO_PAPER: _("there is no such paper"),
        TitleForm.OWN_TRUST: _("your own trust"),
        TitleForm.SOMEBODY_ELSE: _("somebody else"),
    }


def _values() -> Mapping[str, str]:
    return {
        "yes": _("yes"),
        "no": _("no"),
        Time.BEFORE: _("before the wedding"),
        Time.DURING: _("in the marriage"),
        Time.AFTER: _("after you separated"),
        Earned.WITHIN: _("all in the marriage"),
        Earned.ACROSS: _("partly in the marriage"),
        Who.PETITIONER: _("you"),
        Who.RESPONDENT: _("the other side"),
        Who.BOTH: _("both of you"),
        MoneySource.COMMUNITY: _("money from the marriage"),
        MoneySource.PETITIONER_SEPARATE: _("your own separate money"),
        MoneySource.RESPONDENT_SEPARATE: _("the other side's separate money"),
        MoneySource.PART_SEPARATE: _("partly separate money"),
        LivedIn.CALIFORNIA: _("in California"),
        LivedIn.ELSEWHERE: _("somewhere else"),
        DebtPurpose.HOUSEHOLD: _("what you or the children needed to live"),
        DebtPurpose.OWN: _("one person's own ends"),
        DebtPurpose.EDUCATION: _("training"),
        DebtPurpose.HARM: _("harm that one of you did"),
        DebtPurpose.BUSINESS: _("a business"),
        DebtPurpose.OTHER: _("something else"),
    }
