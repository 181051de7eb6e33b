"""Keeping support open."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import SupportChoice
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "Keeping support open",
    cite=("Fam. Code 4335", "Fam. Code 4336(a)", "Fam. Code 4333"),
    since=date(2020, 1, 1),
    not_modelled="For how long a court keeps the question open after the judgment.",
)
def reserve(case: Case, on: date) -> Found | None:
    """Keeping support open asks for no money now, and leaves the way open to ask later.

    On the form this is called to "reserve" the question for future determination. The court keeps its
    power to order support and decides nothing yet. Many see it as the quiet middle way.

    Both sides of it. It keeps the peace and keeps the right. But no money comes from it. An order for
    support can reach back to the day a motion for it was filed, and no further, so time that passes
    without asking is lost. Neither asking nor keeping it open in the petition starts payments: for money
    while the case runs, a request for order with financial forms is needed.

    An example. You both work and earn about the same. You keep it open for both. A year later one of you
    loses a job and can ask.

    What to do. If you need money soon, ask the self-help center about a request for order.
    """
    chosen = {
        "support.petitioner": known(case.support.petitioner),
        "support.respondent": known(case.support.respondent),
    }
    facts = tuple(key for key, choice in chosen.items() if choice is SupportChoice.RESERVE)
    if not facts:
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("You keep support open. No money comes from that now, but it can be asked for later."),
        _("If you need money while the case runs, ask the self-help center about a request for order."),
        facts=facts,
    )
