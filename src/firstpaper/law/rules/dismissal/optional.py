"""From when a judge may dismiss a case that does not move."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import unserved_until, untried_until
from firstpaper.law.measures.due import Due, months_after
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import rule
from firstpaper.law.words import target_day
from firstpaper.locale import _

WARN_UNSERVED_MONTHS, WARN_UNTRIED_MONTHS = 18, 30
"""How long after the filing we begin to speak of it. Ours, not the law's."""


@rule(
    "When a judge may dismiss a case that does not move",
    cite=("Code Civ. Proc. 583.420(a)(1)", "Code Civ. Proc. 583.420(a)(2)(A)", "Code Civ. Proc. 583.161"),
    since=date(2014, 1, 1),
    not_modelled="Courts that set two years instead of three by rule, and what a judge weighs.",
)
def optional(case: Case, on: date) -> list[Found]:
    """A judge may dismiss a case that was not served in two years, or not tried in three.

    "May" means that the judge decides, and hears you first. It is not the same as the outer limits, after
    which the court must dismiss: see dismissal.serve_by and dismissal.finish_by.

    How we count. The same day two or three years later, moved to the next day the court is open. In some
    courts a rule makes the three years two.

    An example. Filed on November 25, 2026 and not served: a judge may dismiss it after Saturday,
    November 25, 2028, which moves to Monday, November 27.

    We begin to speak of it after 18 months without service, and after two and a half years without an
    end. An order on support or custody keeps the case alive here too.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    filed = filed_on(case, on)
    if filed is None:
        return
    unserved, untried = unserved_until(case, on), untried_until(case, on)
    if unserved and on >= months_after(filed, WARN_UNSERVED_MONTHS).day:
        yield _found(
            unserved,
            on,
            _("The papers are not served. After {day} a judge may dismiss the case."),
            _("The papers were not served by {day}. A judge may now dismiss the case."),
            _("Have the papers served now, or ask the self-help center for another way to serve."),
        )
    if untried and on >= months_after(filed, WARN_UNTRIED_MONTHS).day:
        yield _found(
            untried,
            on,
            _("The case is not finished. After {day} a judge may dismiss it."),
            _("The case was not finished by {day}. A judge may now dismiss it."),
            _("Ask the self-help center what the next step to a judgment is."),
        )


def _found(until: Due, on: date, ahead: str, over: str, do: str) -> Found:
    missed = until.missed(on)
    return Found(
        Outcome.NOT_MET if missed else Outcome.CLOSE,
        Weight.GET_ADVICE if missed else Weight.LOOK_AGAIN,
        (over if missed else ahead).format(day=target_day(until)),
        do,
        facts=("record.filed_on", "record.support_or_custody_order"),
        dates={"may_be_dismissed_after": until.target, "may_be_dismissed_after_moved_to": until.rolled},
        steps=until.steps,
    )
