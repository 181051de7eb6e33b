"""How long each spouse has lived here, and which way into a California court the case has.

Fam. Code 2320(a) asks that *one* of the two has lived for the set time in the state and in the
county of filing. Each spouse is measured alone (Fam. Code 2322), so that nobody can add one
spouse's time in the state to the other's time in the county.
"""

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting import ResidenceBand, ResidenceWindow, residence_window
from firstpaper.facts import Case, Day, DontKnow, known
from firstpaper.facts.choices import AWAY, HERE, Kind, Lives, Union, Who
from firstpaper.facts.kinds import kind_of
from firstpaper.facts.matter import Residence
from firstpaper.law.figure import FigureNotInForce, figure
from firstpaper.law.measures.once import once_a_case

SPOUSES = (Who.PETITIONER, Who.RESPONDENT)


class Route(StrEnum):
    """What lets a California court end this union, as far as residence goes."""

    SPOUSE = "spouse"
    CALIFORNIA_PARTNERSHIP = "california_partnership"
    SAME_SEX = "same_sex"
    NOT_NEEDED = "not_needed"
    NONE = "none"


class SpouseResidence(NamedTuple):
    """One spouse's time in the state and in the county of filing, against one filing day.

    A window is None where no day is known from which it could run, or where the spouse does not
    live there. A band is None where it cannot be told. A day told in part is counted from the last
    day it can be; where only an earlier day would be long enough the band is "close". `unsure`
    holds the keys of the facts that are missing, in part, or marked as not sure. `stays` is false
    where this spouse was told not to mean to keep a home here: to live here is to be here and to
    mean to stay (Gov. Code 244; In re Marriage of Thornton (1982) 135 Cal.App.3d 500).
    """

    who: Who
    lives: Lives | None
    state: ResidenceWindow | None
    county: ResidenceWindow | None
    state_band: ResidenceBand | None
    county_band: ResidenceBand | None
    unsure: tuple[str, ...]
    stays: bool = True

    @property
    def has_the_time(self) -> bool:
        """Whether this spouse alone has been here long enough for both halves."""
        return self.state_band is ResidenceBand.MET and self.county_band is ResidenceBand.MET

    @property
    def qualifies(self) -> bool:
        """Whether this spouse alone meets both halves, and nothing told speaks against a home here."""
        return self.has_the_time and self.stays

    @property
    def fails(self) -> bool:
        """Whether a half is not surely met, so that nothing still to be told can help."""
        return any(band not in (ResidenceBand.MET, None) for band in (self.state_band, self.county_band))

    @property
    def safe_day(self) -> date | None:
        """The first day on which both halves are met, if this spouse stays; None if not to be told."""
        if self.lives not in HERE or self.state is None or self.county is None:
            return None
        return max(self.state.safe_day, self.county.safe_day)

    def only_too_close(self, day: date) -> bool:
        """Whether for both halves the calendar months have run, and only the careful count may fail."""
        return all(
            window is not None and window.band(day) is not ResidenceBand.NOT_MET
            for window in (self.state, self.county)
        )


class CountyOpen(NamedTuple):
    """A county where a divorce can be filed by one spouse's time, and the first day on which that is safe."""

    county: str
    who: Who
    safe_day: date


def residence_of(case: Case, who: Who) -> Residence:
    """The residence facts of one spouse, as seen from the county of filing."""
    told = case.residence.petitioner if who is Who.PETITIONER else case.residence.respondent
    if not county_named_twice(case, who):
        return told
    return told.model_copy(update={"lives": Lives.THIS_COUNTY, "county_since": told.own_county_since})


def residence_key(who: Who, fact: str) -> str:
    """The key of one of a spouse's residence facts, as `residence.petitioner.lives`."""
    return f"residence.{who}.{fact}"


@once_a_case
def spouse_residence(case: Case, who: Who, on: date) -> SpouseResidence:
    """One spouse's residence at the day that counts, for a petition filed on the day `on`."""
    told = residence_of(case, who)
    lives, state_since, county_since = known(told.lives), known(told.state_since), known(told.county_since)
    stays = _means_to_stay(told, who)
    if lives in AWAY:
        return SpouseResidence(who, lives, None, None, ResidenceBand.NOT_MET, ResidenceBand.NOT_MET, ())
    day = day_that_counts(case, on)
    state, state_band = _measured(state_since, _in_the_state(on), day)
    if lives is Lives.CALIFORNIA:
        unsure = _unsettled(who, lives=lives, state_since=state_since)
        return SpouseResidence(who, lives, state, None, state_band, ResidenceBand.NOT_MET, unsure, stays)
    county, county_band = _measured(county_since, _in_the_county(on), day if lives in HERE else None)
    unsure = _unsettled(who, lives=lives, state_since=state_since, county_since=county_since)
    return SpouseResidence(who, lives, state, county, state_band, county_band, unsure, stays)


