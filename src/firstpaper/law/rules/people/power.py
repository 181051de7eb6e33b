"""Whether a court here has power over the other side."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Kind, Lives
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import took_part
from firstpaper.law.register import rule
from firstpaper.law.words import help_first, spaced
from firstpaper.locale import _

EVER, LIVES = "respondent.ever_here", "residence.respondent.lives"


@rule(
    "Power of the court over the other side",
    cite=(
        "Code Civ. Proc. 410.10",
        "Code Civ. Proc. 410.50(a)",
        "Code Civ. Proc. 418.10",
        "Fam. Code 5700.201(a)",
    ),
    since=date(2016, 1, 1),
    not_modelled=(
        "Whether some tie to California is enough. No opinion was read for it; a lawyer has to look."
    ),
)
def power(case: Case, on: date) -> Found | None:
    """A court can order money only from somebody over whom it has power; ending the marriage needs less.

    Three different powers. To end the marriage, it is enough that one of you has lived here for the time
    the law asks. Who has the children is decided where the children have lived. For money it is another
    matter: support, fees, debts, and property outside California need power over the person.

    What gives that power. The papers are handed over in California. Or the other side takes part in the
    case: a response is enough, if they did not first object. For child support, there are more ties: that
    person lived here with the child, or the child is here because of what that person did or told you to.

    What an order without it is worth. It can be set aside, even years later.

    An example. You came to Fresno alone and your husband has never left Ohio. The court can end the
    marriage. An order that he pay you support may not hold, unless he responds.

    What to do. Ask a lawyer before you pay the fee. It may be better to ask for support where the other
    side lives. For child support, the county's child support agency does that at no cost.
    """
    if known(case.residence.respondent.lives) not in (Lives.OTHER_STATE, Lives.ABROAD) or took_part(case, on):
        return None
    told = case.respondent.ever_here
    if told is None or known(told) is True:
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        spaced((_where(case), _still(case), _may_not_hold())),
        _(
            "Get advice before you pay the fee. It can change if the papers are handed over in California, "
            "or if the other side responds. {help}"
        ).format(help=help_first()),
        facts=(LIVES, EVER),
    )


def _where(case: Case) -> str:
    if case.respondent.ever_here is DONT_KNOW:
        return _("The other side lives outside California, and you do not know if they ever lived here.")
    return _("The other side lives outside California and, as far as you know, never lived here.")


def _still(case: Case) -> str:
    """What a court can do without that power."""
    if kind_of(case) is Kind.DISSOLUTION:
        return _("A judge can end the marriage or partnership all the same.")
    return _("A judge can decide about the marriage or partnership itself all the same.")


def _may_not_hold() -> str:
    return _(
        "But without ties to California, some orders may not hold: to pay support, fees or debts, or to "
        "divide what lies elsewhere."
    )
