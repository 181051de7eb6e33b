"""A divorce that began as a legal separation."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "The six months after a separation became a divorce",
    cite=("Fam. Code 2321(a)", "Fam. Code 2339(a)"),
    since=date(1994, 1, 1),
    certainty=Certainty.SECONDARY,
    not_modelled="How your court counts. No opinion was found.",
)
def after_separation(case: Case, on: date) -> Found | None:
    """If a legal separation is changed to a divorce, the law does not say from when the six months run.

    The change counts as a new beginning "for the purposes only of the residence requirements". Practice
    books take that to mean: the six months still run from the day the other side was first served, or first
    took part. The section does not say so. A court could count from the service of the changed paper.

    An example. Served with the separation on March 2, 2026. Changed to a divorce on July 1 and served again
    on July 8. By the books the first day is September 3, 2026. By the other view it is January 9, 2027.

    What to do. Ask the court's self-help center how your court counts. Plan with the later day.
    """
    became = kind_of(case) is Kind.DISSOLUTION and known(case.matter.amended) is True
    if not became or known(case.matter.first_kind) is not Kind.LEGAL_SEPARATION:
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.LOOK_AGAIN,
        _(
            "Your case began as a legal separation. Practice books count the six months from the first "
            "service. The law does not say so."
        ),
        _("Ask the self-help center how your court counts. Until you know, plan with the later day."),
        facts=("matter.kind", "matter.amended", "matter.first_kind"),
    )
