"""A child who is not yet born."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.measures.children import unborn as told_of_unborn
from firstpaper.law.register import rule
from firstpaper.locale import _

FAMILY = "children.family"


@rule(
    "A child who is not yet born",
    cite=("Fam. Code 2010(c)", "Fam. Code 7540(a)", "Cal. Rules of Court, rule 5.52(a)"),
    since=date(2020, 1, 1),
    not_modelled="Who the parents of the child will be in law.",
)
def unborn(case: Case, on: date) -> Found | None:
    """A child on the way is marked on the petition, and orders can be made after the birth.

    The petition has a box for a child who is not yet born. Mark it, and do not mark that there are no
    minor children. There is no row to fill: the child has no name and no birth date yet. Once the child
    is born the court can decide on custody and support in the same case.

    Example: no other children, and a baby due in March. Mark the box for the unborn child, leave the
    rows empty, and leave "no minor children" empty.

    With minor children the petition needs the declaration on where they have lived (form FL-105). For
    an unborn child there is nothing to tell yet, and courts may differ. Some want the form after the
    birth, some want one now that says so. Ask the clerk.

    If you are afraid of the other parent, the safety pages come first.
    """
    if not told_of_unborn(case):
        return None
    if has_minor_children(case, on):
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _(
                "You have a child on the way. Mark the box for a child not yet born, besides the list of "
                "children."
            ),
            facts=(FAMILY,),
        )
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        _(
            "Your only child together is not yet born. Mark the box for a child not yet born, leave the rows "
            "empty, and do not mark that there are no minor children."
        ),
        _("Ask the clerk whether the court wants form FL-105 now or after the birth."),
        facts=(FAMILY,),
    )
