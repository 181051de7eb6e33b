"""A debt, or a loan on a thing, that the proposal gives to somebody who did not sign it alone."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Proposal, TitleForm, Who
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.property_words import thing_words
from firstpaper.law.register import rule
from firstpaper.locale import _, _n
from firstpaper.locale.rows import in_a_row

ON_THE_PAPER = {
    TitleForm.PETITIONER: Who.PETITIONER,
    TitleForm.RESPONDENT: Who.RESPONDENT,
    TitleForm.JOINT: Who.BOTH,
    TitleForm.OWN_TRUST: Who.BOTH,
}
AWAY_FROM = {Proposal.PETITIONER: Who.RESPONDENT, Proposal.RESPONDENT: Who.PETITIONER}


@rule(
    "The lender is not bound by who gets the debt",
    cite=("Fam. Code 916(a)-(b)",),
    since=date(1994, 1, 1),
    not_modelled=(
        "Liens, home loans for which a lender may take no more than the home, new loans in one name, and "
        "what a lender agrees to."
    ),
)
def lender(case: Case, on: date) -> list[Found]:
    """Whoever gets a debt in the divorce, the one who signed for it still owes the lender.

    What the law says. A court can tell one of you to pay a debt. It cannot take the other's name off it. If
    you signed, or took it on, the lender can still come to you, even if the judge gave the debt to the
    other. What you then pay you can ask back from the other, with interest and lawyer's fees.

    Both sides of it. Giving a card to the one who used it is fair between you two. But if that one stops
    paying, it is your credit too.

    An example. You both signed for a car loan, and the proposal gives car and loan to the other side. They
    miss three payments. The bank can collect from you.

    A house with its loan. The same goes for a loan that is told with its house or car. Who gets the house
    also gets the loan between you two, but whoever signed for it still owes it. And the house stays liable:
    if nobody pays, the lender can take it. We do not know who signed. So we go by the names on the paper of
    ownership and by who bought it.

    What to do. Ask the lender about a new loan in one name, or sell and pay it off. Close joint cards, or
    have them frozen. Look first at the orders in the summons, which bind you.
    """
    return list(_each(case))


def _each(case: Case) -> Iterator[Found]:
    if debts := [f"debt.{number}" for number, debt in enumerate(case.debt, 1) if _still_owed(debt)]:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("You propose who pays {debts}. The lender can still collect from each one who signed.").format(
                debts=_named(case, debts)
            ),
            _("Ask for a new loan in one name, or pay it off, so that nobody is left with the other's debt."),
            facts=tuple(f"{key}.{name}" for key in debts for name in ("name", "by", "proposal")),
        )
    if things := [f"asset.{number}" for number, thing in enumerate(case.asset, 1) if _with_its_loan(thing)]:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _n(
                "You propose who gets {things}, with what is owed on it. Each one who signed for the loan "
                "still owes it.",
                "You propose who gets {things}, with what is owed on them. Each one who signed for a loan "
                "still owes it.",
                len(things),
            ).format(things=_named(case, things)),
            _(
                "Look in the loan papers who signed. Plan for a new loan in one name, or to sell and pay it "
                "off, so that nobody is left with the other's debt."
            ),
            facts=tuple(f"{key}.{name}" for key in things for name in ("owed", "title", "by", "proposal")),
        )


def _named(case: Case, keys: list[str]) -> str:
    return in_a_row([thing_words(case, key) for key in keys])


def _still_owed(debt: Debt) -> bool:
    """Whether the proposal takes the debt away from one who owes it to the lender."""
    return known(debt.owed) != 0 and _taken_from(known(debt.proposal), {known(debt.name), known(debt.by)})


def _with_its_loan(thing: Asset) -> bool:
    """Whether the proposal takes a thing with a loan on it away from one who may have signed for the loan."""
    owed = thing.owed is DONT_KNOW or bool(known(thing.owed))
    title = known(thing.title)
    named = ON_THE_PAPER.get(title) if title else None
    return owed and _taken_from(known(thing.proposal), {named, known(thing.by)})


def _taken_from(proposal: Proposal | None, owing: set[Who | None]) -> bool:
    if proposal is None:
        return False
    return proposal is Proposal.HALF_EACH or Who.BOTH in owing or AWAY_FROM[proposal] in owing
