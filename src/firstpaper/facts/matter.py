"""Which case it is, which court hears it, and the dates that make it."""

from firstpaper.facts.choices import Kind, Lives, OtherCase, ToldTo, Union
from firstpaper.facts.counties import County, CountyOrNone
from firstpaper.facts.day import Day
from firstpaper.facts.model import Facts
from firstpaper.facts.people import Address
from firstpaper.facts.text import CaseLine, Line, Name, Number
from firstpaper.facts.told import Told, ToldInWords


class Matter(Facts):
    """The kind of case, and whether another one is open.

    `registration` says where partners registered outside California, and what the paper calls it.
    """

    unions: Told[tuple[Union, ...]] = None
    registration: ToldInWords[Name] = None
    kind: Told[Kind] = None
    amended: Told[bool] = None
    case_number: ToldInWords[Number] = None
    first_filed_on: Told[Day] = None
    first_kind: Told[Kind] = None
    first_stated_intent: Told[bool] = None
    other_side_answered: Told[bool] = None
    other_case: Told[bool] = None
    other_case_kinds: Told[tuple[OtherCase, ...]] = None
    separation_judgment: Told[bool] = None
    other_case_words: ToldInWords[CaseLine] = None


class Court(Facts):
    """The superior court of one county."""

    county: Told[County] = None
    address: Told[Address] = None
    branch: ToldInWords[Line] = None


class Period(Facts):
    """A stretch of time, with a word on why. `end` is absent while it lasts."""

    start: Day
    end: Day | None = None
    why: Line = ""


class Dates(Facts):
    """The dates of the union and of its end."""

    married_on: Told[Day] = None
    married_place: ToldInWords[Line] = None
    registered_on: Told[Day] = None
    separation_told_on: Told[Day] = None
    separation_told_to: Told[ToldTo] = None
    separation_acted_on: Told[Day] = None
    back_together: Told[tuple[Period, ...]] = None


class Residence(Facts):
    """Where one spouse lives, and since when.

    `county_since` is the day in the county of filing; `own_county` and `own_county_since` are told of a
    spouse who lives in another county of California.
    """

    lives: Told[Lives] = None
    state_since: Told[Day] = None
    county_since: Told[Day] = None
    own_county: Told[CountyOrNone] = None
    own_county_since: Told[Day] = None
    previous_county: Told[CountyOrNone] = None
    previous_county_until: Told[Day] = None
    absences: Told[tuple[Period, ...]] = None
    intends_to_stay: Told[bool] = None
    lives_in: ToldInWords[Name] = None


class SameSexRoute(Facts):
    """The facts of Fam. Code 2320(b). An empty `wedding_county` means that they married elsewhere."""

    same_sex: Told[bool] = None
    wedding_county: Told[CountyOrNone] = None
    not_dissolvable_at_home: Told[bool] = None


class Residences(Facts):
    """Residence of both spouses, and the one exception."""

    petitioner: Residence = Residence.nothing()
    respondent: Residence = Residence.nothing()
    exception: SameSexRoute = SameSexRoute.nothing()
