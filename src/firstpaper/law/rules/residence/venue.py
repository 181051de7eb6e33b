"""The proper county to file in."""

from datetime import date

from firstpaper.counting import ResidenceBand
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.county_words import right_from
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import SPOUSES, residence_key, spouse_residence
from firstpaper.law.measures.venue import VenueTest, venue_of
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._words import COURT, county_of_filing, named_county
from firstpaper.law.words import spaced
from firstpaper.locale import _

WHERE_THEY_LIVE = tuple(residence_key(who, "lives") for who in SPOUSES)


@rule(
    "The proper county",
    cite=("Code Civ. Proc. 395(a)", "Code Civ. Proc. 396b", "Fam. Code 2320(b)(2)"),
    since=date(2012, 1, 1),
    not_modelled="Local rules on which courthouse of a large county takes family cases.",
    part_of="residence.same_spouse",
)
def venue(case: Case, on: date) -> Found | None:
    """The right county depends on the kind of case and on where each of you lives.

    What the law asks (Code Civ. Proc. 395(a)). For a divorce: a county where one of you has lived
    for three months just before filing. For a legal separation or a nullity: a county where one of
    you lives on the day of filing, for however short a time. For a same-sex couple who married in
    California and cannot divorce where they live: the county of the wedding (Fam. Code 2320(b)).

    How much it matters. A wrong county can be waived: the case may stay there unless the other side
    asks in time to move it (Code Civ. Proc. 396b(a)). Until a judge decides on moving it, the court
    can still make early orders on support, fees and custody in a divorce or a legal separation
    (396b(c)). So a wrong county is mostly delay in a legal separation or a nullity. In the divorce
    of a married couple it is worse, for the three months are also a condition of the judgment. The
    page residence.same_spouse tells you when to stop.

    An example. You moved to Fresno County last week and want a legal separation. Fresno County is a
    right county today. For a divorce it is not, until three months have passed.

    Partners who registered in California. The section speaks of a marriage where it names the three
    months. A partnership is ended in the same way (Fam. Code 299(d)), so three months are the safe
    reading. We do not hold you up for it.

    What is not settled. If your partnership was registered in California and neither of you lives
    here, you may file here, but no family statute names the county. A general sentence of section
    395(a) lets the one who sues choose the county when nobody who is sued lives in the state. Whether
    it fits is not stated anywhere we found. Ask the clerk of the county you have in mind.
    """
    if kind_of(case) is None:
        return None
    stands = venue_of(case, on)
    if stands is None:
        return _county_not_known()
    says = {
        VenueTest.WEDDING: _county_of_the_wedding,
        VenueTest.NOBODY_HERE: _nobody_in_california,
        VenueTest.THREE_MONTHS: _three_months,
        VenueTest.HOME: _where_either_lives,
    }[stands.test]
    return says(case, on, stands.right)


def _county_not_known() -> Found:
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.LOOK_AGAIN,
        says=_("We do not know in which county you will file."),
        do=_("Most often it is the county where you live. Tell us its name."),
        facts=("court.county",),
    )


def _county_of_the_wedding(case: Case, on: date, right: bool | None) -> Found:
    facts = ("court.county", "residence.exception.wedding_county")
    filing, wedding = (
        county_of_filing(case),
        named_county(known(case.residence.exception.wedding_county) or ""),
    )
    if right:
        says = _("{county} is the right county: you married there.").format(county=filing)
        return Found(Outcome.MET, Weight.GOOD_TO_KNOW, says, facts=facts)
    says = _("You must file in {wedding}, where you married. You named {filing}.")
    return Found(
        outcome=Outcome.NOT_MET,
        weight=Weight.STOP,
        says=says.format(wedding=wedding, filing=filing),
        do=_("Change the county of filing to the county of the wedding."),
        facts=facts,
        mended_by=COURT,
    )


