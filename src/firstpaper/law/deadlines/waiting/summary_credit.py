"""The first day on which a marriage could end with the time of a summary case taken off."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.authority import Certainty
from firstpaper.law.deadline import Actor, Dated, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.due import unmoved
from firstpaper.law.measures.waiting import credited_end, has_waiting


@deadline(
    "Perhaps the marriage can end from this day, with credit for the summary case",
    rule="waiting.summary_credit",
    who=Actor.COURT,
    meaning=Meaning.FIRST_DAY,
    if_missed="How the credit is counted is not settled. Ask the court.",
    neutral="waiting time perhaps over",
    certainty=Certainty.UNCONFIRMED,
)
def summary_credit(case: Case, on: date) -> Dated | None:
    """The six months less the days that the revoked summary case ran."""
    credited = credited_end(case, on) if has_waiting(case) else None
    return Dated(unmoved(credited)) if credited else None
