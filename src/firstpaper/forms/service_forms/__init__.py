"""The two forms about service: FL-115, which proves it, and FL-117, which the other side can sign instead.

They are no part of the first filing. The filer prepares the top and the list of papers; the rest belongs to
the person who serves, or to the one who gets the papers (Code Civ. Proc. 414.10, 415.30, 417.10).
"""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.facts.record import Service
from firstpaper.forms.edition import NoEditionError, edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.service_forms import acknowledgment, proof
from firstpaper.law.measures.service import Serving, method, serves_again, serving

PROOF, ACKNOWLEDGMENT = "FL-115", "FL-117"
BY_MAIL = (None, ServiceMethod.ACKNOWLEDGMENT)


def service_forms(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The forms about service that this case still needs, as it stands on the day `on`.

    Where an amended petition is served, nothing of the first service is filled in.
    """
    left = serving(case, on)
    if left is Serving.NOTHING:
        return ()
    if serves_again(case):
        case = _not_yet_served(case)
    makers = {PROOF: proof.answers}
    if left is Serving.SERVE and method(case) in BY_MAIL:
        makers[ACKNOWLEDGMENT] = acknowledgment.answers
    return tuple(
        filled(edition_for(form, on), tuple(answers(case, on)))
        for form, answers in makers.items()
        if _known_edition(form, on)
    )


def _not_yet_served(case: Case) -> Case:
    record = case.record.model_copy(update={"service": Service.nothing()})
    return case.model_copy(update={"record": record})


def _known_edition(form: str, on: date) -> bool:
    try:
        edition_for(form, on)
    except NoEditionError:
        return False
    return True
