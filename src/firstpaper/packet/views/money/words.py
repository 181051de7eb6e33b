"""Words that the money pages share: who is meant, how firm a thing is, what an unknown fact could be."""

from collections.abc import Iterable, Mapping
from decimal import Decimal
from fractions import Fraction

from firstpaper.facts import Case
from firstpaper.facts.choices import DebtPurpose, LivedIn, MoneySource, TitleForm, Who
from firstpaper.facts.money import in_dollars
from firstpaper.intake.fact_names import named
from firstpaper.law.measures.character import Alternative, Code, Confidence
from firstpaper.law.measures.character.times import Earned, Time
from firstpaper.law.property_words import code_words, thing_words
from firstpaper.locale import _
from firstpaper.locale.rows import either


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
    words = named(key, case)
    if key.startswith(("asset.", "debt.")):
        return _("{thing}: {fact}").format(thing=thing_words(case, key), fact=words)
    return words


def codes_words(codes: Iterable[Code], *, debt: bool) -> str:
    """What it could be, to stand after a colon."""
    return either(_could_be(code, debt) for code in codes)


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
