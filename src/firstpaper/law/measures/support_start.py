"""From when on child support can be ordered: from the filing, or only from the service (Fam. Code 4009)."""

from datetime import date

from firstpaper.counting import days_after
from firstpaper.facts import Case, known
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.measures.children import has_minor_children, may_list_a_child
from firstpaper.law.measures.dismissal import service_time_runs
from firstpaper.law.measures.due import Due, unmoved
from firstpaper.law.measures.record import begins_on
from firstpaper.law.measures.service import service_complete


def serve_for_support_by(case: Case, on: date) -> Due | None:
    """The last day to serve that keeps the filing as the start of child support.

    None without a minor child of both or one who may be, or a grown one for whom support is asked, and once
    the papers were served or the other side took part. It is not moved off a closed day: nobody decided that
    for this section, so the safe reading stands.
    """
    filed = begins_on(case, on)
    grown = bool(known(case.support.grown))
    if filed is None or not (grown or _of_a_minor(case, on)):
        return None
    if not service_time_runs(case, on) or service_complete(case, on) is not None:
        return None
    return unmoved(days_after(filed, figure("child_support.serve_within_days", filed).value))


def certainty(case: Case, on: date) -> Certainty:
    """How sure it is that the section reaches this support: it says nothing of a grown child."""
    return Certainty.STATUTE if _of_a_minor(case, on) else Certainty.UNCONFIRMED


def _of_a_minor(case: Case, on: date) -> bool:
    """Whether there is a minor child of both, described or not, or one who may be."""
    return has_minor_children(case, on) or may_list_a_child(case, on)
