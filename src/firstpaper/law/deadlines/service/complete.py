"""The day on which service is complete, where that is later than the serving."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Dated, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.due import unmoved
from firstpaper.law.measures.record import TAKING_PART, took_part
from firstpaper.law.measures.service import certainty, service_complete


@deadline(
    "Service is complete, and the time to respond begins",
    rule="response.due",
    cite="Code Civ. Proc. 412.20(a)(3)",
    who=Actor.RESPONDENT,
    meaning=Meaning.COURT_DAY,
    if_missed="Nothing has to be done that day. The other days run from it.",
    neutral="handing over is complete",
    needless_by=TAKING_PART,
)
def complete(case: Case, on: date) -> Dated | None:
    """The day counted by the way of service; nothing once it has come."""
    completed = service_complete(case, on)
    if completed is None or completed.day <= on or took_part(case, on):
        return None
    return Dated(unmoved(completed), certainty=certainty(case, on))
