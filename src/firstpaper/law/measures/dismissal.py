"""The times after which a court must or may dismiss a case for delay (Code Civ. Proc. 583.110-583.430)."""

from collections.abc import Callable
from datetime import date
from functools import partial
from typing import NamedTuple

from firstpaper.counting import Counted, days_after, leaving_out, short_date
from firstpaper.facts import Case, Day, DontKnow, known
from firstpaper.law.figure import figure
from firstpaper.law.measures.court import COUNTS_FROM
from firstpaper.law.measures.due import (
    Due,
    due_at_court,
    due_at_the_clerk,
    due_elsewhere,
    months_after,
    unmoved,
)
from firstpaper.law.measures.record import begins_on, day, happened, joint, took_part
from firstpaper.law.measures.service import surely_served
from firstpaper.locale import _


def kept_alive(case: Case) -> bool:
    """Whether an order of the court keeps the case from being dismissed for delay (583.161)."""
    return known(case.record.support_or_custody_order) is True


def service_time_runs(case: Case, on: date) -> bool:
    """Whether the time to serve runs: not once the other side took part (583.220)."""
    return not joint(case) and not kept_alive(case) and not took_part(case, on)


class Limit(NamedTuple):
    """The end of a time after which the court must dismiss a case.

    `outer` is the later end if a judge leaves out the time that a person told us of (583.240, 583.340 with
    583.350); None where none was told, or where it changes nothing. Nobody should count on it.
    """

    due: Due
    outer: Due | None = None

    def missed(self, on: date) -> bool:
        """Whether the time has run out on that day, even if a judge leaves out what was told."""
        return (self.outer or self.due).missed(on)


def serve_by(case: Case, on: date) -> Limit | None:
    """The last day to serve the papers (583.210(a)); None where it does not run or is kept."""
    filed = begins_on(case, on)
    if filed is None or not service_time_runs(case, on) or surely_served(case, on):
        return None
    end = _time_to_serve(case, filed)
    return _limit(end, _without_left_out(case, on, filed, end), due_elsewhere)


def prove_by(case: Case, on: date) -> Limit | None:
    """The last day to file the proof of service (583.210(b)); None where it does not run or is kept.

    It is counted from the end of the time to serve, not from the service itself.
    """
    filed = begins_on(case, on)
    if filed is None or not service_time_runs(case, on):
        return None
    if known(happened(case, on).service.proof_filed_on) is not None:
        return None
    days = figure("dismissal.prove_service_days", filed).value
    end = _time_to_serve(case, filed)
    return _limit(
        end,
        _without_left_out(case, on, filed, end),
        lambda reached: due_at_the_clerk(case, reached.then(partial(days_after, count=days))),
    )


def finish_by(case: Case, on: date) -> Limit | None:
    """The last day to bring the case to trial (583.310); None where an order keeps it alive."""
    filed = begins_on(case, on)
    if filed is None or kept_alive(case):
        return None
    months = months_after(filed, figure("dismissal.finish_months", filed).value)
    end = _agreed(months, case.record.trial_agreed_until)
    longer = _without_left_out(case, on, filed, end)
    return _limit(end, _not_too_soon_after_a_stop(case, on, filed, longer), partial(due_at_court, case))


def unserved_until(case: Case, on: date) -> Due | None:
    """The last day before a court may dismiss a case that was not served (583.420(a)(1))."""
    filed = begins_on(case, on)
    if filed is None or not service_time_runs(case, on) or surely_served(case, on):
        return None
    return due_elsewhere(months_after(filed, figure("dismissal.optional_unserved_months", filed).value))


def untried_until(case: Case, on: date) -> Due | None:
    """The last day before a court may dismiss a case that was not tried (583.420(a)(2)(A))."""
    filed = begins_on(case, on)
    if filed is None or kept_alive(case):
        return None
    return due_at_court(case, months_after(filed, figure("dismissal.optional_untried_months", filed).value))


def next_review(case: Case, on: date) -> Due | None:
    """The next day by which the court looks at how the case goes: each 180 days (rule 5.83(c)(2)).

    None once the court must dismiss the case: that is what it looks at then.
    """
    filed = begins_on(case, on)
    if filed is None or any(
        limit and limit.missed(on) for limit in (serve_by(case, on), finish_by(case, on))
    ):
        return None
    step: int = figure("dismissal.review_days", filed).value
    rounds = max(1, -(-(on - filed).days // step))
    return unmoved(days_after(filed, rounds * step))


def may_be_left_out(case: Case, on: date, review: Due) -> bool:
    """Whether the court need not look again if it finds that neither takes part (rule 5.83(c)(3)).

    That is from 18 months after the filing on. If the other side took part or a trial is set, somebody does.
    """
    filed = begins_on(case, on)
    if filed is None or took_part(case, on) or known(happened(case, on).trial_on) is not None:
        return False
    return review.target > months_after(filed, figure("dismissal.review_end_months", filed).value).day


def left_out(case: Case, on: date) -> tuple[tuple[date, date], ...]:
    """The stretches of time told that a judge may leave out, as first and last days; a lasting one to `on`.

    Only what is whole, sure and possible is among them.
    """
    found = []
    for each in known(case.record.time_left_out) or ():
        first, last = each.start.sure, each.end.sure if each.end else on
        if first and last and COUNTS_FROM <= first <= last <= on:
            found.append((first, last))
    return tuple(found)


def _time_to_serve(case: Case, filed: date) -> Counted:
    months = months_after(filed, figure("dismissal.serve_months", filed).value)
    return _agreed(months, case.record.serve_agreed_until)


def _agreed(end: Counted, until: Day | DontKnow | None) -> Counted:
    """The end that both agreed on, where it is later than the one the law sets (583.230, 583.330)."""
    agreed = day(until)
    if agreed is None or agreed <= end.day:
        return end
    step = _("{date}: the day you both agreed on").format(date=short_date(agreed))
    return Counted(agreed, (*end.steps, step))


def _without_left_out(case: Case, on: date, filed: date, end: Counted) -> Counted:
    return end.then(lambda reached: leaving_out(filed, reached, left_out(case, on)))


def _not_too_soon_after_a_stop(case: Case, on: date, filed: date, end: Counted) -> Counted:
    """The time to trial ends six months after the last time left out at the soonest (583.350)."""
    stops = [last for first, last in left_out(case, on) if first <= end.day]
    if not stops:
        return end
    safe = months_after(max(stops), figure("dismissal.finish_after_stop_months", filed).value)
    return Counted(safe.day, (*end.steps, *safe.steps)) if safe.day > end.day else end


def _limit(end: Counted, longer: Counted, due: Callable[[Counted], Due]) -> Limit:
    return Limit(due(end), due(longer) if longer.day != end.day else None)
