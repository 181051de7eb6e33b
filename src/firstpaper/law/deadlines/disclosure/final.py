"""The last day before a trial for the final declarations of disclosure."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.disclosure import final_by


@deadline(
    "Last day before the trial to serve your final declarations of disclosure",
    rule="disclosure.final",
    cite=("Fam. Code 2105(a)", "Code Civ. Proc. 12c(a)"),
    who=Actor.BOTH,
    if_missed="It is still owed. A judgment without it can be set aside.",
    neutral="last list to hand over",
    done_by="record.final_disclosure",
)
def final(case: Case, on: date) -> Dated | None:
    """Counted back from the day of the trial."""
    owed = final_by(case, on)
    return Dated(owed.due, certainty=owed.certainty) if owed else None
