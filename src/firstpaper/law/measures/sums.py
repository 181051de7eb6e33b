"""Sums over what is listed, from the values the filer gave: arithmetic, not a valuation.

Nothing here decides what a thing is; that is `character`. A thing whose character or value is not known
is left out of every sum, and named.
"""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from decimal import Decimal
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, Proposal, Who
from firstpaper.facts.schedule import Asset, Contribution, Debt
from firstpaper.law.figure import figure
from firstpaper.law.measures.cents import cents, shared
from firstpaper.law.measures.character import (
    Character,
    Code,
    Point,
    asset_character,
    asset_characters,
    debt_characters,
)
from firstpaper.law.measures.refused import Refused
from firstpaper.locale import _

NOTHING = Decimal(0)
OFTEN_BORROWED_ON = (AssetKind.REAL_ESTATE, AssetKind.VEHICLE, AssetKind.BUSINESS)
"""Kinds of which we do not take it that nothing is owed, unless somebody says so."""


class Line(NamedTuple):
    """One thing or debt in the sums. `value`, `owed` and `net` are None where they are not known.

    The net of a debt is below zero.
    """

    character: Character
    words: str
    value: Decimal | None
    owed: Decimal | None
    proposal: Proposal | None
    contributions: tuple[Contribution, ...] = ()

    @property
    def key(self) -> str:
        """Its place in the case, as "asset.2"."""
        return self.character.key

    @property
    def code(self) -> Code:
        """What it is taken to be."""
        return self.character.code

    @property
    def net(self) -> Decimal | None:
        """What is left of the value once what is owed on it is paid."""
        return None if self.value is None or self.owed is None else self.value - self.owed


def lines(case: Case, on: date) -> tuple[Line, ...]:
    """Everything listed, things first."""
    things = (_asset_line(case, one) for one in asset_characters(case, on))
    return (*things, *(_debt_line(case, one) for one in debt_characters(case, on)))


def _asset_line(case: Case, character: Character) -> Line:
    asset = case.asset[_number(character) - 1]
    return Line(
        character,
        known(asset.words) or "",
        known(asset.value),
        _owed_on(asset),
        known(asset.proposal),
        known(asset.contributions) or (),
    )


def _debt_line(case: Case, character: Character) -> Line:
    debt: Debt = case.debt[_number(character) - 1]
    return Line(character, known(debt.words) or "", NOTHING, known(debt.owed), known(debt.proposal))


def _owed_on(asset: Asset) -> Decimal | None:
    unsaid = asset.owed is None and known(asset.kind) not in OFTEN_BORROWED_ON
    return NOTHING if unsaid else known(asset.owed)


def _number(character: Character) -> int:
    return int(character.key.partition(".")[2])


class Total(NamedTuple):
    """The sums of some lines."""

    value: Decimal = NOTHING
    owed: Decimal = NOTHING

    @property
    def net(self) -> Decimal:
        """Value less what is owed."""
        return self.value - self.owed


class Totals(NamedTuple):
    """The sums by what things are taken to be. `left_out` are the lines without a known net."""

    by_code: Mapping[Code, Total]
    left_out: tuple[Line, ...]

    def of(self, *codes: Code) -> Total:
        """The sums of those codes together."""
        found = [self.by_code.get(code, Total()) for code in codes]
        return Total(sum((one.value for one in found), NOTHING), sum((one.owed for one in found), NOTHING))

    @property
    def community_estate(self) -> Total:
        """Community and quasi-community together, as far as is known (Fam. Code 63)."""
        return self.of(Code.COMMUNITY, Code.QUASI_COMMUNITY)


def totals(case: Case, on: date) -> Totals:
    """The sums over everything listed whose net is known."""
    return totals_of(lines(case, on))


def totals_of(listed: Iterable[Line]) -> Totals:
    """The sums over those lines."""
    sums: dict[Code, Total] = {}
    left_out = []
    for line in listed:
        if line.value is None or line.owed is None:
            left_out.append(line)
            continue
        before = sums.get(line.code, Total())
        sums[line.code] = Total(before.value + line.value, before.owed + line.owed)
    return Totals(sums, tuple(left_out))


def small_when_spouse_is_missing(estate: Total, on: date) -> bool:
    """Whether a court could give the whole to one where the other cannot be found (Fam. Code 2604)."""
    limit: int = figure("money.missing_spouse_limit", on).value
    return estate.net < limit


def value_day(on: date) -> str:
    """As of when a court values things, in plain words (Fam. Code 2552)."""
    return _(
        "A judge goes by what things are worth close to the trial. For another day, one of you must ask, "
        "with {days} days' notice and a good reason."
    ).format(days=figure("money.value_day_notice_days", on).value)


# Separate money put into a thing


class Claim(NamedTuple):
    """What one spouse put in, and what comes back."""

    by: Who
    put_in: Decimal
    back: Decimal


class Repayment(NamedTuple):
    """The claims for separate money put into one thing, and what is left of its net value after them.

    `not_traced` is what was put in without papers to show it; it does not count. `cut` says that the
    thing is worth less than the claims.
    """

    claims: tuple[Claim, ...]
    rest: Decimal
    not_traced: Decimal
    cite: str

    @property
    def cut(self) -> bool:
        """Whether not all of it comes back."""
        return any(claim.back < claim.put_in for claim in self.claims)


