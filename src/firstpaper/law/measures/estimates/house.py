"""A house that one spouse bought before the wedding and that community money helped to pay for.

In re Marriage of Moore (1980) 28 Cal.3d 366 and In re Marriage of Marsden (1982) 130 Cal.App.3d 426: the
community gets back the loan principal it paid, and of the growth since the wedding the part that this
principal is of the price. The loan counts for the spouse who took it. Interest, tax, insurance and upkeep
never count. The community's part stands still at the separation, though it goes on sharing in the value
(In re Marriage of Mohler (2020) 47 Cal.App.5th 788).
"""

from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind
from firstpaper.facts.schedule import Asset, House
from firstpaper.law.measures.cents import cents
from firstpaper.law.measures.character import asset_character
from firstpaper.law.measures.refused import Refused
from firstpaper.locale import _

CITE = (
    "In re Marriage of Moore (1980) 28 Cal.3d 366",
    "In re Marriage of Marsden (1982) 130 Cal.App.3d 426",
)
_AMOUNTS = (
    "price",
    "down_payment",
    "principal_before",
    "principal_during",
    "principal_after",
    "value_at_wedding",
)


class Payments(NamedTuple):
    """What the opinions ask for. `now` is the value at the time of dividing."""

    price: Decimal
    down_payment: Decimal
    principal_before: Decimal
    principal_during: Decimal
    principal_after: Decimal
    value_at_wedding: Decimal
    now: Decimal

    @property
    def loan_left(self) -> Decimal:
        """What is left of the first loan once all that principal is paid."""
        paid = self.principal_before + self.principal_during + self.principal_after
        return self.price - self.down_payment - paid

    @property
    def equity(self) -> Decimal:
        """The value now, less what is left of the loan."""
        return self.now - self.loan_left

    @property
    def growth_before(self) -> Decimal:
        """From the price to the value at the wedding: all separate."""
        return self.value_at_wedding - self.price

    @property
    def growth(self) -> Decimal:
        """From the value at the wedding until now: shared."""
        return self.now - self.value_at_wedding


class HouseShare(NamedTuple):
    """The community's and the separate part of the equity; together they are the equity to the cent."""

    payments: Payments
    fraction: Fraction
    community: Decimal
    separate: Decimal

    @property
    def community_growth(self) -> Decimal:
        """The community's part of the growth since the wedding."""
        return self.community - self.payments.principal_during

    @property
    def stages(self) -> tuple[tuple[str, Decimal, Decimal], ...]:
        """What was separate and what community, at the buying, at the wedding, and now."""
        told = self.payments
        at_wedding = told.down_payment + told.principal_before + told.growth_before
        return (
            (_("when it was bought"), told.down_payment, Decimal(0)),
            (_("at the wedding"), at_wedding, Decimal(0)),
            (_("now"), self.separate, self.community),
        )


def house_share(payments: Payments) -> HouseShare:
    """The shares by the two opinions, for numbers that fit together."""
    fraction = Fraction(payments.principal_during) / Fraction(payments.price)
    exact = Fraction(payments.principal_during) + fraction * Fraction(payments.growth)
    community = cents(Decimal(exact.numerator) / Decimal(exact.denominator))
    return HouseShare(payments, fraction, community, payments.equity - community)


def house_share_for(case: Case, number: int, on: date) -> HouseShare | Refused:
    """The shares in the house with that number, or what stands in the way."""
    asset, key = case.asset[number - 1], f"asset.{number}"
    stands = tuple(_in_the_way(case, number, on))
    if stands:
        return Refused(stands, cite=CITE)
    missing = tuple(_missing(asset, key))
    if missing:
        return Refused((_("All of the numbers must be known. None may be guessed."),), missing, CITE)
    payments = _payments(asset)
    wrong = tuple(_do_not_fit(payments))
    return Refused(wrong, cite=CITE) if wrong else house_share(payments)


def _in_the_way(case: Case, number: int, on: date) -> Iterator[str]:
    asset = case.asset[number - 1]
    rows = {reason.row for reason in asset_character(case, number, on).reasons}
    if known(asset.kind) is not AssetKind.REAL_ESTATE or rows != {"own_but_community_paid"}:
        yield _(
            "It works only for a house that one of you bought before the wedding. It must still be in that "
            "name, and money of you both must have helped to pay for it."
        )
    if known(asset.house.refinanced):
        yield _("There was a new loan on it. Then it is no longer clear whose credit and money paid.")
    if known(asset.house.improved):
        yield _("It was built on or made better. Then growth and work must be told apart.")
    if known(asset.house.rented_out):
        yield _("It was rented out or used for business. Then the rent and the work count too.")
    if known(case.dates.back_together):
        yield _("You were apart and together again. Then there is more than one time to count.")


def _missing(asset: Asset, key: str) -> Iterator[str]:
    for name in (*_AMOUNTS, "refinanced", "improved", "rented_out"):
        if known(getattr(asset.house, name)) is None:
            yield f"{key}.house.{name}"
    if known(asset.value) is None:
        yield f"{key}.value"


def _payments(asset: Asset) -> Payments:
    told: House = asset.house
    amounts = {name: known(getattr(told, name)) or Decimal(0) for name in _AMOUNTS}
    return Payments(**amounts, now=known(asset.value) or Decimal(0))


def _do_not_fit(told: Payments) -> Iterator[str]:
    if told.price <= 0 or told.down_payment > told.price or told.loan_left < 0:
        yield _("The price, the down payment and the loan payments do not fit together. Please check them.")
    if told.growth_before < 0 or told.growth < 0:
        yield _("It lost value. The opinions are about growth, and do not say how a loss is shared.")
