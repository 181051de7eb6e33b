"""Community property that is not yet known."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityHow
from firstpaper.facts.shared_things import kinds_to_share
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.service import cannot_be_found
from firstpaper.law.register import rule
from firstpaper.locale import _

HOW = "property.community_how"
KINDS = ("property.community_kinds", "property.elsewhere_kinds")


@rule(
    "Community property that is not yet known",
    cite=("Code Civ. Proc. 580(a)", "Fam. Code 2104", "common practice"),
    since=date(2020, 1, 1),
    certainty=Certainty.SECONDARY,
    not_modelled="What a given court accepts in a default case.",
)
def not_yet_known(case: Case, on: date) -> Found | None:
    """Saying that the full list is not yet known keeps the petition short, and has a price if nobody answers.

    The one side. Many petitions say that the nature and extent of the property is not yet known and will
    be told later. It is quick. It ties you to no list and tells the other side nothing yet. Both of you
    must exchange full lists early in a divorce or a legal separation anyway.

    The other side. If the respondent never answers, the judge can decide only about what the petition told
    them. Then you have to amend the petition, list the property, and have it served again. That can cost
    months.

    So the question is how likely an answer is, and how much there is to divide. We do not choose for you.

    An example. The other side has moved away and does not pick up the phone. There is a house. A list with
    the house in it can save a second round. If the other side has a lawyer already, the short way is
    common.

    What to do. If you choose the short way, start your full list now.
    """
    if known(case.property.community_how) is not CommunityHow.NOT_YET_KNOWN:
        return None
    says = _(
        "Your petition says that the full list of community property is not known yet. That has two sides."
    )
    if kinds_to_share(case):
        says = _("{says} You told us of some kinds already, and they could be listed.").format(says=says)
    return Found(
        Outcome.MET,
        _weight(case),
        says,
        _(
            "It ties you to nothing now. But if the other side never answers, you may have to change the "
            "petition, list everything, and serve it again."
        ),
        facts=(HOW, *KINDS, "people.special"),
    )


def _weight(case: Case) -> Weight:
    """Heavier where there are things to list, and most where nobody will answer for the other side."""
    if not kinds_to_share(case):
        return Weight.GOOD_TO_KNOW
    return Weight.GET_ADVICE if cannot_be_found(case) else Weight.LOOK_AGAIN
