"""The last day to serve the other side's declaration of disclosure."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.disclosure import respondent_disclosure


@deadline(
    "The other side serves its declaration of disclosure on you",
    rule="disclosure.due",
    cite="Fam. Code 2104(f)",
    who=Actor.RESPONDENT,
    if_missed="It is still owed. A judgment without it can be set aside.",
    neutral="list from the other side due",
    chart=Chart("Their disclosure due", "The other side's disclosure is due by {day}."),
    done_by="record.other_disclosure_served_on",
    waits_for=Event.RESPONSE,
    hangs_on_filing=True,
)
def respondent(case: Case, on: date) -> Dated | None:
    """Sixty days from the response."""
    owed = respondent_disclosure(case, on)
    return Dated(owed.due, certainty=owed.certainty, since=owed.since) if owed else None
