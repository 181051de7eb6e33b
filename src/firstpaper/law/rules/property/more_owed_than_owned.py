"""More owed together than owned."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.money import in_dollars
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.sums import totals
from firstpaper.law.register import rule
from firstpaper.law.rules.property._listed import listed
from firstpaper.locale import _


@rule(
    "More owed together than owned",
    cite=("Fam. Code 2622(b)",),
    since=date(2020, 1, 1),
    certainty=Certainty.COURT,
    not_modelled="Who can pay, and what a judge finds fair. Bankruptcy.",
)
def more_owed_than_owned(case: Case, on: date) -> Found | None:
    """Where you owe more together than you own, what is above that is not shared in half.

    What the law says. Debts of the marriage are shared like property. But if they come to more than all the
    community property, the judge gives the rest of the debts to either of you by what is fair. One thing
    that counts is who can pay.

    How we count. All community things and debts in your list whose amounts we know. What is worth something
    that nobody told us, such as a pension, is not in the sum, so the picture may be too dark.

    An example. You own a car worth $4,000 and owe $19,000 on cards. $4,000 of the debt is covered. The other
    $15,000 is shared by what is fair. If one of you has good pay and the other has none, the first may get
    most of it.

    What to do. Gather what shows what each of you can pay. Before you think of bankruptcy, ask a lawyer: it
    changes what a family court can do.
    """
    things = listed(case, on)
    sums = totals(case, on)
    estate, without_value = sums.community_estate, any(line.code.shared for line in sums.left_out)
    if not things or estate.net >= 0:
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.LOOK_AGAIN if without_value else Weight.GET_ADVICE,
        _(
            "By the amounts you gave, you two owe {amount} more together than you own. That part is not "
            "shared in half, but by what is fair and who can pay."
        ).format(amount=in_dollars(-estate.net)),
        _(
            "Check that nothing of worth is missing from your list. Then ask a lawyer or the self-help "
            "center."
        ),
        facts=tuple(f"{one.key}.{'owed' if one.key.startswith('debt') else 'value'}" for one in things),
        values={"property.community_net": str(estate.net)},
    )
