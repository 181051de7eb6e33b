"""The first day on which the marriage can end."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import TAKING_PART, begins_on, filed_on, joint, took_part
from firstpaper.law.measures.service import certainty
from firstpaper.law.measures.waiting import Clock, EarliestEnd, Starts, clock, has_waiting
from firstpaper.law.measures.waiting import earliest_end as ends_from
from firstpaper.law.register import rule
from firstpaper.law.words import spaced
from firstpaper.locale import _

FACTS = (
    "matter.kind",
    "record.filed_on",
    "record.joint",
    "record.service.method",
    *TAKING_PART,
)


@rule(
    "The first day the marriage can end",
    cite=(
        "Fam. Code 2339(a)",
        "Fam. Code 2340",
        "Fam. Code 2344",
        "Fam. Code 2331(b)",
        "Gov. Code 6803, 6804",
    ),
    since=date(1994, 1, 1),
    not_modelled=(
        "A judge can make the wait longer for good cause, or name a later day (2339(b), 2343). Appeals are "
        "left out."
    ),
)
def earliest_end(case: Case, on: date) -> Found | None:
    """A marriage or partnership cannot end until six months have passed since the other side was served.

    When the six months begin: on the day service is complete, or on the day the other side takes part in
    the case, whichever is first. In a joint petition: on the day it is filed, even if it is revoked later.

    How we count. The six months must pass, so the first day is the day after the same date six months
    later. If the sixth month has no such date, its last day is used. A closed court does not move the day,
    because nothing has to be done on it.

    An example. Served on Saturday, January 10, 2026. Six months end on Friday, July 10. The first day is
    Saturday, July 11, 2026.

    Another way to count. Some cases on other time limits count six months or 182 days, whichever is longer.
    By that the example gives Sunday, July 12. We show that day where it differs.

    It never ends by itself. A judge must sign a judgment that names the day. It can be signed before, with
    a later day in it. Until that day nobody may marry again. If one of you dies before a judgment is
    entered, you died married.

    A legal separation and a nullity have no waiting period. As the law stands in 2026, nobody can make the
    six months shorter. A bill of 2026 would let a judge do so, and we do not know what became of it. Ask the
    self-help center after January 1, 2027.
    """
    if not has_waiting(case):
        return None
    running = clock(case, on)
    if running:
        return _runs(case, on, running)
    if took_part(case, on):
        return _day_missing()
    begins = begins_on(case, on)
    return None if begins is None else _would_run(case, max(on, begins))


def _runs(case: Case, on: date, running: Clock) -> Found:
    end = ends_from(running.start)
    over = on >= end.longer_day
    says = _("The six months have passed: the first day was {day}.") if over else _first_day(running)
    return _found(
        end,
        [says, "" if over else _longer(end)],
        _("It does not end by itself. A judge must sign a judgment that names the day.")
        if over
        else _("Make no plans that need an earlier day. A judge names the day in the judgment."),
        running.steps,
        on=running.start,
        certain=certainty(case, on) if running.why is Starts.SERVICE else None,
    )


def _first_day(running: Clock) -> str:
    return {
        Starts.SERVICE: _(
            "Service is complete on {on}. The marriage or partnership cannot end before {day}."
        ),
        Starts.APPEARANCE: _(
            "The other side took part on {on}. The marriage or partnership cannot end before {day}."
        ),
        Starts.JOINT_FILING: _(
            "The joint petition was filed on {on}. The marriage or partnership cannot end before {day}."
        ),
    }[running.why]


def _day_missing() -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _(
            "The other side has taken part, so the six months are running. We cannot count them: we do not "
            "know since which day."
        ),
        _("Look for the court's stamp on their response, or ask the clerk, and record that day."),
        facts=FACTS,
    )


def _would_run(case: Case, on: date) -> Found:
    """The earliest case: service on the day of filing, or today where the case is filed."""
    end = ends_from(on)
    if joint(case):
        says = _("Suppose you two file on {on}. Then the marriage or partnership cannot end before {day}.")
    elif filed_on(case, on):
        says = _(
            "Suppose the other side is served today, {on}. Then the marriage or partnership cannot end "
            "before {day}."
        )
    else:
        says = _(
            "Suppose the other side is served on the day you file, {on}. Even then the marriage or "
            "partnership cannot end before {day}."
        )
    do = _("The six months begin only when the other side is served or takes part.")
    return _found(end, [says, _longer(end)], "" if joint(case) else do, (), on=on)


def _longer(end: EarliestEnd) -> str:
    if end.longer_day == end.day:
        return ""
    longer = _("A court that counts {days} days would say {longer}.")
    return longer.format(days=end.longer_days, longer=spell_date(end.longer_day))


def _found(
    end: EarliestEnd,
    says: list[str],
    do: str,
    steps: tuple[str, ...],
    *,
    on: date,
    certain: Certainty | None = None,
) -> Found:
    first, *more = says
    words = [first.format(on=spell_date(on), day=spell_date(end.day)), *more]
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        spaced(words),
        do,
        facts=FACTS,
        dates={"earliest_end": end.day, "longer_reading": end.longer_day},
        steps=(*steps, *end.steps),
        certainty=certain,
    )
