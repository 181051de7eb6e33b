"""FL-115, the proof of service of the summons. The person who served signs it, never the filer."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, Day, DontKnow, known
from firstpaper.facts.choices import ServiceMethod, Special
from firstpaper.forms.answer import Answer, blank, mark, sign, write
from firstpaper.forms.edition import edition_for, is_known
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.saying import nothing_to_mark, on_the_sheet
from firstpaper.forms.service_papers import caption, of_this_service, papers
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import Serving, cannot_be_found, method, serving
from firstpaper.locale import _

FORM = "FL-115"
BOXES = {
    "personal": ServiceMethod.PERSONAL,
    "substituted": ServiceMethod.SUBSTITUTED,
    "mail": ServiceMethod.ACKNOWLEDGMENT,
}
MAIL = (ServiceMethod.ACKNOWLEDGMENT, ServiceMethod.OUT_OF_STATE_MAIL)
LAW = {
    ServiceMethod.PERSONAL: "Code Civ. Proc. 415.10",
    ServiceMethod.SUBSTITUTED: "Code Civ. Proc. 415.20(b)",
    ServiceMethod.ACKNOWLEDGMENT: "Code Civ. Proc. 415.30",
    ServiceMethod.OUT_OF_STATE_MAIL: "Code Civ. Proc. 415.40",
}


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The form, while service is still to be proved, with what was recorded of it.

    None for somebody who cannot be found: a judge orders another way.
    """
    left = serving(case, on)
    by_order = left is Serving.SERVE and cannot_be_found(case)
    if left is Serving.NOTHING or by_order or not is_known(FORM, on):
        return ()
    return (filled(edition_for(FORM, on), tuple(_answers(of_this_service(case), on))),)


def _answers(case: Case, on: date) -> Iterator[Answer]:
    yield from caption(case)
    yield from papers(case, on)
    yield blank("address", _servers())
    yield from _by_hand(case, on)
    yield from _left_with_somebody(case, on)
    yield from _by_mail(case, on)
    other = _("Only where a judge ordered another way of service, such as a newspaper.")
    yield blank("other", other, "Code Civ. Proc. 415.50; Cal. Rules of Court, rule 5.72")
    yield from _notice(case)
    yield from _server()


def _servers() -> str:
    return _("The person who serves fills this in afterwards.")


def _by_hand(case: Case, on: date) -> Iterator[Answer]:
    yield _way(case, "personal", ServiceMethod.PERSONAL)
    served = happened(case, on).service.served_on if method(case) is ServiceMethod.PERSONAL else None
    yield _when("personal.date", served)
    yield blank("personal.time", _servers())


def _left_with_somebody(case: Case, on: date) -> Iterator[Answer]:
    service, mine = happened(case, on).service, method(case) is ServiceMethod.SUBSTITUTED
    yield _way(case, "substituted", ServiceMethod.SUBSTITUTED)
    yield blank("substituted.left_with", _servers())
    yield blank("substituted.place", _servers())
    yield _when("substituted.date", service.served_on if mine else None)
    yield blank("substituted.time", _servers())
    yield _when("substituted.mailed", service.mailed_on if mine else None)
    tries = _("The sheet that lists each try goes behind this form.")
    if mine:
        yield mark("substituted.diligence", tries, "Code Civ. Proc. 415.20(b)")
    else:
        yield blank("substituted.diligence", _("Only for papers left with somebody else."))


def _by_mail(case: Case, on: date) -> Iterator[Answer]:
    service, how = happened(case, on).service, method(case)
    if how in MAIL:
        yield mark("mail", _("The papers went by mail."), LAW[how])
    else:
        yield blank("mail", _not_this_way(case))
    yield _when("mail.date", service.mailed_on if how in MAIL else None)
    yield blank("mail.city", _servers())
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
        yield mark(concept, because, LAW[kind]) if how is kind else blank(concept, _not_this_way(case))


def _way(case: Case, concept: str, kind: ServiceMethod) -> Answer:
    if method(case) is kind:
        return mark(concept, _("You recorded that the papers were served this way."), LAW[kind])
    return blank(concept, _not_this_way(case))


def _not_this_way(case: Case) -> str:
    if method(case) is None:
        return _("The person who serves marks the way that worked.")
    return _("You recorded another way.")


def _when(concept: str, told: Day | DontKnow | None) -> Answer:
    known_day = day(told)
    if known_day is None:
        return blank(concept, _servers())
    recorded = _("The day you recorded. The person who served must know that it is right.")
    return write(concept, on_the_sheet(known_day), recorded)


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


def _server() -> Iterator[Answer]:
    yield blank("server.person", _servers())
    friend = _("A friend who serves marks “not a registered process server”.")
    yield blank("server.registered", f"{_servers()} {friend}", "Code Civ. Proc. 417.40")
    yield blank("server.fee", _("The person who serves fills this in. For a friend it is 0."))
    swears = _("Who signs swears that it is all true.")
    yield blank("server.perjury", f"{nothing_to_mark()} {swears}", "Code Civ. Proc. 2015.5")
    not_you = _("The person who served signs, after it is done. You must not sign here.")
    yield sign("server.date", _("The person who served writes the day of signing."))
    yield blank("server.name", _servers())
    yield sign("server.signature", not_you, "Code Civ. Proc. 414.10, 417.10(a)")
