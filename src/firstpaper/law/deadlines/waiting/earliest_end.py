"""The first day on which the marriage or partnership can end."""

from datetime import date

from firstpaper.counting import short_date
from firstpaper.facts import Case
from firstpaper.law.deadline import Actor, Chart, Dated, Event, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.service import certainty
from firstpaper.law.measures.waiting import EarliestEnd, Starts, clock, has_waiting
from firstpaper.law.measures.waiting import earliest_end as counted
from firstpaper.law.words import of_union
from firstpaper.locale import _


@deadline(
    "The marriage or partnership cannot end before this day",
    rule="waiting.earliest_end",
    cite=("Fam. Code 2339(a)", "Fam. Code 2340"),
    who=Actor.COURT,
    meaning=Meaning.FIRST_DAY,
    if_missed="Nothing ends by itself. A judge must sign a judgment that names the day.",
    neutral="waiting time over",
    chart=Chart("Earliest end", "The marriage or partnership cannot end before {day}."),
    waits_for=Event.SERVED,
)
def earliest_end(case: Case, on: date) -> Dated | None:
    """The day after six months have passed since the service, or since the other side took part."""
    running = clock(case, on)
    if running is None or not has_waiting(case):
        return None
    end = counted(running.start)
    return Dated(
        Due(end.day, end.day, running.steps + end.steps),
        certainty=certainty(case, on) if running.why is Starts.SERVICE else None,
        since=running.start,
        title=of_union(
            case,
            _("The marriage cannot end before this day"),
            _("The partnership cannot end before this day"),
            "",
        ),
        says=of_union(
            case,
            _("The marriage cannot end before {day}."),
            _("The partnership cannot end before {day}."),
            "",
        ),
        also=_longer(end),
    )


def _longer(end: EarliestEnd) -> str:
    if end.longer_day == end.day:
        return ""
    longer = _("A court that counts {days} days would say {day}.")
    return longer.format(days=end.longer_days, day=short_date(end.longer_day))
