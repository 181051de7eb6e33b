"""Before you file: the restraining orders, safety, and what filing starts."""

from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.counting import Counted, days_after
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.law.figure import figure
from firstpaper.law.measures.court import holidays_only
from firstpaper.law.measures.record import begins_on, filed_on
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.headed import headed
from firstpaper.packet.views.sheet import Sheet

TITLE = "Before you file"


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The one page to read before signing."""
    orders = figure("restraining_orders.text", brief.on)
    changes_on = days_after(orders.until, 1).day if orders.until else None
    kind = kind_of(brief.case)
    disclosure = figure("disclosure.days", brief.on).value if kind is not Kind.NULLITY else None
    yield Sheet(
        template="before-you-file.html",
        title=_(TITLE),
        running=_(TITLE),
        purpose=_("Read this before you sign anything."),
        values={
            "brief": brief,
            "advice": headed(one for one in brief.advice if one not in brief.safety),
            "hotline": figure("help.domestic_violence_hotline", brief.on).value,
            "orders": orders,
            "allowed": figure("restraining_orders.allowed", brief.on).value,
            "later": changes_on,
            "new_orders": _new_orders(orders.value, changes_on),
            "response_days": figure("response.days", brief.on).value,
            "disclosure_days": disclosure,
            "begun": filed_on(brief.case, brief.on),
            "disclosure_due": _due(begins_on(brief.case, brief.on), disclosure),
            "waiting_months": figure("waiting.months", brief.on).value if kind is Kind.DISSOLUTION else None,
        },
    )


def _due(filed: date | None, days: int | None) -> Counted | None:
    """The last day from the filing that opens the case, moved off court holidays (Code Civ. Proc. 12a)."""
    if filed is None or days is None:
        return None
    return holidays_only().roll_forward(days_after(filed, days).day)


def _new_orders(now: Sequence[str], changes_on: date | None) -> tuple[str, ...]:
    """The orders whose words are new from the day of the change."""
    if changes_on is None:
        return ()
    return tuple(order for order in figure("restraining_orders.text", changes_on).value if order not in now)
