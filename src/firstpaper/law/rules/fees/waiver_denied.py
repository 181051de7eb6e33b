"""A fee waiver that was denied."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import FeeState
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.fees import after_denial
from firstpaper.law.register import rule
from firstpaper.law.words import target_day
from firstpaper.locale import _

FACTS = ("record.fee", "record.waiver_denied_on")


@rule(
    "A fee waiver that was denied",
    cite="Cal. Rules of Court, rule 5.43(a)",
    since=date(2019, 1, 1),
    not_modelled="From which day your court counts: the notice's date, its mailing, or the day it came.",
)
def waiver_denied(case: Case, on: date) -> Found | None:
    """After a fee waiver is denied you have ten days to act, or the clerk can void your petition.

    You can do one of three things in that time: pay the fee, file the request again with every answer filled
    in, or ask for a hearing (form FW-006).

    How we count. Ten days after the notice. The day of the notice is not counted. If the court is closed
    on the last day, the law moves it to the next day the court is open. Do not wait for that.

    An example. The notice is of Wednesday, November 18, 2026. Ten days end on Saturday, November 28. The
    next open day is Monday, November 30.

    Why it matters. If the petition is void, it is as if you had never filed. The filing day is lost.
    """
    if known(case.record.fee) is not FeeState.WAIVER_DENIED:
        return None
    due = after_denial(case, on)
    if due is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.GET_ADVICE,
            _("Your fee waiver was denied. You have ten days from the notice, and we do not know its day."),
            _("Act now: pay, file the request again with every answer, or ask for a hearing (form FW-006)."),
            facts=FACTS,
        )
    over = due.missed(on)
    says = (
        _("Your fee waiver was denied. The time to act ended on {day}. The clerk can void your petition.")
        if over
        else _(
            "Your fee waiver was denied. You have until {day} to act, or the clerk can void your petition."
        )
    )
    return Found(
        Outcome.NOT_MET if over else Outcome.CLOSE,
        Weight.GET_ADVICE,
        says.format(day=target_day(due)),
        _("Ask the clerk today if your petition still stands.")
        if over
        else _("Pay, file the request again with every answer, or ask for a hearing (form FW-006)."),
        facts=FACTS,
        dates={"act_by": due.target, "act_by_moved_to": due.rolled},
        steps=due.steps,
    )
