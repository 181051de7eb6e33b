"""The figures of the money pages, for other programs: the same numbers as on paper, as exact text."""

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any, TypeVar

from firstpaper.law.measures.character import Character
from firstpaper.law.measures.child_support import CostSplit, Guideline, LowIncome
from firstpaper.law.measures.estimates.after_separation import Ledger
from firstpaper.law.measures.estimates.house import HouseShare
from firstpaper.law.measures.estimates.options import OptionShares
from firstpaper.law.measures.estimates.pension import TimeRule
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.spousal_support import HalfLength, Temporary
from firstpaper.law.measures.sums import Equalizing, Line, Repayment, Total
from firstpaper.packet.reckoning import Reckoning

Found = TypeVar("Found")
Data = dict[str, Any]


def figures(found: Reckoning) -> Data:
    """Everything that was worked out. What was refused says why, under "refused"."""
    return {
        "things": [_thing(one) for one in found.characters],
        "sums": {
            "lines": [_line(one) for one in found.lines],
            "by_character": {str(code): _total(total) for code, total in found.totals.by_code.items()},
            "community_estate": _total(found.totals.community_estate),
            "left_out": [one.key for one in found.totals.left_out],
        },
        "proposal": _or_refused(found.proposal, _proposal),
        "estimates": {
            "separate_money_back": _each(found.repayments, _repayment),
            "house": _each(found.houses, _house),
            "pension": _each(found.pensions, _pension),
            "stock_options": _each(found.options, _options),
            "after_separation": _or_refused(found.after, _after),
        },
        "support": {
            "certified": False,
            "child_support": _or_refused(found.children, _guideline),
            "added_costs": _or_refused(found.costs, _costs),
            "temporary_spousal": _or_refused(found.temporary, _temporary),
            "half_length": _or_refused(found.half_length, _half_length),
        },
    }


def _or_refused(found: Found | Refused | None, data: Callable[[Found], Data]) -> Data | None:
    if found is None:
        return None
    if isinstance(found, Refused):
        return {"refused": list(found.why), "missing": list(found.missing), "authority": list(found.cite)}
    return data(found)


def _each(found: Mapping[str, Found | Refused], data: Callable[[Found], Data]) -> dict[str, Data | None]:
    return {key: _or_refused(one, data) for key, one in found.items()}


def _thing(one: Character) -> Data:
    return {
        "key": one.key,
        "character": one.code,
        "confidence": one.confidence,
        "reasons": [{"says": reason.says, "authority": list(reason.cite)} for reason in one.reasons],
        "flags": [
            {"point": flag.point, "says": flag.says, "authority": list(flag.cite)} for flag in one.flags
        ],
        "missing": list(one.missing),
        "could_be": [
            {"fact": other.fact, "value": other.value, "characters": list(other.codes)}
            for other in one.alternatives
        ],
        "court": one.court,
    }


def _line(one: Line) -> Data:
    return {
        "key": one.key,
        "character": one.code,
        "value": one.value,
        "owed": one.owed,
        "net": one.net,
        "proposal": one.proposal,
    }


def _total(one: Total) -> Data:
    return {"value": one.value, "owed": one.owed, "net": one.net}


def _proposal(found: Equalizing) -> Data:
    return {
        "awards": [
            {"key": one.line.key, "petitioner": one.petitioner, "respondent": one.respondent}
            for one in found.awards
        ],
        "petitioner": found.petitioner,
        "respondent": found.respondent,
        "payer": found.payer,
        "payment": found.payment,
        "repaid_to_petitioner": found.repaid_to_petitioner,
        "left_out": [line.key for line in found.left_out],
    }


def _repayment(found: Repayment) -> Data:
    return {
        "claims": [{"by": one.by, "put_in": one.put_in, "back": one.back} for one in found.claims],
        "rest": found.rest,
        "not_traced": found.not_traced,
        "authority": found.cite,
    }


def _house(found: HouseShare) -> Data:
    return {
        "community_fraction": _fraction(found.fraction),
        "community": found.community,
        "separate": found.separate,
        "equity": found.payments.equity,
        "loan_left": found.payments.loan_left,
    }


def _pension(found: TimeRule) -> Data:
    return {
        "months_in_marriage": found.in_marriage,
        "months_in_all": found.total,
        "community_fraction": _fraction(found.fraction),
        "growing": found.growing,
    }


def _options(found: OptionShares) -> Data:
    return {
        name: {"months": list(months), "community_fraction": _fraction(Fraction(*months)), "community": count}
        for name, months, count in (
            ("hug", found.hug, found.community_by_hug),
            ("nelson", found.nelson, found.community_by_nelson),
        )
    }


def _after(found: Ledger) -> Data:
    return {
        "entries": [
            {
                "key": one.key,
                "by": one.by,
                "paid": one.paid,
                "use": one.use,
                "other_owes": one.owed_by_the_other,
            }
            for one in found.entries
        ],
        "owed_to_petitioner": found.owed_to_petitioner,
        "left_out": list(found.left_out),
    }


def _guideline(found: Guideline) -> Data:
    return {
        "payer": found.payer,
        "amount": found.amount,
        "low_income": _or_refused(found.low_income, _low_income),
        "by_child": list(found.by_child) if found.by_child else None,
        "steps": list(found.steps),
    }


def _low_income(found: LowIncome) -> Data:
    return {"low": found.low, "high": found.high, "line": found.line, "above_half": found.above_half}


def _costs(found: CostSplit) -> Data:
    return {"petitioner": found.petitioner, "respondent": found.respondent, "halves": list(found.halves)}


def _temporary(found: Temporary) -> Data:
    return {"payer": found.payer, "amount": found.amount, "steps": list(found.steps)}


def _half_length(found: HalfLength) -> Data:
    return {"months": found.months, "and_a_half": found.and_a_half}


def _fraction(part: Fraction) -> str:
    return f"{part.numerator}/{part.denominator}"
