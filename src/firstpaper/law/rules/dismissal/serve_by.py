"""The last day to serve the papers."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import serve_by as last_day
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import rule
from firstpaper.law.words import help_now, target_day
from firstpaper.locale import _


@rule(
    "The last day to serve the papers",
    cite=(
        "Code Civ. Proc. 583.210(a)",
        "Code Civ. Proc. 583.220",
        "Code Civ. Proc. 583.250",
        "Code Civ. Proc. 583.161",
    ),
    since=date(2014, 1, 1),
    not_modelled=(
        "Time that does not count because service was not possible (583.240), and time that both agreed on "
        "(583.230)."
    ),
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

    Three years is the outer edge. After two years a judge may already dismiss. And the six months to
    a divorce do not begin while the other side is not served.
    """
    due = last_day(case, on)
    if filed_on(case, on) is None or due is None:
        return None
    if due.missed(on):
        return Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _("The last day to serve the papers was {day}. The court must now dismiss the case.").format(
                day=target_day(due)
            ),
            _("Ask at once if some of that time does not count. {help}").format(help=help_now()),
            facts=("record.filed_on",),
            dates={"serve_by": due.target, "serve_by_moved_to": due.rolled},
            steps=due.steps,
        )
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("The papers are not served yet. The last day for it is {day}.").format(day=target_day(due)),
        _("Do not wait for that day. Nothing moves until the papers are served."),
        facts=("record.filed_on",),
        dates={"serve_by": due.target, "serve_by_moved_to": due.rolled},
        steps=due.steps,
    )
