"""New in the county: the old county, or waiting."""

from datetime import date

from firstpaper.counting import ResidenceBand, spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Who
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import (
    SPOUSES,
    SpouseResidence,
    counties_open,
    county_named_twice,
    day_that_counts,
    residence_key,
    residence_of,
    spouse_residence,
    who_qualifies,
)
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._words import (
    by,
    county_of_filing,
    court_opens,
    first_court_day,
    named_county,
    tested_for_residence,
)
from firstpaper.law.words import spaced
from firstpaper.locale import _


@rule(
    "Moved from one county to another",
    cite=("Fam. Code 2320(a)", "Code Civ. Proc. 395(a)", "Code Civ. Proc. 396b"),
    since=date(2012, 1, 1),
    not_modelled="Whether the old home was kept, so that the move was only for a time (Gov. Code 244).",
)
def moved_county(case: Case, on: date) -> tuple[Found, ...]:
    """Somebody who has just moved to a new county can wait, or ask about the county they left.

    The question. You have lived in California long enough, but you came to your county only a short
    time ago. Which county can take your divorce today? There are two views, and this program does
    not choose between them.

    One view: wait. The law asks for three months in the county of filing "next preceding" the
    filing, which means right before it. Somebody who has left the old county no longer lives there.
    Waiting until three months in the new county have passed removes every doubt. This is the sound
    way.

    The other view: use the old county. People who help with these papers often tell a newcomer to
    file where they lived before (common practice). A wrong county can be waived if
    nobody asks to move the case (Code Civ. Proc. 396b). But the three months are also a condition
    of the judgment (Fam. Code 2320(a)), and nobody can waive that by staying silent. So ask the
    court's self-help center or a lawyer before you do it.

    An example. You lived in Kern County for years and moved to Fresno County on October 1, 2026. In
    Fresno County the first safe day is January 2, 2027.

    What to do. If you can, wait. If you cannot, ask about the old county, or about a legal
    separation, which needs no set time.
    """
    twice = tuple(_same_county_twice(case, who) for who in SPOUSES if county_named_twice(case, who))
    if not tested_for_residence(case) or day_that_counts(case, on) != on or who_qualifies(case, on):
        return twice
    if any(county.safe_day <= on for county in counties_open(case, on)):
        return twice  # another county is right today, as residence.same_spouse says
    spouses = (spouse_residence(case, who, on) for who in SPOUSES)
    return (*twice, *(found for spouse in spouses if (found := _found(case, spouse))))


def _found(case: Case, spouse: SpouseResidence) -> Found | None:
    """Something to say where only the county is missing."""
    county = spouse.county
    if county is None or spouse.state_band is not ResidenceBand.MET:
        return None
    if spouse.county_band in (None, ResidenceBand.MET):
        return None
    told = residence_of(case, spouse.who)
    previous, until, filing = (
        known(told.previous_county),
        known(told.previous_county_until),
        known(case.court.county),
    )
    facts = tuple(residence_key(spouse.who, name) for name in ("previous_county", "previous_county_until"))
    if previous is None:
        return _old_county_not_known(spouse, facts)
    if not previous:  # they said: not in California
        return None
    if previous == filing:
        return _left_and_here(previous, facts)
    court_day = first_court_day(case, county.safe_day)
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=spaced(
            [
                _moved(spouse.who).format(old=named_county(previous), new=county_of_filing(case)),
                _left_on(until.whole if until else None),
                _("Some would file in the old county. But the law looks at the time right before filing."),
            ]
        ),
        do=spaced(
            [
                _("The sound way is to wait until {date}.").format(date=spell_date(county.safe_day)),
                court_opens(county.safe_day, court_day.day),
                _("If you cannot wait, ask the self-help center about the old county."),
            ]
        ),
        facts=facts,
        dates={"safe_day": county.safe_day, "first_court_day": court_day.day},
        steps=(*county.steps, *court_day.steps),
    )


def _moved(who: Who) -> str:
    return by(
        who,
        _("You moved from {old} to {new} not long ago."),
        _("The other side moved from {old} to {new} not long ago."),
    )


def _left_on(day: date | None) -> str:
    return _("The old home ended on {date}.").format(date=spell_date(day)) if day else ""


def _same_county_twice(case: Case, who: Who) -> Found:
    says = by(
        who,
        _("You file in {county}, and you answered that you live in another county: {county}."),
        _("You file in {county}, and you answered that the other side lives in another county: {county}."),
    )
    return Found(
        outcome=Outcome.NOT_MET,
        weight=Weight.LOOK_AGAIN,
        says=says.format(county=county_of_filing(case)),
        do=_("Answer again where each of you lives, as seen from the county where you file now."),
        facts=("court.county", residence_key(who, "lives"), residence_key(who, "own_county")),
    )


def _left_and_here(previous: str, facts: tuple[str, ...]) -> Found:
    says = _("You named {county} both as the county where you file and as the one that was left.")
    return Found(
        outcome=Outcome.NOT_MET,
        weight=Weight.LOOK_AGAIN,
        says=says.format(county=named_county(previous)),
        do=_("Look at both answers again. The court must be in the county where one of you lives now."),
        facts=(*facts, "court.county"),
    )


def _old_county_not_known(spouse: SpouseResidence, facts: tuple[str, ...]) -> Found:
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.GOOD_TO_KNOW,
        says=by(
            spouse.who,
            _("You have the time in California, but not yet in this county."),
            _("The other side has the time in California, but not yet in this county."),
        ),
        do=by(
            spouse.who,
            _("Tell us in which California county you lived before, and until when."),
            _("Tell us in which California county the other side lived before, and until when."),
        ),
        facts=facts,
    )
