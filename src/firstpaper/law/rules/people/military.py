"""The other side is in the armed forces."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Special
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import took_part
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "The other side is in the armed forces",
    cite=("50 U.S.C. 3931", "50 U.S.C. 3932(a)"),
    since=date(2015, 1, 1),
    not_modelled="How long a case is put off, and who counts as in service. We name this law from memory.",
)
def military(case: Case, on: date) -> Found | None:
    """A federal law protects people in the armed forces from a judgment by default.

    What it means for you. Before a judgment by default, the court wants a statement in writing: is the other
    side in military service or not, or could you not find out? If they are, the judge may name a lawyer
    for them and may put the case off.

    It does not stop you from filing. It also holds if you do not know: then say that, and say how you
    looked.

    An example. The other side is on a ship and does not answer. You cannot simply ask for a default. Ask
    for help first.

    We name the law from memory and have not read it again. The self-help center knows the form.
    """
    special = known(case.people.special) or ()
    if Special.OTHER_SIDE_IN_MILITARY not in special or took_part(case, on):
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("As far as we know, a federal law protects the other side from a judgment by default."),
        _("You can file. If they do not respond, get help before you ask for a default."),
        facts=("people.special",),
    )
