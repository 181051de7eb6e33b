"""When the union began, when it broke, and how long it lasted.

The date of separation is the day of a complete and final break: one spouse told the other that the
marriage is over, and that same spouse acted like it (Fam. Code 70). Both are needed, so the later of the
two is the first day on which both are true. Saying it again later moves nothing. Where it was never said
to the other spouse, no day can be named from the words. A judge may find another day.
"""

from datetime import date
from typing import NamedTuple

from firstpaper.counting import YearsMonths, short_date, years_and_months
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import ToldTo, Union
from firstpaper.facts.matter import Period
from firstpaper.law.measures.once import once_a_case
from firstpaper.locale import _


class Separation(NamedTuple):
    """The day that was told as the date of separation, or why there is none yet.

    `why` says in one plain sentence how the day was found or what is missing.
    """

    day: date | None
    told: Day | None
    acted: Day | None
    why: str

    @property
    def unsure(self) -> bool:
        """Whether no day can be named from what was told."""
        return self.day is None


@once_a_case
def separation(case: Case) -> Separation:
    """The date of separation by the filer's own answers; never completed by guessing."""
    told, acted = known(case.dates.separation_told_on), known(case.dates.separation_acted_on)
    if not told_each_other(case):
        return Separation(
            None, told, acted, _("It was not said by one of you to the other, so the day is open.")
        )
    told_on, acted_on = told.sure if told else None, acted.sure if acted else None
    if told_on is None or acted_on is None:
        return Separation(
            None, told, acted, _("We need two whole days: the day of the words and the day of the acts.")
        )
    later = max(told_on, acted_on)
    if back_together_after(case, min(told_on, acted_on)):
        return Separation(None, told, acted, _back_together(min(told_on, acted_on)))
    if told_on == acted_on:
        return Separation(later, told, acted, _("The words and the acts came on the same day."))
    why = _("By {date} it had been said and acted on. It is the later of the two days.").format(
        date=short_date(later)
    )
    return Separation(later, told, acted, why)


def _back_together(first: date) -> str:
    return _("You were back together after {date}, so that was not the last break.").format(
        date=short_date(first)
    )


def told_each_other(case: Case) -> bool:
    """Whether nothing speaks against it that one spouse said it to the other (Fam. Code 70(a)(1))."""
    return known(case.dates.separation_told_to) in (None, ToldTo.SPOUSE)


def back_together_after(case: Case, day: date) -> tuple[Period, ...]:
    """The times back together that lasted, or may have lasted, beyond the day."""
    periods = known(case.dates.back_together) or ()
    return tuple(period for period in periods if period.end is None or period.end.latest > day)


def union_began(case: Case, union: Union) -> date | None:
    """The wedding day, or the day the partnership was registered; None unless told whole and sure."""
    told = known(case.dates.married_on if union is Union.MARRIAGE else case.dates.registered_on)
    return told.sure if told else None


def first_union(case: Case) -> tuple[str, Day | None]:
    """The key and the day of the union's beginning as told; of two unions the one that began first.

    The day is None where one that could be the first is not known.
    """
    unions = known(case.matter.unions) or (Union.MARRIAGE,)
    keys = ["dates.married_on"] if Union.MARRIAGE in unions else []
    keys += ["dates.registered_on"] if set(unions) - {Union.MARRIAGE} else []
    told: list[tuple[str, Day | None]] = [(key, known(case.fact(key))) for key in keys]
    return min(told, key=lambda one: one[1].earliest if one[1] else date.min)


def begins_on_an_open_day(case: Case) -> bool:
    """Whether no law that we found says when the union began.

    Partners who registered in another state or country are partners here (Fam. Code 299.2). But where a date
    of marriage counts for money, 297.5(k)(1) puts a registration "with the state" in its place, and for
    children 297.5(d) names no day at all. Of two unions it is open where that one began first.
    """
    elsewhere = Union.PARTNERS_ELSEWHERE in (known(case.matter.unions) or ())
    return elsewhere and first_union(case)[0] == "dates.registered_on"


def length(case: Case, union: Union) -> YearsMonths | None:
    """Whole years and months from the beginning of the union to the date of separation.

    None where one of the two days is not known, or where they stand in an impossible order.
    """
    began, broke = union_began(case, union), separation(case).day
    return years_and_months(began, broke) if began and broke and began <= broke else None


def longest(case: Case) -> YearsMonths | None:
    """The length of the union, of two unions the longer; None where neither can be counted."""
    spans = [span for union in known(case.matter.unions) or () if (span := length(case, union))]
    return max(spans, key=lambda span: span.total_months, default=None)
