"""Married and registered partners at once."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import (
    SPOUSES,
    Route,
    residence_route,
    same_sex_route_told,
    spouse_residence,
)
from firstpaper.law.register import rule
from firstpaper.locale import _

FACTS = ("matter.unions", "matter.kind")


@rule(
    "Married and registered: one case for both",
    cite=("Fam. Code 299(e)", "Fam. Code 2320"),
    since=date(2012, 1, 1),
    not_modelled="Which date each right runs from when the two unions began at different times.",
)
def married_and_registered(case: Case, on: date) -> Found | None:
    """Spouses who are also registered partners may end both in one case, but the marriage has its own test.

    What the law says. You may ask the court to end the partnership and the marriage in one case
    (Fam. Code 299(e)). The petition form has a box for each. Mark both, or one of the two unions
    goes on.

    The residence rule is different for the two. A partnership registered in California needs no
    time here. The marriage does: one of you must have lived here long enough, or the rule for
    same-sex couples who cannot divorce at home must fit. Having registered does not help the
    marriage half.

    The section speaks of ending both by dissolution. It does not mention legal separation or
    nullity.

    An example. A couple registered in California in 2005 and married in 2013. Both moved to Texas.
    The partnership can be ended here today, but the marriage has to be ended in Texas or after one
    of them has lived here again long enough.

    What to do. If the marriage half has to wait, ask a lawyer whether to wait and end both at once.
    """
    unions = known(case.matter.unions) or ()
    if Union.MARRIAGE not in unions or len(unions) == 1:
        return None
    kind = kind_of(case)
    if kind is None:
        return None
    if kind is not Kind.DISSOLUTION:
        return Found(
            outcome=Outcome.FOR_A_LAWYER,
            weight=Weight.GET_ADVICE,
            says=_(
                "You are married and registered partners. The law lets you end both in one divorce case. "
                "It does not say so for a legal separation or a nullity."
            ),
            do=_("Ask the self-help center or a lawyer before you file."),
            facts=FACTS,
        )
    return _dissolution(case, on)


def _dissolution(case: Case, on: date) -> Found:
    both = _("You are married and registered partners. One case can end both.")
    if residence_route(case, on) is not Route.NONE:
        mark = _("Mark both unions on the petition.")
        return Found(Outcome.MET, Weight.GOOD_TO_KNOW, both, mark, facts=FACTS)
    if same_sex_route_told(case):
        return Found(
            outcome=Outcome.FOR_A_LAWYER,
            weight=Weight.GET_ADVICE,
            says=both + " " + _("But a lawyer has to say if the marriage can be ended here."),
            do=_("Ask a lawyer before you pay a fee."),
            facts=FACTS,
        )
    if all(spouse_residence(case, who, on).fails for who in SPOUSES):
        return Found(
            outcome=Outcome.NOT_MET,
            weight=Weight.GET_ADVICE,
            says=both + " " + _("But the marriage cannot be ended here yet: neither of you has the time."),
            do=_("Ask a lawyer if you should wait and end both at once."),
            facts=FACTS,
        )
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.LOOK_AGAIN,
        says=both + " " + _("For the marriage we still need to know how long each of you has lived here."),
        do=_("Answer the questions on where each of you lives, and since when."),
        facts=FACTS,
    )
