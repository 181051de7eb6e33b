"""How long each spouse has lived in the state and in the county, against the day of filing."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import ResidenceWindow, days_after, short_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import Kind, Union, Who
from firstpaper.facts.kinds import kind_of
from firstpaper.law.measures.record import begins_on, is_filed
from firstpaper.law.measures.residence import (
    SPOUSES,
    SpouseResidence,
    residence_of,
    same_sex_route_told,
    spouse_residence,
)
from firstpaper.law.words import spell_day
from firstpaper.locale import _
from firstpaper.packet.pictures.chart import Chart, Fill, Line, Mark, Row, Span, days_of, gone_and_ahead
from firstpaper.packet.pictures.window import around

LONG_MET_DAYS = 60
"""For how long a half must have been met before nobody needs to see it. Ours, not the law's."""


def residence(case: Case, on: date) -> Chart | None:
    """The halves of both spouses on the day `on`, for a filing then or on the first day right for it.

    None where there is nothing to see.

    There is nothing to see where the law asks for no time here, where the case is filed, or where one
    spouse has long met both halves.
    """
    if not _asked_for(case) or is_filed(case):
        return None
    spouses = [spouse_residence(case, who, on) for who in SPOUSES]
    if any(_long_met(spouse, on) for spouse in spouses):
        return None
    begins = begins_on(case, on) or on
    rows = tuple(row for spouse in spouses for row in _halves(case, spouse, on, begins))
    if not any(row.spans for row in rows):
        return None
    first, last = around(days_of(rows), begins)
    filing = _("Filing: {day}").format(day=short_date(begins))
    return Chart(_says(begins), first, last, rows, Line(begins, filing))


def _asked_for(case: Case) -> bool:
    """Whether the law asks that somebody has lived here before the filing (Fam. Code 2320(a))."""
    return (
        kind_of(case) is Kind.DISSOLUTION
        and known(case.matter.unions) != (Union.PARTNERS_CALIFORNIA,)
        and known(case.matter.amended) is not True
        and not same_sex_route_told(case)
    )


def _long_met(spouse: SpouseResidence, on: date) -> bool:
    safe = spouse.safe_day if spouse.qualifies else None
    return safe is not None and days_after(safe, LONG_MET_DAYS).day <= on


def _says(on: date) -> str:
    says = _("This picture shows how long each of you has lived here, against a filing on {day}.")
    return says.format(day=short_date(on))


def _halves(case: Case, spouse: SpouseResidence, on: date, begins: date) -> Iterator[Row]:
    told = residence_of(case, spouse.who)
    mine = spouse.who is Who.PETITIONER
    name = _("You") if mine else known(case.respondent.name) or _("The other side")
    county = known(case.court.county)
    here = _("{name} County").format(name=county) if county else _("the county of filing")
    for place, since, window in (
        (_("California"), known(told.state_since), spouse.state),
        (here, known(told.county_since), spouse.county),
    ):
        title = _("{name} in {place}").format(name=name, place=place)
        if since is None or window is None:
            yield Row(title, (_("No time counted here"),), _nothing(spouse.who, name, place))
        else:
            says = _counted(spouse.who, name, place, since, window)
            bars = tuple(_bars(since, window, on, begins))
            yield Row(title, _notes(since, window), says, bars, (_safe(window, on),))


def _nothing(who: Who, name: str, place: str) -> str:
    if who is Who.PETITIONER:
        return _("For you, no time in {place} can be counted.").format(place=place)
    return _("For {name}, no time in {place} can be counted.").format(name=name, place=place)


def _notes(since: Day, window: ResidenceWindow) -> tuple[str, str]:
    enough = _("Long enough from {day}").format(day=short_date(window.safe_day))
    return _("Since {since}").format(since=_short(since)), enough


def _counted(who: Who, name: str, place: str, since: Day, window: ResidenceWindow) -> str:
    if who is Who.PETITIONER:
        says = _("You have lived in {place} since {since}. That is long enough from {day} on.")
    else:
        says = _("{name} has lived in {place} since {since}. That is long enough from {day} on.")
    return says.format(name=name, place=place, since=_short(since), day=short_date(window.safe_day))


def _bars(since: Day, window: ResidenceWindow, on: date, begins: date) -> Iterator[Span]:
    """Days that may or may not count are striped; then the time lived here, and what is still to come."""
    if since.earliest < window.since:
        yield Span(since.earliest, window.since, Fill.STRIPED)
    yield from gone_and_ahead(window.since, max(window.safe_day, begins), on)


def _safe(window: ResidenceWindow, on: date) -> Mark:
    return Mark(window.safe_day, Fill.BLACK if window.safe_day <= on else Fill.WHITE)


def _short(day: Day) -> str:
    return short_date(day.whole) if day.whole else spell_day(day)