def counties_open(case: Case, on: date) -> tuple[CountyOpen, ...]:
    """Each county by the time that a spouse has there, the one that is safe first in front.

    The county of filing is among them, and the county of a spouse who lives in another one. A spouse who
    was told not to mean to stay opens none. For a petition filed on the day `on`.
    """
    each = (_county_open(case, who, on) for who in SPOUSES)
    first: dict[str, CountyOpen] = {}
    for one in sorted((one for one in each if one), key=lambda one: one.safe_day):
        first.setdefault(one.county, one)
    return tuple(first.values())


def _county_open(case: Case, who: Who, on: date) -> CountyOpen | None:
    told, spouse = residence_of(case, who), spouse_residence(case, who, on)
    name, since = known(told.own_county), known(told.own_county_since)
    if spouse.lives in HERE:
        name, safe_day = known(case.court.county), spouse.safe_day
    elif spouse.lives is Lives.CALIFORNIA and spouse.state and since:
        safe_day = max(spouse.state.safe_day, _in_the_county(on).window(since.latest).safe_day)
    else:
        return None
    return CountyOpen(name, who, safe_day) if name and safe_day and spouse.stays else None


def county_named_twice(case: Case, who: Who) -> bool:
    """Whether a spouse is said to live in another county, and that county is the county of filing."""
    told: Residence = case.fact(f"residence.{who}")
    filing = known(case.court.county)
    return known(told.lives) is Lives.CALIFORNIA and filing is not None and known(told.own_county) == filing


def _means_to_stay(told: Residence, who: Who) -> bool:
    """False where staying is not meant; also where the filer cannot say it of their own home."""
    unsure_of_self = who is Who.PETITIONER and isinstance(told.intends_to_stay, DontKnow)
    return known(told.intends_to_stay) is not False and not unsure_of_self


def who_qualifies(case: Case, on: date) -> tuple[Who, ...]:
    """Each spouse who alone meets both halves, for a petition filed on the day `on`."""
    return tuple(who for who in SPOUSES if spouse_residence(case, who, on).qualifies)


def who_has_the_time(case: Case, on: date) -> tuple[Who, ...]:
    """Each spouse who alone has been here long enough, meaning to stay or not."""
    return tuple(who for who in SPOUSES if spouse_residence(case, who, on).has_the_time)


def ready_from(case: Case, on: date) -> date | None:
    """The first day on which a divorce that must wait for time lived here can be filed.

    None where nothing has to be waited for, where too little was told to say until when, and for a day whose
    law is not known.
    """
    try:
        return _ready_from(case, on)
    except FigureNotInForce:
        return None


def _ready_from(case: Case, on: date) -> date | None:
    spouses = [spouse_residence(case, who, on) for who in SPOUSES]
    if residence_route(case, on) is not Route.NONE or not all(one.fails for one in spouses):
        return None
    return first_safe_day(case, on)


def first_safe_day(case: Case, on: date) -> date | None:
    """The first day on which one spouse has been here long enough, if nobody moves; None if not known."""
    days = [spouse_residence(case, who, on).safe_day for who in SPOUSES]
    return min(filter(None, days), default=None)


def needless_keys(case: Case, on: date) -> frozenset[str]:
    """The residence answers that nothing hangs on any more, because one spouse surely meets the rule."""
    sure = [who for who in who_qualifies(case, on) if not marked_unsure(case, who)]
    told = "state_since", "county_since", "own_county", "own_county_since", "absences", "intends_to_stay"
    others = [who for who in SPOUSES if sure and who not in sure]
    return frozenset(residence_key(who, fact) for who in others for fact in told)


def marked_unsure(case: Case, who: Who) -> bool:
    """Whether the person said "not sure" of a day; a month or a year that is long past raises no doubt."""
    told = residence_of(case, who)
    return any(day.unsure for day in (known(told.state_since), known(told.county_since)) if day)


