"""The same person must meet both halves."""

from collections.abc import Iterable
from datetime import date

from firstpaper.counting import Counted, ResidenceBand, short_date, spell_date
from firstpaper.facts import Case, DontKnow, known
from firstpaper.facts.choices import AWAY, Kind, Lives, Who
from firstpaper.law.figure import figure
from firstpaper.law.finding import FIRST_COURT_DAY, WAIT_UNTIL, Found, Outcome, Weight
from firstpaper.law.measures.residence import (
    SPOUSES,
    CountyOpen,
    SpouseResidence,
    counties_open,
    day_that_counts,
    marked_unsure,
    residence_key,
    residence_of,
    same_sex_route_told,
    spouse_residence,
)
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._words import (
    COURT,
    by,
    county_of_filing,
    court_opens,
    first_court_day,
    named_county,
    short_wait,
    tested_for_residence,
)
from firstpaper.law.words import spaced
from firstpaper.locale import _


@rule(
    "One person meets both halves of the residence rule",
    cite=("Fam. Code 2320(a)", "Fam. Code 2321(a)", "Fam. Code 2322"),
    since=date(2012, 1, 1),
    not_modelled="Whether a home was meant to last, and what a court may do where nobody objects.",
)
def same_spouse(case: Case, on: date) -> Found | None:
    """For a divorce, the same person must have lived long enough in the state and in the county.

    What the law asks. One of you must have lived in California for six months and in the county of
    filing for three months, both right before the petition is filed. It can be either of you. The
    one who files need not be the one who meets the rule. But it must be one person. Six months of
    one and three months of the other do not add up. This holds for a marriage, and for a
    partnership that was registered outside California.

    The day that counts is the day the petition is filed. Filing too early is not cured by waiting
    later: the case can be lost after months of work. If a case began as a legal separation and is
    amended to ask for a divorce, the day of the amended petition counts (Fam. Code 2321(a)).

    How we count. We count each half for each of you, as residence.state and
    residence.county show. For each of you the later safe day wins. The earlier of your two days is
    the first safe day to file.

    An example. On November 25, 2026, one of you has lived in California since 2019, but in this
    county only since October 1. The other came to this county from another state on July 1. The
    first has the state, the second has the county. Nobody has both. If you both stay, each of you
    is ready on January 2, 2027. It is a Saturday, and the court opens on Monday, January 4.

    Two counties. If one of you is new in the county of filing, and the other has lived for years in
    another county of California, that other county is right today. You can file there, or wait until
    your own county is right.

    Close to the line. Where the calendar months are over and only the careful count still fails, we say
    until which day to wait. We do not call it a stop, for a court may well count as the calendar does.

    What to do. Wait for the first safe day. If that is more than a month away, you can also ask for a
    legal separation now, which needs no set time here, and ask for a divorce in an amended petition
    later. Both ways have a price, so ask the court's self-help center.
    """
    if not tested_for_residence(case) or same_sex_route_told(case):
        return None
    spouses = tuple(spouse_residence(case, who, on) for who in SPOUSES)
    if day_that_counts(case, on) != on:
        return _first_petition(case, on, spouses)
    if any(spouse.has_the_time for spouse in spouses):
        return _met(case, on, spouses)
    if all(spouse.fails for spouse in spouses):
        return _not_yet(case, on, spouses)
    return _not_known(case, spouses)


def _met(case: Case, on: date, spouses: tuple[SpouseResidence, ...]) -> Found | None:
    """Who meets the rule; None where residence.absence sends somebody who may not stay to a person."""
    qualified = [spouse for spouse in spouses if spouse.qualifies]
    if not qualified:
        return None
    doubtful = all(marked_unsure(case, spouse.who) for spouse in qualified)
    return Found(
        outcome=Outcome.MET,
        weight=Weight.LOOK_AGAIN if doubtful else Weight.GOOD_TO_KNOW,
        says=spaced(
            [
                _who_meets(qualified).format(on=spell_date(on), county=county_of_filing(case)),
                _amended_day(case, on),
            ]
        ),
        do=_("You were not sure of a date. Check it before you sign.") if doubtful else "",
        facts=_facts(spouses),
        values={"residence.qualifies": [str(spouse.who) for spouse in qualified]},
        steps=_steps(qualified),
    )


def _who_meets(qualified: list[SpouseResidence]) -> str:
    if len(qualified) == len(SPOUSES):
        return _(
            "On {on} both of you have lived long enough in California and in {county}. One would be enough."
        )
    return by(
        qualified[0].who,
        _("On {on} you have lived long enough in California and in {county}. Only one of you has to."),
        _(
            "On {on} the other side has lived long enough in California and in {county}. "
            "That is enough, even if you have not."
        ),
    )


def _not_yet(case: Case, on: date, spouses: tuple[SpouseResidence, ...]) -> Found:
    close = any(spouse.only_too_close(on) for spouse in spouses)
    return _too_close(case, on, spouses) if close else _too_early(case, on, spouses)


