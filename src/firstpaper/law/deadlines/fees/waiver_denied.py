"""The last day to act after a fee waiver was denied."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import WaiverDenial
from firstpaper.law.deadline import Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.fees import after_denial
from firstpaper.locale import _


@deadline(
    "Pay the fee, or ask for a hearing",
    rule="fees.waiver_denied",
    if_missed="The clerk must void your petition. Then it is as if you had never filed.",
    neutral="fee or new request due",
    chart=Chart("Fee due after the denial", "You pay the fee, or ask for a hearing, by {day}."),
    waits_for=Event.WAIVER_DENIED,
)
def waiver_denied(case: Case, on: date) -> Dated | None:
    """Ten days from the notice of the denial."""
    denied = after_denial(case, on)
    return Dated(denied, title=_title(case)) if denied else None


def _title(case: Case) -> str:
    """A new request counts only where the first one was denied as not complete (rule 5.43(a)(2))."""
    if known(case.record.waiver_denied_why) is not WaiverDenial.INCOMPLETE:
        return ""
    return _("Pay the fee, ask again with a complete form, or ask for a hearing")
