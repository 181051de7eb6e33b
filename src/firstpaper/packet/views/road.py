"""The road from here: from the service to the judgment in order, with the days of the case where known."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, Special
from firstpaper.law.agenda import Agenda, Entry, State, agenda
from firstpaper.law.figure import figure
from firstpaper.law.measures.children import concerns_children
from firstpaper.law.measures.disclosure import waits_for_a_response
from firstpaper.law.measures.record import appeared_on, day, happened, joint, responded, took_part
from firstpaper.law.measures.service import (
    Serving,
    cannot_be_found,
    goes_as_a_later_paper,
    serves_again,
    service_complete,
    serving,
    waits_for_receipt,
)
from firstpaper.law.words import not_confirmed, of_union, spaced
from firstpaper.locale import _
from firstpaper.locale.rows import as_sentence
from firstpaper.packet.brief import Brief
from firstpaper.packet.proof import proof_step
from firstpaper.packet.service_day import day_step
from firstpaper.packet.views import disclosure
from firstpaper.packet.views.either_way import if_filed_together
from firstpaper.packet.views.sheet import Sheet

FIGURES = {
    "response_days": "response.days",
    "disclosure_days": "disclosure.days",
    "revoked_days": "response.after_revocation_days",
    "final_days": "disclosure.final_days_before_trial",
    "waiting_months": "waiting.months",
}
"""The numbers of the law on this sheet, by the name that the template has for each."""


@dataclass(frozen=True, slots=True)
class Ways:
    """Which ways to a judgment are still open, by what was recorded.

    `filed_together` says that the joint way was taken; `could_end` is the first day on which a divorce could
    end by it, in words, while it is only planned.
    """

    apart: bool = True
    together: bool = False
    silent: bool = True
    answered: bool = True
    filed_together: bool = False
    could_end: str = ""


ALL = Ways(together=True)


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The sheet of one case."""
    certificates = any(one.id == "children.birth_certificate" for one in brief.findings)
    yield sheet(brief.on, brief.case, if_filed_together(brief), certificates=certificates)


def sheet(
    on: date,
    case: Case | None = None,
    if_together: Agenda | None = None,
    *,
    certificates: bool = False,
) -> Sheet:
    """The road as the law stands on the day `on`; with the standing facts of a case its own ways and days.

    `if_together` holds the dates of the joint way, where that is open too; `certificates` says that the court
    may want birth certificates.
    """
    kind = known(case.matter.kind) if case else None
    ways = _ways(case, on) if case else ALL
    return Sheet(
        template="road.html",
        title=_("The road from here"),
        running=_("The road from here"),
        purpose=_("From the filing to the judgment: which paper, by whom, and from which day."),
        values={
            "ways": _both_ways(ways, if_together) if if_together else ways,
            "of_case": case is not None,
            "service": _service(case, on) if case else _to_be_served(),
            "answered": _answered(case, on) if case else "",
            "money_waits": disclosure.when(case, on) if case and waits_for_a_response(case, on) else (),
            "days": _days(case, on) if case else defaultdict(str),
            "children": case is None or concerns_children(case, on) is not False,
            "certificates": certificates,
            "in_military": case is not None and _in_military(case),
            "no_address": case is not None and cannot_be_found(case),
            "still": _still(case or Case.nothing()),
            "divorce": kind in (None, Kind.DISSOLUTION),
            "nullity": kind in (None, Kind.NULLITY),
            "only_nullity": kind is Kind.NULLITY,
            "separation": kind is Kind.LEGAL_SEPARATION,
            "left_as": _left_as(case or Case.nothing()),
            **{name: figure(of, on).value for name, of in FIGURES.items()},
            "hotline": figure("help.domestic_violence_hotline", on).value,
        },
    )


def _ways(case: Case, on: date) -> Ways:
    record = happened(case, on)
    asked = known(record.default_asked_on)
    if joint(case):
        return Ways(apart=False, together=True, filed_together=True)
    return Ways(silent=not took_part(case, on), answered=not asked)