def day_that_counts(case: Case, on: date) -> date | None:
    """The filing day at which residence is tested; None where that is a day we were not told.

    It is the day the petition is filed, and time that passes later does not cure a petition filed
    too early. Only where a legal separation is amended into a dissolution does the filing day of
    the amended petition count instead (Fam. Code 2321(a)).
    """
    if not known(case.matter.amended) or known(case.matter.first_kind) is Kind.LEGAL_SEPARATION:
        return on
    first = known(case.matter.first_filed_on)
    return first.sure if first else None


def may_state_intent(case: Case, on: date) -> bool:
    """Whether a separation may say that it will be changed to a dissolution once somebody has the time.

    Only the "initial petition" can say it, and only where neither spouse meets Fam. Code 2320 yet
    (Fam. Code 2321). A partnership that California registered has nothing to wait for.
    """
    is_separation = kind_of(case) is Kind.LEGAL_SEPARATION
    is_first, waits = known(case.matter.amended) is not True, not who_qualifies(case, on)
    needs_time = residence_route(case, on) is Route.NOT_NEEDED
    return is_separation and is_first and waits and needs_time


def residence_route(case: Case, on: date) -> Route:
    """What lets a California court hear this case, for a petition filed on the day `on`.

    Route.NONE means that no way is open, or that too little was told to say so.
    """
    if known(case.matter.unions) == (Union.PARTNERS_CALIFORNIA,):
        return Route.CALIFORNIA_PARTNERSHIP
    if same_sex_route_open(case, on):
        return Route.SAME_SEX
    if kind_of(case) in (Kind.LEGAL_SEPARATION, Kind.NULLITY):
        return Route.NOT_NEEDED
    return Route.SPOUSE if who_qualifies(case, on) else Route.NONE


def same_sex_route_told(case: Case) -> bool:
    """Whether every condition of Fam. Code 2320(b) was told to be true, rightly or not.

    California itself would dissolve the marriage, so both spouses must live outside it.
    """
    told = case.residence.exception
    return (
        Union.MARRIAGE in (known(case.matter.unions) or ())
        and known(told.same_sex) is True
        and bool(known(told.wedding_county))
        and known(told.not_dissolvable_at_home) is True
        and all(lives in AWAY for lives in _homes(case))
    )


def same_sex_route_open(case: Case, on: date) -> bool:
    """Whether every condition of Fam. Code 2320(b) was told, and no home speaks against it on the day `on`.

    Since Obergefell v. Hodges (2015) 576 U.S. 644 every state of the United States ends such a marriage. So
    from then on the answers can stand as they are only for spouses who both live abroad.
    """
    every_state = figure("residence.every_state_ends_same_sex_marriages", on).value
    return same_sex_route_told(case) and not (every_state and Lives.OTHER_STATE in _homes(case))


def _homes(case: Case) -> tuple[Lives | None, ...]:
    return tuple(known(residence_of(case, who).lives) for who in SPOUSES)


class _Needed(NamedTuple):
    """How long the law wants somebody to have lived in a place."""

    months: int
    days: int

    def window(self, since: date) -> ResidenceWindow:
        return residence_window(since, months=self.months, days=self.days)


def _in_the_state(on: date) -> _Needed:
    return _Needed(figure("residence.state_months", on).value, figure("residence.half_year_days", on).value)


def _in_the_county(on: date) -> _Needed:
    return _Needed(figure("residence.county_months", on).value, figure("residence.quarter_days", on).value)


def _measured(
    since: Day | None, needed: _Needed, day: date | None
) -> tuple[ResidenceWindow | None, ResidenceBand | None]:
    """The window from the last day it can be, and the band where both ends of what was told agree."""
    if since is None:
        return None, None
    latest = needed.window(since.latest)
    if day is None:
        return latest, None
    bands = {latest.band(day), needed.window(since.earliest).band(day)}
    return latest, bands.pop() if len(bands) == 1 else ResidenceBand.CLOSE


def _unsettled(who: Who, **facts: Lives | Day | None) -> tuple[str, ...]:
    return tuple(residence_key(who, name) for name, fact in facts.items() if not _settled(fact))


def _settled(fact: Lives | Day | None) -> bool:
    return fact is not None and (not isinstance(fact, Day) or fact.sure is not None)
