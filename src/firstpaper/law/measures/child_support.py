"""The statewide formula for child support (Fam. Code 4055), from net monthly incomes the filer typed in.

CS = K x (HN - H% x TN), times a number for more than one child. HN is the higher net income, TN both
together, H% the part of the time the higher earner has the children, and K the part of TN set aside for
children: a fraction by the band of TN, times 1 + H% up to half of the time, or 2 - H% above it. Above zero
the higher earner pays, below zero the lower. Nothing is rounded on the way.

What comes out is a private estimate: see `limits`. Net incomes themselves (Fam. Code 4059: taxes, health
premiums, other children) are not worked out here.
"""

from collections.abc import Iterator, Mapping
from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import Any, NamedTuple

from firstpaper.counting import short_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Who
from firstpaper.facts.money import in_dollars
from firstpaper.law.figure import FigureNotInForce, figure
from firstpaper.law.measures.cents import cents, shared
from firstpaper.law.measures.children import listed_children
from firstpaper.law.measures.refused import Refused
from firstpaper.locale import _

NOTHING, ONE, HUNDRED = Decimal(0), Decimal(1), Decimal(100)
OTHER = {Who.PETITIONER: Who.RESPONDENT, Who.RESPONDENT: Who.PETITIONER}
CITE = ("Fam. Code 4055",)
LIMIT_CITE = (
    "Fam. Code 3830(a)",
    "Cal. Rules of Court, rule 5.275",
    "Cal. Rules of Court, rule 5.260(e)(2)(A)",
)


def limits() -> tuple[str, ...]:
    """What must stand on the face of every sheet that shows a sum of support."""
    return (
        _(
            "This is a private estimate. Do not file it. A court may use only software that the Judicial "
            "Council has certified, and this program is not certified."
        ),
        _(
            "To ask for support you need no number in the petition. For a hearing, the self-help center can "
            "run the certified software with your own papers."
        ),
        _("No software is right for working out spousal support in a judgment. A judge weighs that."),
    )


class Incomes(NamedTuple):
    """The net monthly incomes, and the percent of time the children are with the petitioner."""

    petitioner: Decimal
    respondent: Decimal
    time_with_petitioner: Decimal

    @property
    def together(self) -> Decimal:
        """Both incomes (TN)."""
        return self.petitioner + self.respondent

    @property
    def higher_earner(self) -> Who:
        """Who earns more; of equals the petitioner, which changes nothing in the result."""
        return Who.PETITIONER if self.petitioner >= self.respondent else Who.RESPONDENT

    def of(self, who: Who) -> Decimal:
        """The net income of one of the two."""
        return self.petitioner if who is Who.PETITIONER else self.respondent

    def time_with(self, who: Who) -> Decimal:
        """The part of the time that the children are with that parent, from 0 to 1."""
        percent = self.time_with_petitioner
        return (percent if who is Who.PETITIONER else HUNDRED - percent) / HUNDRED


class AboveHalf(StrEnum):
    """Whether the amount is more than half of a low-income payer's net income (Fam. Code 4057(b)(5))."""

    NO = "no"
    DEPENDS = "depends"
    ALWAYS = "always"


class LowIncome(NamedTuple):
    """The range that a court may choose from where the payer earns less than full-time minimum wage.

    `line` is the full-time minimum wage of a month before taxes, not rounded. `half` is half of the payer's
    net income, below which Fam. Code 4057(b)(5) cannot take the amount.
    """

    line: Decimal
    low: Decimal
    high: Decimal
    half: Decimal

    @property
    def above_half(self) -> AboveHalf:
        """Whether the range lies above half of the payer's net income."""
        if self.low > self.half:
            return AboveHalf.ALWAYS
        return AboveHalf.DEPENDS if self.high > self.half else AboveHalf.NO


class Guideline(NamedTuple):
    """The amount by the formula, before any adjustment.

    `payer` is None where nobody pays. `low_income` is the range that must be shown with the amount: None
    where the payer earns enough, and a refusal where no minimum wage is known for the day. `by_child` are
    the parts of the children, youngest first; None where no rule says how to split.
    """

    incomes: Incomes
    children: int
    payer: Who | None
    amount: Decimal
    low_income: LowIncome | Refused | None
    by_child: tuple[Decimal, ...] | None
    steps: tuple[str, ...]


