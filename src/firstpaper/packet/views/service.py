"""The service kit: how to have the papers served, a page and a log to give away, and the two forms."""

from collections import Counter
from collections.abc import Iterator

from firstpaper.facts import known
from firstpaper.facts.addresses import is_post_box, to_serve_at
from firstpaper.facts.choices import AWAY, IN_CALIFORNIA, Lives, Special
from firstpaper.forms.caption_box import one_line
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.forms.fl110.form import FORM as SUMMONS
from firstpaper.forms.served import Served, served
from firstpaper.law.figure import figure
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.measures.emergency import emergency_number
from firstpaper.law.measures.record import answered_first, case_number, responded
from firstpaper.law.measures.service import (
    Serving,
    cannot_be_found,
    goes_as_a_later_paper,
    notice_may_go_by_mail,
    proof_texts,
    serves_again,
    serving,
)
from firstpaper.law.words import spaced
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.either_way import may_yet_file_together
from firstpaper.packet.views.sheet import Sheet
from firstpaper.packet.views.worksheet import of_copy

TRIES_ON_LOG = 3


def sheets(brief: Brief) -> Iterator[Sheet]:
    """What is left to do about service: the kit, then the forms. None where filing together is still open."""
    if is_to_be_served(brief):
        yield from _kit(brief)
    if not may_yet_file_together(brief):
        later = proof_texts(brief.case, brief.on).changes_on  # the papers may be served after that day
        for form in filled_forms(brief.case, brief.on, Filing.SERVICE):
            yield of_copy(form, brief, on=later)


def is_to_be_served(brief: Brief) -> bool:
    """Whether the papers are still to be served, and surely have to be."""
    return serving(brief.case, brief.on) is Serving.SERVE and not may_yet_file_together(brief)


def _kit(brief: Brief) -> Iterator[Sheet]:
    if goes_as_a_later_paper(brief.case, brief.on):
        yield from _later_paper(brief)
        return
    shared = _shared(brief)
    yield Sheet(
        template="service.html",
        title=_("Have the papers served"),
        running=_("Have the papers served"),
        purpose=_purpose(brief),
        values={
            **shared,
            **_for_the_filer(brief),
            "cannot_be_found": cannot_be_found(brief.case),
            "children": has_minor_children(brief.case, brief.on),
            "notice_by_mail": notice_may_go_by_mail(brief.case, brief.on),
            "away": known(brief.case.residence.respondent.lives) in AWAY,
            "out_of_state_days": figure("service.complete_days.out_of_state_mail", brief.on).value,
            "response_days": figure("response.days", brief.on).value,
        },
    )
    if cannot_be_found(brief.case):
        return
    purpose = _("Give this page to the person who hands over the papers.")
    yield _for_the_server("service-server.html", purpose, shared)
    yield Sheet(
        template="service-log.html",
        title=_("Log of service"),
        running=_("Log of service"),
        purpose=_("The person who serves writes each try here."),
        given_away=True,
        values={**shared, "tries": range(1, TRIES_ON_LOG + 1)},
    )


def _later_paper(brief: Brief) -> Iterator[Sheet]:
    """The kit for somebody who took part: two pages, without a summons, a log or a form to send back."""
    case, on = brief.case, brief.on
    shared = _shared(brief)
    yield Sheet(
        template="service-later.html",
        title=_("Have the amended petition served"),
        running=_("Have the amended petition served"),
        purpose=_("Read it after you file. It says who may mail or hand over the papers, and how."),
        values={
            **shared,
            **_for_the_filer(brief),
            "permission": answered_first(case, on),
            "answered": responded(case, on),
            "answer_days": figure("response.amended_days", on).value,
            "mail_adds": figure("service.mail_extra_days", on).value,
        },
    )
    purpose = _("Give this page to the person who mails or hands over the papers.")
    yield _for_the_server("service-later-server.html", purpose, shared)


def _for_the_server(template: str, purpose: str, shared: dict[str, object]) -> Sheet:
    """The page that is given away with the envelope."""
    title = _("For the person who serves the papers")
    return Sheet(
        template=template, title=title, running=title, purpose=purpose, given_away=True, values=shared
    )


def _for_the_filer(brief: Brief) -> dict[str, object]:
    """What only the filer's own page says."""
    return {
        "emergency": brief.emergency,
        "envelope": tuple(map(spaced, _envelope(brief))),
        "in_danger": brief.in_danger,
        "hides_address": brief.hides_address,
        "hotline": figure("help.domestic_violence_hotline", brief.on).value,
    }


def _purpose(brief: Brief) -> str:
    if cannot_be_found(brief.case):
        return _("Read it after you file. It says how a judge can allow another way.")
    return _("Read it after you file. It says who may hand over the papers, and how.")


def _shared(brief: Brief) -> dict[str, object]:
    """What the pages say that leave the filer's hands: names, the court, and where the other side may be."""
    case, on = brief.case, brief.on
    lives, special = known(case.residence.respondent.lives), known(case.people.special) or ()
    texts, address = proof_texts(case, on), to_serve_at(case)
    locked_up = Special.OTHER_SIDE_LOCKED_UP in special
    return {
        "couple": brief.couple,
        "respondent": known(case.respondent.name),
        "county": known(case.court.county),
        "case_number": case_number(case),
        "envelope": tuple(words for words, _only_if in _envelope(brief)),
        "server_age": figure("service.server_age", on).value,
        "substituted_days": figure("service.complete_days.substituted", on).value,
        "wait_days": figure("service.acknowledgment_wait_days", on).value,
        "address": one_line(address) if address else "",
        "post_box": address is not None and not locked_up and is_post_box(address.street),
        "locked_up": locked_up,
        "may_leave": not locked_up and lives is not Lives.ABROAD,
        "emergency": emergency_number(lives, on),
        "individual": Special.OTHER_SIDE_CONSERVED not in special,
        "abroad": lives is Lives.ABROAD,
        "may_mail_out": lives not in IN_CALIFORNIA and lives is not Lives.ABROAD,
        "texts": texts,
        "photographs": texts.now.photographs or texts.then is not None,
    }


def _envelope(brief: Brief) -> Iterator[tuple[str, str]]:
    """The papers that the other side gets, each as one line to tick, and when alone it is there.

    The second is for the filer. Whoever serves crosses out what is not there.
    """
    copies = Counter(form.form for form in brief.filled)
    no_summons = goes_as_a_later_paper(brief.case, brief.on)
    for paper in served(brief.forms, brief.attachments):
        if no_summons and paper.form == SUMMONS:
            continue
        words = _("{paper}, blank") if paper.blank else _("{paper}, a copy")
        if not paper.blank and paper.name == paper.form and copies[paper.form] > 1:
            words = _("{paper}, a copy of all {count}")
        named = words.format(paper=_named(paper, brief), count=copies[paper.form])
        yield named, paper.only_if and f"({paper.only_if.rstrip('.')})"


def _named(paper: Served, brief: Brief) -> str:
    """What to look for in the envelope; of the two petitions there are by then, the right one."""
    if paper.form == PETITION and serves_again(brief.case):
        return _("{form} marked “amended”").format(form=paper.form)
    return paper.name
