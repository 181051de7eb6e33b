"""The last day to answer the amended petition."""

from dataclasses import replace
from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.deadlines.response._owed import owed
from firstpaper.law.measures.record import responded, took_part
from firstpaper.law.measures.response import Paper
from firstpaper.locale import _


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
    """Thirty days from the day it was served. There is no default once both filed (rule 5.74(c)(2))."""
    found = owed(case, on, Paper.AMENDED_PETITION)
    if found is None or not took_part(case, on):
        return found
    if responded(case, on):
        says = _("You have both filed papers, so there is no default. Ask the self-help center what follows.")
    else:
        says = _("The other side has taken part. Ask the self-help center what follows.")
    return replace(found, if_missed=says)
