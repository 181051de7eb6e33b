"""Item 2: which spouse has lived here long enough, or which exception opens the court."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import ResidenceBand, spell_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import Kind, Union, Who
from firstpaper.facts.kinds import kind_of
from firstpaper.forms.answer import Answer, blank, mark
from firstpaper.forms.open_answers import flagged, not_before_advice, still_open
from firstpaper.forms.saying import chosen, unions_of, written
from firstpaper.law.measures.residence import (
    SPOUSES,
    SpouseResidence,
    day_that_counts,
    residence_key,
    same_sex_route_open,
    same_sex_route_told,
    spouse_residence,
    who_qualifies,
)
from firstpaper.locale import _


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 2a to 2c."""
    for who in SPOUSES:
        yield _spouse(case, who, on)
    yield _partnership(case)
    yield from _same_sex(case, on)


def _spouse(case: Case, who: Who, on: date) -> Answer:
    concept = f"residence.{who}"
    measured = spouse_residence(case, who, on)
    if measured.qualifies:
        return _qualifies(case, concept, measured, on)
    if not _needed(case):
        return blank(concept, _no_time_needed(case))
    if measured.fails:
        return _unless_sure(case, blank(concept, _not_yet(measured)), measured)
    if who_qualifies(case, on):
        return blank(concept, _("One of you is enough. Leave it empty unless you know that it is true."))
    return _open(case, concept, measured, on)


def _open(case: Case, concept: str, measured: SpouseResidence, on: date) -> Answer:
    """Nobody qualifies for sure: what is missing, or what a person has to look at first."""
    if measured.has_the_time:
        swears = _("This line swears to a home that is meant to be kept. By your answers that is not sure.")
        return not_before_advice(concept, swears, residence_key(measured.who, "intends_to_stay"))
    if day_that_counts(case, on) is None:
        return still_open(case, concept, "matter.first_filed_on")
    return still_open(case, concept, measured.unsure[0])


def _qualifies(case: Case, concept: str, measured: SpouseResidence, on: date) -> Answer:
    if measured.who is Who.PETITIONER:
        because = _("By your dates you have lived long enough in California and in this county.")
    else:
        because = _("By your dates the other side has lived long enough in California and in this county.")
    if not _needed(case):
        because += " " + _("Your kind of case does not need it, but it is true.")
    elif len(who_qualifies(case, on)) > 1:
        because += " " + _("One of you is enough; both are true here.")
    return _unless_sure(case, mark(concept, because, "Fam. Code 2320(a)"), measured)


def _unless_sure(case: Case, answer: Answer, measured: SpouseResidence) -> Answer:
    """The answer, flagged where it rests on a day that was told in part or without being sure."""
    days = {
        residence_key(measured.who, "state_since"): measured.state_band,
        residence_key(measured.who, "county_since"): measured.county_band,
    }
    if measured.qualifies:
        doubtful = [key for key in days if _not_sure(known(case.fact(key)))]
    else:
        failing = [key for key, band in days.items() if band not in (ResidenceBand.MET, None)]
        doubtful = failing if set(failing) <= set(measured.unsure) else []
    return flagged(case, answer, doubtful[0]) if doubtful else answer


def _not_sure(day: Day | None) -> bool:
    return day is not None and day.unsure


def _not_yet(measured: SpouseResidence) -> str:
    filer = measured.who is Who.PETITIONER
    if measured.safe_day is not None:
        met = (
            _(
                "By the dates you gave, you have the time from {date} on. Make the packet again for a day "
                "from then on: this item is marked there."
            )
            if filer
            else _("By the dates you gave, the other side has the time from {date} on.")
        )
        return met.format(date=spell_date(measured.safe_day))
    if filer:
        return _("By your answers you have not lived in this county of California for the time needed.")
    return _("By your answers the other side has not lived in this county of California for that time.")


def _no_time_needed(case: Case) -> str:
    if kind_of(case) is Kind.NULLITY:
        return _("A nullity needs no time of living here.")
    if kind_of(case) is Kind.LEGAL_SEPARATION:
        return _("A legal separation needs no time of living here.")
    return _("Partners registered in California need no time of living here.")


def _needed(case: Case) -> bool:
    """Whether item 2a is needed: only for a divorce, and not of a partnership made here."""
    only_california_partners = unions_of(case) == (Union.PARTNERS_CALIFORNIA,)
    return kind_of(case) in (Kind.DISSOLUTION, None) and not only_california_partners


def _partnership(case: Case) -> Answer:
    because = _("A partnership made in California can be ended here even if neither of you lives here.")
    only_partners = _("Item 2b is only for a partnership registered in California.")
    otherwise = only_partners if _needed(case) else _no_time_needed(case)
    holds = Union.PARTNERS_CALIFORNIA in unions_of(case)
    return chosen(
        case,
        "residence.partnership",
        "matter.unions",
        holds,
        because=because,
        otherwise=otherwise,
        authority="Fam. Code 299(d)",
    )


def _same_sex(case: Case, on: date) -> Iterator[Answer]:
    box = "residence.same_sex"
    lives = {f"{box}.{who}_lives": f"residence.{who}.lives_in" for who in SPOUSES}
    if same_sex_route_open(case, on):
        because = _(
            "You married in California, and neither of you lives in a place that will end the marriage."
        )
        yield mark(box, because, "Fam. Code 2320(b)")
        for concept, key in lives.items():
            yield written(case, concept, key, _("The state or country, as you told us."), "Fam. Code 2320(b)")
        return
    if same_sex_route_told(case):
        yield not_before_advice(box, _every_state_ends_it(), "residence.exception.not_dissolvable_at_home")
        for concept in lives:
            yield blank(concept, _("Only if the box of this line is marked."))
        return
    otherwise = _(
        "Item 2c is only for same-sex spouses who married here and cannot end the marriage where they live."
    )
    if not _needed(case):
        otherwise = _no_time_needed(case)
    if known(case.residence.exception.same_sex) and kind_of(case) is Kind.DISSOLUTION:
        otherwise = _(
            "By your answers not every condition of this line is true. Item 2a is for you if one lives here."
        )
    yield from (blank(concept, otherwise) for concept in (box, *lives))


def _every_state_ends_it() -> str:
    return _(
        "One of you lives in another state. As far as we know, every state now ends such a marriage. Ask a "
        "lawyer first."
    )
