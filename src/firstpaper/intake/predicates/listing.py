"""When a question about a thing, a debt or an income is asked. No law and no clock, as in the interview.

A question is asked where what the thing is, and how it came, make its answer matter. Each function takes the
case, and most of them the thing or the debt too.
"""

from firstpaper.facts import Case, Day, DontKnow, agreements, known
from firstpaper.facts.choices import (
    Acquired,
    AssetKind,
    DebtKind,
    DebtPurpose,
    MoneySource,
    TitleForm,
    Who,
)
from firstpaper.facts.schedule import Asset, Debt

DEPOSITS = (AssetKind.SAVINGS, AssetKind.CHECKING, AssetKind.OTHER_DEPOSIT)
ACCOUNTS = (*DEPOSITS, AssetKind.CASH, AssetKind.INVESTMENTS)
PLANS = (AssetKind.PENSION, AssetKind.RETIREMENT_ACCOUNT)
NUMBERED = (*DEPOSITS, *PLANS, AssetKind.INVESTMENTS, AssetKind.LIFE_INSURANCE)
PERSONAL = (AssetKind.VALUABLES, AssetKind.HOUSEHOLD, AssetKind.OTHER)
SHARED_IN_USE = (AssetKind.REAL_ESTATE, AssetKind.VEHICLE)
GIVEN = (Acquired.GIFT, Acquired.INHERITED)
OF_ONE_ALONE = (Who.PETITIONER, Who.RESPONDENT)
OWN_MONEY = (MoneySource.PETITIONER_SEPARATE, MoneySource.RESPONDENT_SEPARATE)
COUNTY_WITH_A_FORMULA = "Santa Clara"


# --- how a thing came ---------------------------------------------------------------------------


def told_of_no_paper(case: Case) -> bool:
    """The interview was not told of a paper about property that the two signed."""
    return not agreements.told_of_an_agreement(case)


def is_earned_over_time(_case: Case, asset: Asset) -> bool:
    """A plan that work earns, or pay that comes late."""
    plan = known(asset.kind) in PLANS and known(asset.how) is Acquired.EARNED
    return plan or known(asset.how) is Acquired.IN_PLACE_OF_PAY


def hangs_on_days_of_work(case: Case, asset: Asset) -> bool:
    """A plan, late pay, or a stock option: it counts when the work behind it began."""
    return is_earned_over_time(case, asset) or is_stock_option(case, asset)


def has_an_end_of_work(case: Case, asset: Asset) -> bool:
    """A stock option, or a plan or late pay for which nobody works any more."""
    ended = is_earned_over_time(case, asset) and known(asset.still_earning) is not True
    return ended or is_stock_option(case, asset)


def is_stock_option(_case: Case, asset: Asset) -> bool:
    """A stock option, or another right to shares that work earns."""
    return known(asset.how) is Acquired.STOCK_OPTION


def is_injury_money(_case: Case, asset: Asset) -> bool:
    """Money for an injury."""
    return known(asset.how) is Acquired.INJURY


def is_injury_by_somebody_else(case: Case, asset: Asset) -> bool:
    """Money for an injury that the other spouse did not do, as far as is known."""
    return is_injury_money(case, asset) and known(asset.hurt_by_spouse) is not True


def is_a_thing_to_have(_case: Case, asset: Asset) -> bool:
    """Anything but a degree, a licence or training."""
    return known(asset.how) is not Acquired.TRAINING


def was_bought(_case: Case, asset: Asset) -> bool:
    """Something paid for: bought, or bought for the other as a gift."""
    return known(asset.how) in (Acquired.BOUGHT, Acquired.FROM_SPOUSE)


def is_personal_gift_of_the_spouse(_case: Case, asset: Asset) -> bool:
    """A ring, clothes or the like that one of the two gave to the other."""
    return known(asset.how) is Acquired.FROM_SPOUSE and known(asset.kind) in PERSONAL


