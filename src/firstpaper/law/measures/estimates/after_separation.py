"""Payments on community debts after the separation, and what the sole use of a community thing is worth.

A court may order repayment of separate money paid on community debts (Fam. Code 2626; In re Marriage of
Epstein (1979) 24 Cal.3d 76): not where it was a gift or really support, and not for a thing the payer used
that was worth about as much. It may also charge the one who alone used a community thing with what that
was worth (In re Marriage of Watts (1985) 171 Cal.App.3d 366), to the community's part of it (In re
Marriage of Mohler (2020) 47 Cal.App.5th 788). Both are for the court to allow.
"""

from collections.abc import Iterator, Mapping
from datetime import date
from decimal import Decimal
from typing import Any, NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Who
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.law.measures.cents import cents
from firstpaper.law.measures.character import asset_characters, debt_characters
from firstpaper.law.measures.refused import Refused
from firstpaper.locale import _

CITE = (
    "Fam. Code 2626",
    "In re Marriage of Epstein (1979) 24 Cal.3d 76",
    "In re Marriage of Watts (1985) 171 Cal.App.3d 366",
)
NOTHING = Decimal(0)


class Entry(NamedTuple):
    """What one spouse paid on, or had of, one community thing or debt since the separation."""

    key: str
    by: Who
    paid: Decimal = NOTHING
    use: Decimal = NOTHING

    @property
    def owed_by_the_other(self) -> Decimal:
        """Half of what was paid, less half of the use; below zero the one who paid or used owes."""
        return net_from_the_other(self.paid, self.use)


class Ledger(NamedTuple):
    """All entries. `left_out` are the keys of things that are not surely community."""

    entries: tuple[Entry, ...]
    left_out: tuple[str, ...]

    @property
    def owed_to_petitioner(self) -> Decimal:
        """What the respondent owes by it, if a court allows all of it; below zero the petitioner owes."""
        owed = NOTHING
        for one in self.entries:
            owed += one.owed_by_the_other if one.by is Who.PETITIONER else -one.owed_by_the_other
        return cents(owed)


def net_from_the_other(paid: Decimal, use: Decimal, community: Decimal = Decimal(1)) -> Decimal:
    """What the other owes the one who paid and used: half of the payments less the community's use.

    `community` is the community's part of the thing, from 0 to 1.
    """
    return (paid - community * use) / 2


def ledger(case: Case, on: date) -> Ledger | Refused:
    """What was told of payments and sole use since the separation, on what is surely community."""
    told = tuple(_told(case))
    if not told:
        return Refused((_("No payment and no sole use since the separation was told."),), cite=CITE)
    missing = tuple(key for facts in told for key, fact in facts.items() if known(fact) is None)
    if missing:
        return Refused((_("Who paid or used, and how much, must be known."),), missing, CITE)
    if any(Who.BOTH in facts.values() for facts in told):
        return Refused((_("What both paid is not counted. Leave it out."),), cite=CITE)
    entries = tuple(_entry(facts) for facts in told)
    community = {
        one.key for one in (*asset_characters(case, on), *debt_characters(case, on)) if one.code.shared
    }
    return Ledger(
        tuple(entry for entry in entries if entry.key in community),
        tuple(dict.fromkeys(entry.key for entry in entries if entry.key not in community)),
    )


def _told(case: Case) -> Iterator[dict[str, Any]]:
    """The facts of each payment and each sole use of which anything was told, by key."""
    rows: list[tuple[str, Asset | Debt]] = [
        *((f"asset.{number}", asset) for number, asset in enumerate(case.asset, 1)),
        *((f"debt.{number}", debt) for number, debt in enumerate(case.debt, 1)),
    ]
    for key, row in rows:
        for names in (_PAID, _USED):
            facts = {f"{key}.{name}": getattr(row, name, None) for name in names}
            if any(fact is not None for fact in facts.values()) and not _comes_to_nothing(facts):
                yield facts


def _comes_to_nothing(facts: Mapping[str, Any]) -> bool:
    """Whether it was told that nothing was paid, or that neither of the two had the use alone."""
    told = {name.rpartition(".")[2]: known(fact) for name, fact in facts.items()}
    return told.get("paid_after") == NOTHING or told.get("used_after_by") is Who.BOTH


def _entry(facts: Mapping[str, Any]) -> Entry:
    told = {name.rpartition(".")[2]: fact for name, fact in facts.items()}
    key = next(iter(facts)).rpartition(".")[0]
    if "paid_after" in told:
        return Entry(key, told["paid_after_by"], paid=told["paid_after"])
    return Entry(key, told["used_after_by"], use=told["used_after_months"] * told["used_after_value"])


_PAID = ("paid_after", "paid_after_by")
_USED = ("used_after_by", "used_after_months", "used_after_value")
