"""A debt that the proposal gives to somebody who did not sign it alone."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Proposal, Who
from firstpaper.facts.schedule import Debt
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.property_words import thing_words
from firstpaper.law.register import rule
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

AWAY_FROM = {Proposal.PETITIONER: Who.RESPONDENT, Proposal.RESPONDENT: Who.PETITIONER}


@rule(
    "The lender is not bound by who gets the debt",
    cite=("Fam. Code 916(a)-(b)",),
    since=date(1994, 1, 1),
    not_modelled="Liens, new loans in one name, and what a lender agrees to.",
)
def lender(case: Case, on: date) -> Found | None:
    """Whoever gets a debt in the divorce, the one who signed for it still owes the lender.

    What the law says. A court can tell one of you to pay a debt. It cannot take the other's name off it. If
    you signed, or took it on, the lender can still come to you, even if the judge gave the debt to the
    other. What you then pay you can ask back from the other, with interest and lawyer's fees.

    Both sides of it. Giving a card to the one who used it is fair between you two. But if that one stops
    paying, it is your credit too.

    An example. You both signed for a car loan, and the proposal gives car and loan to the other side. They
    miss three payments. The bank can collect from you.

    What to do. Ask the lender about a new loan in one name, or sell and pay it off. Close joint cards, or
    have them frozen. Look first at the orders in the summons, which bind you.
    """
    keys = [f"debt.{number}" for number, debt in enumerate(case.debt, 1) if _still_owed(debt)]
    if not keys:
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("You propose who pays {debts}. The lender can still collect from each one who signed.").format(
            debts=in_a_row([thing_words(case, key) for key in keys])
        ),
        _("Ask for a new loan in one name, or pay it off, so that nobody is left with the other's debt."),
        facts=tuple(f"{key}.{name}" for key in keys for name in ("name", "by", "proposal")),
    )


def _still_owed(debt: Debt) -> bool:
    """Whether the proposal takes the debt away from one who owes it to the lender."""
    proposal, owing = known(debt.proposal), {known(debt.name), known(debt.by)}
    if proposal is None or known(debt.owed) == 0:
        return False
    if Who.BOTH in owing:
        return True
    return proposal is Proposal.HALF_EACH or AWAY_FROM[proposal] in owing
