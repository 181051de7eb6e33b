"""What each of the two owns and owes, thing by thing: the schedule behind the property papers.

Every fact may stay empty. Nothing here says what a thing is in law; that is for `firstpaper.law`.
"""

from typing import Annotated

from pydantic import Field

from firstpaper.facts.choices import (
    Acquired,
    AssetKind,
    ContributionFor,
    DebtKind,
    DebtPurpose,
    LivedIn,
    MoneySource,
    Proposal,
    TitleForm,
    Who,
)
from firstpaper.facts.day import Day
from firstpaper.facts.model import Facts
from firstpaper.facts.money import Amount
from firstpaper.facts.text import LastFour, Line, Paragraph
from firstpaper.facts.told import Told, ToldInWords

MOST_LISTED = 99

Months = Annotated[int, Field(ge=0, le=1200)]
Shares = Annotated[int, Field(ge=0, le=1_000_000_000)]


class Schedule(Facts):
    """What holds for everything that is listed.

    `agreement` says that the two signed a paper about property: before or in the marriage, or now.
    `in_california` says that both had their lasting home here all through the marriage. A single thing may
    say otherwise for itself, by `agreement` and `lived_in`. `support_arranged` tells of an order or a
    written agreement about support, or about who pays these debts, after the separation.
    """

    agreement: Told[bool] = None
    in_california: Told[bool] = None
    support_arranged: Told[bool] = None


class Contribution(Facts):
    """Separate money that one spouse put into a thing. `traced` says that papers show where it came from."""

    by: Who
    amount: Amount
    toward: ContributionFor
    traced: Told[bool] = None


class House(Facts):
    """The history of a house that one spouse bought before the wedding.

    The `principal` facts are what was paid on the loan itself, without interest, tax and insurance:
    before the wedding, from then to the separation, and after it.
    """

    price: Told[Amount] = None
    down_payment: Told[Amount] = None
    principal_before: Told[Amount] = None
    principal_during: Told[Amount] = None
    principal_after: Told[Amount] = None
    value_at_wedding: Told[Amount] = None
    refinanced: Told[bool] = None
    improved: Told[bool] = None
    rented_out: Told[bool] = None


class Asset(Facts):
    """One thing owned.

    `by` is who earned, bought or was given it; for an injury, who was hurt. `acquired_on` is the day it
    came: of a stock option the grant, of an injury the accident, of training the payment. For what is
    earned over time, `earned_from` is the day the work began, and `earned_until` the day it ended, the
    benefit stopped growing or the option can be used; `still_earning` while it goes on.

    `title` is the form of title today. `source` is whose money paid, `traced` whether papers show that.
    `mixed` says that community money was added to it, or paid down its loan, or improved it.
    `worked_in` says that a spouse worked in it in the marriage. `changes_need_both` is about the
    couple's own trust: it can be undone in the marriage, and changes need both. `used_by_one` and
    `substantial` are about a gift between the two. `living_apart` and `hurt_by_spouse` are about an
    injury.

    `value` is what a stranger would pay, `value_how` how that is known, `owed` what is owed on the thing
    itself. The facts that end in `_after` are about the time since the separation: `paid_after` what one of
    the two paid from their own money on its loan, the `used` facts who alone had its use.
    """

    kind: Told[AssetKind] = None
    words: ToldInWords[Line] = None
    acquired_on: Told[Day] = None
    how: Told[Acquired] = None
    by: Told[Who] = None
    title: Told[TitleForm] = None
    source: Told[MoneySource] = None
    traced: Told[bool] = None
    mixed: Told[bool] = None
    lived_in: Told[LivedIn] = None
    agreement: Told[bool] = None
    earned_from: Told[Day] = None
    earned_until: Told[Day] = None
    still_earning: Told[bool] = None
    shares: Told[Shares] = None
    worked_in: Told[bool] = None
    changes_need_both: Told[bool] = None
    used_by_one: Told[bool] = None
    substantial: Told[bool] = None
    living_apart: Told[bool] = None
    hurt_by_spouse: Told[bool] = None
    contributions: Told[tuple[Contribution, ...]] = None
    house: House = House.nothing()
    value: Told[Amount] = None
    valued_on: Told[Day] = None
    value_how: ToldInWords[Line] = None
    owed: Told[Amount] = None
    paid_after: Told[Amount] = None
    paid_after_by: Told[Who] = None
    used_after_by: Told[Who] = None
    used_after_months: Told[Months] = None
    used_after_value: Told[Amount] = None
    held_by: Told[Who] = None
    last_four: ToldInWords[LastFour] = None
    documents: Told[tuple[Line, ...]] = None
    proposal: Told[Proposal] = None
    note: ToldInWords[Paragraph] = None


class Debt(Facts):
    """One debt. A loan on a house or a car is told with the house or the car.

    `by` is who took it on, and in whose `name` it runs; `for_family` whether the family had the good of it.
    """

    kind: Told[DebtKind] = None
    words: ToldInWords[Line] = None
    incurred_on: Told[Day] = None
    by: Told[Who] = None
    name: Told[Who] = None
    purpose: Told[DebtPurpose] = None
    for_family: Told[bool] = None
    agreement: Told[bool] = None
    owed: Told[Amount] = None
    owed_on: Told[Day] = None
    paid_after: Told[Amount] = None
    paid_after_by: Told[Who] = None
    last_four: ToldInWords[LastFour] = None
    documents: Told[tuple[Line, ...]] = None
    proposal: Told[Proposal] = None
    note: ToldInWords[Paragraph] = None
