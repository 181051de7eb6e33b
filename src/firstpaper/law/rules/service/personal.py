"""Papers handed over in person."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.law.finding import Found
from firstpaper.law.measures.service import method
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import completed, need_day
from firstpaper.locale import _


@rule(
    "Papers handed over in person",
    cite=("Code Civ. Proc. 415.10", "Code Civ. Proc. 417.10", "Code Civ. Proc. 417.30"),
    since=date(1977, 1, 1),
    not_modelled="Whether the right person was reached, and what to do if they refuse to take the papers.",
)
def personal(case: Case, on: date) -> Found | None:
    """Service in person is complete at the moment the papers are handed to the other side.

    How we count. The day of handing over is the day of service, a Saturday, Sunday or holiday too. The
    time to respond begins on the next day.

    An example. The papers are handed over on Monday, October 26, 2026. Service is complete that day.
    The other side has until Wednesday, November 25.

    Why it is often the best way. Nothing has to come back by mail, and no days are added. It starts the six
    months, and the orders in the summons bind the other side from that day. It must still be the right
    person, the right papers, and a proof of service that tells the truth and is filed.

    What to do. The person who served the papers fills in form FL-115 and signs it. Then file it. For
    papers served in 2027 or later, see the page service.changes_2027: the proof needs photographs.
    """
    if method(case) is not ServiceMethod.PERSONAL:
        return None
    says = _("Service was complete on {day}, the day the papers were handed over.")
    return completed(case, on, says) or need_day(
        "record.service.served_on", _("the day the papers were handed over")
    )
