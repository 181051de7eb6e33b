"""The character of each thing and debt of a case, as its table reads it."""

from collections.abc import Callable, Iterable
from datetime import date
from typing import Any

from firstpaper.facts import Case, Day, DontKnow, known
from firstpaper.facts.choices import Acquired
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.law.measures.character.assets import ASSETS
from firstpaper.law.measures.character.debts import DEBTS
from firstpaper.law.measures.character.flags import asset_flags, debt_flags
from firstpaper.law.measures.character.looks import (
    AssetLook,
    DebtLook,
    asset_look,
    debt_look,
    goes_on,
    over_time,
)
from firstpaper.law.measures.character.outcome import (
    Alternative,
    Character,
    Code,
    Confidence,
    Flag,
    Reason,
)
from firstpaper.law.measures.character.supposing import (
    Fork,
    Leaf,
    Supposing,
    Tree,
    codes,
    deciding,
    leaves,
    readings,
)
from firstpaper.law.measures.character.times import (
    Time,
    marriage,
    marriage_as_told,
    possible_times,
    span_of,
)
from firstpaper.law.measures.once import once_a_case
from firstpaper.locale import _

REGISTERED = "dates.registered_on"
"""The fact whose meaning is open where no law says when a union registered elsewhere began."""


@once_a_case
def asset_characters(case: Case, on: date) -> tuple[Character, ...]:
    """The character of every thing about which anything was told, in the order listed."""
    listed = (number for number, asset in enumerate(case.asset, 1) if asset != Asset())
    return tuple(asset_character(case, number, on) for number in listed)


@once_a_case
def debt_characters(case: Case, on: date) -> tuple[Character, ...]:
    """The character of every debt about which anything was told, in the order listed."""
    listed = (number for number, debt in enumerate(case.debt, 1) if debt != Debt())
    return tuple(debt_character(case, number, on) for number in listed)


def asset_character(case: Case, number: int, on: date) -> Character:
    """What the thing with that number is taken to be, for a filing on the day `on`."""
    asset, key = case.asset[number - 1], f"asset.{number}"
    for basic in ("kind", "how"):
        if known(getattr(asset, basic)) is None:
            return _not_described(key, basic)
    if _owned_before_but_got_later(case, asset):
        return _contradiction(key)
    look, as_told = (asset_look(case, asset, union(case), on) for union in (marriage, marriage_as_told))

    def flags(leaf: Leaf) -> tuple[Flag, ...]:
        assert isinstance(leaf.look, AssetLook)
        return asset_flags(leaf.look, leaf.verdict.code, on)

    def keys(name: str) -> tuple[str, ...]:
        return () if _open_in_law(name, as_told) else _asset_keys(case, number, name)

    return _character(key, readings(ASSETS, look), look, flags, keys)


def debt_character(case: Case, number: int, on: date) -> Character:
    """To whom the debt with that number is taken to fall, for a filing on the day `on`."""
    debt, key = case.debt[number - 1], f"debt.{number}"
    if known(debt.kind) is None:
        return _not_described(key, "kind")
    look, as_told = (debt_look(case, debt, union(case)) for union in (marriage, marriage_as_told))

    def flags(leaf: Leaf) -> tuple[Flag, ...]:
        assert isinstance(leaf.look, DebtLook)
        return debt_flags(leaf.look, leaf.verdict.code, on)

    def keys(name: str) -> tuple[str, ...]:
        return () if _open_in_law(name, as_told) else _debt_keys(case, number, name)

    return _character(key, readings(DEBTS, look), look, flags, keys)


def _open_in_law(name: str, as_told: Supposing) -> bool:
    """Whether a name on which the table hangs is open only because no law says when the union began."""
    return as_told.peek(name) is not None


def _character(
    key: str,
    tree: Tree,
    look: Supposing,
    flags: Callable[[Leaf], tuple[Flag, ...]],
    keys: Callable[[str], tuple[str, ...]],
) -> Character:
    found = tuple(leaves(tree))
    common = _common(flags(leaf) for leaf in found)
    if len(codes(tree)) == 1:
        least = min(found, key=lambda leaf: leaf.verdict.confidence.firmness)
        verdict = least.verdict
        reason = Reason(verdict.says, least.row.cite, least.row.name)
        return Character(key, verdict.code, verdict.confidence, (reason,), verdict.court, common)
    forks = tuple(deciding(tree))
    missing = tuple(dict.fromkeys(one for fork in forks for one in keys(fork.name)))
    reason, court = _facts_missing(tree) if missing else _law_missing()
    return Character(
        key,
        Code.UNKNOWN,
        Confidence.OPEN,
        (reason, *_first_reasons(found)),
        court,
        common,
        missing,
        _alternatives(forks[0], missing[0] if missing else REGISTERED),
        Code.COMMUNITY if look.peek("when") is Time.DURING and Code.COMMUNITY in codes(tree) else None,
    )


