"""A home, a pension or a business."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import CommunityKind
from firstpaper.facts.shared_things import kinds_to_share
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.property_words import large_kinds
from firstpaper.law.register import rule
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

KINDS = ("property.community_kinds", "property.elsewhere_kinds")
HEAVY = {CommunityKind.HOME, CommunityKind.RETIREMENT, CommunityKind.BUSINESS}


@rule(
    "A home, a pension or a business",
    cite=("Fam. Code 2060(b)", "Fam. Code 2550", "Fam. Code 2640(b)"),
    since=date(2005, 1, 1),
    not_modelled="Shares, values, taxes, titles and loans.",
)
def real_estate_pension(case: Case, on: date) -> Found | None:
    """A home, a pension or a business is worth a talk with a lawyer before you sign anything about it.

    A home or land. Who paid the down payment, whose name is on the deed and on the loan, and what was
    paid since you parted all matter. A house can be part community and part separate. In the meantime
    neither of you may sell it or borrow against it without the other's written consent or the court's.

    A pension or retirement plan. What was earned at work during the marriage is community, even if only
    one of you worked and even if it is paid in twenty years. A court order does not bind most plans
    until the plan is brought into the case, which has its own forms. Missing this can cost more than
    the house.

    A business. Its value, its debts and who keeps it need somebody who knows.

    An example. A teacher has paid into the state plan for twelve years of a fifteen-year marriage. The
    spouse has a share in those years. Nothing is paid to the spouse until the plan has been joined and
    an order was made.

    What to do. List these things. Then ask a lawyer or the self-help center about each of them.
    """
    told = HEAVY & kinds_to_share(case)
    heavy = [words for kind, words in large_kinds().items() if kind in told]
    if not heavy:
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("You told us of {things}. A mistake there can cost more than the rest of the case.").format(
            things=in_a_row(heavy)
        ),
        _("Talk to a lawyer or the self-help center before you sign anything about it.")
        if CommunityKind.RETIREMENT not in told
        else _(
            "Talk to a lawyer or the self-help center before you sign anything about it. Most plans must be "
            "brought into the case before an order binds them."
        ),
        facts=KINDS,
    )
