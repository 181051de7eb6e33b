"""What spouses owe each other about money until all is divided."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import spaced
from firstpaper.locale import _


@rule(
    "What you owe each other about money",
    cite=(
        "Fam. Code 721(b)",
        "Fam. Code 1100(b)-(e)",
        "Fam. Code 1101(g)-(h)",
        "Fam. Code 1102(a)",
        "Fam. Code 2102(a)",
    ),
    since=date(2020, 1, 1),
    not_modelled="Claims for a breach, how long one has to bring them, and a spouse who cannot act.",
)
def duties(case: Case, on: date) -> Found | None:
    """Until everything is divided, you owe each other the highest good faith about money.

    What the law says. Each of you must tell the other the truth about what there is, show papers when asked,
    and take no unfair advantage. That goes on after you part, until each thing is divided. It holds for
    support too, until that is settled.

    What both must sign. House or land of you both cannot be sold, borrowed against or leased for more than a
    year unless both of you sign. Other community things may not be given away, or sold for less than they
    are worth, without the other's written consent. Who runs a family business must give notice in writing
    before selling or pledging most of it.

    What it costs to hide. If one of you hides a thing or moves it away, the court can give the other half of
    its worth, and lawyer's fees. The worth is the highest it had. With malice or fraud it is the whole.

    An example. He left a savings account of $20,000 off the list. It came out two years later. She can be
    given $10,000 and her lawyer's fees, or all of it if he meant to cheat her.

    What to do. List everything, even what you think is yours alone. If you find something later, say so.
    """
    listed = (
        *(f"asset.{number}.kind" for number, asset in enumerate(case.asset, 1) if asset != Asset()),
        *(f"debt.{number}.kind" for number, debt in enumerate(case.debt, 1) if debt != Debt()),
    )
    if not listed:
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _(
            "What you list is for the other side to see too. What is left out on purpose can cost half of "
            "it, or all."
        ),
        spaced(
            [
                _("List everything, also what you think is yours alone. Say it when you find more."),
                *_by_kind({known(asset.kind) for asset in case.asset}),
            ]
        ),
        facts=listed,
    )


def _by_kind(kinds: set[AssetKind | None]) -> Iterator[str]:
    if AssetKind.REAL_ESTATE in kinds:
        yield _("A house or land of you both can be sold or borrowed against only if both of you sign.")
    if AssetKind.BUSINESS in kinds:
        yield _("Who runs a family business must give notice in writing before selling most of it.")