def child_support(
    incomes: Incomes, children: int, on: date, *, same_time: bool = True
) -> Guideline | Refused:
    """The formula for a day, or why it is not used."""
    try:
        bands = figure("child_support.fraction", on).value
        multipliers: Mapping[int, str] = figure("child_support.multiplier", on).value
    except FigureNotInForce as unknown:
        return Refused((str(unknown),), cite=CITE)
    if children not in multipliers:
        return Refused(
            (
                _("The law has a number for {least} to {most} children.").format(
                    least=1, most=max(multipliers)
                ),
            ),
            cite=CITE,
        )
    band = next(band for band in bands if incomes.together <= band.get("up_to", incomes.together))
    formula = _Formula(incomes, children, band, Decimal(multipliers[children]))
    amount = cents(abs(formula.result))
    payer = formula.payer if amount else None
    low_income = _low_income(incomes.of(payer), abs(formula.result), on) if payer else None
    whole = [cents(abs(formula.for_one) * Decimal(multipliers[count])) for count in range(1, children + 1)]
    by_child = tuple(more - fewer for fewer, more in zip([NOTHING, *whole], whole, strict=False))
    split = payer is not None and low_income is None and same_time
    steps = tuple(formula.steps())
    return Guideline(incomes, children, payer, amount, low_income, by_child if split else None, steps)


def child_support_for(case: Case, on: date) -> Guideline | Refused:
    """The formula for the minor children of both on the day `on`, from what the filer typed in."""
    told = {
        "income.petitioner_net": known(case.income.petitioner_net),
        "income.respondent_net": known(case.income.respondent_net),
        "income.time_with_petitioner": known(case.income.time_with_petitioner),
    }
    missing = tuple(key for key, value in told.items() if value is None)
    if missing:
        return Refused((_("Both net incomes and the children's time must be known."),), missing, CITE)
    if known(case.income.third_parent):
        return Refused(
            (_("A child with more than two parents needs a judge's own way of sharing."),),
            cite=("Fam. Code 4052.5",),
        )
    children = len(listed_children(case, on))
    if not children:
        return Refused((_("No minor child of you both is listed."),), ("children.family",), CITE)
    petitioner, respondent, time = (value for value in told.values() if value is not None)
    same_time = known(case.income.same_time) is not False
    return child_support(Incomes(petitioner, respondent, time), children, on, same_time=same_time)


def time_without_evidence(has_custody: Who) -> Decimal:
    """The percent of time with the petitioner that a court takes in a default without evidence of time.

    H% is set to none where the parent without custody earns more, and to all where the one with custody
    does (Fam. Code 4055(b)(6)): either way the children count as wholly with the parent who has custody.
    Not so where the parent without custody asks for the default, or the one with custody did not come.
    """
    return HUNDRED if has_custody is Who.PETITIONER else NOTHING


def low_income_line(on: date) -> Decimal:
    """A month of full-time work at minimum wage, before taxes and not rounded.

    Raises FigureNotInForce for a day whose wage is not known.
    """
    time = figure("child_support.full_time", on).value
    wage = Decimal(figure("child_support.minimum_wage", on).value)
    return wage * Decimal(time["hours_a_week"] * time["weeks_a_year"]) / 12


def _low_income(net: Decimal, exact: Decimal, on: date) -> LowIncome | Refused | None:
    try:
        line = low_income_line(on)
    except FigureNotInForce as unknown:
        return Refused(
            (
                _(
                    "We do not know the minimum wage of {day}. So we cannot say if the payer earns little "
                    "enough for a lower amount, or how much lower."
                ).format(day=short_date(on)),
                str(unknown),
            ),
            cite=("Fam. Code 4055(b)(7)",),
        )
    if net >= line:
        return None
    percent = Decimal(figure("child_support.half_of_net_percent", on).value)
    return LowIncome(line, cents(exact * net / line), cents(exact), cents(net * percent / HUNDRED))


