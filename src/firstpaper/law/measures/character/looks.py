"""A listed thing or debt as the tables look at it: each fact either known, or open between some values."""

from collections.abc import Mapping
from datetime import date
from typing import Any

from firstpaper.facts import Case, known
from firstpaper.facts.agreements import signed_an_agreement
from firstpaper.facts.choices import (
    Acquired,
    AssetKind,
    DebtKind,
    DebtPurpose,
    Kind,
    LivedIn,
    MoneySource,
    TitleForm,
    Who,
)
from firstpaper.facts.kinds import kind_of
from firstpaper.facts.schedule import Asset, Contribution, Debt
from firstpaper.law.figure import figure
from firstpaper.law.measures.character.outcome import Code
from firstpaper.law.measures.character.supposing import IfTold, Needed, Supposing
from firstpaper.law.measures.character.times import (
    Earned,
    Marriage,
    Span,
    Time,
    earned_in_a_day,
    possible_earned,
    possible_times,
    span_of,
)

YES_NO = (True, False)
DEPOSITS = (AssetKind.SAVINGS, AssetKind.CHECKING, AssetKind.OTHER_DEPOSIT)
ACCOUNTS = (*DEPOSITS, AssetKind.CASH, AssetKind.INVESTMENTS)
PLANS = (AssetKind.PENSION, AssetKind.RETIREMENT_ACCOUNT)
PERSONAL = (AssetKind.VALUABLES, AssetKind.HOUSEHOLD, AssetKind.OTHER)


class _Look(Supposing):
    """What a thing and a debt have in common."""

    nullity = Needed[bool]()
    """Whether the case is about a marriage that was not valid."""

    agreement = Needed[bool]()
    """Whether a paper the two signed speaks about it."""

    def yes(self, name: str) -> bool:
        """A fact that is a yes or a no."""
        return bool(self.fact(name))


class AssetLook(_Look):
    """A thing owned. Each property gives the fact, or says that it is not known."""

    kind = IfTold[AssetKind]()
    """What it is; None where nobody said."""

    how = IfTold[Acquired]()
    """How it came; None where nobody said."""

    by = Needed[Who]()
    """Who earned, bought or was given it, or was hurt."""

    title = Needed[TitleForm]()
    """Whose name its paper carries."""

    source = Needed[MoneySource]()
    """Whose money paid."""

    @property
    def when(self) -> Time:
        """When it came."""
        if self.how is Acquired.OWNED_BEFORE:
            return Time.BEFORE
        if self.how is Acquired.EARNED:
            return {Earned.BEFORE: Time.BEFORE, Earned.AFTER: Time.AFTER}.get(self.earned, Time.DURING)
        found: Time = self.fact("when")
        return found

    earned = Needed[Earned]()
    """When the work behind it lay."""

    usable = Needed[Time]()
    """When a stock option can first be used."""

    lived_in = Needed[LivedIn]()
    """Where the spouse who got it had their lasting home then."""

    @property
    def owned_alone_before(self) -> bool:
        """Whether it was separate when it came: had before the wedding, given or left to one of them."""
        given = self.how in (Acquired.GIFT, Acquired.INHERITED)
        return given or self.when is Time.BEFORE

    @property
    def shared_code(self) -> Code:
        """Community, or quasi-community where the spouse who got it lived elsewhere."""
        return Code.COMMUNITY if self.lived_in is LivedIn.CALIFORNIA else Code.QUASI_COMMUNITY

    came = Needed[Span]()
    """The first and last day on which it can have come."""

    @property
    def contributions(self) -> tuple[Contribution, ...]:
        """The separate money put in, as told."""
        return self.peek("contributions") or ()


class DebtLook(_Look):
    """A debt. Each property gives the fact, or says that it is not known."""

    kind = IfTold[DebtKind]()
    """What it is; None where nobody said."""

    by = Needed[Who]()
    """Who took it on."""

    purpose = Needed[DebtPurpose]()
    """What it was for."""

    when = Needed[Time]()
    """When it was taken on."""


