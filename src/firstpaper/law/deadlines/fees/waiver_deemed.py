"""The day by which the court acts on a fee waiver request."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.due import unmoved
from firstpaper.law.measures.fees import waiver_deemed as counted


@deadline(
    "The court acts on the fee waiver request by this day",
    rule="fees.waiver_deemed",
    cite="Cal. Rules of Court, rule 3.53",
    who=Actor.COURT,
    meaning=Meaning.COURT_DAY,
    if_missed="If you hear nothing by the end of this day, the waiver counts as granted.",
    neutral="answer about the fee due",
    chart=Chart("Court acts on the fee waiver", "The court acts on your fee waiver request by {day}."),
    waits_for=Event.WAIVER_ASKED,
)
def waiver_deemed(case: Case, on: date) -> Dated | None:
    """Five court days from the request; over once they have passed in silence."""
    deemed = counted(case, on)
    return Dated(unmoved(deemed)) if deemed and on <= deemed.day else None