class _Formula(NamedTuple):
    """The formula for one set of incomes, with its working."""

    incomes: Incomes
    children: int
    band: Mapping[str, Any]
    multiplier: Decimal

    @property
    def time(self) -> Decimal:
        """The part of the time with the higher earner (H%)."""
        return self.incomes.time_with(self.incomes.higher_earner)

    @property
    def fraction(self) -> Decimal:
        """The part of both incomes for children, before time counts."""
        fixed, together = Decimal(self.band["fixed"]), self.incomes.together
        if "income_over" in self.band:
            return fixed + together / Decimal(self.band["income_over"])
        return fixed + (Decimal(self.band["over_income"]) / together if "over_income" in self.band else 0)

    @property
    def k(self) -> Decimal:
        """The part of both incomes set aside for children (K)."""
        return self.fraction * (ONE + self.time if self.time <= ONE / 2 else ONE * 2 - self.time)

    @property
    def rest(self) -> Decimal:
        """HN - H% x TN."""
        return self.incomes.of(self.incomes.higher_earner) - self.time * self.incomes.together

    @property
    def for_one(self) -> Decimal:
        """The result for one child; below zero the lower earner pays."""
        return self.k * self.rest

    @property
    def result(self) -> Decimal:
        """The result for all the children."""
        return self.for_one * self.multiplier

    @property
    def payer(self) -> Who:
        """Who pays where the result is not zero (Fam. Code 4055(b)(5))."""
        earner = self.incomes.higher_earner
        return earner if self.result > 0 else OTHER[earner]

    def steps(self) -> Iterator[str]:
        """The working, line by line, for a person to follow."""
        percent = f"{(self.time * HUNDRED).normalize():f}"
        factor = f"1 + {percent}%" if self.time <= ONE / 2 else f"2 - {percent}%"
        yield _("Both net incomes together: {amount} a month.").format(
            amount=in_dollars(self.incomes.together)
        )
        how, part = self._band_words(), _exactly(self.fraction)
        band = _("The part of it for children, by its band: {how}.")
        worked_out = _("The part of it for children, by its band: {how} = {part}.")
        yield (band if how == part else worked_out).format(how=how, part=part)
        yield _("Times {factor}, for {percent}% of the time with the higher earner: {k}.").format(
            factor=factor, percent=percent, k=_exactly(self.k)
        )
        yield _("The higher income less {percent}% of both: {high} - {part} = {rest}.").format(
            percent=percent,
            high=in_dollars(self.incomes.of(self.incomes.higher_earner)),
            part=in_dollars(self.time * self.incomes.together),
            rest=_signed(self.rest),
        )
        yield _("The two multiplied, for one child: {amount}.").format(amount=_signed(self.for_one))
        if self.children > 1:
            yield _("Times {multiplier} for {count} children: {amount}.").format(
                multiplier=self.multiplier, count=self.children, amount=_signed(self.result)
            )
        if self.result < 0:
            yield _("Below zero means that the lower earner pays.")

    def _band_words(self) -> str:
        fixed, amount = self.band["fixed"], in_dollars(self.incomes.together)
        if "income_over" in self.band:
            return f"{fixed} + {amount} / {self.band['income_over']:,}"
        if "over_income" in self.band:
            return f"{fixed} + {self.band['over_income']:,} / {amount}"
        return _exactly(Decimal(fixed))


def _exactly(factor: Decimal) -> str:
    """A factor to six places, enough to work the sum out again, without zeros that say nothing."""
    return f"{factor:.6f}".rstrip("0").rstrip(".")


def _signed(amount: Decimal) -> str:
    return f"-{in_dollars(abs(amount))}" if amount < 0 else in_dollars(amount)


# Costs on top


class CostSplit(NamedTuple):
    """Who pays how much of the costs on top of support: by net incomes, and in half as the other choice."""

    petitioner: Decimal
    respondent: Decimal
    halves: tuple[Decimal, Decimal]


def split_costs(found: Guideline, costs: Decimal) -> CostSplit | Refused:
    """Child care and health costs split by net incomes after support (Fam. Code 4061, 4062).

    The payer's income is lowered by the support; the receiver's is not raised by it. Spousal support would
    change the gross incomes first, and so the taxes: that is not worked out here.
    """
    cite = ("Fam. Code 4061", "Fam. Code 4062")
    if found.low_income is not None:
        return Refused(
            (_("It hangs on the amount of support that the judge picks from the range."),), cite=cite
        )
    nets = {who: found.incomes.of(who) for who in (Who.PETITIONER, Who.RESPONDENT)}
    if found.payer:
        nets[found.payer] -= found.amount
    if min(nets.values()) < 0 or not sum(nets.values()):
        return Refused((_("There is no income left to split by."),), cite=cite)
    petitioner, respondent = shared(costs, list(nets.values()))
    half, rest = shared(costs, [ONE, ONE])
    return CostSplit(petitioner, respondent, (half, rest))
