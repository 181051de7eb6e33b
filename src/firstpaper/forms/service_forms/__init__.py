"""The two forms about service: FL-115, which proves it, and FL-117, which the other side can sign instead.

They are no part of the first filing. The filer prepares the top and the list of papers; the rest belongs to
the person who serves, or to the one who gets the papers (Code Civ. Proc. 414.10, 415.30, 417.10).
"""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import ServiceMethod
from firstpaper.forms.edition import NoEditionError, edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.service_forms import acknowledgment, proof
from firstpaper.law.measures.record import happened, joint, took_part
from firstpaper.law.measures.service import BY_ORDER, method

PROOF, ACKNOWLEDGMENT = "FL-115", "FL-117"
BY_MAIL = (None, ServiceMethod.ACKNOWLEDGMENT)


def still_to_serve(case: Case, on: date) -> bool:
    """Whether papers are still to be served, or the service is still to be proved.

    Not in a joint petition (Fam. Code 2331(b)), not once the other side took part (Code Civ. Proc. 417.30),
    and not where an order or a treaty says how the papers go.
    """
    proved = known(happened(case, on).service.proof_filed_on) is not None
    return not (joint(case) or took_part(case, on) or proved or method(case) in BY_ORDER)


def service_forms(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The forms about service that this case still needs, as it stands on the day `on`."""
    if not still_to_serve(case, on):
        return ()
    makers = {PROOF: proof.answers}
    if method(case) in BY_MAIL:
        makers[ACKNOWLEDGMENT] = acknowledgment.answers
    return tuple(
        filled(edition_for(form, on), tuple(answers(case, on)))
        for form, answers in makers.items()
        if _known_edition(form, on)
    )


def _known_edition(form: str, on: date) -> bool:
    try:
        edition_for(form, on)
    except NoEditionError:
        return False
    return True
