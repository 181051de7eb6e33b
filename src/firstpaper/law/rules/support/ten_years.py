"""Ending support after a long marriage."""

from datetime import date

from firstpaper.counting import YearsMonths
from firstpaper.facts import Case, known
from firstpaper.facts.choices import SupportChoice, Union
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import longest
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

NEAR_MONTHS = 12
"""How near to the line we still warn. Ours, not the law's. `marriage.ten_years` warns nearer to it and asks a
person to look at the dates; here it is about giving up support for good, where a slip costs the most."""

FACTS = (
    "support.petitioner",
    "support.respondent",
    "dates.married_on",
    "dates.registered_on",
    "dates.separation_told_on",
    "dates.separation_acted_on",
)


@rule(
    "Ending support after a long marriage",
    cite=("Fam. Code 4336(a)", "Fam. Code 4336(b)"),
    since=date(1994, 1, 1),
    not_modelled="Times apart during the marriage, and what else makes a marriage long or short.",
)
def ten_years(case: Case, on: date) -> Found | None:
    """After a marriage of ten years or more, a court rarely ends support for either of you at the start.

    What the law says. Where a marriage is long, the court keeps its power over support without an end,
    unless the two agree in writing or the court orders otherwise. A marriage of ten years or more, from
    the wedding to the separation, is presumed to be long. A shorter one can be found long too. So ten
    years is not "support for life", and under ten years is not "no support".

    Why it matters here. You chose to end support for one of you or for both. In a long marriage that
    gives up, or takes away, a right that the law protects. If the other side does not answer, a judge may
    still refuse it. If it is your own right, you most likely lose it for good.

    How we count. Whole years and months from the wedding to the separation. An example: married on June
    15, 2014 and separated on June 14, 2024 is 9 years and 11 months: not presumed long. Separated one day
    later it is exactly 10 years: presumed long.

    Both sides of it. Ending it gives both a clean end. Keeping it open leaves the door as it is.

    What to do. Have a lawyer look at this before you file.
    """
    if is_nullity(case) or not _ends(case):
        return None
    years = figure("marriage.long_years", on).value
    span = longest(case)
    if span is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _(
                "You chose to end support for good. Whether that is wise depends on how long the marriage "
                "lasted, and we cannot count it yet."
            ),
            _(
                "Tell us the wedding day and the date of separation. After {years} years or more, get advice."
            ).format(years=years),
            facts=FACTS,
        )
    if span.total_months >= years * 12:
        return Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _(
                "You chose to end support for good. {lasted} From {years} years on the law presumes that it "
                "is long, and judges often refuse to end support."
            ).format(lasted=_lasted(case, span), years=years),
            help_first(),
            facts=FACTS,
            values={"support.long_marriage": True},
            steps=span.steps,
        )
    if span.total_months >= years * 12 - NEAR_MONTHS:
        return Found(
            Outcome.CLOSE,
            Weight.GET_ADVICE,
            _(
                "You chose to end support for good. {lasted} That is close to the {years} years from which "
                "the law presumes a long marriage, and a court can call a shorter one long."
            ).format(lasted=_lasted(case, span), years=years),
            _("Check both dates. {help}").format(help=help_first()),
            facts=FACTS,
            values={"support.long_marriage": False},
            steps=span.steps,
        )
    return None


def _lasted(case: Case, span: YearsMonths) -> str:
    told = set(known(case.matter.unions) or ())
    if told == {Union.MARRIAGE}:
        return _("Your marriage lasted {span}.").format(span=span)
    if Union.MARRIAGE not in told:
        return _("Your partnership lasted {span}.").format(span=span)
    return _("Your marriage or partnership lasted {span}.").format(span=span)


def _ends(case: Case) -> bool:
    return SupportChoice.END in (known(case.support.petitioner), known(case.support.respondent))
