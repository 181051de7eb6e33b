"""FL-115, the proof of service of the summons. The person who served signs it, never the filer."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import ServiceMethod, Special
from firstpaper.forms.answer import Answer, blank, mark, others, write
from firstpaper.forms.edition import edition_for, is_known
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.saying import nothing_to_mark, on_the_sheet
from firstpaper.forms.service_papers import caption, of_this_service, papers
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import (
    Serving,
    goes_as_a_later_paper,
    method,
    needs_an_order,
    photographs_needed,
    proof_texts,
    serving,
)
from firstpaper.law.words import spaced
from firstpaper.locale import _

FORM = "FL-115"
MAIL = (ServiceMethod.ACKNOWLEDGMENT, ServiceMethod.OUT_OF_STATE_MAIL)
LAW = {
    ServiceMethod.PERSONAL: "Code Civ. Proc. 415.10",
    ServiceMethod.SUBSTITUTED: "Code Civ. Proc. 415.20(b)",
    ServiceMethod.ACKNOWLEDGMENT: "Code Civ. Proc. 415.30",
    ServiceMethod.OUT_OF_STATE_MAIL: "Code Civ. Proc. 415.40",
}


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The form, while service is still to be proved, with what was recorded of it.

    None for somebody who cannot be found: a judge orders another way. None for somebody who took part: it
    proves the service of a summons.
    """
    other_proof = needs_an_order(case, on) or goes_as_a_later_paper(case, on)
    if serving(case, on) is Serving.NOTHING or other_proof or not is_known(FORM, on):
        return ()
    return (filled(edition_for(FORM, on), tuple(_answers(of_this_service(case), on))),)


def _answers(case: Case, on: date) -> Iterator[Answer]:
    yield from caption(case)
    yield from papers(case, on)
    yield others("address", _servers())
    yield from _by_hand(case, on)
    yield from _left_with_somebody(case, on)
    yield from _by_mail(case, on)
    other = _("Only where a judge ordered another way of service, such as a newspaper.")
    yield blank("other", other, "Code Civ. Proc. 415.50; Cal. Rules of Court, rule 5.72")
    yield from _notice(case)
    yield from _server(case)


def _servers() -> str:
    return _("The person who served does it, afterwards.")


def _by_hand(case: Case, on: date) -> Iterator[Answer]:
    yield _way(case, on, ServiceMethod.PERSONAL, "personal")
    yield _when(case, on, ServiceMethod.PERSONAL, "personal.date")
    yield _detail(case, on, ServiceMethod.PERSONAL, "personal.time")


def _left_with_somebody(case: Case, on: date) -> Iterator[Answer]:
    how = ServiceMethod.SUBSTITUTED
    yield _way(case, on, how, "substituted")
    yield _detail(case, on, how, "substituted.left_with")
    yield _detail(case, on, how, "substituted.place")
    yield _when(case, on, how, "substituted.date")
    yield _detail(case, on, how, "substituted.time")
    yield _when(case, on, how, "substituted.mailed", "mailed_on")
    if method(case) is how:
        tries = _("The sheet that lists each try goes behind this form.")
        yield mark("substituted.diligence", tries, LAW[how])
    else:
        yield _detail(case, on, how, "substituted.diligence")


def _by_mail(case: Case, on: date) -> Iterator[Answer]:
    how = _mail_recorded(case) or ServiceMethod.ACKNOWLEDGMENT
    if _mail_recorded(case):
        yield mark("mail", _("The papers went by mail."), LAW[how])
    else:
        yield _detail(case, on, how, "mail")
    yield _when(case, on, how, "mail.date", "mailed_on")
    yield _detail(case, on, how, "mail.city")
    for concept, kind, because in (
        (
            "mail.acknowledged",
            ServiceMethod.ACKNOWLEDGMENT,
            _("It counts only with the signed FL-117 behind this form."),
        ),
        (
            "mail.out_of_state",
            ServiceMethod.OUT_OF_STATE_MAIL,
            _("It counts only with the signed receipt, or other proof that the papers came."),
        ),
    ):
        mine = method(case) is kind
        yield mark(concept, because, LAW[kind]) if mine else _detail(case, on, kind, concept)


