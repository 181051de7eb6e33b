"""How every money page is made: at its foot it says that it is private, and how far to trust it."""

from collections.abc import Mapping
from enum import StrEnum

from firstpaper.locale import _
from firstpaper.packet.pictures.shares import Shares
from firstpaper.packet.views.sheet import Sheet


class Trust(StrEnum):
    """How far a page can be trusted: what stands at its foot."""

    PRIVATE = "private"
    PRESUMED = "presumed"
    ARITHMETIC = "arithmetic"
    ESTIMATE = "estimate"
    NOT_CERTIFIED = "not_certified"


def page(
    template: str,
    title: str,
    trust: Trust,
    purpose: str,
    values: Mapping[str, object],
    *,
    pictures: Mapping[str, Shares] | None = None,
) -> Sheet:
    """One sheet of the money pages."""
    return Sheet(
        template=f"money-{template}.html",
        title=title,
        running=_feet()[trust],
        purpose=purpose,
        values={"title": title, **values},
        pictures=pictures or {},
    )


def _feet() -> Mapping[Trust, str]:
    return {
        Trust.PRIVATE: _("Private: not for the court."),
        Trust.PRESUMED: _("Private: not for the court. Where the law starts; a judge decides."),
        Trust.ARITHMETIC: _("Private: not for the court. Sums of the numbers you gave; no valuation."),
        Trust.ESTIMATE: _("Private: not for the court. An estimate: show it to a lawyer."),
        Trust.NOT_CERTIFIED: _("Private: not for the court. An estimate by software that is not certified."),
    }
