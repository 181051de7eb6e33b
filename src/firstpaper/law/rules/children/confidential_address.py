"""Addresses that must not stand on the paper about the children."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Danger
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.register import rule
from firstpaper.locale import _

DANGERS = "safety.dangers"
ALLEGED = frozenset({Danger.VIOLENCE, Danger.RESTRAINING_ORDER})


@rule(
    "Addresses of you and the children",
    cite="Fam. Code 3429(a)",
    since=date(2000, 1, 1),
    not_modelled="What counts as alleging violence, and asking a judge to seal a paper.",
)
def confidential_address(case: Case, on: date) -> Found | None:
    """Where violence or child abuse is alleged, an address the other side does not know may not be told.

    What the law says. With minor children, form FL-105 asks where they have lived for five years, and with
    whom. But "where there are allegations of domestic violence or child abuse", any address of the person
    who alleges it and of the child that is unknown to the other side is confidential. It may not be
    disclosed in the paper. The form has a box for that. Then write only the state.

    Two things must come together: the allegation, and an address that the other side does not know. An
    address that they know is not covered.

    The other side of it. The protection hangs on the allegation. California's law has no clause for
    somebody who is afraid but does not want to say why. If that is you, talk to a lawyer or the self-help
    center before you fill in the form, or use a Safe at Home address.

    An example. A mother left with two children and lives with her sister. The father does not know where.
    She alleges violence, marks the box, and writes only "California" for that home.

    What to do. Decide this before you write down any address on form FL-105.
    """
    told = set(known(case.safety.dangers) or ())
    if not told or not has_minor_children(case, on):
        return None
    if told & ALLEGED:
        return Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _(
                "You told us of violence or a restraining order. If you allege it, an address that the other "
                "side does not know must stay off form FL-105."
            ),
            _("Mark the box for that on FL-105 and write only the state. Get help with this form."),
            facts=(DANGERS,),
        )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "Form FL-105 asks where the children have lived. The law keeps an address off it only where "
            "violence or child abuse is alleged."
        ),
        _("If you do not want to allege it, talk to a lawyer or the hotline before you fill in the form."),
        facts=(DANGERS,),
    )
