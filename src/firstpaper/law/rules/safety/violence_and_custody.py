"""Violence and custody."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CustodySheet, CustodyTo, Danger, FoundViolent
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children, listed_children, unborn
from firstpaper.law.register import rule
from firstpaper.law.words import spaced
from firstpaper.locale import _

DANGERS = "safety.dangers"
SIGNS = frozenset({Danger.VIOLENCE, Danger.RESTRAINING_ORDER})


@rule(
    "Violence and custody",
    cite=("Fam. Code 3044(a)", "Fam. Code 3044(g)", "Fam. Code 3044(h)"),
    since=date(2026, 1, 1),
    not_modelled="Whether the presumption applies or is overcome. That takes a finding by a judge.",
)
def violence_and_custody(case: Case, on: date) -> Found | None:
    """Where a court finds violence in the last five years, it presumes that custody should not go to
    that person.

    What the law says. If a court finds that somebody who wants custody was violent in the last five
    years toward the other parent, the child or a sibling, it presumes that custody for that person is
    bad for the child. That covers legal and physical custody, sole and joint. The person can try to show
    otherwise. A conviction, or a finding by another court about the last five years, can be enough.

    It takes a finding. Saying so in the petition is not a finding. But where violence is alleged and
    custody is to be decided at a hearing, the court must decide first whether this rule applies, and it
    must give both parents a copy of the law before mediation.

    We do not work out whether it applies to you. We only point to it.

    Both sides of it. Asking for joint custody does not give up this rule, but a judge may ask why you
    asked for it. Asking for sole custody without telling why may look harsh. A lawyer or an advocate can
    help you to say it safely. If somebody has accused you, get a lawyer too.

    An example. A parent was convicted three years ago of hitting the other parent. That is within five
    years. The court must look at this before it gives that parent custody.
    """
    told = SIGNS & set(known(case.safety.dangers) or ())
    if not told or not (has_minor_children(case, on) or unborn(case)):
        return None
    says = _(
        "You told us of violence or a restraining order, and there are children. If a court finds violence "
        "in the last {years} years, it presumes that custody should not go to that person."
    ).format(years=figure("children.violence_presumption_years", on).value)
    if _asks_for_joint(case, on):
        says = _("{says} Your petition asks for joint custody.").format(says=says)
    says = spaced((says, _finding(case)))
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        says,
        spaced((_advice(), _watched_visits(case))),
        facts=(DANGERS, "custody.legal", "custody.physical", "custody.violence_found", "custody.supervised"),
    )


def _advice() -> str:
    return _(
        "We cannot say whether this rule applies. Talk to a lawyer or a violence advocate before you file."
    )


def _finding(case: Case) -> str:
    """What the filer told of a judge's finding: the rule turns on it."""
    found = known(case.custody.violence_found)
    if found in (None, FoundViolent.NOBODY):
        return ""
    if found is FoundViolent.RESPONDENT:
        return _("You told us of such a finding against the other side. Bring that order or judgment.")
    if found is FoundViolent.PETITIONER:
        return _("You told us of such a finding against you. Get a lawyer before you ask for custody.")
    return _("You told us of such a finding against both of you. Get a lawyer before you ask for custody.")


def _watched_visits(case: Case) -> str:
    """Where to ask for supervised visits: the petition's own line has no place for it."""
    if not known(case.custody.supervised):
        return ""
    if CustodySheet.FL_311 in (known(case.custody.sheets) or ()):
        return _("You ask for supervised visits: form FL-311 has a part for it.")
    return _("You ask for supervised visits. Form FL-311 has a part for it: add that form to the petition.")


def _asks_for_joint(case: Case, on: date) -> bool:
    shared = {known(case.custody.legal), known(case.custody.physical)}
    each = {wish for child in listed_children(case, on) for wish in (child.legal, child.physical)}
    return CustodyTo.JOINT in shared | each
