"""The last day to act after a fee waiver was denied."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.fees import after_denial


@deadline(
    "Pay the fee, ask again with a complete form, or ask for a hearing",
    rule="fees.waiver_denied",
    if_missed="The clerk can void your petition.",
    neutral="fee or new request due",
    chart=Chart("Fee or new request due", "You pay the fee, ask again or ask for a hearing by {day}."),
    waits_for=Event.WAIVER_DENIED,
)
def waiver_denied(case: Case, on: date) -> Dated | None:
    """Ten days from the notice of the denial."""
    denied = after_denial(case, on)
    return Dated(denied) if denied else None
