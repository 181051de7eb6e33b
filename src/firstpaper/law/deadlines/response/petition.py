"""The last day to file and serve a response."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.deadlines.response._owed import owed
from firstpaper.law.measures.response import Paper


@deadline(
    "Last day to file and serve a response",
    rule="response.due",
    cite=("Fam. Code 2020", "Code Civ. Proc. 12, 12a"),
    who=Actor.RESPONDENT,
    if_missed="The petitioner can ask for a default. Until then a response can still be filed.",
    neutral="answer due",
    chart=Chart("Response due", "The other side has until {day} to respond."),
    done_by="record.response_filed_on",
    needless_by=("matter.other_side_answered",),
    waits_for=Event.SERVED,
)
def petition(case: Case, on: date) -> Dated | None:
    """Thirty days from the day service is complete."""
    return owed(case, on, Paper.PETITION)
