"""Which days a chart shows."""

from collections.abc import Iterable
from datetime import date, timedelta

BEFORE, AFTER = timedelta(days=366), timedelta(days=1100)
"""How far a chart reaches from the day in its middle; what lies beyond is an arrow at the edge."""

LEAST = timedelta(days=90)
EDGE = 20
"""One part in so many of the days is left free at each side."""


def around(days: Iterable[date], middle: date) -> tuple[date, date]:
    """The first and the last day of a chart that shows these days as far as they lie near `middle`."""
    near = [day for day in (*days, middle) if in_reach(day, middle)]
    first, last = min(near), max(near)
    edge = max((last - first) / EDGE, (LEAST - (last - first)) / 2, timedelta(days=7))
    return _shifted(first, -edge), _shifted(last, edge)


def in_reach(day: date, middle: date) -> bool:
    """Whether the day lies near enough to be shown in its place."""
    return _shifted(middle, -BEFORE) <= day <= _shifted(middle, AFTER)


def _shifted(day: date, by: timedelta) -> date:
    """The day so far away, or the last one that the calendar has."""
    try:
        return day + by
    except OverflowError:
        return date.max if by > timedelta() else date.min
