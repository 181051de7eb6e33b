"""Before the marriage, in it, or after the separation: where a day can lie, from what was told of it.

The ends are those of the statutes. What came before the wedding is separate (Fam. Code 770), earnings
after the day of separation are too (771), so a thing got on the day of separation is still of the
marriage. A thing got on the wedding day may lie on either side. A debt of the wedding day or of the day
of separation falls into a gap of Fam. Code 2621-2623, so it too may lie on either side.
"""

from datetime import date
from enum import StrEnum
from itertools import product
from typing import NamedTuple

from firstpaper.counting import anniversary
from firstpaper.facts import Case, Day, DontKnow, known
from firstpaper.facts.choices import Union
from firstpaper.law.measures.marriage import (
    back_together_after,
    begins_on_an_open_day,
    first_union,
    told_each_other,
)

UNSURE_YEARS = 1
"""How far off a day may lie that the person is not sure of. Ours, not the law's."""

_FIRST, _LAST = date(1, 1, 1), date(9999, 12, 31)


class Time(StrEnum):
    """When something happened, seen from the marriage."""

    BEFORE = "before"
    DURING = "during"
    AFTER = "after"


class Earned(StrEnum):
    """When a stretch of work lay, seen from the marriage."""

    BEFORE = "before"
    WITHIN = "within"
    AFTER = "after"
    ACROSS = "across"


class Span(NamedTuple):
    """The first and the last day that a day can be. Open where nothing was told."""

    first: date = _FIRST
    last: date = _LAST

    @property
    def whole(self) -> date | None:
        """The day itself, where only one is possible."""
        return self.first if self.first == self.last else None


def span_of(fact: Day | DontKnow | None) -> Span:
    """Where a day can lie, from what was told; a year to each side where the person is not sure."""
    day = known(fact)
    if day is None:
        return Span()
    if not day.unsure:
        return Span(day.earliest, day.latest)
    return Span(anniversary(day.earliest, -UNSURE_YEARS), anniversary(day.latest, UNSURE_YEARS))


class Marriage(NamedTuple):
    """When the union began and broke, as far as is known, and the keys of the facts that say so."""

    began: Span
    broke: Span
    began_key: str
    broke_keys: tuple[str, ...] = ("dates.separation_told_on", "dates.separation_acted_on")

    @property
    def impossible(self) -> bool:
        """Whether it would have broken before it began."""
        return self.broke.last < self.began.first


def marriage(case: Case) -> Marriage:
    """The union as the law sees it: of two unions the one that began first.

    Where no law says which day counts, the beginning is open from the registration on, at most until they
    married or parted.
    """
    told = marriage_as_told(case)
    if not begins_on_an_open_day(case):
        return told
    unions = known(case.matter.unions) or ()
    wedding = span_of(case.dates.married_on) if Union.MARRIAGE in unions else Span()
    return told._replace(began=Span(told.began.first, min(wedding.last, told.broke.last)))


def marriage_as_told(case: Case) -> Marriage:
    """The union as if it began in law on the day that was told of it."""
    key, began = first_union(case)
    return Marriage(span_of(began), _broke(case), key)


def _broke(case: Case) -> Span:
    """The later of the words and the acts; open at the end where the two were together again after one."""
    told = span_of(case.dates.separation_told_on) if told_each_other(case) else Span()
    acted = span_of(case.dates.separation_acted_on)
    both = Span(max(told.first, acted.first), max(told.last, acted.last))
    days = [span.first for span in (told, acted) if span != Span()]
    if days and back_together_after(case, min(days)):
        return Span(both.first, _LAST)
    return both


def possible_times(day: Span, union: Marriage, *, gap_at_separation: bool = False) -> tuple[Time, ...]:
    """When that day can have been. `gap_at_separation` leaves the day of separation on either side."""
    if union.impossible:
        return tuple(Time)
    after = day.last >= union.broke.first if gap_at_separation else day.last > union.broke.first
    return tuple(
        time
        for time, possible in (
            (Time.BEFORE, day.first <= union.began.last),
            (Time.DURING, day.last >= union.began.first and day.first <= union.broke.last),
            (Time.AFTER, after),
        )
        if possible
    )


def earned_in_a_day(day: tuple[Time, ...]) -> tuple[Earned, ...]:
    """When work of one day can have lain, from when that day can have been."""
    return tuple(_ALL_IN[time] for time in day)


def possible_earned(start: tuple[Time, ...], end: tuple[Time, ...]) -> tuple[Earned, ...]:
    """When a stretch of work can have lain, from when it can have begun and ended."""
    order = list(Time)
    pairs = [(one, two) for one, two in product(start, end) if order.index(one) <= order.index(two)]
    found = [_ALL_IN[one] if one is two else Earned.ACROSS for one, two in pairs]
    return tuple(dict.fromkeys(found)) or tuple(Earned)


_ALL_IN = {Time.BEFORE: Earned.BEFORE, Time.DURING: Earned.WITHIN, Time.AFTER: Earned.AFTER}
