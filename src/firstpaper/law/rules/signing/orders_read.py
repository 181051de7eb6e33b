"""The orders in the summons, read before signing."""

from datetime import date

from firstpaper.counting import day_after, spell_date
from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.law.figure import FigureValue, figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _

KEY = "signing.orders_read"
NEAR_DAYS = 60
"""How long before a change of the orders we speak of both texts. Ours, not the law's."""


@rule(
    "The orders in the summons, read before signing",
    cite=("Fam. Code 2040(a)", "Fam. Code 233(a)", "Fam. Code 212"),
    since=date(2026, 1, 1),
    not_modelled="Exceptions, and what a judge would call normal spending.",
)
def orders_read(case: Case, on: date) -> Found:
    """By signing the petition you say that you have read the orders in the summons, and that they bind
    you.

    What the law says. The summons carries orders for both spouses. They forbid four things: taking the
    children out of the state, moving or hiding property, touching insurance, and changing what passes at
    death outside a will. Some may be done with the other's written consent. Insurance may not: ask the
    court first.

    When they bind. You, once the petition is filed and the summons is issued. The other side, once the
    papers are handed to them in person, or once they sign to accept them. The orders last until the case
    ends or a judge changes them. Breaking them on purpose can be a crime.

    Which text. The day on which the clerk issues the summons decides. From January 1, 2027 the orders
    also forbid you to let insurance lapse because a bill was not paid, or to fail to renew it.

    An example. On the morning of filing a husband cashes in a life insurance policy. In the afternoon
    the petition is filed. From then on he may not cash in another one.

    You sign under penalty of perjury, so read the orders first: page 2 of form FL-110.

    If you are about to leave the state with your children to be safe, talk to a lawyer or the hotline
    before you file.
    """
    told = known(case.signing.orders_read)
    orders = figure("restraining_orders.text", on)
    if told:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("You have read the orders in the summons. They bind you since the first petition was filed.")
            if known(case.matter.amended)
            else _("You have read the orders in the summons. They bind you once you file."),
            _which_text(orders, on),
            facts=(KEY,),
            steps=tuple(_(order) for order in orders.value),
        )
    unread = told is False or case.signing.orders_read is DONT_KNOW
    return Found(
        Outcome.NOT_MET if unread else Outcome.NEED_TO_KNOW,
        Weight.STOP if unread else Weight.LOOK_AGAIN,
        _("You have not read the orders in the summons yet. By signing the petition you say that you have.")
        if unread
        else _("Before you sign, you need to have read the orders in the summons."),
        _("Read page 2 of form FL-110 before you sign. {which}").format(which=_which_text(orders, on)),
        facts=(KEY,),
        steps=tuple(_(order) for order in orders.value),
        mended_by=(KEY,),
    )


def _which_text(orders: FigureValue, on: date) -> str:
    if orders.until is None or orders.until > day_after(on, NEAR_DAYS):
        return _("Keep a copy of them where you see it.")
    return _(
        "A summons issued on {day} or later carries a new text, with more on insurance. Read the one you "
        "were given."
    ).format(day=spell_date(day_after(orders.until)))
