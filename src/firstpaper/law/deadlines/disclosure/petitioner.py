"""The last day to serve the petitioner's declaration of disclosure."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.disclosure import petitioner_disclosure


@deadline(
    "Serve the declaration of disclosure on the other side",
    rule="disclosure.due",
    cite="Fam. Code 2104(f)",
    if_missed="It is still owed. A judgment without it can be set aside.",
    neutral="list to hand over",
    chart=Chart("Your disclosure due", "Your disclosure is due by {day}."),
    done_by="record.disclosure_served_on",
    waits_for=Event.RESPONSE,
    hangs_on_filing=True,
)
def petitioner(case: Case, on: date) -> Dated | None:
    """Sixty days from the petition."""
    owed = petitioner_disclosure(case, on)
    return Dated(owed.due, certainty=owed.certainty, since=owed.since) if owed else None
