"""Saying that a divorce is meant later."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import may_state_intent
from firstpaper.law.register import rule
from firstpaper.locale import _

INTENT, KIND, OTHER = "requests.intends_to_amend", "matter.kind", "requests.other"


@rule(
    "Saying that a divorce is meant later",
    cite="Fam. Code 2321(b)",
    since=date(2012, 1, 1),
    not_modelled="How a court wants the statement worded; the section leaves that to the rules of court.",
)
def intent_to_amend(case: Case, on: date) -> Found | None:
    """A petition for legal separation can say that it will ask for a divorce once residence allows.

    What the law says. If neither of you had lived here long enough when the separation was filed, either
    can later amend to ask for a divorce. If the first petition said that this was meant, and the other
    side has not taken part in the case, notice of the change may go by mail. Without that statement the
    new papers have to be served like the first ones.

    What we do. If you tell us that you mean to ask for a divorce later, we put a short statement under
    "other requests" in the petition. If you say no, or do not know, we write nothing: the statement says
    what you intend, and only you know that.

    If one of you has lived here long enough already, or the petition is an amended one, we write nothing
    either. The section is only for a first petition by a couple in which neither has the time.

    Both sides of it. Saying so makes the change easier. It also tells the other side now that a divorce
    is coming.

    An example. You came to California in July and file for separation in August. The petition says that
    you will amend it. In the new year you do, and mail the notice.

    What to do. Read the statement before you sign. The page residence.separation_first tells more.
    """
    if not known(case.requests.intends_to_amend) or not may_state_intent(case, on):
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _('Under "other requests" your petition will say that you mean to ask for a divorce later.'),
        _("Read that statement before you sign. The other side will read it too."),
        facts=(INTENT, KIND, OTHER),
    )
