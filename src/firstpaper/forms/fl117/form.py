"""FL-117, the notice and acknowledgment of receipt: it works only if the other side signs and returns it."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.forms.answer import Answer, blank, others, write
from firstpaper.forms.edition import edition_for, is_known
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.saying import nothing_to_mark, on_the_sheet, written
from firstpaper.forms.service_papers import caption, of_this_service, papers
from firstpaper.law.figure import figure
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import (
    Serving,
    goes_as_a_later_paper,
    method,
    needs_an_order,
    server_age,
    serving,
)
from firstpaper.locale import _

FORM = "FL-117"
LAW = "Code Civ. Proc. 415.30"
BY_MAIL = (None, ServiceMethod.ACKNOWLEDGMENT)


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The form, while first papers may go by mail to somebody found. Two copies; another mails them."""
    case_now = of_this_service(case)
    by_mail = serving(case, on) is Serving.SERVE and method(case_now) in BY_MAIL
    other_way = needs_an_order(case, on) or goes_as_a_later_paper(case, on)
    if not by_mail or other_way or not is_known(FORM, on):
        return ()
    return (filled(edition_for(FORM, on), tuple(_answers(case_now, on))),)


def _answers(case: Case, on: date) -> Iterator[Answer]:
    yield from caption(case)
    other_side = _("The other side, named just as on the petition.")
    yield written(case, "to", "respondent.name", other_side)
    yield blank("notice", f"{nothing_to_mark()} {_wait(on)}", "Code Civ. Proc. 415.30(d)")
    yield _mailed(case, on)
    for concept in ("sender.name", "sender.signature"):
        yield others(concept, _senders(), "Code Civ. Proc. 414.10" if concept == "sender.signature" else "")
    yield from papers(case, on)
    theirs = _("Only the person who gets the papers writes here. Service counts from the day they sign.")
    for concept in ("receiver.date", "receiver.name"):
        yield others(concept, theirs)
    yield others("receiver.signature", theirs, "Code Civ. Proc. 415.30(c)")


def _senders() -> str:
    age: int = server_age(None)
    return _(
        "The person who mails it does it: {age} or older, and not one of the two people in the case. "
        "You must not."
    ).format(age=age)


def _wait(on: date) -> str:
    days: int = figure("service.acknowledgment_wait_days", on).value
    return _("It tells them that they have {days} days to sign it and send it back.").format(days=days)


def _mailed(case: Case, on: date) -> Answer:
    told = happened(case, on).service.mailed_on if method(case) is ServiceMethod.ACKNOWLEDGMENT else None
    mailed = day(told)
    if mailed is None:
        return others("mailed", _senders())
    return write("mailed", on_the_sheet(mailed), _("The day you recorded."), LAW)
