"""Papers mailed with a form to sign and send back."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import ServiceMethod
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.record import happened, took_part
from firstpaper.law.measures.service import acknowledgment_back_by, method
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD, completed, need_day
from firstpaper.law.words import target_day
from firstpaper.locale import _

MAILED, SIGNED = "record.service.mailed_on", "record.service.acknowledged_on"
BACK = "record.service.acknowledgment_back_on"


@rule(
    "Papers mailed with a form to sign",
    cite=(
        "Code Civ. Proc. 415.30(a)",
        "Code Civ. Proc. 415.30(c)-(d)",
        "Code Civ. Proc. 413.20",
        "Code Civ. Proc. 417.10",
    ),
    since=date(1970, 7, 1),
    not_modelled="What good reason excuses the other side from the cost, and how to ask for the cost.",
)
def acknowledgment(case: Case, on: date) -> Found | None:
    """Papers can be served by mail if the other side signs a form that says so and sends it back.

    What the law asks. Somebody other than you mails the papers with two copies of form FL-117 and a
    return envelope with a stamp. It works only if the other side signs the form and sends it back.
    Then service is complete on the day it was signed, not on the day it came back.

    The other side has 20 days from the mailing. After that you do not have to wait: have the papers served
    in another way, and the court can make the other side pay what that costs, unless they had a good
    reason. But a form that comes back late still counts. Service is then complete on the day it was signed,
    and the time to respond runs from that day.

    An example. Mailed on Monday, November 2, 2026, signed on November 16, back on November 20: service
    is complete on November 16. The other side has until Wednesday, December 16.

    Why it is worth trying. It is quiet and cheap, and from 2027 its proof needs no photographs. The
    orders in the summons are another matter: see the page orders.who_is_bound.
    """
    if method(case) is not ServiceMethod.ACKNOWLEDGMENT:
        return None
    says = _(
        "Service was complete on {day}, the day the form was signed. The day it came back does not count."
    )
    do = _("Put the signed form FL-117 behind the proof of service.")
    found = completed(case, on, says, do)
    if found:
        return found
    if known(happened(case, on).service.acknowledgment_back_on) is not None:
        return need_day(SIGNED, _("the day the other side signed the form"))
    if took_part(case, on):
        return None
    waiting = acknowledgment_back_by(case, on)
    return _not_back(waiting, on) if waiting else need_day(MAILED, _("the day the papers were mailed"))


def _not_back(waiting: Due, on: date) -> Found:
    over = waiting.missed(on)
    wait = _("Nobody is served yet. The other side has until {day} to sign the form and send it back.")
    late = _(
        "The form did not come back by {day}, and nobody is served yet. If it still comes, it counts "
        "from the day it was signed."
    )
    return Found(
        Outcome.NOT_MET,
        Weight.LOOK_AGAIN if over else Weight.GOOD_TO_KNOW,
        late.format(day=spell_date(waiting.rolled)) if over else wait.format(day=target_day(waiting)),
        _(
            "Do not wait: have the papers served in another way, best in person. You can ask the court to "
            "make the other side pay what that costs. If the form still comes back, record it."
        )
        if over
        else _("Record the day it was signed and the day it came back."),
        facts=(METHOD, MAILED, SIGNED, BACK),
        dates={"back_by": waiting.target, "back_by_moved_to": waiting.rolled},
        steps=waiting.steps,
    )
