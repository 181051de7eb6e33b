"""The times after which a court must or may dismiss a case for delay (Code Civ. Proc. 583.110-583.430)."""

from datetime import date

from firstpaper.counting import Counted, days_after
from firstpaper.facts import Case, known
from firstpaper.law.figure import figure
from firstpaper.law.measures.due import Due, due_at_court, due_elsewhere, months_after, unmoved
from firstpaper.law.measures.record import begins_on, happened, joint, took_part
from firstpaper.law.measures.service import service_complete


def kept_alive(case: Case) -> bool:
    """Whether an order of the court keeps the case from being dismissed for delay (583.161)."""
    return known(case.record.support_or_custody_order) is True


def service_time_runs(case: Case, on: date) -> bool:
    """Whether the time to serve runs: not once the other side took part (583.220)."""
    return not joint(case) and not kept_alive(case) and not took_part(case, on)


def serve_by(case: Case, on: date) -> Due | None:
    """The last day to serve the papers (583.210(a)); None where it does not run or is kept."""
    filed = begins_on(case, on)
    if filed is None or not service_time_runs(case, on) or service_complete(case, on) is not None:
        return None
    return due_elsewhere(_time_to_serve(filed))


def prove_by(case: Case, on: date) -> Due | None:
    """The last day to file the proof of service (583.210(b)); None where it does not run or is kept.

    It is counted from the end of the time to serve, not from the service itself.
    """
    filed = begins_on(case, on)
    if filed is None or not service_time_runs(case, on):
        return None
    if known(happened(case, on).service.proof_filed_on) is not None:
        return None
    days = figure("dismissal.prove_service_days", filed).value
    return due_at_court(case, _time_to_serve(filed).then(lambda end: days_after(end, days)))


def finish_by(case: Case, on: date) -> Due | None:
    """The last day to bring the case to trial (583.310); None where an order keeps it alive."""
    filed = begins_on(case, on)
    if filed is None or kept_alive(case):
        return None
    return due_at_court(case, months_after(filed, figure("dismissal.finish_months", filed).value))


def unserved_until(case: Case, on: date) -> Due | None:
    """The last day before a court may dismiss a case that was not served (583.420(a)(1))."""
    filed = begins_on(case, on)
    if filed is None or not service_time_runs(case, on) or service_complete(case, on) is not None:
        return None
    return due_elsewhere(months_after(filed, figure("dismissal.optional_unserved_months", filed).value))


def untried_until(case: Case, on: date) -> Due | None:
    """The last day before a court may dismiss a case that was not tried (583.420(a)(2)(A))."""
    filed = begins_on(case, on)
    if filed is None or kept_alive(case):
        return None
    return due_at_court(case, months_after(filed, figure("dismissal.optional_untried_months", filed).value))


def next_review(case: Case, on: date) -> Due | None:
    """The next day by which the court looks at how the case goes: each 180 days (rule 5.83(c)(2))."""
    filed = begins_on(case, on)
    if filed is None:
        return None
    step: int = figure("dismissal.review_days", filed).value
    rounds = max(1, -(-(on - filed).days // step))
    return unmoved(days_after(filed, rounds * step))


def _time_to_serve(filed: date) -> Counted:
    return months_after(filed, figure("dismissal.serve_months", filed).value)