def _facts_missing(tree: Tree) -> tuple[Reason, str]:
    """Why nothing can be said, and what a court may do, where facts are missing."""
    cite = tuple(dict.fromkeys(cite for leaf in leaves(tree) for cite in leaf.row.cite))
    return (
        Reason(_("What it is hangs on facts that we do not have yet."), cite, "missing_facts"),
        _("Once the missing facts are known we can say more. A judge may still see it in another way."),
    )


def _law_missing() -> tuple[Reason, str]:
    """The same where all was told, and no law says when the union began."""
    says = _(
        "It hangs on the day your partnership began in law. You registered in another state or country, and "
        "we found no law that says which day counts then."
    )
    return (
        Reason(says, ("Fam. Code 299.2", "Fam. Code 297.5(k)(1)"), "beginning_open_in_law"),
        _("A judge decides which day counts. See a lawyer before you agree to any of it."),
    )


def _first_reasons(found: Iterable[Leaf]) -> tuple[Reason, ...]:
    """One reason for each code that could come out."""
    by_code = {leaf.verdict.code: leaf for leaf in reversed(tuple(found))}
    return tuple(
        Reason(leaf.verdict.says, leaf.row.cite, leaf.row.name)
        for code, leaf in by_code.items()
        if code is not Code.UNKNOWN
    )


def _alternatives(fork: Fork, key: str) -> tuple[Alternative, ...]:
    return tuple(Alternative(key, _value(value), codes(branch)) for value, branch in fork.branches.items())


def _value(value: Any) -> str:
    return {True: "yes", False: "no"}.get(value, str(value)) if isinstance(value, bool) else str(value)


def _common(many: Iterable[tuple[Flag, ...]]) -> tuple[Flag, ...]:
    """The points that every reading raises."""
    each = tuple(many)
    return tuple(flag for flag in each[0] if all(flag in others for others in each[1:]))


def _not_described(key: str, basic: str) -> Character:
    return Character(
        key,
        Code.UNKNOWN,
        Confidence.OPEN,
        (Reason(_("We do not know what it is, or how it came."), (), "not_described"),),
        _("Tell us what it is and how it came. Then we can say more."),
        missing=(f"{key}.{basic}",),
    )


def _contradiction(key: str) -> Character:
    return Character(
        key,
        Code.UNKNOWN,
        Confidence.OPEN,
        (
            Reason(
                _("You said that it was owned before the wedding, but its date is later."),
                (),
                "contradiction",
            ),
        ),
        _("Look at the date and at how it came again. One of the two is a slip."),
        missing=(f"{key}.acquired_on", f"{key}.how"),
    )


def _owned_before_but_got_later(case: Case, asset: Asset) -> bool:
    if known(asset.how) is not Acquired.OWNED_BEFORE or known(asset.acquired_on) is None:
        return False
    return Time.BEFORE not in possible_times(span_of(asset.acquired_on), marriage(case))


def _asset_keys(case: Case, number: int, name: str) -> tuple[str, ...]:
    """The keys of the facts behind a name that the table asks for."""
    asset, key = case.asset[number - 1], f"asset.{number}"
    came = (f"{key}.acquired_on", asset.acquired_on)
    until = (f"{key}.earned_until", asset.earned_until)
    began = came if asset.earned_from is None else (f"{key}.earned_from", asset.earned_from)
    days = {
        "when": (came,),
        "before_writing_rule": (came,),
        "usable": (until,),
        "earned": (began, until) if over_time(asset) and not goes_on(asset) else (began,),
    }
    if name in days:
        return _dates(case, *days[name])
    return _general_keys(case, asset).get(name, (f"{key}.{name}",))


def _debt_keys(case: Case, number: int, name: str) -> tuple[str, ...]:
    debt, key = case.debt[number - 1], f"debt.{number}"
    if name == "when":
        return _dates(case, (f"{key}.incurred_on", debt.incurred_on))
    return _general_keys(case, debt).get(name, (f"{key}.{name}",))


def _general_keys(case: Case, row: Asset | Debt) -> dict[str, tuple[str, ...]]:
    """The keys of what holds for everything listed, where the row does not speak for itself."""
    general: dict[str, tuple[str, ...]] = {
        "nullity": ("matter.kind",),
        "support_arranged": ("schedule.support_arranged",),
    }
    if row.agreement is None:
        general["agreement"] = ("schedule.agreement",)
    if isinstance(row, Asset) and row.lived_in is None and known(case.schedule.in_california) is None:
        general["lived_in"] = ("schedule.in_california",)
    return general


def _dates(case: Case, *told: tuple[str, Day | DontKnow | None]) -> tuple[str, ...]:
    """Which of those days, and of the ends of the marriage, are not known; else not known to the day."""
    union = marriage(case)
    days = {key: known(fact) for key, fact in told}
    days |= {key: known(case.fact(key)) for key in (union.began_key, *union.broke_keys)}
    not_known = tuple(key for key, day in days.items() if day is None)
    return not_known or tuple(key for key, day in days.items() if day and day.sure is None) or (told[0][0],)