def repayment(net: Decimal, contributions: Sequence[Contribution], cite: str) -> Repayment:
    """What comes back of traced separate money, without interest and never more than the net value.

    Where the net value does not reach, it is shared in proportion. The section is silent on two claims;
    the trial court in In re Marriage of Walrath (1998) 17 Cal.4th 907 shared that way.
    """
    traced = [one for one in contributions if known(one.traced)]
    put_in = {
        who: sum((one.amount for one in traced if one.by is who), NOTHING)
        for who in (Who.PETITIONER, Who.RESPONDENT)
    }
    whole, available = sum(put_in.values(), NOTHING), max(net, NOTHING)
    back = list(put_in.values()) if whole <= available else shared(available, list(put_in.values()))
    claims = (
        Claim(who, amount, returned)
        for (who, amount), returned in zip(put_in.items(), back, strict=True)
        if amount
    )
    not_traced = sum((one.amount for one in contributions if not known(one.traced)), NOTHING)
    return Repayment(tuple(claims), available - min(whole, available), not_traced, cite)


def repayment_for(case: Case, number: int, on: date) -> Repayment | Refused:
    """The claims for separate money put into the thing with that number, for a simple case.

    Money followed on from one thing into another is left to a lawyer.
    """
    line = _asset_line(case, asset_character(case, number, on))
    if not line.contributions:
        return Refused((_("No separate money was told that went into it."),), (f"{line.key}.contributions",))
    if any(one.by is Who.BOTH for one in line.contributions):
        return Refused((_("Separate money is one person's own. Say whose each payment was."),))
    if line.net is None:
        missing = [name for name in ("value", "owed") if getattr(line, name) is None]
        return Refused(
            (_("What it is worth, and what is owed on it, must be known."),),
            tuple(f"{line.key}.{name}" for name in missing),
        )
    if line.code.shared:
        return repayment(line.net, line.contributions, "Fam. Code 2640(a)-(b)")
    if line.character.has(Point.MONEY_IN_THE_OTHERS_PROPERTY):
        from_the_other = [one for one in line.contributions if not _owned_by(one.by, line.code)]
        return repayment(line.net, from_the_other, "Fam. Code 2640(c)")
    return Refused((_("This rule does not cover a house that is part yours and part community."),))


def _owned_by(who: Who, code: Code) -> bool:
    return code is (Code.PETITIONER_SEPARATE if who is Who.PETITIONER else Code.RESPONDENT_SEPARATE)


# The filer's own proposal


class Award(NamedTuple):
    """What each takes of one line by the proposal, after separate money is paid back.

    `repaid` is separate money that goes to a spouse, from the other who takes the thing; below zero it
    goes to the respondent.
    """

    line: Line
    petitioner: Decimal
    respondent: Decimal
    repaid_to_petitioner: Decimal = NOTHING


class Equalizing(NamedTuple):
    """The payment that makes the filer's own proposal even, and what each ends with of the community.

    `payment` goes from `payer` to the other; `repaid_to_petitioner` is separate money paid back besides
    (below zero: to the respondent). `left_out` are community lines that could not be counted.
    """

    awards: tuple[Award, ...]
    petitioner: Decimal
    respondent: Decimal
    payment: Decimal
    payer: Who | None
    repaid_to_petitioner: Decimal
    left_out: tuple[Line, ...]

    @property
    def petitioner_ends_with(self) -> Decimal:
        """The petitioner's part of the community after the payment."""
        return self.petitioner - (self.payment if self.payer is Who.PETITIONER else -self.payment)

    @property
    def respondent_ends_with(self) -> Decimal:
        """The respondent's part of the community after the payment."""
        return self.respondent - (self.payment if self.payer is Who.RESPONDENT else -self.payment)


def equalizing(case: Case, on: date) -> Equalizing | Refused:
    """Half of the difference between what each takes of the community estate by the filer's proposal.

    Left out: separate, mixed and unknown things, things without a known value, and injury money, which
    is not divided in half (Fam. Code 2603). Refused where more is owed than owned (Fam. Code 2622(b)).
    """
    whole = [line for line in lines(case, on) if line.code.shared]
    community = [line for line in whole if not _is_injury_money(line)]
    if totals_of(whole).community_estate.net < NOTHING:
        return Refused(
            (
                _(
                    "You owe more together than you own. What is owed above that is not shared by half, but "
                    "by what is fair, and by what each of you can pay."
                ),
            ),
            cite=("Fam. Code 2622(b)",),
        )
    counted = [line for line in community if line.net is not None and line.proposal is not None]
    if not counted:
        return Refused(
            (_("No community thing or debt has both a known value and a proposal of who gets it."),)
        )
    awards = tuple(_award(line) for line in counted)
    petitioner = sum((award.petitioner for award in awards), NOTHING)
    respondent = sum((award.respondent for award in awards), NOTHING)
    even = cents((petitioner - respondent) / 2)
    return Equalizing(
        awards,
        petitioner,
        respondent,
        abs(even),
        (Who.PETITIONER if even > 0 else Who.RESPONDENT) if even else None,
        sum((award.repaid_to_petitioner for award in awards), NOTHING),
        tuple(line for line in community if line not in counted),
    )


def _award(line: Line) -> Award:
    assert line.net is not None
    back = {Who.PETITIONER: NOTHING, Who.RESPONDENT: NOTHING}
    rest = line.net
    claims = [one for one in line.contributions if one.by is not Who.BOTH]
    if claims and line.net > NOTHING:
        found = repayment(line.net, claims, "Fam. Code 2640(b)")
        rest, back = found.rest, back | {claim.by: claim.back for claim in found.claims}
    match line.proposal:
        case Proposal.PETITIONER:
            return Award(line, rest, NOTHING, -back[Who.RESPONDENT])
        case Proposal.RESPONDENT:
            return Award(line, NOTHING, rest, back[Who.PETITIONER])
    return Award(line, rest / 2, rest / 2)


def _is_injury_money(line: Line) -> bool:
    return line.character.has(Point.INJURY_MONEY)
