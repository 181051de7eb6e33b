"""The last day to serve the papers."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.deadlines.dismissal._limited import limited
from firstpaper.law.measures import dismissal
from firstpaper.law.measures.record import TAKING_PART


@deadline(
    "Last day to serve the papers",
    rule="dismissal.serve_by",
    cite=("Code Civ. Proc. 583.210(a)", "Code Civ. Proc. 583.250"),
    if_missed="The court must dismiss the case.",
    neutral="last day to hand over papers",
    done_by="record.service",
    needless_by=(*TAKING_PART, "record.support_or_custody_order"),
    hangs_on_filing=True,
)
def serve_by(case: Case, on: date) -> Dated | None:
    """Three years from the filing."""
    return limited(dismissal.serve_by(case, on))
