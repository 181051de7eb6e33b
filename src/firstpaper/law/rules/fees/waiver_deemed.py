"""When a fee waiver counts as granted."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import FeeState
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.fees import waiver_deemed as court_acts_by
from firstpaper.law.register import rule
from firstpaper.locale import _

FACTS = ("record.fee", "record.waiver_filed_on")


@rule(
    "When a fee waiver counts as granted",
    cite=("Cal. Rules of Court, rule 3.53", "Gov. Code 68634"),
    since=date(2019, 1, 1),
    not_modelled="What the court asks for if it acts in time: more facts, a hearing, or a part of the fee.",
)
def waiver_deemed(case: Case, on: date) -> Found | None:
    """If the court says nothing within five court days, a request to waive fees counts as granted.

    How we count. The day you file the request is not counted. Then five days on which the court is open.
    Saturdays, Sundays and court holidays are left out. When the fifth has passed without a notice, the
    waiver counts as granted.

    An example. Filed on Monday, November 23, 2026. The court days are November 24 and 25, then November
    30, December 1 and 2: Thanksgiving, the day after and the weekend are left out. If nothing came by the
    end of December 2, it counts as granted.

    What to do. You need not wait to file or to serve. If a clerk asks you to pay all the same, show a copy
    of your stamped request, and the rule.
    """
    if known(case.record.fee) is not FeeState.WAIVER_ASKED:
        return None
    counted = court_acts_by(case, on)
    if counted is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("We need the day the fee waiver request was filed, to count the five court days."),
            _("Look at the stamp on your copy, and record the day."),
            facts=FACTS,
        )
    over = on > counted.day
    says = (
        _("If the court sent no notice by {day}, your fee waiver counts as granted.")
        if over
        else _("The court has until the end of {day} to act on your fee waiver request.")
    )
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says.format(day=spell_date(counted.day)),
        _("Record what came of it. Keep the copy with the court's stamp.")
        if over
        else _("Go on with your case. You need not wait for the answer."),
        facts=FACTS,
        dates={"court_acts_by": counted.day},
        steps=counted.steps,
    )
