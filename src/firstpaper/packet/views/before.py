"""Before you file: the restraining orders, safety, and what filing starts."""

from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.counting import days_after
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.forms.when import is_amended_petition
from firstpaper.law.figure import FigureNotInForce, FigureValue, figure
from firstpaper.law.measures.children import concerns_children
from firstpaper.law.measures.record import filed_on
from firstpaper.law.measures.service import goes_as_a_later_paper, needs_an_order
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views import disclosure
from firstpaper.packet.views.headed import headed
from firstpaper.packet.views.sheet import Sheet

TITLE = "Before you file"


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The one page to read before signing."""
    begun, kind = filed_on(brief.case, brief.on), kind_of(brief.case)
    orders = _orders_of(begun or brief.on, brief.on)
    changes_on = days_after(orders.until, 1).day if orders.until else None
    children = concerns_children(brief.case, brief.on) is not False
    yield Sheet(
        template="before-you-file.html",
        title=_(TITLE),
        running=_(TITLE),
        purpose=_("Read this before you sign anything."),
        values={
            "brief": brief,
            "advice": headed(one for one in brief.advice if one not in brief.safety),
            "hotline": figure("help.domestic_violence_hotline", brief.on).value,
            "amended": is_amended_petition(brief.case, brief.on),
            "begun": begun,
            "children": children,
            "orders": tuple(_concerning(orders.value, children=children, on=brief.on)),
            "allowed": figure("restraining_orders.allowed", brief.on).value,
            "later": changes_on,
            "new_orders": _new_orders(orders.value, changes_on),
            "response_days": figure("response.days", brief.on).value,
            "disclosure_days": None if kind is Kind.NULLITY else figure("disclosure.days", brief.on).value,
            "missing": needs_an_order(brief.case, brief.on),
            "as_later_paper": goes_as_a_later_paper(brief.case, brief.on),
            "disclosure": disclosure.when(brief.case, brief.on),
            "waiting_months": figure("waiting.months", brief.on).value if kind is Kind.DISSOLUTION else None,
        },
    )


def _orders_of(issued: date, on: date) -> FigureValue:
    """The orders as on the day the summons was given out; as on the day `on` where that text was not read."""
    try:
        return figure("restraining_orders.text", issued)
    except FigureNotInForce:
        return figure("restraining_orders.text", on)


def _concerning(orders: Sequence[str], *, children: bool, on: date) -> Iterator[str]:
    """The orders that say something to this couple."""
    only_children = () if children else figure("restraining_orders.about_children", on).value
    return (order for order in orders if order not in only_children)


def _new_orders(now: Sequence[str], changes_on: date | None) -> tuple[str, ...]:
    """The orders whose words are new from the day of the change."""
    if changes_on is None:
        return ()
    return tuple(order for order in figure("restraining_orders.text", changes_on).value if order not in now)
