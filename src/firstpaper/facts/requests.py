"""Grounds, support, property and the other things the petition asks for."""

from firstpaper.facts.choices import (
    AgreementSigned,
    CommunityHow,
    CommunityKind,
    Fees,
    GoodFaith,
    GrownNeed,
    NullityFiler,
    NullityGround,
    Reason,
    SeparateHow,
    SupportChoice,
    Who,
)
from firstpaper.facts.day import Day
from firstpaper.facts.model import Facts
from firstpaper.facts.text import Line, Name, Paragraph
from firstpaper.facts.told import Told, ToldInWords


class Grounds(Facts):
    """The legal ground, with every fact that Fam. Code 2200-2211 need for a nullity."""

    reason: Told[Reason] = None
    nullity: Told[tuple[NullityGround, ...]] = None
    filer: Told[NullityFiler] = None
    filed_for: ToldInWords[Name] = None
    under_age: Told[Who] = None
    minor_born_on: Told[Day] = None
    court_allowed_minor: Told[bool] = None
    prior_spouse_missing: Told[bool] = None
    both_alive: Told[bool] = None
    unsound: Told[Who] = None
    came_to_reason_and_stayed: Told[bool] = None
    deceived: Told[Who] = None
    discovered_on: Told[Day] = None
    stayed_after_discovery: Told[bool] = None
    forced: Told[Who] = None
    stayed_after_force: Told[bool] = None
    incapable: Told[Who] = None
    incapacity_continues: Told[bool] = None
    good_faith: Told[GoodFaith] = None


class Support(Facts):
    """Child support beyond the usual, and support for each spouse."""

    child_other: ToldInWords[Paragraph] = None
    grown: Told[tuple[GrownNeed, ...]] = None
    grown_who: Told[tuple[Line, ...]] = None
    petitioner: Told[SupportChoice] = None
    respondent: Told[SupportChoice] = None
    own_right_ends: Told[bool] = None
    other: ToldInWords[Paragraph] = None


class Property(Facts):
    """Separate and community property, as the petition speaks of them.

    The `agreement` facts are about a paper that the two signed; `elsewhere_kinds` are the kinds of things
    that either gained in the marriage while living outside California.
    """

    agreement_signed: Told[AgreementSigned] = None
    agreement_on_support: Told[bool] = None
    separate_how: Told[SeparateHow] = None
    separate_petitioner: Told[tuple[Line, ...]] = None
    separate_respondent: Told[tuple[Line, ...]] = None
    community_kinds: Told[tuple[CommunityKind, ...]] = None
    elsewhere_kinds: Told[tuple[CommunityKind, ...]] = None
    community_how: Told[CommunityHow] = None
    community_items: Told[tuple[Line, ...]] = None


class Requests(Facts):
    """Everything else the petition may ask for."""

    fees: Told[Fees] = None
    former_name: ToldInWords[Line] = None
    former_name_used: Told[bool] = None
    intends_to_amend: Told[bool] = None
    putative_division: Told[bool] = None
    other: ToldInWords[Paragraph] = None


class Signing(Facts):
    """What the filer states above the signature."""

    orders_read: Told[bool] = None
