"""What spousal support does to income taxes. Words only: no tax is worked out."""

from datetime import date
from typing import NamedTuple

from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureValue, figure
from firstpaper.locale import _


class SupportTax(NamedTuple):
    """How an order or agreement of a day is taxed, in plain words."""

    federal: str
    california: str
    authority: tuple[str, ...]
    certainty: Certainty


def spousal_support_tax(signed_on: date) -> SupportTax:
    """For an order or agreement signed on that day.

    Raises FigureNotInForce for a day before 2019.
    """
    federal = figure("tax.spousal_support_federal", signed_on)
    california = figure("tax.spousal_support_california", signed_on)
    return SupportTax(
        _("Federal return: {how}").format(how=_how(federal)),
        _("California return: {how}").format(how=_how(california)),
        (federal.authority, california.authority),
        max(federal.certainty, california.certainty, key=list(Certainty).index),
    )


def _how(found: FigureValue) -> str:
    if found.value["payer_deducts"] and found.value["receiver_reports"]:
        return _("the one who pays takes it off their income, and the one who gets it adds it to theirs.")
    return _("the one who pays cannot take it off their income, and the one who gets it does not report it.")
