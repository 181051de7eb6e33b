"""Support in pictures of numbers: the statewide formula for children, and one county's formula for a spouse.

Software that a court may use must be certified (Fam. Code 3830). This is not, and every page says so first.
"""

from collections.abc import Iterator, Mapping
from decimal import Decimal

from firstpaper.facts import known
from firstpaper.facts.choices import Who
from firstpaper.law.measures.child_support import (
    CITE,
    LIMIT_CITE,
    AboveHalf,
    CostSplit,
    Guideline,
    LowIncome,
    limits,
)
from firstpaper.law.measures.children import listed_children
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.spousal_support import COUNTY, COUNTY_CITE, Temporary
from firstpaper.locale import _
from firstpaper.packet.reckoning import Reckoning, added_costs
from firstpaper.packet.views.money.page import Trust, page
from firstpaper.packet.views.money.words import dollars, missing_words
from firstpaper.packet.views.sheet import Sheet


def sheets(found: Reckoning) -> Iterator[Sheet]:
    """Child support where there are children and an income; the county's formula where it was asked for."""
    if found.children is not None:
        yield _children(found, found.children)
    if found.temporary is not None:
        yield _temporary(found, found.temporary)


def _children(found: Reckoning, result: Guideline | Refused) -> Sheet:
    return page(
        "child-support",
        _("A picture of child support"),
        Trust.NOT_CERTIFIED,
        _("What the statewide formula gives."),
        {
            "limits": limits(),
            "limit_cite": "; ".join(LIMIT_CITE),
            "cite": "; ".join(CITE),
            "told": tuple(_told(found)),
            "refused": result if isinstance(result, Refused) else None,
            "missing": missing_words(found.case, result.missing) if isinstance(result, Refused) else (),
            **(_worked_out(found, result) if isinstance(result, Guideline) else {}),
        },
    )


def _told(found: Reckoning) -> Iterator[tuple[str, str]]:
    income = found.case.income
    yield _("Your net income in a month"), dollars(known(income.petitioner_net))
    yield _("The other side's net income in a month"), dollars(known(income.respondent_net))
    time = known(income.time_with_petitioner)
    yield _("Time that the children are with you"), _("not known") if time is None else _percent(time)
    count = len(listed_children(found.case, found.on))
    yield _("Children of you both under 18"), str(count)


def _percent(percent: Decimal) -> str:
    return f"{percent.normalize():f}%"


def _worked_out(found: Reckoning, result: Guideline) -> Mapping[str, object]:
    low = result.low_income
    return {
        "payers": tuple(_payers(result)),
        "range": _range(low, result) if isinstance(low, LowIncome) else "",
        "above_half": _above_half(low) if isinstance(low, LowIncome) else "",
        "no_range": low.why if isinstance(low, Refused) else (),
        "steps": result.steps,
        "by_child": tuple(dollars(part) for part in result.by_child or ()) if result.children > 1 else (),
        "no_split": result.children > 1 and result.payer is not None and result.by_child is None,
        "costs": dollars(added_costs(found.case)) if found.costs else "",
        "costs_refused": found.costs.why if isinstance(found.costs, Refused) else (),
        "split": _split(found.costs) if isinstance(found.costs, CostSplit) else (),
    }


def _payers(result: Guideline) -> Iterator[tuple[str, str]]:
    """A line for each who could pay, so that the direction is plain; a range where the law gives one."""
    for one, words in (
        (Who.PETITIONER, _("You would pay the other side")),
        (Who.RESPONDENT, _("The other side would pay you")),
    ):
        yield words, _amount(result) if result.payer is one else dollars(Decimal(0))


def _amount(result: Guideline) -> str:
    low = result.low_income
    if isinstance(low, LowIncome):
        return _("{low} to {high}").format(low=dollars(low.low), high=dollars(low.high))
    if isinstance(low, Refused):
        return _("up to {amount}").format(amount=dollars(result.amount))
    return dollars(result.amount)


def _range(low: LowIncome, result: Guideline) -> str:
    assert result.payer is not None
    net = dollars(result.incomes.of(result.payer))
    return _(
        "This is a range, and not one number. The one who pays has {net} a month. That is less than a month "
        "of full-time work at minimum wage, {line}. So a judge may order any amount in the range."
    ).format(net=net, line=dollars(low.line.quantize(Decimal("0.01"))))


def _above_half(low: LowIncome) -> str:
    half = dollars(low.half)
    if low.above_half is AboveHalf.ALWAYS:
        return _(
            "All of the range is more than half of what the one who pays has, {half}. For that part, a judge "
            "may go lower, but not below {half}."
        ).format(half=half)
    if low.above_half is AboveHalf.DEPENDS:
        return _(
            "A part of the range is more than half of what the one who pays has, {half}. For that part, a "
            "judge may go lower, but not below {half}."
        ).format(half=half)
    return ""


def _split(costs: CostSplit) -> tuple[tuple[str, str, str], ...]:
    return (
        (_("You"), dollars(costs.petitioner), dollars(costs.halves[0])),
        (_("The other side"), dollars(costs.respondent), dollars(costs.halves[1])),
    )


def _temporary(found: Reckoning, result: Temporary | Refused) -> Sheet:
    return page(
        "temporary-support",
        _("Support for a spouse while the case goes on"),
        Trust.NOT_CERTIFIED,
        _("You asked to see it: what the formula of one county gives."),
        {
            "limits": limits(),
            "limit_cite": "; ".join(LIMIT_CITE),
            "cite": "; ".join(COUNTY_CITE),
            "county": COUNTY,
            "refused": result if isinstance(result, Refused) else None,
            "missing": missing_words(found.case, result.missing) if isinstance(result, Refused) else (),
            "steps": result.steps if isinstance(result, Temporary) else (),
            "comes_to": _temporary_words(result) if isinstance(result, Temporary) else "",
        },
    )


def _temporary_words(result: Temporary) -> str:
    amount = dollars(result.amount)
    if result.payer is Who.PETITIONER:
        return _("You would pay the other side {amount} a month.").format(amount=amount)
    if result.payer is Who.RESPONDENT:
        return _("The other side would pay you {amount} a month.").format(amount=amount)
    return _("By this formula nobody would pay anything.")
