"""A retirement plan among the listed things."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityKind
from firstpaper.facts.shared_things import kinds_to_share
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.character import Character
from firstpaper.law.measures.character.looks import PLANS
from firstpaper.law.register import rule
from firstpaper.law.rules.property._listed import listed, names
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row


@rule(
    "A retirement plan must be part of the case",
    cite=("Fam. Code 2060(b)", "Fam. Code 2610(a)"),
    since=date(2020, 1, 1),
    not_modelled="Which plans need no joining, federal and military plans, and the order to the plan itself.",
)
def retirement_joinder(case: Case, on: date) -> Found | None:
    """An order about a retirement plan does not bind the plan until it is made a part of the case.

    What the law says. A court shares out a plan so that each of you gets the whole of your share, with what
    is paid at death too. But the order cannot be enforced against most plans unless the plan was joined.
    Joining has forms of its own, and the plan gets copies.

    Why early. If the one who earned it retires or dies first, or takes the money out, it can be too late.

    How it is shared. A pension that grows with the years of work is shared by time: the months in the
    marriage, of all the months that earned it. A plan that is an account is shared by its balances.

    An example. A teacher has a pension from 24 years of work, 14 of them in the marriage. The community's
    part is 14 of 24, and each spouse has half of that. The part gets smaller while the teacher goes on
    working, and the pension gets larger.

    What to do. Find the plan's full name and address and its latest statement. Ask the self-help center for
    the forms to join it. Do not take money out of it or move it: the orders in the summons forbid that.
    """
    if CommunityKind.RETIREMENT in kinds_to_share(case):
        return None  # told already, with the other heavy things, by property.real_estate_pension
    plans = tuple(one for one in listed(case, on) if _is_plan(case, one) and not one.code.separate)
    if not plans:
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("You listed {plans}. No order binds most plans until the plan is made part of the case.").format(
            plans=in_a_row(names(case, plans))
        ),
        _("Find the plan's full name and its latest statement. Ask for the forms to join it."),
        facts=tuple(f"{one.key}.kind" for one in plans),
    )


def _is_plan(case: Case, one: Character) -> bool:
    return known(case.fact(f"{one.key}.kind")) in PLANS
