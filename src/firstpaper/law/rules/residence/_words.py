"""Words that the residence rules share."""

from datetime import date

from firstpaper.counting import Counted, day_after, spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, Union, Who
from firstpaper.facts.kinds import kind_of
from firstpaper.law.measures.court import calendar_of
from firstpaper.locale import _

COURT = ("court.county", "court.address", "court.branch")
"""What is answered again to file in another county."""

SHORT_WAIT_DAYS = 30
"""Up to so many days nobody is offered a legal separation to save the wait. Ours, not the law's."""


def short_wait(safe_day: date, on: date) -> bool:
    """Whether it is not worth two sets of papers to save the wait from the day `on`."""
    return safe_day <= day_after(on, SHORT_WAIT_DAYS)


def tested_for_residence(case: Case) -> bool:
    """Whether this is a case that Fam. Code 2320(a) holds back until somebody has lived here.

    A legal separation and a nullity are not; neither is a partnership registered in California.
    """
    is_dissolution = kind_of(case) is Kind.DISSOLUTION
    return is_dissolution and known(case.matter.unions) != (Union.PARTNERS_CALIFORNIA,)


def by(who: Who, petitioner: str, respondent: str) -> str:
    """The sentence that fits the person spoken of; whole sentences, so that they translate."""
    return petitioner if who is Who.PETITIONER else respondent


def named_county(name: str) -> str:
    """The county as a person says it: "Alameda County"."""
    return _("{name} County").format(name=name)


def county_of_filing(case: Case) -> str:
    """The county of filing in words, named where it is known."""
    county = known(case.court.county)
    return named_county(county) if county else _("the county where you file")


def first_court_day(case: Case, safe_day: date) -> Counted:
    """The first day from the safe day on when a clerk can take papers.

    A holiday makes no residence longer; it only says when a filing can be made.
    """
    return calendar_of(case).next_court_day_on_or_after(safe_day)


def court_opens(safe_day: date, court_day: date) -> str:
    """A sentence on when the court is next open; none where it is open on the safe day."""
    if court_day == safe_day:
        return ""
    return _("The court is closed that day and next opens on {date}.").format(date=spell_date(court_day))
