"""What follows from a request to waive court fees (Gov. Code 68630-68641; Cal. Rules of Court, rule 3.53)."""

from datetime import date

from firstpaper.counting import Counted, days_after
from firstpaper.facts import Case, known
from firstpaper.facts.choices import FeeState, Shortcut
from firstpaper.law.figure import figure
from firstpaper.law.measures.court import calendar_of
from firstpaper.law.measures.due import Due, due_at_the_clerk
from firstpaper.law.measures.record import day, happened


def wants_waiver(case: Case) -> bool:
    """Whether the filer wants to ask the court to let them off the fees, or to see how that goes."""
    return known(case.waiver.wanted) is True or Shortcut.FEE_WAIVER in (known(case.shortcuts.look_at) or ())


def waiver_deemed(case: Case, on: date) -> Counted | None:
    """The last day for the court to act on the request; when it has passed, the waiver counts as granted.

    None unless a request was recorded with its day, and is still open.
    """
    if known(case.record.fee) is not FeeState.WAIVER_ASKED:
        return None
    asked = day(happened(case, on).waiver_filed_on)
    if asked is None:
        return None
    count: int = figure("fee_waiver.granted_after_court_days", asked).value
    return calendar_of(case).add_court_days(asked, count)


def after_denial(case: Case, on: date) -> Due | None:
    """The last day to act after a waiver was denied (rule 5.43(a)); None once the fee was paid."""
    return paid_in_time_by(case, on) if known(case.record.fee) is FeeState.WAIVER_DENIED else None


def paid_in_time_by(case: Case, on: date) -> Due | None:
    """The last day on which a fee counts that is paid after a denial, be it paid by now or not."""
    denied = day(happened(case, on).waiver_denied_on)
    if denied is None:
        return None
    return due_at_the_clerk(case, days_after(denied, figure("fee_waiver.after_denial_days", denied).value))
