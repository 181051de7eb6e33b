"""Service in the way a judge ordered, as by e-mail."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.service import method
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD, completed
from firstpaper.locale import _


@rule(
    "Service in the way a judge ordered",
    cite=("Code Civ. Proc. 413.30(a)",),
    since=date(2026, 1, 1),
    not_modelled="What the order says: its manner, its proof and its days are its own.",
)
def court_directed(case: Case, on: date) -> Found | None:
    """If no other way works, a judge can order service in a way that fits, such as by e-mail.

    What the law asks. You ask the court by motion. You must tell every try by each of the other ways,
    and why each failed, at every place where the other side is likely to be found. Since January 1,
    2026 the law says that a judge may order e-mail or another electronic way.

    An e-mail that you send on your own is not service. Neither is a text message.

    How we count. The law sets no day. The order says how to serve, how to prove it, and when service is
    complete. We count the time to respond from that day.

    An example. The order says that service is complete on the tenth day after two e-mails. Record that
    day. The other side has 30 days from it.
    """
    if method(case) is not ServiceMethod.COURT_DIRECTED:
        return None
    says = _("By the judge's order, service is complete on {day}.")
    found = completed(case, on, says, _("Prove it in the way that the order asks for."))
    return found or Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("The law sets no day for this way of service. The judge's order says when it is complete."),
        _("Read the order, and record the day it names. If it names none, ask the clerk."),
        facts=(METHOD, "record.service.complete_on"),
    )
