"""What the three times to respond share."""

from datetime import date

from firstpaper.counting import short_date
from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Dated
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.response import Paper, answered, response_due
from firstpaper.locale import _


def owed(case: Case, on: date, paper: Paper) -> Dated | None:
    """The last day to answer that paper, where it is the one to be answered and no answer came."""
    found = response_due(case, on)
    if found is None or found.paper is not paper or answered(case, found, on):
        return None
    who = Actor(found.who) if found.who else None
    return Dated(found.due, who, found.certainty, found.served, also=_outer_limit(found.outer))


def _outer_limit(outer: Due | None) -> str:
    if outer is None:
        return ""
    return _("Mailing moves the outer limit to {day}. Do not count on it.").format(
        day=short_date(outer.rolled)
    )
