"""The time of a summary case that was given up."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import filed_on
from firstpaper.law.measures.waiting import credited_end, has_waiting, summary_credit_until
from firstpaper.law.register import rule
from firstpaper.law.words import target_day
from firstpaper.locale import _

FACTS = ("record.summary_filed_on", "record.summary_revoked_on", "record.filed_on")


@rule(
    "The time of a summary case that was given up",
    cite="Fam. Code 2342",
    since=date(2025, 1, 1),
    not_modelled="How a court mixes days with months: the section does not say.",
)
def summary_credit(case: Case, on: date) -> Found | None:
    """If you gave up a summary dissolution and file a regular case within 90 days, its time is not lost.

    What the law says. The time from the filing of the joint petition for summary dissolution to the filing
    of the revocation is taken off the wait in the regular case.

    How we count. Six months from service or appearance in the regular case. Back by the number of days the
    summary case ran. Then the next day. How days and months are to be mixed is not written, so take the
    result as a question for the court.

    An example. Summary petition filed on Monday, March 2, 2026, given up on Monday, June 1: 91 days. The
    regular case is begun in time, and served on August 10. Six months end on February 10, 2027. Back
    91 days is November 11, 2026. The first day would be Thursday, November 12.
    """
    until = summary_credit_until(case, on)
    if until is None or not has_waiting(case):
        return None
    filed = filed_on(case, on)
    if filed is None and not until.missed(on):
        return Found(
            Outcome.MET,
            Weight.LOOK_AGAIN,
            _("The time of your summary case can count. For that, file by {day}.").format(
                day=target_day(until)
            ),
            _("File by then, with some days to spare."),
            facts=FACTS,
            dates={"file_by": until.target, "file_by_moved_to": until.rolled},
            steps=until.steps,
        )
    if filed is None or filed > until.rolled:
        return Found(
            Outcome.NOT_MET,
            Weight.GOOD_TO_KNOW,
            _("The time of your summary case does not count. The last day to file was {day}.").format(
                day=target_day(until)
            ),
            facts=FACTS,
            dates={"file_by": until.target, "file_by_moved_to": until.rolled},
            steps=until.steps,
        )
    credited = credited_end(case, on)
    if credited is None:
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.LOOK_AGAIN,
        _(
            "With the time of your summary case, the first day may be {day}. How it is counted is not "
            "settled."
        ).format(day=spell_date(credited.day)),
        _("Ask the court which day it would name."),
        facts=FACTS,
        dates={"credited_end": credited.day},
        steps=credited.steps,
        certainty=Certainty.UNCONFIRMED,
    )
