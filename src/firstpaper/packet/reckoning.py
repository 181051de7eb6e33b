"""Everything the private money pages draw on, worked out once for one case and one day.

It lies beside the brief of the packet and apart from it: nothing of it may reach a page that is filed.
"""

from collections.abc import Callable, Mapping
from datetime import date
from decimal import Decimal
from typing import NamedTuple, TypeVar

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Acquired, AssetKind
from firstpaper.facts.income import Income
from firstpaper.facts.schedule import Asset, Debt, House
from firstpaper.intake import standing
from firstpaper.law.measures.character import Character, Code, asset_characters, debt_characters
from firstpaper.law.measures.child_support import CostSplit, Guideline, child_support_for, split_costs
from firstpaper.law.measures.children import listed_children
from firstpaper.law.measures.estimates.after_separation import Ledger, ledger
from firstpaper.law.measures.estimates.house import HouseShare, house_share_for
from firstpaper.law.measures.estimates.options import OptionShares, option_shares_for
from firstpaper.law.measures.estimates.pension import TimeRule, pension_part
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.spousal_support import HalfLength, Temporary, half_length, temporary_support_for
from firstpaper.law.measures.sums import (
    Equalizing,
    Line,
    Repayment,
    Totals,
    equalizing,
    lines,
    repayment_for,
    totals_of,
)
from firstpaper.law.measures.taxes import SupportTax, spousal_support_tax

Found = TypeVar("Found")
ByThing = Mapping[str, Found | Refused]
"""What was worked out for a thing, or why not, by its key, such as "asset.2"."""

AFTER = ("paid_after", "paid_after_by", "used_after_by", "used_after_months", "used_after_value")


class Reckoning(NamedTuple):
    """One household's money on one day. What does not apply to it is empty or None."""

    case: Case
    on: date
    characters: tuple[Character, ...]
    lines: tuple[Line, ...]
    totals: Totals
    proposal: Equalizing | Refused | None
    repayments: ByThing[Repayment]
    houses: ByThing[HouseShare]
    pensions: ByThing[TimeRule]
    options: ByThing[OptionShares]
    after: Ledger | Refused | None
    children: Guideline | Refused | None
    costs: CostSplit | Refused | None
    temporary: Temporary | Refused | None
    half_length: HalfLength | Refused
    tax: SupportTax

    @property
    def empty(self) -> bool:
        """Whether nothing about money was told."""
        return not self.lines and not _income_told(self.case)


def reckon(case: Case, on: date) -> Reckoning:
    """Work out everything the money pages need, for a filing on the day `on`."""
    facts = standing(case)
    listed = lines(facts, on)
    children = _children(facts, on)
    guideline = children if isinstance(children, Guideline) else None
    added = added_costs(facts)
    return Reckoning(
        case=facts,
        on=on,
        characters=(*asset_characters(facts, on), *debt_characters(facts, on)),
        lines=listed,
        totals=totals_of(listed),
        proposal=equalizing(facts, on) if any(one.code.shared for one in listed) else None,
        repayments=_by_thing(facts, on, _has_contributions, repayment_for),
        houses=_by_thing(facts, on, _is_old_house, house_share_for),
        pensions=_by_thing(facts, on, _is_pension_across, pension_part),
        options=_by_thing(facts, on, _is_option_across, option_shares_for),
        after=ledger(facts, on) if _told_after(facts) else None,
        children=children,
        costs=split_costs(guideline, added) if guideline and added else None,
        temporary=_temporary(facts, on, guideline),
        half_length=half_length(facts, on),
        tax=spousal_support_tax(on),
    )


def added_costs(case: Case) -> Decimal:
    """What the children cost each month on top of support."""
    told = (known(case.income.childcare), known(case.income.health_costs))
    return sum((one for one in told if one), Decimal(0))


def _income_told(case: Case) -> bool:
    return any(known(getattr(case.income, name)) is not None for name in Income.model_fields)


def _children(case: Case, on: date) -> Guideline | Refused | None:
    """Child support, where there are children and anything of an income was told."""
    if not _income_told(case) or not listed_children(case, on):
        return None
    return child_support_for(case, on)


def _temporary(case: Case, on: date, children: Guideline | None) -> Temporary | Refused | None:
    """The county's formula, for a filer who asked to see it."""
    return temporary_support_for(case, on, children) if known(case.income.temporary_asked) else None


def _by_thing(
    case: Case,
    on: date,
    applies: Callable[[Asset, Character], bool],
    work: Callable[[Case, int, date], Found | Refused],
) -> ByThing[Found]:
    """What `work` finds for each thing to which it applies."""
    numbered = ((int(one.key.partition(".")[2]), one) for one in asset_characters(case, on))
    return {
        one.key: work(case, number, on) for number, one in numbered if applies(case.asset[number - 1], one)
    }


def _has_contributions(asset: Asset, _one: Character) -> bool:
    return bool(known(asset.contributions))


def _is_old_house(asset: Asset, one: Character) -> bool:
    """A house of one of them that community money helped to pay for, or whose history was told."""
    if known(asset.kind) is not AssetKind.REAL_ESTATE:
        return False
    return asset.house != House() or one.reasons[0].row == "own_but_community_paid"


def _is_pension_across(asset: Asset, one: Character) -> bool:
    return known(asset.kind) is AssetKind.PENSION and one.code in (Code.MIXED, Code.UNKNOWN)


def _is_option_across(asset: Asset, one: Character) -> bool:
    return known(asset.how) is Acquired.STOCK_OPTION and one.code in (Code.MIXED, Code.UNKNOWN)


def _told_after(case: Case) -> bool:
    """Whether anything was told of payments or use since the separation."""
    rows: tuple[Asset | Debt, ...] = (*case.asset, *case.debt)
    return any(getattr(row, name, None) is not None for row in rows for name in AFTER)
