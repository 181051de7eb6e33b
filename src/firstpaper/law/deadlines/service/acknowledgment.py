"""The day by which the form that says the papers came is to be sent back."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.record import TAKING_PART
from firstpaper.law.measures.service import acknowledgment_back_by


@deadline(
    "The form that says the papers came is signed and sent back",
    rule="service.acknowledgment",
    cite="Code Civ. Proc. 415.30(c)-(d)",
    who=Actor.RESPONDENT,
    if_missed="Do not wait for it: have the papers served in another way. If it still comes, it counts.",
    neutral="signed form due back",
    chart=Chart("Signed form due back", "The form that says the papers came is due back by {day}."),
    done_by="record.service.acknowledgment_back_on",
    needless_by=TAKING_PART,
    waits_for=Event.MAILED_WITH_FORM,
)
def acknowledgment(case: Case, on: date) -> Dated | None:
    """Twenty days from the mailing."""
    back = acknowledgment_back_by(case, on)
    return Dated(back) if back else None
