"""Papers left with somebody else, and then mailed."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import ServiceMethod
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import attempts, method, service_complete
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD, completed, need_day
from firstpaper.locale import _

LEFT, MAILED, TRIES = "record.service.served_on", "record.service.mailed_on", "record.service.attempts"


@rule(
    "Papers left with somebody else",
    cite=(
        "Code Civ. Proc. 415.20(b)",
        "Code Civ. Proc. 415.20(b)(1)-(2) (Stats. 2025, ch. 563)",
        "Code Civ. Proc. 413.20",
    ),
    since=date(2026, 1, 1),
    not_modelled=(
        "Whether a judge finds that enough was tried, who counts as in charge of a place, and private "
        "mailboxes (415.20(c))."
    ),
)
def substituted(case: Case, on: date) -> list[Found]:
    """If the papers cannot be handed over in person, they can be left with somebody else and then mailed.

    What the law asks. First the server must try to reach the other side in person. Then the papers are
    left at the home, with an adult who lives there. Or they are left at work or at a usual mailing
    address, with an adult who seems to be in charge. A post office box will not do. The server says what
    the papers are. After that a copy is mailed to the same place. Service is complete on the 10th day
    after mailing.

    How often to try. Until the end of 2026 the law names no number: it asks for what a careful person
    would do. From January 1, 2027 it asks for at least three tries, in good faith, on three days and at
    three different times. The mail may then also be priority mail with tracking, or certified mail with
    a return receipt.

    An example. Left with an adult at home and mailed on Friday, October 16, 2026: complete on Monday,
    October 26. The other side has 30 days from there, until Wednesday, November 25. Mailing adds no
    other days.

    What to do. Write down the day and time of each try, where it was, and what happened. The proof of
    service must tell it.
    """
    return list(_each(case, on)) if method(case) is ServiceMethod.SUBSTITUTED else []


def _each(case: Case, on: date) -> Iterator[Found]:
    left_on = day(happened(case, on).service.served_on)
    yield _complete(case, on)
    if left_on:
        yield from _tries(case, left_on)
    elif service_complete(case, on) is not None:
        yield need_day(LEFT, _("the day the papers were left"))


def _complete(case: Case, on: date) -> Found:
    mailed = day(happened(case, on).service.mailed_on)
    days = figure("service.complete_days.substituted", mailed or on).value
    says = _("Service is complete on {day}. It is the {days}th day after the mailing.")
    found = completed(case, on, says, days=days)
    if found:
        return found
    if known(happened(case, on).service.mailed_on) is not None:
        return need_day(MAILED, _("the day the copy was mailed"))
    return Found(
        Outcome.NOT_MET,
        Weight.LOOK_AGAIN,
        _("Service is not complete. After the papers are left, a copy must be mailed to the same place."),
        _("Have the server mail it now, and record the day. The count begins with the mailing."),
        facts=(METHOD, LEFT, MAILED),
    )


def _tries(case: Case, left_on: date) -> Iterator[Found]:
    made = attempts(case, left_on)
    needed: int = figure("service.attempts_before_substituted", left_on).value
    if made is None or made.enough is None:
        yield _tell_the_tries(needed, left_on)
    elif not made.enough:
        yield Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _(
                "For papers left on {day} the law asks for at least {needed} tries before, on different days "
                "and at different times. What was recorded is less."
            ).format(day=spell_date(left_on), needed=needed),
            _("A court may find that nobody was served. Try again in person, or ask the self-help center."),
            facts=(METHOD, TRIES, LEFT),
            values={"service.attempts_needed": needed},
        )


def _tell_the_tries(needed: int, left_on: date) -> Found:
    says = (
        _(
            "For papers left on {day} the law asks for at least {needed} tries before, on different days "
            "and at different times. We do not know all the days and times."
        )
        if needed
        else _(
            "Before papers are left with somebody else, the server must try to hand them over in person. "
            "Until the end of 2026 the law names no number of tries."
        )
    )
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN if needed else Weight.GOOD_TO_KNOW,
        says.format(day=spell_date(left_on), needed=needed),
        _("Have the server write down the day and time of each try. The proof of service must show it."),
        facts=(METHOD, TRIES, LEFT),
        values={"service.attempts_needed": needed},
    )
