"""The conditions that a summary dissolution (Fam. Code 2400) and a notice of termination (299) share.

Each is met, not met, or open. The money limits of the day may be unknown; then the two conditions on
money are open, and say so by `limit`. Comparison is exact: debts up to and including the limit; property
of both *less than* the limit; property of each up to and including it.
"""

from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting import MissingDay, add_months
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import Family, Lease
from firstpaper.law.figure import FigureNotInForce, figure

LIMITS_ONLY = "short_way.limits_only"
"""The name of the value of a finding in which all fits but amounts that nobody has published yet."""

TOGETHER = (Family.MINOR_TOGETHER, Family.UNBORN_TOGETHER, Family.GROWN)


class Subject(StrEnum):
    """What a condition is about."""

    CHILDREN = "children"
    PREGNANCY = "pregnancy"
    REAL_ESTATE = "real_estate"
    LEASE = "lease"
    DEBTS = "debts"
    COMMUNITY = "community"
    SEPARATE = "separate"
    AGREEMENT = "agreement"
    SUPPORT = "support"
    BOTH_WANT = "both_want"


class Condition(NamedTuple):
    """One condition on one case. `met` is None where it is open.

    `limit` is the amount it was held against; None where there is none, or where the law's amount for
    that day is not known, which `limit_unknown` tells apart.
    """

    subject: Subject
    met: bool | None
    keys: tuple[str, ...]
    limit: int | None = None
    limit_unknown: bool = False


def conditions(case: Case, on: date) -> tuple[Condition, ...]:
    """Every condition but the clock and residence, for a paper filed on the day `on`."""
    return tuple(_each(case, on))


def limits_known(on: date) -> bool:
    """Whether the amounts of that day are known."""
    return _limit("debt_limit", on) is not None and _limit("property_limit", on) is not None


def _each(case: Case, on: date) -> Iterator[Condition]:
    told = case.summary
    family = known(case.children.family)
    children = None if family is None else not any(one in family for one in TOGETHER)
    yield Condition(Subject.CHILDREN, children, ("children.family",))
    yield _no(Subject.PREGNANCY, known(told.pregnant), "summary.pregnant")
    yield _no(Subject.REAL_ESTATE, known(told.real_estate), "summary.real_estate")
    lease_keys = ("summary.lease", "summary.lease_ends_on")
    yield Condition(Subject.LEASE, _lease(known(told.lease), known(told.lease_ends_on), on), lease_keys)
    yield from _money(case, on)
    yield Condition(Subject.AGREEMENT, known(told.agreement), ("summary.agreement",))
    yield Condition(Subject.SUPPORT, known(told.waive_support), ("summary.waive_support",))
    yield Condition(Subject.BOTH_WANT, known(told.both_want), ("summary.both_want",))


def _no(subject: Subject, told: bool | None, key: str) -> Condition:
    return Condition(subject, None if told is None else not told, (key,))


def _lease(lease: Lease | None, ends: Day | None, on: date) -> bool | None:
    """Month to month is left open: the words ask for a lease that terminates within the year."""
    if lease in (Lease.NONE, Lease.MAY_BUY):
        return lease is Lease.NONE
    if lease is not Lease.FIXED_END or ends is None:
        return None
    months: int = figure("summary_dissolution.lease_months", on).value
    last = add_months(on, months, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    within = {ends.earliest <= last, ends.latest <= last}
    return within.pop() if len(within) == 1 and not ends.unsure else None


def _money(case: Case, on: date) -> Iterator[Condition]:
    told = case.summary
    debt, worth = _limit("debt_limit", on), _limit("property_limit", on)
    debts, community = known(told.debts), known(told.community)
    each = (known(told.separate_petitioner), known(told.separate_respondent))
    yield _amount(Subject.DEBTS, debt, _all(debts, at_most=debt), "debts")
    less = None if worth is None or community is None else community < worth
    yield _amount(Subject.COMMUNITY, worth, less, "community")
    both = _all(*each, at_most=worth)
    yield _amount(Subject.SEPARATE, worth, both, "separate_petitioner", "separate_respondent")


def _all(*amounts: Decimal | None, at_most: int | None) -> bool | None:
    """Whether no amount is over the limit; None where that hangs on what is not known."""
    if at_most is None:
        return None
    if any(amount is not None and amount > at_most for amount in amounts):
        return False
    return None if None in amounts else True


def _amount(subject: Subject, limit: int | None, met: bool | None, *facts: str) -> Condition:
    keys = tuple(f"summary.{fact}" for fact in facts)
    return Condition(subject, met, keys, limit, limit_unknown=limit is None)


def _limit(name: str, on: date) -> int | None:
    try:
        value: int = figure(f"summary_dissolution.{name}", on).value
    except FigureNotInForce:
        return None
    return value
