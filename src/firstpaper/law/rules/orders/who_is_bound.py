"""Whom the orders in the summons bind, and from when."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import TAKING_PART, filed_on, joint, took_part
from firstpaper.law.measures.service import method, personally_served_on
from firstpaper.law.register import rule
from firstpaper.locale import _

FACTS = (
    "record.filed_on",
    "record.joint",
    "record.service.method",
    "record.service.served_on",
    "record.service.accepted_on",
    *TAKING_PART,
)


@rule(
    "Whom the orders in the summons bind",
    cite=(
        "Fam. Code 233(a)",
        "Fam. Code 721",
        "Fam. Code 1100",
        "Fam. Code 2040",
        "Fam. Code 2331(b)",
        "Fam. Code 2342.5(a)(2)",
        "Civ. Code 683.2(a)",
        "Prob. Code 6122(a)",
        "Cal. Rules of Court, rule 5.68(c)",
    ),
    since=date(2026, 1, 1),
    not_modelled="Orders a judge made in this case, and what breaking the orders costs.",
)
def who_is_bound(case: Case, on: date) -> Found | None:
    """The orders in the summons bind you from the filing, and the other side from service in person.

    What the orders say is in the summons: the children stay in the state, and property, insurance and
    transfers at death stay as they are, with exceptions. Both sides are under the same orders.

    When they begin. The law speaks of the filing, and then of service of the papers in person, or of a
    waiver and acceptance of service that the other side signed. It is commonly read to mean: you from the
    day you file, the other side from that service. Read strictly, they begin for both only then. Do not
    rely on that: act as if they bind you from the day you file.

    Served in another way. By mail, by leaving the papers, by newspaper: that is not service in person.
    Do not count on the orders binding the other side. The court rules say that taking part in the case
    is like service in person. If that is enough for these orders is not said.

    A joint petition. The joint summons carries the same orders. Filing counts as service on both of you,
    so count on being bound from that day, both of you.

    An example. You file on November 25, 2026, and the papers are handed over on December 1. You keep to
    the orders from November 25, the other side from December 1.

    What stays allowed. You may make or change a will, pay a lawyer, spend on daily needs, and set up a
    trust that holds nothing yet. You may end a right of survivorship if notice is filed and served first.
    The summons warns that what is owned in joint tenancy goes to the survivor if one of you dies before
    the end.

    Before the filing none of it binds. What then holds you back is another duty: the two of you owe each
    other fair dealing in money matters until the case is over (Fam. Code 721, 1100).

    What to do. Before you file, look at what you plan to sell, close, change or move. If you need an order
    that binds the other side at once, or you are not safe, ask for one of its own: form DV-100.
    """
    filed, served = filed_on(case, on), personally_served_on(case, on)
    if filed is None:
        return _before_filing(case)
    if joint(case):
        says = _("The orders in the joint summons bind you both. Count from the filing, {day}.")
        return _found(says.format(day=spell_date(filed)), {"both": filed}, certainty=Certainty.COURT)
    if served:
        says = _("The orders in the summons bind you both. For the other side, count from {day}.")
        return _found(says.format(day=spell_date(served)), {"petitioner": filed, "respondent": served})
    return _not_in_person(case, on, filed)


def _before_filing(case: Case) -> Found | None:
    """Nothing: signing.orders_read says what the orders do, unless both file together."""
    if not joint(case):
        return None
    says = _("Once you two file, count on the orders in the joint summons to bind you both.")
    return _found(
        says, {}, _("Read them before you file. Ask first about anything you plan to sell or change.")
    )


def _not_in_person(case: Case, on: date, filed: date) -> Found:
    dates = {"petitioner": filed}
    if took_part(case, on):
        return _found(
            _(
                "Act as if the orders bind you since {day}. The other side has taken part. The law does not "
                "say if that is enough to bind them too."
            ).format(day=spell_date(filed)),
            dates,
            _("If it matters now, ask the self-help center."),
            Weight.LOOK_AGAIN,
        )
    if method(case) is None:
        says = _("Act as if the orders bind you since {day}. They do not bind the other side yet.")
        return _found(
            says.format(day=spell_date(filed)), dates, _("Service in person is what binds the other side.")
        )
    return _found(
        _(
            "Act as if the orders bind you since {day}. The other side was not served in person as far as we "
            "know, so do not count on the orders binding them."
        ).format(day=spell_date(filed)),
        dates,
        _("If you need orders that bind them, have the papers handed over, or ask the court for an order."),
        Weight.LOOK_AGAIN,
    )


def _found(
    says: str,
    dates: dict[str, date],
    do: str = "",
    weight: Weight = Weight.GOOD_TO_KNOW,
    certainty: Certainty = Certainty.SECONDARY,
) -> Found:
    """That the petitioner is bound from the filing is the common reading, not the words of the section."""
    return Found(Outcome.MET, weight, says, do, facts=FACTS, dates=dates, certainty=certainty)
