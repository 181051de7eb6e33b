"""The court's own look at how the case goes."""

from datetime import date

from firstpaper.counting import day_after, spell_date
from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import next_review
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import rule
from firstpaper.locale import _

NEAR_DAYS = 45
"""How long before it we begin to speak of it. Ours, not the law's."""


@rule(
    "The court looks at how the case goes",
    cite="Cal. Rules of Court, rule 5.83(c)(2)",
    since=date(2015, 1, 1),
    not_modelled="How your court does it. Local rules decide if there is a hearing, a letter or neither.",
)
def review(case: Case, on: date) -> Found | None:
    """About every 180 days after the filing, the court looks at whether the case moves.

    Some courts hold a short hearing, some send a letter, some do nothing that you see. It is there to help
    people finish. If the court calls you in, go: staying away can cost you time and money.

    How we count. 180 days from the filing, then each 180 days more. It is the court's day, so we do not
    move it.

    An example. Filed on November 25, 2026: the first look is by May 24, 2027, the next by November 20.
    """
    due = next_review(case, on) if filed_on(case, on) else None
    if due is None or due.target > day_after(on, NEAR_DAYS):
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("By about {day} the court looks at how the case goes. It may call you in.").format(
            day=spell_date(due.target)
        ),
        _("Open all mail from the court. If it names a day, be there."),
        facts=("record.filed_on",),
        dates={"review": due.target},
        steps=due.steps,
    )
