"""What the last days share after which a court must dismiss a case."""

from firstpaper.counting import short_date
from firstpaper.law.deadline import Dated
from firstpaper.law.measures.dismissal import Limit
from firstpaper.law.measures.due import Due
from firstpaper.locale import _


def limited(limit: Limit | None) -> Dated | None:
    """The end of the time; a longer one that hangs on a judge is said and never shown as the day."""
    if limit is None:
        return None
    return Dated(limit.due, also=_if_left_out(limit.outer))


def _if_left_out(outer: Due | None) -> str:
    if outer is None:
        return ""
    return _("If a judge leaves out the time you told us of, it is {day}. Do not count on it.").format(
        day=short_date(outer.rolled)
    )