def is_used_by_one_alone(case: Case, asset: Asset) -> bool:
    """Such a gift that one alone uses."""
    return is_personal_gift_of_the_spouse(case, asset) and known(asset.used_by_one) is True


# --- whose name, whose money --------------------------------------------------------------------


def has_a_title_that_counts(case: Case, asset: Asset) -> bool:
    """A thing of which it counts whose name is on its paper: not pay, injury money or training."""
    if is_earned_over_time(case, asset):
        return False
    return known(asset.how) not in (Acquired.TRAINING, Acquired.STOCK_OPTION, Acquired.INJURY)


def is_in_own_trust(_case: Case, asset: Asset) -> bool:
    """It is in a trust of the two."""
    return known(asset.title) is TitleForm.OWN_TRUST


def may_be_mixed(case: Case, asset: Asset) -> bool:
    """One person's own when it came, or money for an injury: money of both may have gone in."""
    if is_injury_money(case, asset):
        return True
    if is_earned_over_time(case, asset) or _is_joint_and_no_deposit(asset):
        return known(asset.how) is Acquired.GROWTH
    late_pay = known(asset.how) is Acquired.EARNED and _may_be_after_parting(case, asset)
    return late_pay or _may_be_own(case, asset)


def may_hold_own_money(case: Case, asset: Asset) -> bool:
    """Own money may have paid for it or may lie in it, so that papers count."""
    kind, joint = known(asset.kind), known(asset.title) is TitleForm.JOINT
    if known(asset.how) is Acquired.BOUGHT:
        part = known(asset.source) is MoneySource.PART_SEPARATE and joint and kind in DEPOSITS
        if part or known(asset.source) in OWN_MONEY:
            return True
    lies_in_it = (joint and kind in DEPOSITS) or (known(asset.mixed) is True and kind in ACCOUNTS)
    return lies_in_it and not is_earned_over_time(case, asset) and _may_be_own(case, asset)


def may_be_grown_by_work(case: Case, asset: Asset) -> bool:
    """One person's own business, or what own things earned: work in the marriage may be in it."""
    if known(asset.how) is Acquired.GROWTH:
        return True
    own = known(asset.how) in (*GIVEN, Acquired.OWNED_BEFORE) or _may_be_before_the_union(case, asset)
    return known(asset.kind) is AssetKind.BUSINESS and own


def may_come_from_elsewhere(case: Case, asset: Asset) -> bool:
    """The two did not both live in California all the time, and it may belong to both."""
    if case.schedule.in_california is None or known(case.schedule.in_california) is True:
        return False
    if known(asset.how) in (*GIVEN, Acquired.OWNED_BEFORE, Acquired.GROWTH):
        return known(asset.kind) in ACCOUNTS and known(asset.mixed) is True
    return known(asset.how) not in (Acquired.TRAINING, Acquired.OTHER, None)


def may_be_in_a_signed_paper(case: Case, _row: Asset | Debt) -> bool:
    """The two signed a paper about property or debts."""
    return agreements.signed_an_agreement(case) is True


def is_paid_for_bit_by_bit(case: Case, asset: Asset) -> bool:
    """A house, a car or a business, into which one may have put money of their own."""
    kind = known(asset.kind)
    if not is_a_thing_to_have(case, asset):
        return False
    if kind is AssetKind.VEHICLE:
        return known(asset.source) in (*OWN_MONEY, MoneySource.PART_SEPARATE)
    return kind in (AssetKind.REAL_ESTATE, AssetKind.BUSINESS)


def is_house_from_before(case: Case, asset: Asset) -> bool:
    """A house of one from before the wedding, that money of both helped to pay for."""
    before = known(asset.how) is Acquired.OWNED_BEFORE or (
        known(asset.how) is Acquired.BOUGHT and _may_be_before_the_union(case, asset)
    )
    paid = known(asset.mixed) is True and known(asset.title) is not TitleForm.JOINT
    return known(asset.kind) is AssetKind.REAL_ESTATE and before and paid


