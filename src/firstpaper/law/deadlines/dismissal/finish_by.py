"""The last day to bring the case to trial."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.deadlines.dismissal._limited import limited
from firstpaper.law.measures import dismissal


@deadline(
    "Last day to bring the case to trial",
    rule="dismissal.finish_by",
    cite=("Code Civ. Proc. 583.310", "Code Civ. Proc. 583.360"),
    if_missed="The court must dismiss the case.",
    neutral="last day to finish",
    needless_by=("record.support_or_custody_order",),
    hangs_on_filing=True,
)
def finish_by(case: Case, on: date) -> Dated | None:
    """Five years from the filing."""
    return limited(dismissal.finish_by(case, on))
