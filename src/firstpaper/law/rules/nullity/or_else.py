"""A nullity, or else a divorce."""

import re
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

WORDS = "requests.other"
_DIVORCE = re.compile(r"\b(?:divorce|dissolution|dissolve|divorcio|legal separation)\b", re.IGNORECASE)


@rule(
    "A nullity, or else a divorce",
    cite="Cal. Rules of Court, rule 5.60(b)",
    since=date(2025, 1, 1),
    not_modelled="How a petition shows both. This program writes petitions for one kind of case only.",
)
def or_else(case: Case, on: date) -> Found | None:
    """A petition may ask for a nullity and, in case that is refused, for a divorce, if it shows so.

    What the law says. You may ask for one kind of case, or else for another. The petition itself has to show
    it. A sentence on the line for other requests may not be enough: the top, the grounds and what is asked
    for belong together.

    A divorce has conditions of its own. One of you must have lived here long enough, and a reason for the
    divorce has to be given.

    An example. She asks for a nullity for fraud. If the judge does not find fraud, she wants a divorce. She
    asks the self-help center how her petition shows both.
    """
    if not is_nullity(case) or not _DIVORCE.search(known(case.requests.other) or ""):
        return None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "You ask for a nullity, and your own words speak of a divorce or a separation. You may ask for "
            "one or else the other, but the whole petition must show it. This one does not."
        ),
        _("Ask how to show it before you sign. {help}").format(help=help_first()),
        facts=("matter.kind", WORDS),
    )
