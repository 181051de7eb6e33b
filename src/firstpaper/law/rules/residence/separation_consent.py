"""A legal separation needs both, once the other side takes part."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import TAKING_PART, joint, took_part
from firstpaper.law.register import rule
from firstpaper.locale import _

FACTS = (
    "matter.kind",
    *TAKING_PART,
    "record.joint",
)


@rule(
    "A legal separation needs the consent of both",
    cite="Fam. Code 2345",
    since=date(1994, 1, 1),
    not_modelled="What counts as taking part in the case (a general appearance).",
)
def separation_consent(case: Case, on: date) -> Found | None:
    """A judge can grant a legal separation only if both agree, unless the other side never takes part.

    What the law says (Fam. Code 2345). If the other side takes part in the case, no judgment of
    legal separation can be given unless both of you consent. If the other side never takes part, the
    judge can grant it on your petition alone.

    What that means. The other side can answer and ask for a divorce instead. If one of you has lived
    here long enough, the case can then end in a divorce, which you cannot stop.

    An example. You ask for a legal separation to keep health insurance. The other side answers and
    asks for a divorce. The judge can no longer grant the separation over that.

    What to do. Think about what the other side will do. If it is safe, ask them. A legal separation
    does not keep either of you from asking for a divorce later (Fam. Code 2347).
    """
    if kind_of(case) is not Kind.LEGAL_SEPARATION:
        return None
    both = _both_take_part(case, on)
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=both
        or _(
            "With a legal separation you two stay married, or partners. "
            "A judge can grant it only if you both agree, or if the other side never answers. "
            "If they answer and ask for a divorce, it can become a divorce case."
        ),
        do=_("Ask the self-help center or a lawyer what to do if the other side wants a divorce.")
        if both
        else _("Think about what the other side will do. Ask the self-help center if you are not sure."),
        facts=FACTS,
    )


def _both_take_part(case: Case, on: date) -> str:
    """That the other side takes part, so that the consent of both is needed; empty where it does not."""
    if joint(case) and took_part(case, on):
        return _("You two filed together. A judge can grant a legal separation only if you both agree.")
    if took_part(case, on):
        return _("The other side has answered. A judge can grant a legal separation only if you both agree.")
    return ""
