"""The last day to serve the papers that keeps the filing as the start of child support."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Chart, Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.support_start import serve_for_support_by


@deadline(
    "Serve the papers by this day, so that child support can start from the filing",
    rule="support.serve_in_time",
    if_missed="Child support may then start only on the day of service. The case goes on.",
    neutral="hand over papers soon",
    chart=Chart(
        "Serve, for child support", "Serve by {day}, so that child support can start from the filing."
    ),
    done_by="record.service",
    needless_by=("record.response_filed_on", "record.appeared_on"),
    hangs_on_filing=True,
)
def serve_in_time(case: Case, on: date) -> Dated | None:
    """Ninety days from the filing, where there is a minor child."""
    due = serve_for_support_by(case, on)
    return Dated(due) if due else None
