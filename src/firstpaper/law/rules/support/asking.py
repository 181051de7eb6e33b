"""What asking for support does not do."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import SupportChoice
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.register import rule
from firstpaper.law.words import spaced
from firstpaper.locale import _


@rule(
    "Asking for support brings no money yet",
    cite="Fam. Code 3600",
    since=date(2025, 1, 1),
    not_modelled="How much, and how soon a court has time for a hearing.",
)
def asking(case: Case, on: date) -> Found | None:
    """Asking for support in the petition pays nothing by itself: a judge must first order it.

    What the law says. While the case runs, a judge can order support for a spouse and for the children
    (Fam. Code 3600). But somebody must ask for that order. The petition only keeps the way open.

    How to ask. File a request for order, form FL-300, with a statement of income and expenses, form
    FL-150. The court sets a day. The request has to be served on the other person in time.

    For the children. The child support agency of your county can ask for child support and collect it
    (Fam. Code 17400). It is free, and you need no lawyer. Tell it if you are in danger.

    An example. You file in December and ask for support. Nothing comes in January. In February you file
    FL-300, and the judge decides in March. Support most often does not reach back before the request.

    What to do. If you need money soon, ask the self-help center about FL-300 on the day you file.
    """
    chosen = {
        "support.petitioner": known(case.support.petitioner),
        "support.respondent": known(case.support.respondent),
    }
    asked = tuple(key for key, choice in chosen.items() if choice is SupportChoice.ASK)
    minors = has_minor_children(case, on)
    if not asked and not minors:
        return None
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        _("The petition by itself brings no support. No money comes until a judge orders it."),
        spaced([_request(), _agency() if minors else ""]),
        facts=(*asked, *(("children.family",) if minors else ())),
        cite=("Fam. Code 17400",) if minors else (),
    )


def _request() -> str:
    return _(
        "If you need money while the case runs, ask the self-help center how to file a request for order "
        "(form FL-300) with your income and expenses (form FL-150)."
    )


def _agency() -> str:
    return _("For child support, the child support agency of your county can do it for you, free of charge.")