_ASSET_FACTS: Mapping[str, tuple[Any, ...]] = {
    "by": tuple(Who),
    "title": tuple(TitleForm),
    "source": tuple(MoneySource),
    "lived_in": tuple(LivedIn),
    **dict.fromkeys(
        (
            "agreement",
            "traced",
            "mixed",
            "worked_in",
            "changes_need_both",
            "used_by_one",
            "substantial",
            "living_apart",
            "hurt_by_spouse",
        ),
        YES_NO,
    ),
}
"""The facts of a thing that the tables ask for, and the values each could have."""

_DEBT_FACTS: Mapping[str, tuple[Any, ...]] = {
    "by": tuple(Who),
    "purpose": tuple(DebtPurpose),
    "for_family": YES_NO,
    "agreement": YES_NO,
}


def asset_look(case: Case, asset: Asset, union: Marriage, on: date) -> AssetLook:
    """The thing as the tables look at it, for a filing on the day `on`."""
    told: dict[str, Any] = {
        name: known(getattr(asset, name)) for name in (*_ASSET_FACTS, "kind", "how", "contributions")
    }
    told |= _general(case, asset)
    if asset.lived_in is None:
        told["lived_in"] = _lived_in(case)
    came = span_of(asset.acquired_on)
    told["came"] = came
    computed = {
        "when": possible_times(came, union),
        "earned": _earned(asset, union),
        "usable": possible_times(span_of(asset.earned_until), union),
        "before_writing_rule": _before(came, figure("money.writing_since", on).value),
    }
    return AssetLook(*_known_and_open(told, {**_ASSET_FACTS, "nullity": YES_NO}, computed))


def debt_look(case: Case, debt: Debt, union: Marriage) -> DebtLook:
    """The debt as the tables look at it."""
    told = {name: known(getattr(debt, name)) for name in (*_DEBT_FACTS, "kind", "name", "proposal")}
    told |= _general(case, debt)
    told["support_arranged"] = known(case.schedule.support_arranged)
    incurred = possible_times(span_of(debt.incurred_on), union, gap_at_separation=True)
    open_ = {**_DEBT_FACTS, "nullity": YES_NO, "support_arranged": YES_NO}
    return DebtLook(*_known_and_open(told, open_, {"when": incurred}))


def _general(case: Case, row: Asset | Debt) -> dict[str, Any]:
    """What holds for everything listed, unless the row was asked about it by itself."""
    kind = kind_of(case)
    return {
        "nullity": None if kind is None else kind is Kind.NULLITY,
        "agreement": signed_an_agreement(case) if row.agreement is None else known(row.agreement),
    }


def _lived_in(case: Case) -> LivedIn | None:
    """Here, where both lived here all through the marriage; else each thing must say for itself."""
    return LivedIn.CALIFORNIA if known(case.schedule.in_california) else None


def _known_and_open(
    told: Mapping[str, Any], between: Mapping[str, tuple[Any, ...]], computed: Mapping[str, tuple[Any, ...]]
) -> tuple[dict[str, Any], dict[str, tuple[Any, ...]]]:
    sure = {name: values[0] for name, values in computed.items() if len(values) == 1}
    return {**told, **sure}, {**between, **computed}


def _before(day: Span, line: date) -> tuple[bool, ...]:
    return tuple(
        value for value, possible in ((True, day.first < line), (False, day.last >= line)) if possible
    )


def over_time(asset: Asset) -> bool:
    """Whether a stretch of work lies behind it. A thing not asked about one was earned on the day it came."""
    asked = (asset.earned_from, asset.earned_until, asset.still_earning) != (None, None, None)
    return asked or known(asset.kind) in PLANS


def goes_on(asset: Asset) -> bool:
    """Whether it is still being earned; a day on which that ended comes before."""
    return bool(known(asset.still_earning)) and known(asset.earned_until) is None


def _earned(asset: Asset, union: Marriage) -> tuple[Earned, ...]:
    """When the work behind it lay."""
    came = span_of(asset.acquired_on)
    if not over_time(asset):
        return earned_in_a_day(possible_times(came, union))
    start = came if asset.earned_from is None else span_of(asset.earned_from)
    until = span_of(asset.earned_until)
    end = Span(max(start.first, until.first), max(start.last, until.last))
    ended = (Time.AFTER,) if goes_on(asset) else possible_times(end, union)
    return possible_earned(possible_times(start, union), ended)
