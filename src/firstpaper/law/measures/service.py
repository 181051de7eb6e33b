"""How and when the first papers were served, and when service is complete.

Code Civ. Proc. 415.10-415.50; Cal. Rules of Court, rule 5.68. Mailing a summons adds no days (Code
Civ. Proc. 413.20). The day service is complete is an event, not an act, so a closed court does not
move it; no authority was found.
"""

from collections.abc import Sequence
from datetime import date
from enum import StrEnum
from itertools import combinations
from typing import NamedTuple

from firstpaper.counting import Counted, day_after, days_after, short_date
from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import BY_ORDER, Kind, ServedBy, ServiceMethod, Special
from firstpaper.facts.kinds import kind_of
from firstpaper.facts.record import Record, Service
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureValue, figure
from firstpaper.law.measures.court import COUNTS_FROM
from firstpaper.law.measures.due import Due, due_elsewhere
from firstpaper.law.measures.record import day, filed_on, happened, joint, took_part, took_part_first
from firstpaper.locale import _

BY_HAND = frozenset({ServiceMethod.PERSONAL, ServiceMethod.SUBSTITUTED})
"""Methods whose proof carries photographs from 2027 (Code Civ. Proc. 417.10(a)(1))."""

NEAR_DAYS = 60
"""How long before the law on service changes we speak of it. Ours, not the law's."""

_STARTS = {
    ServiceMethod.PERSONAL: "served_on",
    ServiceMethod.SUBSTITUTED: "mailed_on",
    ServiceMethod.ACKNOWLEDGMENT: "acknowledged_on",
    ServiceMethod.OUT_OF_STATE_MAIL: "mailed_on",
    ServiceMethod.PUBLICATION: "first_published_on",
}


def method(case: Case) -> ServiceMethod | None:
    """The method of service, where one was recorded; a joint petition is not served.

    None too where the papers went by somebody who may not serve: that is no service, and starts no time.
    """
    return None if joint(case) or wrong_server(case) else known(case.record.service.method)


def wrong_server(case: Case) -> bool:
    """Whether the papers were handed over or mailed by the filer, or by somebody too young (414.10)."""
    service = case.record.service
    if known(service.served_by) is ServedBy.FILER:
        return True
    age, day_of_it = known(service.server_age), day(service.served_on) or day(service.mailed_on)
    return age is not None and age < server_age(day_of_it)


def server_age(on: date | None) -> int:
    """How old somebody who serves must be; by the text last in force where no day counts."""
    age: int = figure("service.server_age", on if on and on >= COUNTS_FROM else date.max).value
    return age


def cannot_be_found(case: Case) -> bool:
    """Whether the filer said so, or knows neither a home nor a mailing address of the other side."""
    if Special.OTHER_SIDE_MISSING in (known(case.people.special) or ()):
        return True
    return case.residence.respondent.lives is DONT_KNOW and case.respondent.mailing is DONT_KNOW


def start_key(how: ServiceMethod) -> str:
    """The fact from which the method's days are counted."""
    return f"record.service.{_STARTS.get(how, 'complete_on')}"


def service_complete(case: Case, on: date) -> Counted | None:
    """The day on which service is complete, which may lie ahead; None where it cannot be told yet."""
    service, how = happened(case, on).service, method(case)
    if how is None:
        return None
    ordered = day(service.complete_on)
    if how in BY_ORDER and ordered:
        return Counted(ordered, (_step(ordered, _complete_words(how)),))
    start = _start(service, how)
    return _counted(how, start) if start else None


def _complete_words(how: ServiceMethod) -> str:
    if how is ServiceMethod.ABROAD:
        return _("service is complete, by the papers from abroad")
    return _("service is complete, by the judge's order")


def completion_law(how: ServiceMethod, start: date) -> FigureValue:
    """The days from the method's start until service is complete, as the law stood on that day."""
    return figure(f"service.complete_days.{how}", start)


def certainty(case: Case, on: date) -> Certainty:
    """How sure the day of service is by its method; a day set by an order or a treaty is as sure as that."""
    service, how = happened(case, on).service, method(case)
    start = _start(service, how) if how else None
    if how is None or start is None or (how in BY_ORDER and day(service.complete_on)):
        return Certainty.STATUTE
    return completion_law(how, start).certainty


def acknowledgment_back_by(case: Case, on: date) -> Due | None:
    """The last day to send the signed acknowledgment back (415.30(d)).

    None once it is back, and once the other side took part: nothing hangs on it any more.
    """
    record = happened(case, on).service
    mailed = day(record.mailed_on) if method(case) is ServiceMethod.ACKNOWLEDGMENT else None
    if mailed is None or known(record.acknowledgment_back_on) is not None or took_part(case, on):
        return None
    wait: int = figure("service.acknowledgment_wait_days", mailed).value
    return due_elsewhere(days_after(mailed, wait))


