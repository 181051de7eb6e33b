"""Service in another country."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Lives, ServiceMethod
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import took_part
from firstpaper.law.measures.service import method, service_complete
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD
from firstpaper.locale import _

LIVES, DAY = "residence.respondent.lives", "record.service.complete_on"


@rule(
    "Service in another country",
    cite="Cal. Rules of Court, rule 5.68(a)(5)",
    since=date(2013, 1, 1),
    not_modelled="Which country is bound by which treaty, and what it allows.",
)
def abroad(case: Case, on: date) -> Found | None:
    """Papers for somebody in another country must be served as the treaty with that country allows.

    What the rule asks. Many countries are bound by the Hague Service Convention. Some in the Americas are
    bound by the Inter-American Convention. If the country is bound, the papers must go the way its treaty
    allows. Often that means a central office, a translation, and months of waiting. Some countries do
    not allow papers to come by mail.

    A service that breaks the treaty can undo the whole case later. So get help with this one.

    There is another way. If the other side is willing, they can take part without being served: they file
    a response, or sign form FL-130.

    How we count. The treaty or the office abroad says when service was complete. Record that day. The
    other side has 30 days from it.

    An example. The central office certifies that the papers were handed over on October 26, 2026. The
    other side has until November 25.
    """
    lives_abroad = known(case.residence.respondent.lives) is Lives.ABROAD
    how = method(case)
    if how is not ServiceMethod.ABROAD:
        asked = lives_abroad and how in (None, ServiceMethod.OUT_OF_STATE_MAIL)
        return _get_help() if asked and not took_part(case, on) else None
    complete = service_complete(case, on)
    if complete is None:
        return _get_help()
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("You recorded that service abroad is complete on {day}.").format(day=spell_date(complete.day)),
        _("Have a lawyer or the self-help center look at the papers from abroad before you go on."),
        facts=(METHOD, DAY),
        dates={"service_complete": complete.day},
        steps=complete.steps,
    )


def _get_help() -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("Service in another country has rules of its own. A treaty may say how, and may forbid mail."),
        _(
            "Get help with service before you send anything. If the other side is willing, ask about form "
            "FL-130."
        ),
        facts=(LIVES, METHOD, DAY),
    )
