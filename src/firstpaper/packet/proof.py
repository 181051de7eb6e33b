"""Which paper proves the service of one case, in words to act on.

What proves it hangs on the way of service: FL-115, FL-985 after a posting, or the sworn statement of a
newspaper (Code Civ. Proc. 417.10, 417.20; Cal. Rules of Court, rule 5.72(b)). A later paper has FL-335 or
FL-330, which rule 5.66(b)(2) names for a response.
"""

from collections.abc import Callable, Mapping
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import LaterService, ServiceMethod
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import (
    BY_HAND,
    Serving,
    goes_as_a_later_paper,
    method,
    needs_an_order,
    photographs_needed,
    proof_needed,
    serves_again,
    serving,
)
from firstpaper.law.words import spaced
from firstpaper.locale import _


def proof_step(case: Case, on: date) -> str:
    """What to file to prove the service, to go on after "Next:"; empty where nothing is left."""
    left = serving(case, on)
    if left is Serving.NOTHING and not proof_needed(case, on):
        return ""
    if goes_as_a_later_paper(case, on):
        return _of_a_later_paper(case)
    if serves_again(case):
        return _of_the_amended()
    if needs_an_order(case, on):
        return _("file the proof of service: the newspaper's sworn statement, or FL-985 after a posting.")
    how = method(case)
    return spaced((_BY_METHOD.get(how, _signed)(), _behind(case, on) if how in BY_HAND else ""))


def _of_a_later_paper(case: Case) -> str:
    """By how it went; overnight delivery has no form that we know of."""
    match known(case.record.amended_served_how):
        case LaterService.MAIL:
            return _(
                "file a proof of service by mail (FL-335) for the amended petition, signed by the one who "
                "mailed it."
            )
        case LaterService.PERSONAL:
            return _(
                "file a proof of personal service (FL-330) for the amended petition, signed by the one who "
                "handed it over."
            )
        case _:
            return _(
                "file a proof of service for the amended petition, signed by the one who served it: FL-335 "
                "if it was mailed, FL-330 if it was handed over."
            )


def _of_the_amended() -> str:
    return _(
        "file a proof of service (FL-115) for the amended petition, signed by the one who served it. A proof "
        "for the first petition does not count for it."
    )


def _signed() -> str:
    return _("file the proof of service (FL-115), signed by the one who served.")


def _behind(case: Case, on: date) -> str:
    """What goes behind the proof of service by hand."""
    served, tried = day(happened(case, on).service.served_on), method(case) is ServiceMethod.SUBSTITUTED
    if served is None or not photographs_needed(served):
        return _("Behind it goes the log of all tries.") if tried else ""
    if tried:
        return _("Behind it go the log of all tries, and the photographs or the written reason for none.")
    return _("Behind it go the photographs, or the written reason for none.")


def _acknowledged() -> str:
    return _(
        "file the proof of service (FL-115), signed by the one who mailed the papers, with the signed FL-117 "
        "behind it."
    )


def _mailed_out() -> str:
    return _(
        "when the signed receipt is back, file the proof of service (FL-115) with the receipt behind it. The "
        "one who mailed the papers signs FL-115."
    )


def _printed() -> str:
    return _("file the proof of service: the sworn statement of the newspaper that printed the summons.")


def _posted() -> str:
    return _("file the proof of service: FL-985, signed by whoever posted the papers.")


def _ordered() -> str:
    return _("file the proof of service that the judge's order asks for.")


def _abroad() -> str:
    return _("file the proof of service from abroad. First have the self-help center look at it.")


_BY_METHOD: Mapping[ServiceMethod | None, Callable[[], str]] = {
    ServiceMethod.ACKNOWLEDGMENT: _acknowledged,
    ServiceMethod.OUT_OF_STATE_MAIL: _mailed_out,
    ServiceMethod.PUBLICATION: _printed,
    ServiceMethod.POSTING: _posted,
    ServiceMethod.COURT_DIRECTED: _ordered,
    ServiceMethod.ABROAD: _abroad,
}
