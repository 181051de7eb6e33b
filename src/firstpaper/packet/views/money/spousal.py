"""Support of a spouse: what a judge weighs, to prepare for; the half-length yardstick; how it is taxed."""

from collections.abc import Iterator

from firstpaper.counting import short_date
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.measures.child_support import limits
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.spousal_support import HalfLength, factors, half_length_limits
from firstpaper.locale import _, _n
from firstpaper.packet.reckoning import Reckoning
from firstpaper.packet.views.money.page import Trust, page
from firstpaper.packet.views.money.words import missing_words
from firstpaper.packet.views.sheet import Sheet


def sheets(found: Reckoning) -> Iterator[Sheet]:
    """One sheet to prepare with. It has no amount: a judge weighs that."""
    result = found.half_length
    yield page(
        "spousal-support",
        _("Prepare for spousal support"),
        Trust.PRIVATE,
        _("What a judge weighs, how long, and taxes."),
        {
            "no_amount": limits()[-1],
            "nullity": is_nullity(found.case),
            "refused": result if isinstance(result, Refused) else None,
            "missing": missing_words(found.case, result.missing) if isinstance(result, Refused) else (),
            "yardstick": _yardstick(result) if isinstance(result, HalfLength) else "",
            "yardstick_limits": half_length_limits(),
            "tax": found.tax,
            "tax_cite": "; ".join(found.tax.authority),
            "tax_sure": found.tax.certainty.confirmed,
            "on": short_date(found.on),
            "factors": factors(),
        },
    )


def _yardstick(found: HalfLength) -> str:
    months = _n("{count} month", "{count} months", found.months).format(count=found.months)
    if found.and_a_half:
        months = _("{months} and a half").format(months=months)
    return _("Your marriage lasted {span}. Half of that is {months}.").format(
        span=found.marriage, months=months
    )
