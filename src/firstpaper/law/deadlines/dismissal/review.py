"""The next day by which the court looks at the case."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Dated, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures import dismissal


@deadline(
    "By about this day the court looks at how the case goes",
    rule="dismissal.review",
    cite="Cal. Rules of Court, rule 5.83(c)(2)",
    who=Actor.COURT,
    meaning=Meaning.COURT_DAY,
    if_missed="Your court may call you in. Read its mail.",
    neutral="review by the court",
    hangs_on_filing=True,
)
def review(case: Case, on: date) -> Dated | None:
    """Each 180 days from the filing, as long as the court must look."""
    due = dismissal.next_review(case, on)
    return Dated(due) if due and not dismissal.may_be_left_out(case, on, due) else None
