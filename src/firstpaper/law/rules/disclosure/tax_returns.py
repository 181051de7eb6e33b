"""Which tax returns go with the declaration."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.disclosure import disclosure_asked_for, petitioner_disclosure, tax_returns_since
from firstpaper.law.measures.record import day, filed_on, happened
from firstpaper.law.register import rule
from firstpaper.locale import _

SERVED = "record.disclosure_served_on"


@rule(
    "Which tax returns go with the declaration",
    cite="Fam. Code 2104(a)",
    since=date(2020, 1, 1),
    not_modelled="Returns that were never filed, and what to do when the other side has the copies.",
)
def tax_returns(case: Case, on: date) -> Found | None:
    """The declaration of disclosure holds every tax return filed in the two years before you serve it.

    It is the day the return was filed that counts, not the year it is about. A late return for an old year
    belongs there if it was filed in those two years.

    How we count. Back two years from the day you serve the declaration, both days included.

    An example. You serve it on January 24, 2027. Every return filed on January 24, 2025 or later goes with
    it. The return for 2022 that you filed late, in March 2025, goes with it. The return for 2023 that you
    filed in April 2024 does not.

    What to do. Make copies, federal and state. Leave out no page.
    """
    if filed_on(case, on) is None or not disclosure_asked_for(case):
        return None
    served = day(happened(case, on).disclosure_served_on)
    if served is None and petitioner_disclosure(case, on) is None:
        return None
    since = tax_returns_since(served or on)
    says = (
        _("You served your declaration on {served}. Every tax return filed since {since} belonged with it.")
        if served
        else _(
            "Suppose you serve your declaration on {served}. Every tax return filed since {since} goes with "
            "it."
        )
    )
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says.format(served=spell_date(served or on), since=spell_date(since)),
        _("The day the return was filed counts, not its tax year."),
        facts=("matter.kind", SERVED),
        dates={"tax_returns_since": since},
        values={"disclosure.tax_return_years": figure("disclosure.tax_return_years", served or on).value},
    )
