"""The last day to serve the papers that keeps the filing as the start of child support."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.law.deadline import Chart, Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.children import may_list_a_child
from firstpaper.law.measures.other_cases import about_children
from firstpaper.law.measures.record import TAKING_PART
from firstpaper.law.measures.support_start import certainty, serve_for_support_by
from firstpaper.locale import _


@deadline(
    "Serve the papers by this day, so that child support can start from the filing",
    rule="support.serve_in_time",
    if_missed="Child support may then start only on the day of service. The case goes on.",
    neutral="hand over papers soon",
    chart=Chart(
        "Serve, for child support", "Serve by {day}, so that child support can start from the filing."
    ),
    done_by="record.service",
    needless_by=TAKING_PART,
    hangs_on_filing=True,
)
def serve_in_time(case: Case, on: date) -> Dated | None:
    """Ninety days from the filing, where there is a minor child or support is asked for a grown one."""
    due = serve_for_support_by(case, on)
    return Dated(due, certainty=certainty(case, on), title=_title(case, on)) if due else None


def _title(case: Case, on: date) -> str:
    """The section is about a first order: where another case is about the children, there may be one."""
    if may_list_a_child(case, on) and not known(case.support.grown):
        return _(
            "If the child goes on the petition: serve by this day, so that child support can start from the "
            "filing"
        )
    if not about_children(case):
        return ""
    return _(
        "If a judge here may order child support: serve by this day, so that it can start from the filing"
    )
