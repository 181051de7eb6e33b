"""The last day to file and serve an amended paper after the joint petition was revoked."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.deadlines.response._owed import owed
from firstpaper.law.measures.response import Paper


@deadline(
    "Last day to file and serve an amended paper after the joint petition was revoked",
    rule="response.amended",
    cite=("Fam. Code 2342.5(b)(2)(A)", "Code Civ. Proc. 1013"),
    who=Actor.EITHER,
    if_missed="Ask the court what follows. Both of you had taken part in the case.",
    neutral="answer due",
    chart=Chart(
        "Answer after the revocation due",
        "An amended paper is due by {day}, after the joint petition was revoked.",
    ),
    done_by="record.response_filed_on",
    waits_for=Event.AMENDED_SERVED,
)
def revocation(case: Case, on: date) -> Dated | None:
    """Thirty days from the day it was served."""
    return owed(case, on, Paper.REVOCATION)
