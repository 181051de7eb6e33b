"""What was gained in the marriage while living outside California."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityHow
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _

KINDS, HOW = "property.elsewhere_kinds", "property.community_how"


@rule(
    "Property from outside California",
    cite=("Fam. Code 125", "Fam. Code 2550", "Fam. Code 2660"),
    since=date(1994, 1, 1),
    not_modelled="Whether somebody's lasting home truly was elsewhere, and what a court there has decided.",
)
def quasi_community(case: Case, on: date) -> Found | None:
    """What either gained in the marriage while living elsewhere is shared here like community property.

    What the law says. Property gained while somebody had their lasting home in another state or country is
    called quasi-community, if it would have been community property here. It does not matter where the
    thing is. When the marriage ends, the court shares it the same way.

    Land in another state. The court first tries to divide the rest so that nobody's name on that land has to
    change. Else it can order a deed to be signed, or money to be paid.

    The petition. Item 10 is for both kinds: community and quasi-community. So name it there.

    An example. You married in Texas, bought a truck there, and moved to Fresno six years later. The truck
    goes into item 10.
    """
    kinds = known(case.property.elsewhere_kinds)
    if not kinds:
        return None
    if known(case.property.community_how) is CommunityHow.NONE:
        return Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _(
                "The petition would say that there is nothing to share, but you told us of things from when"
                " one of you lived outside California. The court shares them too."
            ),
            _("Look at both answers again. If you are not sure of the full list, you can say so instead."),
            facts=(KINDS, HOW),
            mended_by=(KINDS, HOW),
        )
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        _(
            "What either of you gained while living outside California is shared like the rest. The law "
            "calls it quasi-community property."
        ),
        _("See that item 10 names it. Get advice if there is land or a pension in another state or country."),
        facts=(KINDS, HOW),
    )
