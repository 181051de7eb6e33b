"""The last day to answer the amended petition."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.deadlines.response._owed import owed
from firstpaper.law.measures.response import Paper


@deadline(
    "Last day to answer the amended petition",
    rule="response.amended",
    cite=("Code Civ. Proc. 471.5(a)", "Code Civ. Proc. 472(a)"),
    who=Actor.RESPONDENT,
    if_missed="If no response was filed at all, the petitioner can ask for a default.",
    neutral="answer due",
    chart=Chart(
        "Answer to the amended petition due", "The other side has until {day} to answer the amended petition."
    ),
    done_by="record.response_filed_on",
    waits_for=Event.AMENDED_SERVED,
)
def amended_petition(case: Case, on: date) -> Dated | None:
    """Thirty days from the day it was served."""
    return owed(case, on, Paper.AMENDED_PETITION)
