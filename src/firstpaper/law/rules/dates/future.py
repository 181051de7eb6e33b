"""Dates that have not come yet."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.matter import Period
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import spaced, spell_day
from firstpaper.locale import _


@rule(
    "No date after the day of filing",
    cite=("Fam. Code 70", "Fam. Code 2330(b)"),
    since=date(2017, 1, 1),
    not_modelled="Birth dates of children, which the check of the order of dates looks at.",
)
def future(case: Case, on: date) -> tuple[Found, ...]:
    """What the petition says has happened must have happened by the day it is filed.

    What we check. The wedding, the registration, both dates of the separation, the days you moved,
    the day of an earlier petition, and the start of every stretch of time. None of them can lie
    after the planned day of filing. The same day is possible: a couple can part on the day one of
    them files.

    A separation is special. You cannot plan it: it is the day of a final break that one of you has
    told the other and has acted on (Fam. Code 70). If it has not come, you are not separated yet.

    An example. The filing is planned for November 25, 2026, and the separation was typed as
    December 1, 2026. Either the date is a slip, or the petition has to wait.

    What to do. Correct the date. If you gave only a month or a year, we speak up only when every
    day in it lies ahead.
    """
    return tuple(_ahead(case, on))


def _sentences() -> dict[str, str]:
    """What is said of each fact, by its key."""
    moved = _("By your answers somebody came to live here on {day}.")
    return {
        "dates.married_on": _("By your answers the wedding is on {day}."),
        "dates.registered_on": _("By your answers the registration is on {day}."),
        "dates.separation_told_on": _("By your answers one of you said it was over on {day}."),
        "dates.separation_acted_on": _("By your answers one of you began to act on it on {day}."),
        "matter.first_filed_on": _("By your answers the first petition was filed on {day}."),
        "residence.petitioner.state_since": moved,
        "residence.petitioner.county_since": moved,
        "residence.petitioner.own_county_since": moved,
        "residence.respondent.state_since": moved,
        "residence.respondent.county_since": moved,
        "residence.respondent.own_county_since": moved,
        "grounds.discovered_on": _("By your answers you found out on {day}."),
        "dates.back_together": _("By your answers you were together again from {day} on."),
    }


def _ahead(case: Case, on: date) -> Iterator[Found]:
    for key, says in _sentences().items():
        for day in _starts(known(case.fact(key))):
            if day.earliest > on:
                after = _("That is after the day you file: {date}.").format(date=spell_date(on))
                yield Found(
                    outcome=Outcome.NOT_MET,
                    weight=Weight.STOP,
                    says=spaced([says.format(day=spell_day(day)), after]),
                    do=_("Correct the date, or file later."),
                    facts=(key,),
                    mended_by=(key,),
                )


def _starts(told: Day | tuple[Period, ...] | None) -> tuple[Day, ...]:
    if isinstance(told, Day):
        return (told,)
    return tuple(period.start for period in told or ())
