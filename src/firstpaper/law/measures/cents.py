"""Exact money: rounding to the cent, and sharing an amount so that the shares add up."""

from collections.abc import Sequence
from decimal import ROUND_DOWN, ROUND_HALF_UP, Decimal

CENT = Decimal("0.01")


def cents(amount: Decimal) -> Decimal:
    """The amount to the cent; half a cent goes away from zero."""
    return amount.quantize(CENT, ROUND_HALF_UP)


def shared(total: Decimal, weights: Sequence[Decimal]) -> tuple[Decimal, ...]:
    """The total in cents, shared in proportion to the weights, so that the shares add up to it.

    The cents that rounding down leaves over go one each to those who lost most by it. ValueError where
    there is nothing to go by.
    """
    whole = sum(weights, Decimal(0))
    if whole <= 0 or min(weights) < 0:
        raise ValueError("no proportion can be taken from these weights")
    exact = [total * weight / whole for weight in weights]
    down = [share.quantize(CENT, ROUND_DOWN) for share in exact]
    left = int((total - sum(down)) / CENT)
    losers = sorted(range(len(exact)), key=lambda place: down[place] - exact[place])[:left]
    return tuple(share + CENT if place in losers else share for place, share in enumerate(down))
