"""Words and findings that the rules on service share."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.facts.choices import BY_ORDER, ServiceMethod
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.service import (
    certainty,
    method,
    proof_needed,
    service_complete,
    start_key,
)
from firstpaper.law.words import spaced
from firstpaper.locale import _

METHOD = "record.service.method"
PROOF = "record.service.proof_filed_on"


def need_day(key: str, what: str) -> Found:
    """That a whole day is missing; `what` names it."""
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We cannot tell when service is complete. We need {what}.").format(what=what),
        _("Ask the person who served the papers, and record the whole day."),
        facts=(METHOD, key),
    )


def completed(
    case: Case, on: date, says: str, do: str = "", *, weight: Weight = Weight.GOOD_TO_KNOW, **words: object
) -> Found | None:
    """That service is or will be complete, with the proof still to be filed; None where no day is known.

    `says` names the day as {day}, and other `words`; `do` stands before what is said of the proof.
    """
    counted, how = service_complete(case, on), method(case)
    if counted is None or how is None:
        return None
    to_do = (do, file_the_proof(how) if proof_needed(case, on) else "")
    return Found(
        Outcome.MET,
        weight,
        says.format(day=spell_date(counted.day), **words),
        spaced(to_do),
        facts=(METHOD, start_key(how), PROOF),
        dates={"service_complete": counted.day},
        steps=counted.steps,
        certainty=certainty(case, on),
    )


def file_the_proof(how: ServiceMethod) -> str:
    """What the proof of service is, and who signs it."""
    if how is ServiceMethod.PUBLICATION:
        return _(
            "The newspaper signs a sworn statement of what it printed. File it: it is the proof of service."
        )
    if how is ServiceMethod.POSTING:
        return _("File the proof of service, form FL-985. Whoever posted the papers signs it.")
    if how in BY_ORDER:
        return _("File the proof of service that the judge's order asks for.")
    return _("File the proof of service, form FL-115. The person who served the papers signs it, not you.")
