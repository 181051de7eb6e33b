"""The last day to serve the petitioner's declaration of disclosure."""

from datetime import date

from firstpaper.counting import short_date
from firstpaper.facts import Case
from firstpaper.law.deadline import Chart, Dated, Event
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.disclosure import DisclosureDue, petitioner_disclosure
from firstpaper.law.words import target_day
from firstpaper.locale import _


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
    """Sixty days from the petition, the first one where it was amended."""
    owed = petitioner_disclosure(case, on)
    if owed is None:
        return None
    return Dated(owed.due, certainty=owed.certainty, since=owed.since, also=_other_reading(owed))


def _other_reading(owed: DisclosureDue) -> str:
    if owed.by_the_amended is None:
        return ""
    return _("Counted from the amended petition, it is {day}.").format(
        day=target_day(owed.by_the_amended, short_date)
    )
