"""FW-001, the request to waive court fees. Private: it is never served, nor put behind the petition.

Anybody who fits one of three reasons may ask (Gov. Code 68632). What the second page asks for depends on the
reason. We ask few of its questions: the rest is between the filer and the court.
"""

from collections.abc import Iterator
from datetime import date
from enum import StrEnum

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Benefit
from firstpaper.facts.money import in_dollars
from firstpaper.forms.answer import Answer, blank, fill, mark, sign
from firstpaper.forms.caption_box import with_case_name
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.open_answers import still_open
from firstpaper.forms.saying import nothing_to_mark, written
from firstpaper.forms.when import wants_fee_waiver
from firstpaper.law.figure import FigureNotInForce
from firstpaper.law.measures.fee_waiver import IncomeLimit, income_limit
from firstpaper.locale import _

FORM = "FW-001"
LAW = "Gov. Code 68632"
FEWEST = ("changes", "income", "household")
REST = ("property", "expenses", "more")
WAYS = ("needs.all", "needs.some", "needs.over_time")


class Reason(StrEnum):
    """Why the court may let somebody off, in the order of the boxes; `UNCLEAR` while an answer is missing."""

    BENEFITS = "benefits"
    INCOME = "income"
    NEEDS = "needs"
    NONE = "none"
    UNCLEAR = "unclear"


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The request, where the filer wants to ask."""
    if not wants_fee_waiver(case, on):
        return ()
    return (filled(edition_for(FORM, on), tuple(_answers(case, on)), private=True),)


def reason(case: Case, on: date) -> Reason:
    """The first of the three reasons that fits, by the answers."""
    told, limit = case.waiver, limit_for(case, on)
    income, short = known(told.income), known(told.short_of_needs)
    if known(told.benefits):
        return Reason.BENEFITS
    if limit and income is not None and income < limit.monthly:
        return Reason.INCOME
    if short:
        return Reason.NEEDS
    unclear = known(told.benefits) is None or limit is None or income is None or short is None
    return Reason.UNCLEAR if unclear else Reason.NONE


def limit_for(case: Case, on: date) -> IncomeLimit | None:
    """The income limit for the household; None where its size or the guideline of the day is not known."""
    household = known(case.waiver.household)
    try:
        return income_limit(household, on) if household else None
    except FigureNotInForce:
        return None


def _answers(case: Case, on: date) -> Iterator[Answer]:
    why = reason(case, on)
    yield from with_case_name(case)
    yield fill("job", _("Your job, and your employer's name and address. If you have none, write: none."))
    yield blank("lawyer", _("This is for lawyers. You file for yourself."))
    yield mark("fees.superior", _("Your case is in the superior court."), "Cal. Rules of Court, rule 3.51")
    yield blank("fees.appellate", _("Your case is not on appeal."))
    yield from _benefits(case, why)
    yield from _income(case, why, on)
    yield from _needs(case, why)
    yield fill("asked_before", _("Mark it only if you asked in this case in the last six months."))
    yield from _signing(case)
    yield from _second_page(case, why)


def _benefits(case: Case, why: Reason) -> Iterator[Answer]:
    told = known(case.waiver.benefits)
    box = "why.benefits"
    if told is None:
        yield from (still_open(case, name, "waiver.benefits") for name in (box, *map(_benefit, Benefit)))
        return
    if why is Reason.BENEFITS:
        yield mark(box, _("You get a benefit on this list. One is enough."), f"{LAW}(a)")
    else:
        yield blank(box, _("You get none of these benefits."))
    for benefit in Benefit:
        name = _benefit(benefit)
        if benefit in told:
            yield mark(name, _("You told us that you get it."))
        else:
            yield blank(name, _("You did not name this benefit."))


def _benefit(benefit: Benefit) -> str:
    return f"benefits.{benefit}"


def _income(case: Case, why: Reason, on: date) -> Iterator[Answer]:
    limit, income = limit_for(case, on), known(case.waiver.income)
    box = "why.income"
    if why is Reason.INCOME and limit and income is not None:
        less = _("You told us of {income} a month. That is less than our limit of {limit}.")
        words = less.format(income=in_dollars(income), limit=in_dollars(limit.monthly))
        yield mark(box, words, f"{LAW}(b)")
    elif why is Reason.UNCLEAR:
        yield still_open(case, box, _missing(case))
    else:
        yield blank(box, _("Mark one reason only. Yours is another, or this one does not fit."))
    yield blank("table", _table_words(limit), f"{LAW}(b)")


def _table_words(limit: IncomeLimit | None) -> str:
    own = _("Go by the numbers printed on your own form.")
    if limit is None:
        return own
    counted = _("For a household of {people} we count {limit} a month.")
    return f"{counted.format(people=limit.household, limit=in_dollars(limit.monthly))} {own}"


def _needs(case: Case, why: Reason) -> Iterator[Answer]:
    box = "why.needs"
    if why is Reason.NEEDS:
        yield mark(box, _("Paying would leave you short of basic needs, by your answer."), f"{LAW}(c)")
        choose = _("Choose one: all of the fees, some of them, or time to pay.")
        yield from (fill(way, choose) for way in WAYS)
    elif why is Reason.UNCLEAR:
        yield from (still_open(case, name, _missing(case)) for name in (box, *WAYS))
    else:
        other = _("Mark one reason only. Yours is another, or this one does not fit.")
        yield from (blank(name, other) for name in (box, *WAYS))


def _signing(case: Case) -> Iterator[Answer]:
    swears = _("By signing you swear that every word on both pages is true.")
    yield blank("signing.perjury", f"{nothing_to_mark()} {swears}", "Code Civ. Proc. 2015.5")
    yield sign("signing.date", _("Write the day on which you sign."), "Code Civ. Proc. 2015.5")
    yield written(case, "signing.name", "petitioner.name", _("Your full legal name."))
    yield sign("signing.signature", _("You sign, and nobody for you."))


def _second_page(case: Case, why: Reason) -> Iterator[Answer]:
    """Items 7 to 9 for the income, all of the page for the needs, none of it for a benefit."""
    needed = {Reason.INCOME: FEWEST, Reason.NEEDS: (*FEWEST, *REST)}.get(why, ())
    for name in (*FEWEST, *REST):
        if why is Reason.UNCLEAR:
            yield still_open(case, name, _missing(case))
        elif name in needed:
            yield fill(name, _of_second_page()[name])
        elif why is Reason.BENEFITS:
            yield blank(name, _("With a benefit from the list, you need not fill in this page."))
        else:
            yield blank(name, _("Your reason does not need this."))


def _of_second_page() -> dict[str, str]:
    return {
        "changes": _("Mark it if your pay goes up and down. Then give the average of the last 12 months."),
        "income": _("Each kind of money you get in a month, before taxes, and the total."),
        "household": _("Each person who lives on the same money: age, what they are to you, their money."),
        "property": _(
            "Cash, accounts, cars, homes and other things: what they are worth, what you owe on them."
        ),
        "expenses": _("What goes out each month: rent, food, doctors, child care, car, loans, support paid."),
        "more": _("Anything else the judge should know. Title an extra page “Financial Information”."),
    }


def _missing(case: Case) -> str:
    keys = ("waiver.benefits", "waiver.household", "waiver.income", "waiver.short_of_needs")
    return next((key for key in keys if known(case.fact(key)) is None), "waiver.income")
