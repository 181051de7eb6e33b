"""The last day to file the proof of service."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import prove_by as last_day
from firstpaper.law.measures.due import months_after
from firstpaper.law.measures.record import filed_on
from firstpaper.law.measures.service import proof_needed
from firstpaper.law.register import rule
from firstpaper.law.rules.dismissal._words import only_if_left_out
from firstpaper.law.words import help_now, target_day
from firstpaper.locale import _

SPEAK_AFTER_MONTHS = 24
"""How long after the filing we speak of it; until then the rules on service do. Ours, not the law's."""

FACTS = (
    "record.filed_on",
    "record.service.proof_filed_on",
    "record.serve_agreed_until",
    "record.time_left_out",
)


@rule(
    "The last day to file the proof of service",
    cite=("Code Civ. Proc. 583.210(b)", "Code Civ. Proc. 583.250", "Code Civ. Proc. 417.30"),
    since=date(2014, 1, 1),
    not_modelled="Whether a judge leaves out the time you told us of (583.240), and if an agreement is good.",
)
def prove_by(case: Case, on: date) -> Found | None:
    """The proof of service must be filed within 60 days after the time to serve the papers ends.

    How we count. The three years for service first, then 60 days more. If the court is closed on the last
    day, the law moves it to the next day the court is open.

    An example. Filed on November 25, 2026. Three years end on November 25, 2029. Sixty days later is
    Thursday, January 24, 2030.

    No proof is needed once the other side takes part in the case.

    What to do. File it as soon as the papers are served. Nothing is gained by waiting: without a proof
    there is no default, and no judgment.
    """
    filed, limit = filed_on(case, on), last_day(case, on)
    if filed is None or limit is None or not proof_needed(case, on):
        return None
    due = limit.due
    if due.missed(on) and not limit.missed(on):
        return only_if_left_out(limit, FACTS)
    if on < months_after(filed, SPEAK_AFTER_MONTHS).day:
        return None
    over = due.missed(on)
    says = (
        _("The last day to file the proof of service was {day}. The court must now dismiss the case.")
        if over
        else _("The papers are served, but no proof is on file. The last day for it is {day}.")
    )
    return Found(
        Outcome.NOT_MET if over else Outcome.MET,
        Weight.GET_ADVICE if over else Weight.GOOD_TO_KNOW,
        says.format(day=target_day(due)),
        help_now() if over else _("File it now. Without it there is no default and no judgment."),
        facts=FACTS,
        dates={"prove_by": due.target, "prove_by_moved_to": due.rolled},
        steps=due.steps,
    )
