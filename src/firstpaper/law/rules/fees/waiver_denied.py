"""A fee waiver that was denied."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import FeeState, WaiverDenial
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.fees import after_denial, paid_in_time_by
from firstpaper.law.register import rule
from firstpaper.law.words import target_day
from firstpaper.locale import _

FACTS = ("record.fee", "record.waiver_denied_on", "record.waiver_denied_why")


@rule(
    "A fee waiver that was denied",
    cite=("Cal. Rules of Court, rule 5.43(a)", "Gov. Code 68634(g)"),
    since=date(2019, 1, 1),
    not_modelled="From which day your court counts: the notice's date, its mailing, or the day it came.",
)
def waiver_denied(case: Case, on: date) -> Found | None:
    """After a fee waiver is denied you have ten days to act, or the clerk must void your petition.

    What you can do in that time hangs on why the court said no. The order says it (form FW-003). You can
    always pay the fee, or ask for a hearing (form FW-006). You can hand in a new request (form FW-001) only
    if the first one was denied because it was not complete. If the court found that you do not qualify, a new
    request does not save the petition.

    How we count. Ten days after the notice. The day of the notice is not counted. If the court is closed
    on the last day, the law moves it to the next day the court is open. Do not wait for that.

    An example. The notice is of Wednesday, November 18, 2026. Ten days end on Saturday, November 28. The
    next open day is Monday, November 30.

    Why it matters. The rule leaves the clerk no choice. If the petition is void, it is as if you had never
    filed. The filing day is lost, and with it the orders in the summons.
    """
    if known(case.record.fee) is FeeState.PAID:
        return _paid(case, on)
    if known(case.record.fee) is not FeeState.WAIVER_DENIED:
        return None
    due = after_denial(case, on)
    if due is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.GET_ADVICE,
            _("Your fee waiver was denied. You have ten days from the notice, and we do not know its day."),
            _("Act now. {ways}").format(ways=_ways(case)),
            facts=FACTS,
        )
    over = due.missed(on)
    says = (
        _("Your fee waiver was denied. The time to act ended on {day}. The clerk must void your petition.")
        if over
        else _(
            "Your fee waiver was denied. You have until {day} to act. After that the clerk must void your "
            "petition."
        )
    )
    return Found(
        Outcome.NOT_MET if over else Outcome.CLOSE,
        Weight.GET_ADVICE,
        says.format(day=target_day(due)),
        _("Ask the clerk today if your petition still stands.") if over else _ways(case),
        facts=FACTS,
        dates={"act_by": due.target, "act_by_moved_to": due.rolled},
        steps=due.steps,
    )


def _paid(case: Case, on: date) -> Found | None:
    """The fee was paid after a denial: whether in time, only the receipt shows."""
    due = paid_in_time_by(case, on)
    if due is None:
        return None
    says = _("Your fee waiver was denied, and you paid the fee. That counts if you paid by {day}.")
    return Found(
        Outcome.CLOSE,
        Weight.LOOK_AGAIN,
        says.format(day=target_day(due)),
        _("Keep the receipt. If you paid later, ask the clerk today if your petition still stands."),
        facts=FACTS,
        dates={"act_by": due.target, "act_by_moved_to": due.rolled},
        steps=due.steps,
    )


def _ways(case: Case) -> str:
    """What is open, by the reason that the court gave."""
    match known(case.record.waiver_denied_why):
        case WaiverDenial.INCOMPLETE:
            return _(
                "Pay the fee, hand in a new form FW-001 with every answer, or ask for a hearing "
                "(form FW-006)."
            )
        case WaiverDenial.NOT_ELIGIBLE:
            return _(
                "Pay the fee, or ask for a hearing (form FW-006). A new form FW-001 does not help: the court "
                "did not say that the first one was not complete."
            )
        case _:
            return _(
                "Pay the fee, or ask for a hearing (form FW-006). Look at form FW-003 for why the court said "
                "no. Only if your form was not complete can you hand in a new one."
            )
