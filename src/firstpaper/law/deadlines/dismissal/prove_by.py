"""The last day to file the proof of service."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.deadlines.dismissal._limited import limited
from firstpaper.law.measures import dismissal
from firstpaper.law.measures.record import TAKING_PART


@deadline(
    "Last day to file the proof of service",
    rule="dismissal.prove_by",
    cite=("Code Civ. Proc. 583.210(b)", "Code Civ. Proc. 583.250"),
    if_missed="The court must dismiss the case.",
    neutral="last day for the proof",
    done_by="record.service.proof_filed_on",
    needless_by=(*TAKING_PART, "record.support_or_custody_order"),
    hangs_on_filing=True,
)
def prove_by(case: Case, on: date) -> Dated | None:
    """Sixty days from the end of the time to serve."""
    return limited(dismissal.prove_by(case, on))
