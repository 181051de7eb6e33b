"""Serving in time for child support."""

from datetime import date

from firstpaper.counting import day_after, spell_date
from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import filed_on
from firstpaper.law.measures.support_start import certainty, serve_for_support_by
from firstpaper.law.register import rule
from firstpaper.locale import _

SOON_DAYS = 30
"""How long before the day we ask to look again. Ours, not the law's."""


@rule(
    "Serving in time for child support",
    cite="Fam. Code 4009",
    since=date(2005, 1, 1),
    not_modelled="Whether the other side hid from service, and what an order in another case already covers.",
)
def serve_in_time(case: Case, on: date) -> Found | None:
    """If the papers are not served within 90 days of the filing, child support may start only later.

    What the law says. A judge may let a first order for child support start on the day the petition was
    filed. But if the parent who is to pay was not served within 90 days after that, and did not hide from
    it, the order starts on the day of service at the earliest. Late service can cost months of support. It
    does not harm the case itself.

    How we count. The day of filing is not counted, and day 90 is the last. We do not move it off a closed
    day: nobody has decided that for this section.

    An example. Filed on December 1, 2026. Day 90 is Monday, March 1, 2027. Served on March 2, child support
    starts on March 2 at the earliest.

    For a grown child who cannot earn, the section says nothing. We count the same days, and say that this
    is not confirmed.

    Nobody pays before a judge has ordered it. Ask the self-help center how to get a first order soon.
    """
    due = serve_for_support_by(case, on)
    if due is None or filed_on(case, on) is None:
        return None
    facts = ("record.filed_on", "record.service.method")
    if due.missed(on):
        late = _("The papers were not served by {day}. Child support may start only on the day of service.")
        do = _("Have the papers served now. Each day can cost a day of support.")
        return Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            late.format(day=spell_date(due.target)),
            do,
            facts=facts,
            dates={"serve_by": due.target},
            steps=due.steps,
            certainty=certainty(case, on),
        )
    says = _("If the papers are served by {day}, child support can start from the day you filed.")
    near = due.target <= day_after(on, SOON_DAYS)
    return Found(
        Outcome.CLOSE if near else Outcome.MET,
        Weight.LOOK_AGAIN if near else Weight.GOOD_TO_KNOW,
        says.format(day=spell_date(due.target)),
        _("Have them served before that day."),
        facts=facts,
        dates={"serve_by": due.target},
        steps=due.steps,
        certainty=certainty(case, on),
    )
