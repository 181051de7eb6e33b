"""Support of a spouse: the one county formula that was read, the half-length yardstick, and what is weighed.

No amount for a judgment is worked out, here or anywhere (Cal. Rules of Court, rule 5.260(e)(2)(A)).
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import NamedTuple

from firstpaper.counting import YearsMonths
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Who
from firstpaper.facts.kinds import is_nullity
from firstpaper.facts.money import in_dollars
from firstpaper.law.figure import FigureNotInForce, figure
from firstpaper.law.measures.cents import cents
from firstpaper.law.measures.child_support import OTHER, Guideline, Incomes
from firstpaper.law.measures.marriage import longest
from firstpaper.law.measures.refused import Refused
from firstpaper.locale import _

COUNTY = "Santa Clara"
COUNTY_CITE = ("Fam. Code 3600", "Santa Clara County Superior Court, Local Family Rule 3, part C")
NOTHING, HUNDRED = Decimal(0), Decimal(100)


@dataclass(frozen=True, slots=True)
class Temporary:
    """What one county's formula comes to while the case is pending; `payer` is None where it is nothing.

    `steps` is the working, line by line.
    """

    payer: Who | None
    amount: Decimal
    steps: tuple[str, ...] = field(default=(), compare=False)


def temporary_support(payer_net: Decimal, receiver_net: Decimal, on: date) -> Decimal:
    """A part of the payer's net income less a part of the receiver's; never below nothing.

    Each net income is what is not already set aside for child support. Changes of tax are taken as nil,
    as for an order signed from 2026 on.
    """
    percent = figure("money.temporary_support_santa_clara", on).value
    exact = (payer_net * percent["payer"] - receiver_net * percent["receiver"]) / HUNDRED
    return max(NOTHING, cents(exact))


def temporary_support_for(case: Case, on: date, children: Guideline | None) -> Temporary | Refused:
    """The county's formula, if the filer asked to see it and files in that county.

    `children` is the child support by the statewide formula, where there are children.
    """
    if not known(case.income.temporary_asked):
        return Refused((_("Nobody asked to see it."),), cite=COUNTY_CITE)
    if known(case.court.county) != COUNTY:
        return Refused(
            (
                _("Counties differ, and we have read the formula of {county} County only.").format(
                    county=COUNTY
                ),
            ),
            cite=COUNTY_CITE,
        )
    petitioner, respondent = known(case.income.petitioner_net), known(case.income.respondent_net)
    if petitioner is None or respondent is None:
        missing = {"income.petitioner_net": petitioner, "income.respondent_net": respondent}
        return Refused(
            (_("Both net incomes must be known."),), tuple(key for key, net in missing.items() if net is None)
        )
    if children and children.low_income is not None:
        return Refused(
            (_("It hangs on the child support that the judge picks from the range."),), cite=COUNTY_CITE
        )
    incomes = Incomes(petitioner, respondent, NOTHING)
    left = {who: incomes.of(who) for who in (Who.PETITIONER, Who.RESPONDENT)}
    if children and children.payer:
        left[children.payer] -= children.amount
    payer = incomes.higher_earner
    more, less = left[payer], max(NOTHING, left[OTHER[payer]])
    amount = temporary_support(more, less, on)
    return Temporary(payer if amount else None, amount, tuple(_temporary_steps(more, less, amount, on)))


def _temporary_steps(more: Decimal, less: Decimal, amount: Decimal, on: date) -> Iterator[str]:
    percent = figure("money.temporary_support_santa_clara", on).value
    yield _("Left to the one who earns more, after child support: {amount}.").format(amount=in_dollars(more))
    yield _("Left to the other one: {amount}.").format(amount=in_dollars(less))
    yield _("{payer}% of the first less {receiver}% of the second: {first} - {second}.").format(
        payer=percent["payer"],
        receiver=percent["receiver"],
        first=in_dollars(cents(more * percent["payer"] / HUNDRED)),
        second=in_dollars(cents(less * percent["receiver"] / HUNDRED)),
    )
    yield _("That is {amount}; below zero counts as nothing.").format(amount=in_dollars(amount))


class HalfLength(NamedTuple):
    """The yardstick for how long support may last after a marriage that is not long.

    `months` is half of the marriage; `and_a_half` says that half a month more belongs to it.
    """

    marriage: YearsMonths
    months: int
    and_a_half: bool


def half_length(case: Case, on: date) -> HalfLength | Refused:
    """Half of the length of the marriage (Fam. Code 4320(l)), for a marriage not presumed long (4336)."""
    cite = ("Fam. Code 4320(l)", "Fam. Code 4336")
    if is_nullity(case):
        return Refused(
            (_("In a nullity there is no marriage whose length counts."),), cite=("Fam. Code 2254",)
        )
    span = longest(case)
    if span is None:
        return Refused(
            (_("The wedding day and the date of separation must be known to the day."),),
            ("dates.married_on", "dates.separation_told_on", "dates.separation_acted_on"),
            cite,
        )
    try:
        years = figure("marriage.long_years", on).value
        percent = figure("marriage.support_share_percent", on).value
    except FigureNotInForce as unknown:
        return Refused((str(unknown),), cite=cite)
    if span.total_months >= years * 12:
        return Refused(
            (
                _(
                    "Your marriage lasted {span}. From {years} years on it is presumed long, and the "
                    "yardstick does not fit. The court keeps its power over support."
                ).format(span=span, years=years),
            ),
            cite=cite,
        )
    months, rest = divmod(span.total_months * percent, HUNDRED)
    return HalfLength(span, int(months), bool(rest))


def half_length_limits() -> str:
    """What must stand beside the yardstick."""
    return _(
        "This is a yardstick, not a rule. A judge may order less time or more, and may call a shorter "
        "marriage long."
    )


class Factor(NamedTuple):
    """One thing a judge weighs for support in a judgment, with its paragraph of Fam. Code 4320."""

    paragraph: str
    words: str


def factors() -> tuple[Factor, ...]:
    """What a judge weighs for support in a judgment (Fam. Code 4320), to prepare for it."""
    return (
        Factor("(a)", _("Whether what each can earn keeps up the way you lived in the marriage.")),
        Factor(
            "(a)(1)", _("The skills of the one who needs support, the jobs for them, and training needed.")
        ),
        Factor("(a)(2)", _("What that person can earn less because of years at home for the family.")),
        Factor("(b)", _("Help that one of you gave to the other's schooling, training, career or license.")),
        Factor("(c)", _("What the other can pay: pay, what they could earn, property, way of living.")),
        Factor("(d)", _("What each of you needs to live as you did in the marriage.")),
        Factor("(e)", _("What each of you owes and owns, separate property too.")),
        Factor("(f)", _("How long the marriage lasted.")),
        Factor("(g)", _("Whether a parent can work without harm to the children in their care.")),
        Factor("(h)", _("The age and health of each of you.")),
        Factor("(i)", _("Violence between you or against a child, with the papers that show it.")),
        Factor("(j)", _("What taxes each of you will pay because of it.")),
        Factor("(k)", _("Who would be hurt more by the order.")),
        Factor("(l)", _("That each of you can support yourself in a reasonable time.")),
        Factor("(m)", _("A conviction of one of you for violence against the other.")),
        Factor("(n)", _("Anything else that is just and fair.")),
    )
