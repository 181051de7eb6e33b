"""The last day before a judge may end a case that was not served."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures import dismissal
from firstpaper.law.measures.record import TAKING_PART


@deadline(
    "Serve the papers by this day, so that no judge may end the case",
    rule="dismissal.optional",
    cite="Code Civ. Proc. 583.420(a)(1)",
    if_missed="From the next day on, a judge may dismiss the case.",
    neutral="papers should be handed over",
    done_by="record.service",
    needless_by=(*TAKING_PART, "record.support_or_custody_order"),
    hangs_on_filing=True,
)
def unserved(case: Case, on: date) -> Dated | None:
    """Two years from the filing."""
    due = dismissal.unserved_until(case, on)
    return Dated(due) if due else None
