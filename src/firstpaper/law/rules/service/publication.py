"""The summons printed in a newspaper."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.law.finding import Found, Weight
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import method
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import completed, need_day
from firstpaper.locale import _


@rule(
    "The summons printed in a newspaper",
    cite=("Code Civ. Proc. 415.50", "Gov. Code 6064", "Fam. Code 2011", "Fam. Code 2104(f)"),
    since=date(2004, 1, 1),
    not_modelled="What a judge asks to see first, and what the court can and cannot order afterwards.",
)
def publication(case: Case, on: date) -> Found | None:
    """If the other side cannot be found, a judge can order that the summons be printed in a newspaper.

    What the law asks. A judge must sign an order first. You must show how you looked for the other side,
    and that no other way of service works. The summons is printed once a week, four weeks in a row, or
    longer if the order says so. If an address turns up in that time, a copy is mailed there.

    The papers in order: FL-980, the application, which lists how you looked; FL-982, the order; then the
    proof that the newspaper signs, which you file. We have not seen the two forms.

    How we count. The first day it is printed is day 1. Service is complete at the end of day 28 (Gov. Code
    6064). If the judge ordered a longer time, the order counts.

    An example. First printed on Thursday, November 5, 2026, then on November 12, 19 and 26: complete on
    Wednesday, December 2. Thirty days later is New Year's Day, so the other side has until Monday,
    January 4, 2027.

    What it can do. The court can end the marriage, and decide on property in California. It may not be
    able to order somebody who was only reached by newspaper to pay money. Ask before you choose it.

    Your list of money and property (the declaration of disclosure) is not owed while the other side
    stays silent. If a response comes, you have 30 days.
    """
    if method(case) is not ServiceMethod.PUBLICATION:
        return None
    found = completed(
        case,
        on,
        _("Service by newspaper is complete on {day}.")
        if day(happened(case, on).service.complete_on)
        else _(
            "Service by newspaper is complete on {day}: day 28, if the first day it was printed is day 1."
        ),
        _(
            "Read the judge's order: it may ask for a longer time. A judge may not be able to order money "
            "from somebody served this way, so ask about that."
        ),
        weight=Weight.LOOK_AGAIN,
    )
    return found or need_day("record.service.first_published_on", _("the first day it was printed"))
