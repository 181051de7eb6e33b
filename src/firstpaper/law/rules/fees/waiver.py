"""Filing without paying."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.money import in_dollars
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.fee_waiver import IncomeLimit, income_limit
from firstpaper.law.measures.fees import wants_waiver
from firstpaper.law.register import rule
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

LOOK, WANTED, BENEFITS = "shortcuts.look_at", "waiver.wanted", "waiver.benefits"
HOUSEHOLD, INCOME, NEEDS = "waiver.household", "waiver.income", "waiver.short_of_needs"


@rule(
    "Filing without paying the court",
    cite=(
        "Gov. Code 68632",
        "Gov. Code 68634(b)-(c)",
        "Gov. Code 68636(a)",
        "Cal. Rules of Court, rule 3.51",
    ),
    since=date(2023, 1, 19),
    not_modelled="Property, prisoners, paying in part or over time, and repayment ordered later.",
)
def waiver(case: Case, on: date) -> Found | None:
    """Somebody with little money can ask the court to let them off the fees, for any one of three reasons.

    One: you get a public benefit on the court's list, such as Medi-Cal, CalFresh, CalWORKs, SSI or
    unemployment benefits. Go by the boxes on the form.

    Two: your household's income in a month, before taxes, is 200 percent of the federal poverty guideline or
    less. The guideline of 2026 for three people is $27,320 a year. Twice that, by twelve, is $4,553.34 a
    month. The law says "or less", the form "less than", so at the limit to the cent ask the clerk. New
    guidelines come out each January, and the form follows some weeks later. Use the numbers on your form.

    What a veteran gets for a disability from the service does not count as income. The law has said so since
    January 1, 2026. Leave it out of the sum.

    Three: paying would leave you short of money for food, rent or other basic needs. The court can then let
    you off in full, in part, or let you pay over time. This needs the whole second page of the form.

    How it works. Hand in form FW-001, and FW-003 with its top filled in, together with the petition. The
    clerk must take them and file your papers at once, without a fee and without proof. The form is private:
    the other side does not get it. Answer every item that fits you, for a form that is not complete is
    denied. Each spouse asks separately. Tell the court within five days if your money gets better.

    What to do. If one of the three fits, ask. If you are not sure, ask the self-help center.
    """
    if not wants_waiver(case):
        return _not_sure() if case.waiver.wanted is DONT_KNOW else None
    limit = _limit(case, on)
    says, outcome, do = _judged(case, limit)
    return Found(
        outcome,
        Weight.GOOD_TO_KNOW if outcome in (Outcome.MET, Outcome.NOT_MET) else Weight.LOOK_AGAIN,
        " ".join((says, *_newer_guideline(limit, on))),
        do,
        facts=(LOOK, WANTED, BENEFITS, HOUSEHOLD, INCOME, NEEDS),
        values={"waiver.monthly_limit": str(limit.monthly)} if limit else {},
        steps=_steps(case, limit),
    )


def _not_sure() -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("You are not sure whether the court's fees are hard for you to pay."),
        _("Answer yes, and we check whether the court may let you off."),
        facts=(WANTED,),
    )


def _judged(case: Case, limit: IncomeLimit | None) -> tuple[str, Outcome, str]:
    """What is said, how the case stands, and what to do."""
    if reasons := tuple(_reasons(case, limit)):
        return (
            _("You may be able to file without paying: {reasons}.").format(reasons=in_a_row(reasons)),
            Outcome.MET,
            _("Hand in forms FW-001 and FW-003 with the petition. Keep them apart: they are private."),
        )
    if limit and known(case.waiver.income) == limit.monthly:
        return (
            _("Your household's income is at the limit to the cent: {limit} a month.").format(
                limit=in_dollars(limit.monthly)
            ),
            Outcome.CLOSE,
            _("The law counts that as low enough, but the form says less. Ask the clerk, or ask the court."),
        )
    if missing := tuple(_missing(case)):
        return (
            _("We cannot tell yet whether you may file without paying. Not known: {missing}.").format(
                missing=in_a_row(missing)
            ),
            Outcome.NEED_TO_KNOW,
            _("You can ask the court all the same, on forms FW-001 and FW-003."),
        )
    assert limit is not None
    return (
        _("No reason for a fee waiver seems to fit. Your household's income is over {limit} a month.").format(
            limit=in_dollars(limit.monthly)
        ),
        Outcome.NOT_MET,
        _(
            "Pay that a veteran gets for a disability from the service does not count: leave it out. "
            "If paying would be hard, ask the court all the same. It decides, not this program."
        ),
    )


def _limit(case: Case, on: date) -> IncomeLimit | None:
    household = known(case.waiver.household)
    return income_limit(household, on) if household else None


def _reasons(case: Case, limit: IncomeLimit | None) -> Iterator[str]:
    income = known(case.waiver.income)
    if known(case.waiver.benefits):
        yield _("you get a benefit on the court's list")
    if limit and income is not None and income < limit.monthly:
        yield _("your household gets less than {limit} a month").format(limit=in_dollars(limit.monthly))
    if known(case.waiver.short_of_needs):
        yield _("paying would leave you short of basic needs")


def _missing(case: Case) -> Iterator[str]:
    told = case.waiver
    if known(told.benefits) is None:
        yield _("which benefits you get")
    if known(told.household) is None:
        yield _("how many people live on the same money")
    if known(told.income) is None:
        yield _("the income of your household")
    if known(told.short_of_needs) is None:
        yield _("whether you would be short of basic needs")


def _steps(case: Case, limit: IncomeLimit | None) -> tuple[str, ...]:
    income = known(case.waiver.income)
    if limit is None:
        return ()
    if income is None:
        return limit.steps
    return (*limit.steps, _("Your household gets {amount} a month").format(amount=in_dollars(income)))


def _newer_guideline(limit: IncomeLimit | None, on: date) -> tuple[str, ...]:
    """A caution where a year has passed since the last guideline that we know."""
    if limit is None or on.year == limit.guideline_since.year:
        return ()
    return (_("The limit for {year} may be higher: a new one comes out each January.").format(year=on.year),)