def _nobody_in_california(case: Case, on: date, right: bool | None) -> Found | None:
    """No county here is proper by where anybody lives."""
    unions = known(case.matter.unions) or ()
    if Union.PARTNERS_CALIFORNIA in unions:
        return Found(
            outcome=Outcome.FOR_A_LAWYER,
            weight=Weight.LOOK_AGAIN,
            says=_(
                "Neither of you lives in California. You may still end your California partnership here, "
                "but the law does not say in which county."
            ),
            do=_("Ask the clerk in {county} if that court will take your case.").format(
                county=county_of_filing(case)
            ),
            facts=("matter.unions", "court.county", *WHERE_THEY_LIVE),
        )
    if kind_of(case) is Kind.DISSOLUTION:
        return None  # residence.same_spouse stops this filing, county or no county
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=_("Neither of you lives in California. So no county here is the right one by where you live."),
        do=_("Ask a lawyer if a California court can hear your case, before you pay a filing fee."),
        facts=("matter.kind", *WHERE_THEY_LIVE),
    )


def _three_months(case: Case, on: date, right: bool | None) -> Found:
    facts = ("matter.kind", "court.county", *(residence_key(who, "county_since") for who in SPOUSES))
    county = county_of_filing(case)
    if right:
        says = _("{county} is a right county for a divorce: one of you has lived there long enough.")
        return Found(Outcome.MET, Weight.GOOD_TO_KNOW, says.format(county=county), facts=facts)
    if right is None:
        says = _("We cannot tell yet if {county} is a right county for a divorce.")
        return Found(
            outcome=Outcome.NEED_TO_KNOW,
            weight=Weight.LOOK_AGAIN,
            says=says.format(county=county),
            do=_("Tell us for each of you where you live, and since when in that county."),
            facts=(*facts, *WHERE_THEY_LIVE),
        )
    says = _("{county} is not yet a right county for a divorce: neither of you has lived there long enough.")
    return Found(
        outcome=Outcome.CLOSE if _close(case, on) else Outcome.NOT_MET,
        weight=Weight.LOOK_AGAIN,
        says=spaced((says.format(county=county), right_from(case, on))),
        do=_("Wait, or file in a county where one of you has lived long enough."),
        facts=(*facts, *WHERE_THEY_LIVE),
    )


def _close(case: Case, on: date) -> bool:
    return any(spouse_residence(case, who, on).county_band is ResidenceBand.CLOSE for who in SPOUSES)


def _where_either_lives(case: Case, on: date, right: bool | None) -> Found:
    facts = ("matter.kind", "court.county", *WHERE_THEY_LIVE)
    county = county_of_filing(case)
    if right:
        return _home_is_right(case, on, county, facts)
    if right is None:
        return Found(
            outcome=Outcome.NEED_TO_KNOW,
            weight=Weight.LOOK_AGAIN,
            says=_("We cannot tell yet if {county} is a right county.").format(county=county),
            do=_("Tell us where each of you lives now."),
            facts=facts,
        )
    says = _(
        "Neither of you lives in {county}. The other side can ask to move the case. "
        "If nobody asks in time, it can stay."
    )
    return Found(
        outcome=Outcome.NOT_MET,
        weight=Weight.LOOK_AGAIN,
        says=says.format(county=county),
        do=_("Better file in a county where one of you lives."),
        facts=facts,
    )


def _home_is_right(case: Case, on: date, county: str, facts: tuple[str, ...]) -> Found:
    if kind_of(case) is not Kind.DISSOLUTION:
        says = _("{county} is a right county: one of you lives there. No set time is needed.")
        return Found(Outcome.MET, Weight.GOOD_TO_KNOW, says.format(county=county), facts=facts)
    return Found(
        outcome=Outcome.MET,
        weight=Weight.GOOD_TO_KNOW,
        says=_("{county} is a right county: one of you lives there.").format(county=county),
        do=_(
            "If that is for less than {months} months, ask the clerk: for a marriage it would be too short."
        ).format(months=figure("residence.county_months", on).value),
        facts=facts,
    )