# --- papers, numbers, and the time since the two parted -------------------------------------------


def has_an_account_number(_case: Case, asset: Asset) -> bool:
    """An account, a plan or a policy."""
    return known(asset.kind) in NUMBERED


def has_a_loan_on_it(_case: Case, asset: Asset) -> bool:
    """Something is owed on it."""
    return bool(known(asset.owed))


def was_paid_on_since(_case: Case, row: Asset | Debt) -> bool:
    """One of the two paid on it since they parted."""
    return bool(known(row.paid_after))


def can_be_used_by_one(_case: Case, asset: Asset) -> bool:
    """A house or a car."""
    return known(asset.kind) in SHARED_IN_USE


def was_used_by_one_since(case: Case, asset: Asset) -> bool:
    """A house or a car that one of the two alone has used since they parted."""
    return can_be_used_by_one(case, asset) and known(asset.used_after_by) in OF_ONE_ALONE


# --- debts --------------------------------------------------------------------------------------


def has_a_purpose(_case: Case, debt: Debt) -> bool:
    """Any debt but support owed to another family."""
    return known(debt.kind) is not DebtKind.SUPPORT_OWED


def may_not_be_for_the_family(case: Case, debt: Debt) -> bool:
    """A debt that was not for what the family needed to live, and no loan for training."""
    purpose = known(debt.purpose)
    if not has_a_purpose(case, debt) or purpose is None:
        return False
    training = known(debt.kind) is DebtKind.STUDENT_LOAN or purpose is DebtPurpose.EDUCATION
    return purpose is DebtPurpose.HARM or not (training or purpose is DebtPurpose.HOUSEHOLD)


def is_with_a_lender(_case: Case, debt: Debt) -> bool:
    """A card or a loan, which has an account number."""
    return known(debt.kind) in (DebtKind.CREDIT_CARD, DebtKind.UNSECURED_LOAN, DebtKind.STUDENT_LOAN)


# --- support ------------------------------------------------------------------------------------


def files_where_a_formula_is_known(case: Case) -> bool:
    """The case goes to a county of which we know the formula for support until the end of the case."""
    return known(case.court.county) == COUNTY_WITH_A_FORMULA


# --- parts --------------------------------------------------------------------------------------


def _may_be_own(case: Case, asset: Asset) -> bool:
    """Whether it may have been one person's own when it came."""
    how = known(asset.how)
    early = how in (Acquired.BOUGHT, Acquired.EARNED) and _may_be_before_the_union(case, asset)
    return early or how in (*GIVEN, Acquired.OWNED_BEFORE, Acquired.GROWTH)


def _is_joint_and_no_deposit(asset: Asset) -> bool:
    return known(asset.title) is TitleForm.JOINT and known(asset.kind) not in DEPOSITS


def _may_be_before_the_union(case: Case, asset: Asset) -> bool:
    """Whether the day it came is told, and may lie before the wedding or registration or on that day."""
    came = known(asset.acquired_on)
    if came is None:
        return False
    began = [_known_day(case.dates.married_on), _known_day(case.dates.registered_on)]
    firsts = [day for day in began if day]
    if came.unsure or not firsts or any(day.unsure for day in firsts):
        return True
    return any(came.earliest <= day.latest for day in firsts)


def _may_be_after_parting(case: Case, asset: Asset) -> bool:
    """Whether the day it came is told, and may lie after the two parted."""
    came = known(asset.acquired_on)
    if came is None:
        return False
    parted = [_known_day(case.dates.separation_told_on), _known_day(case.dates.separation_acted_on)]
    lasts = [day for day in parted if day]
    if came.unsure or not lasts or any(day.unsure for day in lasts):
        return True
    return any(came.latest > day.earliest for day in lasts)


def _known_day(fact: Day | DontKnow | None) -> Day | None:
    return known(fact)