def _too_close(case: Case, on: date, spouses: tuple[SpouseResidence, ...]) -> Found:
    """The months have run, and only the careful count fails: a reason to wait, not a flat stop."""
    ready = _first_ready(case, spouses)
    assert ready is not None  # both windows are there
    _who, safe_day, court_day = ready
    says = _(
        "Wait until {day} to file for divorce. On {on} the time here is just full, but so narrowly that a "
        "court might count it another way."
    )
    return Found(
        outcome=Outcome.CLOSE,
        weight=Weight.GET_ADVICE,
        says=spaced([says.format(day=spell_date(court_day.day), on=spell_date(on)), _amended_day(case, on)]),
        do=spaced([_wait(*ready), _other_county(case, on, spouses), _if_you_cannot_wait()]),
        facts=_facts(spouses),
        dates={"safe_day": safe_day, FIRST_COURT_DAY: court_day.day, WAIT_UNTIL: court_day.day},
        values={"residence.qualifies": []},
        steps=(*_steps(spouses), *court_day.steps),
    )


def _if_you_cannot_wait() -> str:
    return _("If you cannot wait that long, ask the self-help center first.")


def _too_early(case: Case, on: date, spouses: tuple[SpouseResidence, ...]) -> Found:
    close = any(ResidenceBand.NOT_MET not in (each.state_band, each.county_band) for each in spouses)
    ready = _first_ready(case, spouses)
    says = (
        _(
            "Do not file for divorce yet. "
            "On {on} it is too close to say that one of you has lived here long enough."
        )
        if close
        else _(
            "Do not file for divorce yet. On {on} neither of you has lived long enough "
            "both in California and in {county}."
        )
    )
    return Found(
        outcome=Outcome.CLOSE if close else Outcome.NOT_MET,
        weight=Weight.STOP,
        says=spaced(
            [
                says.format(on=spell_date(on), county=county_of_filing(case)),
                _do_not_add_up(spouses),
                _amended_day(case, on),
            ]
        ),
        do=spaced(
            [
                _wait(*ready) if ready else "",
                _other_county(case, on, spouses),
                _separation_now(on, spouses, ready),
            ]
        ),
        facts=_facts(spouses),
        dates={"safe_day": ready[1], FIRST_COURT_DAY: ready[2].day} if ready else {},
        values={"residence.qualifies": []},
        steps=(*_steps(spouses), *(ready[2].steps if ready else ())),
        mended_by=() if ready or all(spouse.lives in AWAY for spouse in spouses) else COURT,
    )


def _first_ready(case: Case, spouses: Iterable[SpouseResidence]) -> tuple[Who, date, Counted] | None:
    """Who is ready first in the county of filing, the safe day, and the court day on or after it."""
    ready = min(((each.safe_day, each.who) for each in spouses if each.safe_day), default=None)
    return (ready[1], ready[0], first_court_day(case, ready[0])) if ready else None


def _wait(who: Who, safe_day: date, court_day: Counted) -> str:
    wait = by(
        who,
        _("If you stay where you live, the first safe day to file is {date}."),
        _("If the other side stays where they live, the first safe day to file is {date}."),
    )
    papers = _(
        "For the papers of that day, type: “firstpaper packet my.case --on {day}”, with your own file."
    )
    return spaced(
        [
            wait.format(date=spell_date(safe_day)),
            court_opens(safe_day, court_day.day),
            papers.format(day=court_day.day.isoformat()),
        ]
    )


def _do_not_add_up(spouses: tuple[SpouseResidence, ...]) -> str:
    one, other = spouses
    halves = {one.state_band, other.state_band}, {one.county_band, other.county_band}
    if not all(ResidenceBand.MET in half for half in halves):
        return ""
    return _(
        "One of you has the time in California, and the other has the time in the county. They do not add up."
    )


def _other_county(case: Case, on: date, spouses: tuple[SpouseResidence, ...]) -> str:
    """Whether another county is right today or sooner; or that it may be, where too little was told."""
    here = known(case.court.county)
    counties = counties_open(case, on)
    if counties and counties[0].county != here:
        return _sooner(counties[0], next((one for one in counties if one.county == here), None), on)
    return _perhaps_elsewhere(case, on, spouses)


def _sooner(there: CountyOpen, here: CountyOpen | None, on: date) -> str:
    right = (
        by(
            there.who,
            _("{county} is right today, for you have lived there long enough."),
            _("{county} is right today, for the other side has lived there long enough."),
        )
        if there.safe_day <= on
        else _("{county} is right from {day} on.")
    )
    later = _("{county} is right from {day} on.") if here else ""
    change = _("To file in {county}, change the county, the court's address, and where each of you lives.")
    return spaced(
        [
            right.format(county=named_county(there.county), day=spell_date(there.safe_day)),
            later.format(county=named_county(here.county), day=spell_date(here.safe_day)) if here else "",
            change.format(county=named_county(there.county)),
        ]
    )


