"""The last day to serve the papers."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import serve_by as last_day
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import rule
from firstpaper.law.rules.dismissal._words import only_if_left_out
from firstpaper.law.words import help_now, target_day
from firstpaper.locale import _

FACTS = ("record.filed_on", "record.serve_agreed_until", "record.time_left_out")


@rule(
    "The last day to serve the papers",
    cite=(
        "Code Civ. Proc. 583.210(a)",
        "Code Civ. Proc. 583.220",
        "Code Civ. Proc. 583.230",
        "Code Civ. Proc. 583.240",
        "Code Civ. Proc. 583.250",
        "Code Civ. Proc. 583.161",
    ),
    since=date(2014, 1, 1),
    not_modelled="Whether a judge leaves out the time you told us of (583.240), and if an agreement is good.",
)
def serve_by(case: Case, on: date) -> Found | None:
    """The papers must be served within three years after the filing, or the case is dismissed.

    How we count. The same day, three years later. If the court is closed that day, the law moves it to the
    next day the court is open. Aim for the earlier day.

    An example. Filed on Wednesday, November 25, 2026: three years later is Sunday, November 25, 2029. The
    law moves that to Monday, November 26.

    When it does not run. If the other side takes part in the case, there is nothing left to serve. In a
    joint petition nothing has to be served. If an order on support, custody or visits, or some orders on
    domestic violence, are in force, the case is not dismissed for delay.

    When it is longer. You two can agree on more time, in writing or in open court (583.230). Record that day.
    Some time does not count at all: while the other side was out of reach of the court, while a judge had
    stopped the case, while you two argued in court over the service, or while service was not possible for
    a reason beyond your control. Not knowing enough is no such reason. Only a judge can say that it does not
    count, so we go on naming the plain day, and show the later one as the edge.

    Three years is the outer edge. After two years a judge may already dismiss. And the six months to
    a divorce do not begin while the other side is not served.
    """
    limit = last_day(case, on)
    if filed_on(case, on) is None or limit is None:
        return None
    due = limit.due
    if due.missed(on) and not limit.missed(on):
        return only_if_left_out(limit, FACTS)
    if due.missed(on):
        return Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _("The last day to serve the papers was {day}. The court must now dismiss the case.").format(
                day=target_day(due)
            ),
            _("Ask at once if some of that time does not count. {help}").format(help=help_now()),
            facts=FACTS,
            dates={"serve_by": due.target, "serve_by_moved_to": due.rolled},
            steps=due.steps,
        )
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("The papers are not served yet. The last day for it is {day}.").format(day=target_day(due)),
        _("Do not wait for that day. Nothing moves until the papers are served."),
        facts=FACTS,
        dates={"serve_by": due.target, "serve_by_moved_to": due.rolled},
        steps=due.steps,
    )
