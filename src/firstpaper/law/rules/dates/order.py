"""Dates that cannot stand in the order told."""

from collections.abc import Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case, Day, known
from firstpaper.facts.matter import Period
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import spell_day
from firstpaper.locale import _


class Pair(NamedTuple):
    """Two days, the first of which cannot lie after the second; `says` has both as {first}, {second}."""

    first: str
    second: str
    weight: Weight
    says: str


@rule(
    "Dates in a possible order",
    cite=("Fam. Code 70", "Fam. Code 2330(b)"),
    since=date(2017, 1, 1),
    not_modelled="Dates that are possible but unlikely, and which of two dates is the wrong one.",
)
def order(case: Case, on: date) -> tuple[Found, ...]:
    """A wedding comes before the separation, and nobody is born after the filing.

    What we check. The wedding and the registration come before the date of separation. The first
    petition of a case comes after the wedding. Nobody who was too young at the wedding was born
    after it. Every stretch of time begins before it ends. Each child in the petition is born by the
    day of filing; a child on the way has a box of its own.

    Two dates on the same day are possible, so we let them stand. If you gave only a month or a
    year, we speak up only when no day in it would fit. It does not matter whether the words or the
    acts of the separation came first: the law needs both, and the later one counts.

    An example. Wedding on June 14, 2016, separation on June 14, 2006: the year is most likely a
    slip of the finger.

    What to do. Correct the date. The petition is signed under penalty of perjury, and a date that
    cannot be will come back from the court.
    """
    return (*_pairs_in_order(case), *_born_by_filing(case, on), *_periods(case))


def _pairs() -> tuple[Pair, ...]:
    told, acted = "dates.separation_told_on", "dates.separation_acted_on"
    wedding, registered = "dates.married_on", "dates.registered_on"
    too_early = _("The wedding was on {first}. The separation ({second}) cannot come before it.")
    too_early_for_partners = _("You registered on {first}. The separation ({second}) cannot come first.")
    no_case_yet = _("The wedding was on {first}. A first petition ({second}) cannot come before it.")
    not_born_yet = _("The wedding was on {second}. Nobody born later ({first}) can have been in it.")
    return (
        Pair(wedding, told, Weight.STOP, too_early),
        Pair(wedding, acted, Weight.STOP, too_early),
        Pair(registered, told, Weight.STOP, too_early_for_partners),
        Pair(registered, acted, Weight.STOP, too_early_for_partners),
        Pair(wedding, "matter.first_filed_on", Weight.STOP, no_case_yet),
        Pair("grounds.minor_born_on", wedding, Weight.STOP, not_born_yet),
    )


def _pairs_in_order(case: Case) -> Iterator[Found]:
    seen = set()
    for pair in _pairs():
        first, second = _day(case, pair.first), _day(case, pair.second)
        if first and second and second.latest < first.earliest:
            says = pair.says.format(first=spell_day(first), second=spell_day(second))
            if says not in seen:  # words and acts on one day are one mistake
                yield _impossible(says, (pair.first, pair.second), pair.weight)
            seen.add(says)


def _born_by_filing(case: Case, on: date) -> Iterator[Found]:
    for number, child in enumerate(case.child, 1):
        born = known(child.born_on)
        if born and born.earliest > on:
            name = known(child.name) or _("Child {number}").format(number=number)
            says = _("{name} cannot be born ({day}) after the day you file.")
            yield _impossible(
                says.format(name=name, day=spell_day(born)), (f"child.{number}.born_on",), Weight.STOP
            )


def _periods(case: Case) -> Iterator[Found]:
    keys = ("dates.back_together", "residence.petitioner.absences", "residence.respondent.absences")
    for key in keys:
        periods: tuple[Period, ...] = known(case.fact(key)) or ()
        for period in periods:
            if period.end and period.end.latest < period.start.earliest:
                says = _("A stretch of time cannot end ({end}) before it begins ({start}).")
                yield _impossible(
                    says.format(start=spell_day(period.start), end=spell_day(period.end)),
                    (key,),
                    Weight.LOOK_AGAIN,
                )


def _day(case: Case, key: str) -> Day | None:
    day: Day | None = known(case.fact(key))
    return day


def _impossible(says: str, facts: tuple[str, ...], weight: Weight) -> Found:
    do = _("One of these dates is wrong. Please correct it.")
    return Found(Outcome.NOT_MET, weight, says, do, facts=facts, mended_by=facts)