def service_open(case: Case, on: date) -> bool:
    """Whether the papers of a filed case are still to be served: nothing served, and nobody took part."""
    begun = filed_on(case, on) is not None
    return begun and service_complete(case, on) is None and not took_part(case, on)


def proof_needed(case: Case, on: date) -> bool:
    """Whether a proof of service is still to be filed (Code Civ. Proc. 417.30)."""
    return (
        service_complete(case, on) is not None
        and known(happened(case, on).service.proof_filed_on) is None
        and not took_part(case, on)
    )


def lacks_proof(case: Case, on: date) -> bool:
    """Whether what was served last has no proof on file; one of the first service proves no later one."""
    return serving(case, on) is Serving.PROVE or proof_needed(case, on)


def waits_for_receipt(case: Case, on: date) -> bool:
    """Whether papers were mailed out of the state and nothing filed shows that they came.

    The day is counted from the mailing (Code Civ. Proc. 415.40), but it counts only with a signed receipt or
    other evidence of actual delivery (417.20(a)), which goes behind the proof of service. Once the petition
    was amended, nothing hangs on the first service.
    """
    by_mail = method(case) is ServiceMethod.OUT_OF_STATE_MAIL and not serves_again(case)
    return by_mail and proof_needed(case, on)


def lacks_its_day(case: Case, on: date) -> bool:
    """Whether the papers went as an order or a treaty says, and nobody told on which day that is complete."""
    ordered = method(case) in BY_ORDER and service_complete(case, on) is None
    return ordered and not took_part(case, on) and not serves_again(case)


def surely_served(case: Case, on: date) -> bool:
    """Whether service is complete, or will be on a day that nothing more can change."""
    return service_complete(case, on) is not None and not waits_for_receipt(case, on)


class Serving(StrEnum):
    """What is left to do about serving the papers that open the case, or those that take their place."""

    SERVE = "serve"
    PROVE = "prove"
    NOTHING = "nothing"


def serving(case: Case, on: date) -> Serving:
    """What is left to do: serve the papers, then file the proof.

    Nothing in a joint petition (Fam. Code 2331(b)), once the other side took part (Code Civ. Proc. 417.30),
    and where an order or a treaty says how the papers go. But an amended petition is served on somebody who
    took part too (471.5(a)).
    """
    record = happened(case, on)
    if joint(case):
        return Serving.NOTHING
    if serves_again(case):
        return _serving_again(record)
    if took_part(case, on):
        return Serving.NOTHING
    proved = known(record.service.proof_filed_on) is not None and not wrong_server(case)
    if method(case) in BY_ORDER or proved:
        return Serving.NOTHING
    return Serving.SERVE if service_complete(case, on) is None else Serving.PROVE


def _serving_again(record: Record) -> Serving:
    """What is left of an amended petition: it has a proof of its own, filed after it was served.

    What the other side filed since then makes that needless, as for the first papers (417.30).
    """
    told = known(record.amended_served_on)
    if told is None:
        return Serving.SERVE
    came = filter(None, (known(record.response_filed_on), known(record.appeared_on)))
    if any(each.latest >= told.earliest for each in came):
        return Serving.NOTHING
    served, proved = told.sure, day(record.service.proof_filed_on)
    return Serving.NOTHING if served and proved and proved >= served else Serving.PROVE


def serves_again(case: Case) -> bool:
    """Whether an amended petition must be served, so that the service of the first one no longer counts."""
    amended = known(case.matter.amended) is True or known(case.record.amended_on) is not None
    return amended and not joint(case)


def goes_as_a_later_paper(case: Case, on: date) -> bool:
    """Whether an amended petition goes to somebody who took part: like any later paper, without a summons.

    A general appearance is equal to personal service of the summons (Cal. Rules of Court, rule 5.68(c)), and
    mail is enough for a later paper (Code Civ. Proc. 1013(a)). That an amended petition is one of them is our
    reading; of the one that revokes a joint petition, rule 5.68(d) says it.
    """
    return serves_again(case) and took_part(case, on)


def needs_an_order(case: Case, on: date) -> bool:
    """Whether somebody who cannot be found is still to be served, so that a judge must allow a way.

    Somebody who took part gave the court an address.
    """
    to_serve = serving(case, on) is Serving.SERVE
    return to_serve and cannot_be_found(case) and not goes_as_a_later_paper(case, on)


def notice_may_go_by_mail(case: Case, on: date) -> bool:
    """Whether a separation becomes the divorce first announced, with nobody in it yet (Fam. Code 2321(b))."""
    matter = case.matter
    turns = known(matter.first_kind) is Kind.LEGAL_SEPARATION and kind_of(case) is Kind.DISSOLUTION
    return turns and known(matter.first_stated_intent) is True and took_part_first(case, on) is False


def personally_served_on(case: Case, on: date) -> date | None:
    """The day of personal service, or of a signed waiver and acceptance (Fam. Code 233(a)); else None."""
    service = happened(case, on).service
    handed = day(service.served_on) if method(case) is ServiceMethod.PERSONAL else None
    return min(filter(None, (handed, day(service.accepted_on))), default=None)


