"""The last day before a judge may end a case that was not tried."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures import dismissal


@deadline(
    "Finish the case by this day, so that no judge may end it",
    rule="dismissal.optional",
    cite="Code Civ. Proc. 583.420(a)(2)(A)",
    if_missed="From the next day on, a judge may dismiss the case.",
    neutral="should be finished",
    needless_by=("record.support_or_custody_order",),
    hangs_on_filing=True,
)
def untried(case: Case, on: date) -> Dated | None:
    """Three years from the filing."""
    due = dismissal.untried_until(case, on)
    return Dated(due) if due else None