def _mail_recorded(case: Case) -> ServiceMethod | None:
    """The way of mailing that was recorded."""
    how = method(case)
    return how if how in MAIL else None


def _way(case: Case, on: date, how: ServiceMethod, concept: str) -> Answer:
    if method(case) is not how:
        return _detail(case, on, how, concept)
    recorded = _("You recorded that the papers were served this way.")
    return mark(concept, spaced((recorded, _photographs(case, on))), LAW[how])


def _photographs(case: Case, on: date) -> str:
    served = day(happened(case, on).service.served_on)
    if served is None or not photographs_needed(served):
        return ""
    return _("The photographs, or the written reason for none, go behind this form.")


def _detail(case: Case, on: date, how: ServiceMethod, concept: str) -> Answer:
    """What only the person who served can tell; empty where another way was recorded."""
    if method(case) is None:
        return others(concept, _afterwards(case, on))
    return (
        others(concept, _servers()) if method(case) is how else blank(concept, _("You recorded another way."))
    )


def _afterwards(case: Case, on: date) -> str:
    """What the person who serves fills in, while nobody knows yet which way will work."""
    texts = proof_texts(case, on)
    does = _(
        "The person who served does it, afterwards: the way that worked, with its days, times and places."
    )
    if texts.now.photographs:
        now = _(
            "For papers handed over or left, the photographs or the written reason for none go behind this "
            "form."
        )
        return spaced((does, now))
    if texts.changes_on is None:
        return does
    later = _(
        "For papers handed over or left from {day} on, the photographs or the written reason for none go "
        "behind this form."
    )
    return spaced((does, later.format(day=spell_date(texts.changes_on))))


def _when(case: Case, on: date, how: ServiceMethod, concept: str, fact: str = "served_on") -> Answer:
    mine = day(getattr(happened(case, on).service, fact)) if method(case) is how else None
    if mine is None:
        return _detail(case, on, how, concept)
    recorded = _("The day you recorded. The person who served must know that it is right.")
    return write(concept, on_the_sheet(mine), recorded)


def _notice(case: Case) -> Iterator[Answer]:
    if Special.OTHER_SIDE_CONSERVED in (known(case.people.special) or ()):
        yield from _two_sets()
        return
    person = _("The other side is served as a person. The same box is marked on the summons.")
    yield mark("notice.individual", person, "Code Civ. Proc. 412.30, 417.10(a)")
    yield blank(
        "notice.other", _("Only where the papers are for a minor or for somebody with a conservator.")
    )


def _two_sets() -> Iterator[Answer]:
    """A conservator and the person are both served; which box a judge wants is for somebody to look at."""
    both = _(
        "The other side has a conservator. Both get a full set, and each needs a proof of their own. On the "
        "summons for them, ask the self-help center which box to mark."
    )
    for concept in ("notice.individual", "notice.other"):
        yield blank(concept, both, "Code Civ. Proc. 416.70")


def _server(case: Case) -> Iterator[Answer]:
    who = _who_served(case)
    for concept in ("server.person", "server.registered", "server.fee"):
        yield others(concept, who, "Code Civ. Proc. 417.40" if concept == "server.registered" else "")
    swears = _("Who signs swears that it is all true.")
    yield blank("server.perjury", f"{nothing_to_mark()} {swears}", "Code Civ. Proc. 2015.5")
    signs = _("The person who served does it, after it is done. You must not sign here.")
    for concept in ("server.date", "server.name"):
        yield others(concept, signs)
    yield others("server.signature", signs, "Code Civ. Proc. 414.10, 417.10(a)")


def _who_served(case: Case) -> str:
    if Special.OTHER_SIDE_LOCKED_UP in (known(case.people.special) or ()):
        return _("Whoever put the papers into the prisoner's hands does it. It may be the staff there.")
    return _(
        "The person who served does it. A friend marks “not a registered process server”, with a fee of 0."
    )