def _perhaps_elsewhere(case: Case, on: date, spouses: tuple[SpouseResidence, ...]) -> str:
    for spouse in spouses:
        told = residence_of(case, spouse.who)
        if (
            spouse.lives is Lives.CALIFORNIA
            and spouse.state_band is ResidenceBand.MET
            and not (known(told.own_county) and known(told.own_county_since))
        ):
            words = by(
                spouse.who,
                _("If you have lived in your own county for more than {months} months, you can file there."),
                _(
                    "If the other side has lived in their own county for more than {months} months, "
                    "you can file there."
                ),
            )
            return words.format(months=figure("residence.county_months", on).value)
    return ""


def _separation_now(
    on: date, spouses: tuple[SpouseResidence, ...], ready: tuple[Who, date, Counted] | None
) -> str:
    if all(spouse.lives in AWAY for spouse in spouses):
        return _(
            "Neither of you lives in California. "
            "Ask a lawyer, or the court where one of you lives, where to file."
        )
    if ready and short_wait(ready[1], on):
        return _if_you_cannot_wait()
    return _(
        "Or ask for a legal separation now. That needs no set time here. Ask the self-help center first."
    )


def _not_known(case: Case, spouses: tuple[SpouseResidence, ...]) -> Found:
    missing = [
        key
        for spouse in spouses
        if not spouse.fails
        for key in spouse.unsure
        if known(case.fact(key)) is None
    ]
    asked_all = all(isinstance(case.fact(key), DontKnow) for key in missing)
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.STOP if asked_all else Weight.LOOK_AGAIN,
        says=spaced(
            [
                _("We cannot tell yet if one of you has lived here long enough for a divorce."),
                _("Do not file for divorce before you know.") if asked_all else "",
            ]
        ),
        do=spaced([_asked(key) for key in missing]),
        facts=tuple(missing),
        mended_by=tuple(missing),
    )


def _asked(key: str) -> str:
    return {
        "residence.petitioner.lives": _("Tell us where you live now."),
        "residence.petitioner.state_since": _("Tell us since when you have lived in California."),
        "residence.petitioner.county_since": _("Tell us since when you have lived in this county."),
        "residence.respondent.lives": _("Tell us where the other side lives now."),
        "residence.respondent.state_since": _("Tell us since when the other side has lived in California."),
        "residence.respondent.county_since": _("Tell us since when the other side has lived in this county."),
    }[key]


def _first_petition(case: Case, on: date, spouses: tuple[SpouseResidence, ...]) -> Found:
    """An amended petition that keeps the filing day of the first one."""
    keys = ("matter.amended", "matter.first_kind", "matter.first_filed_on")
    day = day_that_counts(case, on)
    if day is None or known(case.matter.first_kind) is None:
        return Found(
            outcome=Outcome.NEED_TO_KNOW,
            weight=Weight.LOOK_AGAIN,
            says=_("We do not know what kind of case your first petition began, and on what day."),
            do=_("Look at the first page of your first petition. It shows the kind and the day of filing."),
            facts=keys,
        )
    qualified = [spouse for spouse in spouses if spouse.qualifies]
    counts = _("The day that counts is {day}, when your first petition was filed.").format(
        day=spell_date(day)
    )
    if qualified:
        enough = _("One of you had lived here long enough on that day.")
        return Found(
            outcome=Outcome.MET,
            weight=Weight.GOOD_TO_KNOW,
            says=spaced([counts, enough]),
            facts=(*keys, *_facts(spouses)),
            dates={"first_filed_on": day},
            values={"residence.qualifies": [str(spouse.who) for spouse in qualified]},
            steps=_steps(qualified),
        )
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=spaced([counts, _("By your answers, nobody had lived here long enough on that day.")]),
        do=_("An amended petition does not fix that. Ask a lawyer if you need to start a new case."),
        facts=(*keys, *_facts(spouses)),
        dates={"first_filed_on": day},
        steps=_steps(spouses),
    )


def _amended_day(case: Case, on: date) -> str:
    if not known(case.matter.amended) or known(case.matter.first_kind) is not Kind.LEGAL_SEPARATION:
        return ""
    words = _(
        "Your case began as a legal separation, so the day that counts is the day you file this one: {day}."
    )
    return words.format(day=short_date(on))


def _steps(spouses: Iterable[SpouseResidence]) -> tuple[str, ...]:
    steps: list[str] = []
    for spouse in spouses:
        if spouse.state:
            steps += [by(spouse.who, _("You, in California:"), _("The other side, in California:"))]
            steps += spouse.state.steps
        if spouse.county:
            steps += [by(spouse.who, _("You, in the county:"), _("The other side, in the county:"))]
            steps += spouse.county.steps
    return tuple(steps)


def _facts(spouses: Iterable[SpouseResidence]) -> tuple[str, ...]:
    names = ("lives", "state_since", "county_since")
    return tuple(residence_key(spouse.who, name) for spouse in spouses for name in names)