def _both_ways(alone: Ways, if_together: Agenda) -> Ways:
    ends = (one.deadline.target for one in if_together.ahead if one.deadline.key == EARLIEST_END)
    return replace(alone, together=True, could_end=next(map(spell_date, ends), ""))


EARLIEST_END = "waiting.earliest_end"


def _service(case: Case, on: date) -> str:
    """How far the service is: what was done, and what is still to do about it."""
    left = serving(case, on)
    if took_part(case, on) and left is Serving.NOTHING:
        return _("The other side took part, so this is done.")
    if goes_as_a_later_paper(case, on):
        first = _("The other side took part, so this is done for the first petition.")
        return spaced(
            (first, _of_the_amended() if left is Serving.SERVE else as_sentence(proof_step(case, on)))
        )
    if where := day_step(case, on):
        return spaced((_("The papers went out."), as_sentence(where)))
    complete = service_complete(case, on)
    if left is Serving.SERVE or (complete is None and not serves_again(case)):
        return _to_do(case)
    proof = as_sentence(proof_step(case, on)) or _("The proof is filed.")
    return spaced((_done(case, on, complete.day if complete else on), proof))


def _done(case: Case, on: date, complete: date) -> str:
    """That the papers are served, or from which day they will be."""
    if waits_for_receipt(case, on):
        words = _("They were mailed. That counts as served from {day}, if the signed receipt comes back.")
    elif complete <= on:
        words = _("This is done.")
    else:
        words = _("The papers went out. Service is complete on {day}.")
    return words.format(day=spell_date(complete))


def _to_do(case: Case) -> str:
    if serves_again(case):
        return spaced((_("Now that goes for the amended petition."), _to_be_served()))
    return _to_be_searched() if cannot_be_found(case) else _to_be_served()


def _of_the_amended() -> str:
    return _(
        "The amended petition goes to them too: an adult other than you mails it or hands it over. That "
        "person signs the proof (FL-335 or FL-330), and you file it."
    )


def _to_be_served() -> str:
    return _("An adult other than you does it. That person signs the proof (FL-115), and you file it.")


def _to_be_searched() -> str:
    return _(
        "Nobody can find the other side. Look first. A judge can then let you publish or post the summons."
    )


def _answered(case: Case, on: date) -> str:
    """That the other side responded or took part; empty where they did not."""
    answered, appeared = day(happened(case, on).response_filed_on), appeared_on(case, on)
    if answered:
        return _("The other side responded on {day}.").format(day=spell_date(answered))
    if appeared and not joint(case):
        return _("The other side took part on {day}.").format(day=spell_date(appeared))
    if responded(case, on):
        return _("The other side responded.")
    return _("The other side took part.") if took_part(case, on) else ""


def _in_military(case: Case) -> bool:
    return Special.OTHER_SIDE_IN_MILITARY in (known(case.people.special) or ())


def _left_as(case: Case) -> str:
    return of_union(
        case,
        _("The separation leaves you two married."),
        _("The separation leaves you two partners."),
        _("The separation does not end your union."),
    )


def _still(case: Case) -> str:
    return of_union(
        case,
        _("Until then you are still married."),
        _("Until then you are still partners."),
        _("Until then you are still married, or still partners."),
    )


def _days(case: Case, on: date) -> Mapping[str, str]:
    """The days of the case that are still open, in words, by the name of the date without its dot."""
    open_now = (one for one in agenda(case, on).entries if one.open)
    return defaultdict(str, {one.deadline.key.replace(".", "_"): _day(one) for one in open_now})


def _day(one: Entry) -> str:
    words = spaced((f"{one.deadline.days(spell_date)}.", not_confirmed(one.deadline.certainty)))
    if one.state is not State.MISSED:
        return words
    mine = one.deadline.key == "disclosure.petitioner"
    passed = _("That day has passed: serve it now.") if mine else _("That day has passed.")
    return spaced((words, passed, one.deadline.dated.also))
