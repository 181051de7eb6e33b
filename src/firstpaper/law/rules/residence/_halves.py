"""What the two halves of the residence rule share: the state and the county, spouse by spouse."""

from collections.abc import Callable, Iterator, Mapping
from datetime import date
from typing import NamedTuple

from firstpaper.counting import ResidenceBand, ResidenceWindow, short_date, spell_date
from firstpaper.facts import Case, Day, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import (
    SPOUSES,
    SpouseResidence,
    day_that_counts,
    residence_key,
    residence_of,
    same_sex_route_told,
    spouse_residence,
    who_qualifies,
)
from firstpaper.law.rules.residence._words import (
    county_of_filing,
    court_opens,
    first_court_day,
    tested_for_residence,
)
from firstpaper.law.words import spaced, spell_day
from firstpaper.locale import _

OUTCOMES: Mapping[ResidenceBand, Outcome] = {
    ResidenceBand.MET: Outcome.MET,
    ResidenceBand.CLOSE: Outcome.CLOSE,
    ResidenceBand.NOT_MET: Outcome.NOT_MET,
}


class Half(NamedTuple):
    """One half for one spouse, with the sentence for each way it can stand.

    `fact` is "state_since" or "county_since"; `bands` has a sentence for each band, `elsewhere` is
    for a spouse who does not live there, `unknown` and `ask` for one of whom too little is known.
    """

    fact: str
    window: ResidenceWindow | None
    band: ResidenceBand | None
    bands: Mapping[ResidenceBand, str]
    elsewhere: str
    unknown: str
    ask: str


def half_by_spouse(case: Case, on: date, half_of: Callable[[SpouseResidence], Half]) -> Iterator[Found]:
    """A finding for each spouse, where the time they have lived here matters on the filing day.

    Once one spouse meets both halves, nothing is said of one who lives elsewhere or of whom too
    little is known.
    """
    if not tested_for_residence(case) or same_sex_route_told(case) or day_that_counts(case, on) != on:
        return
    nobody = not who_qualifies(case, on)
    for spouse in (spouse_residence(case, who, on) for who in SPOUSES):
        half = half_of(spouse)
        keys = residence_key(spouse.who, "lives"), residence_key(spouse.who, half.fact)
        since: Day | None = known(getattr(residence_of(case, spouse.who), half.fact))
        if half.band and half.window and since:
            yield _measured(half, half.window, half.band, since, on, case=case, keys=keys, urgent=nobody)
        elif half.band and nobody:
            says = half.elsewhere.format(county=county_of_filing(case))
            yield Found(Outcome.NOT_MET, Weight.GOOD_TO_KNOW, says, facts=keys[:1])
        elif nobody:
            yield Found(Outcome.NEED_TO_KNOW, Weight.LOOK_AGAIN, half.unknown, half.ask, facts=keys)


def _measured(
    half: Half,
    window: ResidenceWindow,
    band: ResidenceBand,
    since: Day,
    on: date,
    *,
    case: Case,
    keys: tuple[str, ...],
    urgent: bool,
) -> Found:
    says = half.bands[band].format(
        since=spell_day(since), on=spell_date(on), months=window.months, county=county_of_filing(case)
    )
    dates = {
        "calendar_day": window.calendar_day,
        "statutory_day": window.statutory_day,
        "safe_day": window.safe_day,
    }
    steps = (*_partial(since), *window.steps)
    if band is ResidenceBand.MET:
        weight = Weight.LOOK_AGAIN if since.unsure else Weight.GOOD_TO_KNOW
        says = spaced([says, _doubt(since)])
        return Found(Outcome.MET, weight, says, facts=keys, dates=dates, steps=steps)
    court_day = first_court_day(case, window.safe_day)
    return Found(
        outcome=OUTCOMES[band],
        weight=Weight.LOOK_AGAIN if urgent else Weight.GOOD_TO_KNOW,
        says=spaced([says, _doubt(since)]),
        do=_wait(window.safe_day, court_day.day),
        facts=keys,
        dates={**dates, "first_court_day": court_day.day},
        steps=(*steps, *court_day.steps),
    )


def _wait(safe_day: date, court_day: date) -> str:
    safe = _("For this half, the first safe day to file is {date}.").format(date=spell_date(safe_day))
    return spaced([safe, court_opens(safe_day, court_day)])


def _doubt(since: Day) -> str:
    if since.unsure:
        return _("You were not sure of the day. We counted from {date}.").format(
            date=spell_date(since.latest)
        )
    if since.whole is None:
        return _("We counted from the last day that can be: {date}.").format(date=spell_date(since.latest))
    return ""


def _partial(since: Day) -> tuple[str, ...]:
    if since.whole:
        return ()
    words = _("You told us {told}. We count from the last day that can be: {date}")
    return (words.format(told=spell_day(since), date=short_date(since.latest)),)
