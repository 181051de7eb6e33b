"""The court's own look at how the case goes."""

from datetime import date

from firstpaper.counting import day_after, spell_date
from firstpaper.facts import Case
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import may_be_left_out, next_review
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import rule
from firstpaper.locale import _

NEAR_DAYS = 45
"""How long before it we begin to speak of it. Ours, not the law's."""


@rule(
    "The court looks at how the case goes",
    cite=("Cal. Rules of Court, rule 5.83(c)(2)", "Cal. Rules of Court, rule 5.83(c)(3)"),
    since=date(2015, 1, 1),
    not_modelled="How your court does it. Local rules decide if there is a hearing, a letter or neither.",
)
def review(case: Case, on: date) -> Found | None:
    """About every 180 days after the filing, the court looks at whether the case moves.

    Some courts hold a short hearing, some send a letter, some do nothing that you see. It is there to help
    people finish. If the court calls you in, go: staying away can cost you time and money.

    How we count. 180 days from the filing, then each 180 days more. It is the court's day, so we do not
    move it.

    When it can end. After 18 months from the filing the court need not look again if it finds that neither of
    you takes part. It looks again once the case can be dismissed, or once you two take it up again. What the
    court finds we cannot know. So from then on we name no day among your dates, unless the other side took
    part or a trial is set.

    An example. Filed on November 25, 2026: the first look is by May 24, 2027, the next by November 20. The
    18 months end on May 25, 2028.
    """
    filed = filed_on(case, on)
    due = next_review(case, on) if filed else None
    if filed is None or due is None or due.target > day_after(on, NEAR_DAYS):
        return None
    day = spell_date(due.target)
    says, do = _may_look(day, filed) if may_be_left_out(case, on, due) else _looks(day)
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says,
        do,
        facts=("record.filed_on",),
        dates={"review": due.target},
        steps=due.steps,
    )


def _looks(day: str) -> tuple[str, str]:
    says = _("By about {day} the court looks at how the case goes. It may call you in.")
    return says.format(day=day), _("Open all mail from the court. If it names a day, be there.")


def _may_look(day: str, filed: date) -> tuple[str, str]:
    months = figure("dismissal.review_end_months", filed).value
    says = _(
        "Once {months} months have gone by since the filing, the court need not look at the case again if it "
        "finds that neither of you takes part. If it does look, that is by about {day}."
    )
    do = _("If you want to go on, take the next step. Open all mail from the court.")
    return says.format(months=months, day=day), do
