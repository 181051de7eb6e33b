"""The estimates: each on its own page, with working and caution, and a plain no where facts rule it out.

None of them says more than one published opinion, or the words of one section, would give for these numbers.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import NamedTuple

from firstpaper.facts import known
from firstpaper.facts.schedule import House
from firstpaper.law.measures.estimates import caution
from firstpaper.law.measures.estimates.after_separation import CITE as AFTER_CITE
from firstpaper.law.measures.estimates.after_separation import Entry, Ledger
from firstpaper.law.measures.estimates.house import CITE as HOUSE_CITE
from firstpaper.law.measures.estimates.house import HouseShare
from firstpaper.law.measures.estimates.options import CITE as OPTIONS_CITE
from firstpaper.law.measures.estimates.options import OptionShares
from firstpaper.law.measures.estimates.pension import CITE as PENSION_CITE
from firstpaper.law.measures.estimates.pension import TimeRule
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.sums import Repayment
from firstpaper.law.property_words import thing_words
from firstpaper.locale import _, _n
from firstpaper.packet.pictures.house import house_over_time
from firstpaper.packet.pictures.shares import Shares
from firstpaper.packet.reckoning import Reckoning
from firstpaper.packet.views.money.page import Trust, page
from firstpaper.packet.views.money.words import dollars, missing_words, percent, who
from firstpaper.packet.views.sheet import Sheet


class Named(NamedTuple):
    """A number with what it is."""

    name: str
    words: str


class Table(NamedTuple):
    """Numbers side by side, for two people or by two formulas."""

    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    widths: str


@dataclass(frozen=True, slots=True)
class Estimate:
    """What stands on one page: what was told, the steps, what it comes to, and what to know beside it."""

    told: tuple[Named, ...] = ()
    steps: tuple[str, ...] = ()
    table: Table | None = None
    comes_to: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    cite: tuple[str, ...] = ()
    picture: Shares | None = None
    caution: str = field(default_factory=caution)


def sheets(found: Reckoning) -> Iterator[Sheet]:
    """A page for each estimate that applies."""
    for key, repayment in found.repayments.items():
        yield _page(
            found, _("Separate money back: {thing}"), key, repayment, _repayment(found, key, repayment)
        )
    for key, house in found.houses.items():
        yield _page(found, _("House from before the wedding: {thing}"), key, house, _house(found, key, house))
    for key, pension in found.pensions.items():
        yield _page(found, _("Part of a pension: {thing}"), key, pension, _pension(pension))
    for key, option in found.options.items():
        yield _page(found, _("Stock options: {thing}"), key, option, _options(option))
    if found.after is not None:
        yield _page(
            found, _("Since you separated: paid and used"), "", found.after, _after(found, found.after)
        )


def _page(found: Reckoning, title: str, key: str, result: object, shown: Estimate) -> Sheet:
    thing = thing_words(found.case, key) if key else ""
    refused = result if isinstance(result, Refused) else None
    return page(
        "estimate",
        title.format(thing=thing),
        Trust.ESTIMATE,
        _("Not worked out: the page says why.") if refused else "",
        {
            "shown": shown,
            "cite": "; ".join(shown.cite),
            "refused": refused,
            "missing": missing_words(found.case, refused.missing) if refused else (),
            "pictured": shown.picture is not None,
        },
        pictures={"shares": shown.picture} if shown.picture else {},
    )


# Separate money put into a thing


def _repayment(found: Reckoning, key: str, result: Repayment | Refused) -> Estimate:
    asset = found.case.asset[int(key.partition(".")[2]) - 1]
    line = next(line for line in found.lines if line.key == key)
    told = (
        Named(_("What it is worth"), dollars(line.value)),
        Named(_("What is owed on it"), dollars(line.owed)),
        *(
            Named(
                _("Put in by {who}").format(who=who(one.by)), _put_in(dollars(one.amount), known(one.traced))
            )
            for one in known(asset.contributions) or ()
        ),
    )
    if isinstance(result, Refused):
        return Estimate(told, cite=result.cite or ("Fam. Code 2640",), caution=_by_statute())
    return Estimate(
        told,
        tuple(_repayment_steps(line.net or Decimal(0), result)),
        comes_to=tuple(_comes_back(result)),
        notes=tuple(_repayment_notes(result)),
        cite=(result.cite,),
        caution=_by_statute(),
    )


def _by_statute() -> str:
    return _(
        "This is an estimate for you alone, for a simple case. A judge asks for proof of every payment, and "
        "a paper that you signed can change it. Do not file it. Show it to a lawyer."
    )


def _put_in(amount: str, traced: bool | None) -> str:
    if traced:
        return _("{amount}, with papers that show it").format(amount=amount)
    return _("{amount}, without papers that show it").format(amount=amount)


def _repayment_steps(net: Decimal, result: Repayment) -> Iterator[str]:
    put_in = sum((one.put_in for one in result.claims), Decimal(0))
    yield _("What is left after the debt on it: {net}.").format(net=dollars(net))
    yield _("Separate money that papers show: {amount}.").format(amount=dollars(put_in))
    if result.cut:
        yield _("That is more than what is left. So only what is left comes back, in proportion.")
    yield _("What is left after that: {rest}.").format(rest=dollars(result.rest))


def _comes_back(result: Repayment) -> Iterator[str]:
    for one in result.claims:
        yield _("Back to {who}: {back} of {put_in}.").format(
            who=who(one.by), back=dollars(one.back), put_in=dollars(one.put_in)
        )
    if not result.claims:
        yield _("Nothing comes back, because no papers show where the money came from.")


def _repayment_notes(result: Repayment) -> Iterator[str]:
    yield _("It counts only for a down payment, improvements, and the loan itself. There is no interest.")
    yield _("It is lost where the one who put it in gave it up in writing.")
    if result.not_traced:
        yield _("Not counted, because no papers show it: {amount}.").format(amount=dollars(result.not_traced))
    if result.cut and len(result.claims) > 1:
        yield _(
            "The law does not say how two claims share too little. One trial court did it in proportion (In "
            "re Marriage of Walrath (1998) 17 Cal.4th 907)."
        )


# A house from before the wedding


def _house(found: Reckoning, key: str, result: HouseShare | Refused) -> Estimate:
    asset = found.case.asset[int(key.partition(".")[2]) - 1]
    told = (*_house_told(asset.house), Named(_("Worth now"), dollars(known(asset.value))))
    if isinstance(result, Refused):
        advice = _("Ask a lawyer, or an accountant who works for courts. Take these numbers along.")
        return Estimate(told, notes=(advice,), cite=HOUSE_CITE)
    return Estimate(
        told,
        tuple(_house_steps(result)),
        comes_to=(
            _("Community part: {amount}. Half of it, {half}, for each of you.").format(
                amount=dollars(result.community), half=dollars(result.community / 2)
            ),
            _("Separate part of the owner: {amount}.").format(amount=dollars(result.separate)),
        ),
        notes=tuple(_house_notes(result, known(asset.owed))),
        cite=HOUSE_CITE,
        picture=house_over_time(result),
    )


def _house_told(house: House) -> Iterator[Named]:
    for name, words in _house_words().items():
        yield Named(words, dollars(known(getattr(house, name))))


def _house_words() -> Mapping[str, str]:
    return {
        "price": _("Price"),
        "down_payment": _("Down payment"),
        "principal_before": _("Paid on the loan itself before the wedding"),
        "principal_during": _("Paid on the loan itself in the marriage"),
        "principal_after": _("Paid on the loan itself since you separated"),
        "value_at_wedding": _("Worth at the wedding"),
    }


def _house_steps(found: HouseShare) -> Iterator[str]:
    told = found.payments
    yield _("Community part of the price: {paid} of {price}, which is {percent}.").format(
        paid=dollars(told.principal_during), price=dollars(told.price), percent=percent(found.fraction)
    )
    yield _("Growth before the wedding: {then} less {price} = {growth}. All of it is separate.").format(
        then=dollars(told.value_at_wedding), price=dollars(told.price), growth=dollars(told.growth_before)
    )
    yield _("Growth since the wedding: {now} less {then} = {growth}. It is shared.").format(
        now=dollars(told.now), then=dollars(told.value_at_wedding), growth=dollars(told.growth)
    )
    yield _("Community: {paid} paid, and {percent} of that growth = {growth}. Together {community}.").format(
        paid=dollars(told.principal_during),
        percent=percent(found.fraction),
        growth=dollars(found.community_growth),
        community=dollars(found.community),
    )
    yield _(
        "Separate: down payment, the owner's own loan payments, and the rest of the growth = {amount}."
    ).format(amount=dollars(found.separate))
    yield _(
        "Check: {community} and {separate} are {equity}, the worth now less the loan that is left."
    ).format(
        community=dollars(found.community), separate=dollars(found.separate), equity=dollars(told.equity)
    )


def _house_notes(found: HouseShare, owed: Decimal | None) -> Iterator[str]:
    if owed is not None and owed != found.payments.loan_left:
        yield _(
            "Look again: you said that {owed} is owed on it. By these payments, {left} of the loan is left."
        ).format(owed=dollars(owed), left=dollars(found.payments.loan_left))
    yield _("Interest, tax, insurance and upkeep do not count. The first loan counts for the owner.")
    yield _(
        "The community's share of the price is fixed at separation, but its value still rises or falls with "
        "the house (In re Marriage of Mohler (2020) 47 Cal.App.5th 788)."
    )
    yield _("Nothing is taken off for taxes or the cost of a sale.")


# A pension


def _pension(found: TimeRule | Refused) -> Estimate:
    if isinstance(found, Refused):
        return Estimate(cite=found.cite or PENSION_CITE)
    part, half = percent(found.fraction), percent(found.half)
    notes = [
        _("It fits only a pension that grows with the years of work. It says nothing about dollars."),
        _("Work after the benefit has stopped growing counts in neither number."),
        _("No order binds most plans until the plan is made part of the case."),
    ]
    if found.growing:
        notes.insert(
            0, _("The work goes on. So the second number grows, and the part gets smaller, until it ends.")
        )
    return Estimate(
        steps=(
            _("Months of work in the marriage, until you separated: {months}.").format(
                months=found.in_marriage
            ),
            _("Months of work in all that earned it: {months}.").format(months=found.total),
        ),
        comes_to=(
            _("Community part so far: {months} of {total} months, {percent} of the benefit.").format(
                months=found.in_marriage, total=found.total, percent=part
            ),
            _("Half of that for each of you: {half}.").format(half=half),
        ),
        notes=tuple(notes),
        cite=(*PENSION_CITE, "Fam. Code 2610(a)"),
    )


# Stock options


def _options(found: OptionShares | Refused) -> Estimate:
    if isinstance(found, Refused):
        return Estimate(cite=found.cite or OPTIONS_CITE)
    hug, nelson = found.fractions
    rows = [
        (_("Counted from"), _("the first day at work"), _("the day of the grant")),
        (_("Months until you separated"), str(found.hug[0]), str(found.nelson[0])),
        (_("Months until they can be used"), str(found.hug[1]), str(found.nelson[1])),
        (_("Community part"), percent(hug), percent(nelson)),
    ]
    if found.shares is not None:
        rows.append(
            (
                _("Of {count} options").format(count=f"{found.shares:,}"),
                str(found.community_by_hug),
                str(found.community_by_nelson),
            )
        )
    return Estimate(
        table=Table((_("What"), _("By Hug"), _("By Nelson")), tuple(rows), "34 33 33"),
        notes=(
            _("No formula must be used. The first fits pay for past work, the second pay for work to come."),
            _("We do not choose between them. Which one is better for you is a question for a lawyer."),
            _("Each grant, and each part of it that can be used on another day, is counted by itself."),
        ),
        cite=OPTIONS_CITE,
    )


# Since the separation


def _after(found: Reckoning, result: Ledger | Refused) -> Estimate:
    if isinstance(result, Refused):
        return Estimate(cite=AFTER_CITE)
    rows = tuple(_entry(found, one) for one in result.entries)
    columns = (_("What"), _("Who"), _("Paid"), _("Use"), _("The other one owes"))
    return Estimate(
        table=Table(columns, rows, "30 20 16 16 18") if rows else None,
        comes_to=(_owed(result),) if rows else (),
        notes=tuple(_after_notes(found, result)),
        cite=AFTER_CITE,
    )


def _entry(found: Reckoning, one: Entry) -> tuple[str, ...]:
    return (
        thing_words(found.case, one.key),
        who(one.by),
        dollars(one.paid) if one.paid else "",
        dollars(one.use) if one.use else "",
        dollars(one.owed_by_the_other),
    )


def _owed(result: Ledger) -> str:
    owed = result.owed_to_petitioner
    if owed > 0:
        return _("If a judge allowed all of it, the other side would owe you {amount}.").format(
            amount=dollars(owed)
        )
    if owed < 0:
        return _("If a judge allowed all of it, you would owe the other side {amount}.").format(
            amount=dollars(-owed)
        )
    return _("If a judge allowed all of it, nobody would owe anything.")


def _after_notes(found: Reckoning, result: Ledger) -> Iterator[str]:
    yield _("A judge may allow all of it, a part, or nothing. The last column is half of each line.")
    yield _("Payments do not count if they were a gift, or really support.")
    yield _("They do not count for a thing that the payer used, if its use was worth about as much.")
    if result.left_out:
        names = "; ".join(thing_words(found.case, key) for key in result.left_out)
        yield _n(
            "Left out, because it is not surely community: {names}.",
            "Left out, because they are not surely community: {names}.",
            len(result.left_out),
        ).format(names=names)
