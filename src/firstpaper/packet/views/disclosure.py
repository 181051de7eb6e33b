"""The disclosure stage: what each side must show the other about money. Served, and not filed."""

from collections.abc import Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, CommunityKind
from firstpaper.facts.kinds import is_nullity
from firstpaper.facts.shared_things import kinds_to_share
from firstpaper.law.figure import figure
from firstpaper.law.measures.disclosure import (
    DisclosureDue,
    answered_on_no_known_day,
    disclosure_asked_for,
    if_found,
    petitioner_disclosure,
    tax_returns_since,
    waits_for_a_response,
)
from firstpaper.law.measures.record import filed_on, happened
from firstpaper.law.words import target_day
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.disclosure_papers import papers
from firstpaper.packet.views.either_way import may_yet_file_together
from firstpaper.packet.views.sheet import Sheet

_AS_ASSET = {
    AssetKind.REAL_ESTATE: CommunityKind.HOME,
    AssetKind.HOUSEHOLD: CommunityKind.HOUSEHOLD,
    AssetKind.VALUABLES: CommunityKind.HOUSEHOLD,
    AssetKind.VEHICLE: CommunityKind.VEHICLES,
    AssetKind.SAVINGS: CommunityKind.ACCOUNTS,
    AssetKind.CHECKING: CommunityKind.ACCOUNTS,
    AssetKind.OTHER_DEPOSIT: CommunityKind.ACCOUNTS,
    AssetKind.INVESTMENTS: CommunityKind.ACCOUNTS,
    AssetKind.PENSION: CommunityKind.RETIREMENT,
    AssetKind.RETIREMENT_ACCOUNT: CommunityKind.RETIREMENT,
    AssetKind.BUSINESS: CommunityKind.BUSINESS,
    AssetKind.TAX_REFUND: CommunityKind.TAX_REFUNDS,
    AssetKind.DIGITAL: CommunityKind.DIGITAL,
    AssetKind.PET: CommunityKind.PETS,
}
"""What is listed thing by thing, under the kinds that the prompting list has."""


class Window(NamedTuple):
    """A day of serving, and since when a tax return must have been filed to go along."""

    served: str
    since: str


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The checklist; in a nullity the question for the court; none once the declaration was served."""
    case, on = brief.case, brief.on
    nullity = is_nullity(case)
    if known(happened(case, on).disclosure_served_on) is not None:
        return
    if not nullity and not disclosure_asked_for(case):
        return
    told, listed = kinds_to_share(brief.case), _listed(brief)
    yield Sheet(
        template="disclosure.html",
        title=_("Show each other your money and property"),
        running=_("Disclosure: served, not filed"),
        purpose=_("The papers about money for the other side: whether you owe them, and when."),
        follows=True,
        values={
            "nullity": nullity,
            "unseen": waits_for_a_response(case, on),
            "with_petition": filed_on(case, on) is None and not may_yet_file_together(brief),
            "when": when(case, on) if not nullity else ("", ""),
            "years": figure("disclosure.tax_return_years", on).value,
            "windows": tuple(_windows(brief)),
            "listed": papers(case, on),
            "told": tuple(words for kind, words in _documents().items() if kind in told - listed),
            "others": tuple(words for kind, words in _documents().items() if kind not in told | listed),
            "in_danger": brief.in_danger,
            "hides_address": brief.hides_address,
        },
    )


def when(case: Case, on: date) -> tuple[str, str]:
    """By when the filer's own declaration is served: the sentence that counts, and what else the law says."""
    owed = petitioner_disclosure(case, on)
    if owed is None:
        return _no_day(case, on)
    day, more = target_day(owed.due), _other_reading(owed)
    if filed_on(case, on) is None:
        says = _("If you file on {on}, serve it by {day}.")
        return says.format(on=spell_date(owed.since), day=day), more
    if owed.due.missed(on):
        late = _("It was due by {day}. If you have not served it yet, serve it now.")
        return late.format(day=day), more
    return _("Serve it by {day}.").format(day=day), more


def _other_reading(owed: DisclosureDue) -> str:
    if owed.by_the_amended is None:
        return ""
    return _(
        "Counted from the amended petition, it is {day}. The law does not say which petition counts, so go "
        "by the first."
    ).format(day=target_day(owed.by_the_amended))


def _no_day(case: Case, on: date) -> tuple[str, str]:
    """Why no day is counted; nothing where it was served."""
    if waits_for_a_response(case, on):
        return _not_owed_yet(case, on)
    if answered_on_no_known_day(case, on):
        days = figure("disclosure.after_publication_days", on).value
        return _("Serve it within {days} days after the response was filed.").format(days=days), ""
    return "", _("It counts from the first petition.") if known(case.matter.amended) else ""


def _not_owed_yet(case: Case, on: date) -> tuple[str, str]:
    found = if_found(case, on)
    if found is None:
        days = figure("disclosure.after_publication_days", on).value
        response = _("If a response comes, serve it within {days} days after that.").format(days=days)
        return _("You owe no declaration while the other side stays silent."), response
    return (
        _("You may owe none: nobody can find the other side."),
        _(
            "If a judge lets you publish or post the summons, you owe no declaration while they stay silent. "
            "If they are found, and served in another way, serve it by {day}."
        ).format(day=target_day(found.due)),
    )


def _windows(brief: Brief) -> Iterator[Window]:
    """The tax returns for a declaration served now, and for one served on the last day."""
    owed = petitioner_disclosure(brief.case, brief.on)
    first = brief.begins
    days = (first, owed.due.target) if owed and owed.due.target > first else (first,)
    for served in days:
        yield Window(spell_date(served), spell_date(tax_returns_since(served)))


def _listed(brief: Brief) -> set[CommunityKind]:
    """The same kinds, of what was listed thing by thing and so has papers of its own."""
    kinds = (known(asset.kind) for asset in brief.case.asset)
    debts = (CommunityKind.DEBTS,) if brief.case.debt else ()
    return {*(_AS_ASSET[kind] for kind in kinds if kind in _AS_ASSET), *debts}


def _documents() -> dict[CommunityKind, str]:
    """What to gather for each kind (common practice, no source)."""
    return {
        CommunityKind.HOME: _("House or land: the deed, the newest loan statement, the property tax bill"),
        CommunityKind.VEHICLES: _("Cars: the registration, and the newest loan or lease statement"),
        CommunityKind.ACCOUNTS: _("Accounts and investments: the newest statement of each"),
        CommunityKind.RETIREMENT: _("Pensions and retirement plans: the newest statement of each"),
        CommunityKind.HOUSEHOLD: _("Household things: a list of what is worth money"),
        CommunityKind.BUSINESS: _("A business: its newest tax papers and its own books"),
        CommunityKind.DEBTS: _("Debts and cards: the newest statement of each"),
        CommunityKind.TAX_REFUNDS: _("Tax refunds still to come: the letters about them"),
        CommunityKind.DIGITAL: _("Digital money: a statement of what is held, and where"),
        CommunityKind.PETS: _("Animals: papers that show whose they are"),
    }