class Attempts(NamedTuple):
    """The tries at personal delivery before substituted service, against what the law asks.

    `needed` tries must lie on different days and at different times; it is 0 where the law names no
    number. `enough` is None where a time of day that was not recorded leaves it open.
    """

    days: tuple[date, ...]
    needed: int
    enough: bool | None


def attempts(case: Case, left_on: date) -> Attempts | None:
    """The tries up to the day the papers were left with somebody else; None where none were recorded."""
    told = known(case.record.service.attempts)
    if told is None:
        return None
    needed: int = figure("service.attempts_before_substituted", left_on).value
    made = {(each.on.sure, each.at) for each in told if each.on.sure and each.on.sure <= left_on}
    days = tuple(sorted({on for on, _at in made if on}))
    chosen = [tries for tries in combinations(made, needed) if _all_differ([on for on, _at in tries])]
    timed = (_all_differ([at for _on, at in tries if at]) for tries in chosen)
    possible = [tries for tries, differ in zip(chosen, timed, strict=True) if differ]
    certain = any(all(at for _on, at in tries) for tries in possible)
    return Attempts(days, needed, certain or (None if possible else False))


class ProofText(NamedTuple):
    """What the law asks of service by hand on one day.

    `tries` is how often the server must have tried before papers are left with somebody else, 0 where the law
    names no number; `mail` the kinds of mail that may follow; `photographs` whether the proof carries them.
    """

    tries: int
    mail: tuple[str, ...]
    photographs: bool


class ProofTexts(NamedTuple):
    """The text for the day that matters, and the other one where that day lies close to the change.

    The acts do not say which text counts for service that lies on both sides (Stats. 2025, ch. 563), so
    near the change a person needs both.
    """

    now: ProofText
    changes_on: date | None = None
    then: ProofText | None = None


def proof_texts(case: Case, on: date) -> ProofTexts:
    """The texts for service of this case: by the day it was served, or else by the day `on`.

    Papers that nobody has served yet may be served on either side of the change, however far off it is.
    """
    served = day(happened(case, on).service.served_on) if method(case) else None
    matters = served or on
    changes = new_text_begins(matters)
    now, then = _proof_text(matters), _proof_text(changes)
    both = served is None or near(changes, matters) or changes <= on
    return ProofTexts(now, changes, then) if matters < changes and both and now != then else ProofTexts(now)


def photographs_needed(served: date) -> bool:
    """Whether the proof of service by hand on that day carries photographs (Code Civ. Proc. 417.10(a)(1))."""
    return bool(figure("service.photographs", served).value)


def new_text_begins(on: date) -> date:
    """The first day of the newer text on service and its proof, seen from either side of it."""
    value = figure("service.photographs", on)
    return value.since if value.value or value.until is None else day_after(value.until)


def near(begins: date, on: date) -> bool:
    """Whether the change is so near, or past, that a person must know of it."""
    return begins <= day_after(on, NEAR_DAYS)


def _proof_text(on: date) -> ProofText:
    tries: int = figure("service.attempts_before_substituted", on).value
    mail = tuple(figure("service.substituted_mail", on).value)
    return ProofText(tries, mail, photographs_needed(on))


def _all_differ(values: Sequence[object]) -> bool:
    return len(set(values)) == len(values)


def _start(service: Service, how: ServiceMethod) -> date | None:
    """The day from which the method's days are counted."""
    if how not in _STARTS or (
        how is ServiceMethod.ACKNOWLEDGMENT and day(service.acknowledgment_back_on) is None
    ):
        return None
    return day(getattr(service, _STARTS[how]))


def _counted(how: ServiceMethod, start: date) -> Counted:
    days = completion_law(how, start).value
    reached = day_after(start, days)
    if days == 0:
        return Counted(reached, (_step(start, _begun(how)), _("Service is complete that day.")))
    number = days + 1 if how is ServiceMethod.PUBLICATION else days
    last = (
        _with_a_receipt()
        if how is ServiceMethod.OUT_OF_STATE_MAIL
        else _("day {number}, service is complete")
    )
    last = last.format(number=number)
    return Counted(reached, (_step(start, _begun(how)), _step(reached, last)))


def _with_a_receipt() -> str:
    return _("day {number}, service is complete, if a signed receipt shows that the papers came")


def _begun(how: ServiceMethod) -> str:
    return {
        ServiceMethod.PERSONAL: _("the papers were handed over"),
        ServiceMethod.SUBSTITUTED: _("the copy was mailed; this day is not counted"),
        ServiceMethod.ACKNOWLEDGMENT: _("the form was signed, and then sent back"),
        ServiceMethod.OUT_OF_STATE_MAIL: _("the papers were mailed; this day is not counted"),
        ServiceMethod.PUBLICATION: _("first printed in the newspaper; this is day 1"),
    }[how]


def _step(on: date, what: str) -> str:
    return _("{date}: {what}").format(date=short_date(on), what=what)
