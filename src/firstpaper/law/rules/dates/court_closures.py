"""Days on which the court was closed though no holiday was kept."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import short_date
from firstpaper.facts import Case, known
from firstpaper.facts.record import Closure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.court import closed_days
from firstpaper.law.register import rule
from firstpaper.law.words import spell_day
from firstpaper.locale import _

MOST_NAMED = 5
"""How many days are named one by one. Ours, not the law's."""

FACTS = ("record.court_closed",)


@rule(
    "Days on which the court was closed",
    cite=("Code Civ. Proc. 12", "Code Civ. Proc. 12a", "Code Civ. Proc. 12b"),
    since=date(2008, 1, 1),
    not_modelled=(
        "Emergency orders, which can do more than this (Gov. Code 68115; from memory, not read). "
        "Also a court that took papers online while its doors were closed."
    ),
)
def court_closures(case: Case, on: date) -> list[Found]:
    """A day on which the whole office of the court is closed counts like a court holiday.

    What it does. If a last day to act falls on such a day, the law moves it to the next day the court is
    open. Where court days are counted, that day is left out. Each such count says "court closed" with your
    word on why.

    What it does not do. It helps only with what is done at the court. A last day to hand or mail papers to
    the other side does not move. A branch office that is closed does not count. Neither does a day on which
    the court was open for a part of the day. And no day moves that simply comes, such as the end of the
    six months.

    An example. A response is due on Wednesday, November 25, 2026, and a power cut closes the court that
    day. Thursday is Thanksgiving, Friday is a court holiday too, then comes the weekend. The response is
    due on Monday, November 30.

    What to do. Keep proof of the closure: a notice from the court's own site, or a note on whom you asked
    and when. If you can, do not use the extra time. An emergency order may say something else, so ask the
    clerk.
    """
    return list(_each(case))


def _each(case: Case) -> Iterator[Found]:
    told = known(case.record.court_closed) or ()
    counted = tuple(sorted({day for each in told for day in closed_days(each)}))
    if counted:
        yield _counted(counted)
    for each in told:
        if not any(closed_days(each)):
            yield _not_counted(each)


def _counted(days: tuple[date, ...]) -> Found:
    says = _("You told us that the court was closed on: {days}. We count that like a court holiday.")
    if len(days) > MOST_NAMED:
        says = _("You told us that the court was closed on {count} days. We count them like court holidays.")
    return Found(
        Outcome.CLOSE,
        Weight.LOOK_AGAIN,
        says.format(days=", ".join(map(short_date, days)), count=len(days)),
        _(
            "Ask the clerk if the whole office was closed all day. If not, take the day out. Where you can, "
            "act by the earlier day."
        ),
        facts=FACTS,
    )


def _not_counted(closure: Closure) -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We cannot count this as a court closure: {days}.").format(days=_days(closure)),
        _("Give whole days, the first before the last, and not more than a year. Ask the clerk if unsure."),
        facts=FACTS,
    )


def _days(closure: Closure) -> str:
    first = spell_day(closure.first)
    if closure.last is None:
        return first
    return _("{start} to {end}").format(start=first, end=spell_day(closure.last))
