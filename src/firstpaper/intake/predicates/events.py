"""When a detail of an event is asked for. Like the predicates of the questions: no law and no clock."""

from firstpaper.facts import Case, known
from firstpaper.facts.choices import BY_ORDER, FeeState, LaterService, ServedBy, ServiceMethod

MAILED = (ServiceMethod.SUBSTITUTED, ServiceMethod.ACKNOWLEDGMENT, ServiceMethod.OUT_OF_STATE_MAIL)
IN_PERSON = (ServiceMethod.PERSONAL, ServiceMethod.SUBSTITUTED)


def asked_for_a_waiver(case: Case) -> bool:
    """The filer asked the court to waive the fee, whatever came of it."""
    return known(case.record.fee) not in (None, FeeState.PAID)


def is_denied_a_waiver(case: Case) -> bool:
    """The court said no to the fee waiver, and nothing has been done about it."""
    return known(case.record.fee) is FeeState.WAIVER_DENIED


def was_denied_a_waiver(case: Case) -> bool:
    """The court said no to the fee waiver; the notice is kept where the fee was paid after it."""
    paid_after = known(case.record.fee) is FeeState.PAID and known(case.record.waiver_denied_on) is not None
    return paid_after or is_denied_a_waiver(case)


def was_served_by_a_person(case: Case) -> bool:
    """Somebody handed over, left or mailed the papers, without an order of a judge."""
    return _method(case) in (*IN_PERSON, *MAILED)


def was_served_by_a_helper(case: Case) -> bool:
    """Somebody did it who is neither the filer nor the sheriff or a paid server."""
    return was_served_by_a_person(case) and known(case.record.service.served_by) is ServedBy.SOMEBODY_ELSE


def was_left_with_another(case: Case) -> bool:
    """The papers were left with another adult."""
    return _method(case) is ServiceMethod.SUBSTITUTED


def was_handed_over_or_left(case: Case) -> bool:
    """Somebody went to hand over the papers, and left them with the other side or another adult."""
    return _method(case) in IN_PERSON


def was_mailed(case: Case) -> bool:
    """The way of service has a day of mailing."""
    return _method(case) in MAILED


def was_mailed_with_the_form(case: Case) -> bool:
    """The papers were mailed with form FL-117."""
    return _method(case) is ServiceMethod.ACKNOWLEDGMENT


def was_published(case: Case) -> bool:
    """The summons was printed in a newspaper."""
    return _method(case) is ServiceMethod.PUBLICATION


def was_posted(case: Case) -> bool:
    """The summons was posted at the courthouse."""
    return _method(case) is ServiceMethod.POSTING


def ends_as_ordered(case: Case) -> bool:
    """A judge's order or a treaty can set the day on which service is complete."""
    return _method(case) in BY_ORDER


def filed_together(case: Case) -> bool:
    """Both filed one petition."""
    return known(case.record.joint) is True


def has_an_amended_paper(case: Case) -> bool:
    """There is a later paper that had to be served."""
    record = case.record
    return known(record.amended_on if not filed_together(case) else record.revoked_on) is not None


def mailed_the_amended_paper(case: Case) -> bool:
    """The later paper went by mail."""
    return has_an_amended_paper(case) and known(case.record.amended_served_how) is LaterService.MAIL


def _method(case: Case) -> ServiceMethod | None:
    return known(case.record.service.method)
