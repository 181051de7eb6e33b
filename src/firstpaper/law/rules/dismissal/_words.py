"""Words that the rules on dismissal share."""

from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import Limit
from firstpaper.law.words import help_now, target_day
from firstpaper.locale import _


def only_if_left_out(limit: Limit, facts: tuple[str, ...]) -> Found:
    """The plain last day has passed, but not the one that holds if a judge leaves out the time told."""
    later = limit.outer or limit.due
    says = _(
        "The last day was {day}. You told us of time that may not count. If a judge agrees, the last day is "
        "{later}."
    )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        says.format(day=target_day(limit.due), later=target_day(later)),
        _("Act at once, and do not count on the later day. {help}").format(help=help_now()),
        facts=facts,
        dates={"last_day": limit.due.target, "last_day_if_left_out": later.target},
        steps=later.steps,
        certainty=Certainty.UNCONFIRMED,
    )
