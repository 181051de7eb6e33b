"""What it comes to: net values and totals by what things are taken to be, and the filer's own proposal."""

from collections.abc import Iterator
from decimal import Decimal
from typing import NamedTuple

from firstpaper.facts.choices import Proposal, Who
from firstpaper.law.figure import figure
from firstpaper.law.measures.character import Code, Point
from firstpaper.law.measures.disclosure import served_unseen
from firstpaper.law.measures.refused import Refused
from firstpaper.law.measures.sums import (
    Award,
    Equalizing,
    Line,
    Total,
    small_when_spouse_is_missing,
    value_day,
)
from firstpaper.locale import _
from firstpaper.packet.pictures.estate import estate
from firstpaper.packet.reckoning import Reckoning
from firstpaper.packet.views.money.page import Trust, page
from firstpaper.packet.views.money.words import dollars, listed_name, missing_words
from firstpaper.packet.views.sheet import Sheet


class Row(NamedTuple):
    """A thing with what it is worth, what is owed on it, and what is left."""

    name: str
    value: str
    owed: str
    net: str


class Group(NamedTuple):
    """The things that are taken to be the same, with their sum."""

    title: str
    rows: tuple[Row, ...]
    total: Row | None


class Taken(NamedTuple):
    """A thing with what each takes of it."""

    name: str
    you: str
    other: str


def sheets(found: Reckoning) -> Iterator[Sheet]:
    """The sums, and the proposal where there is one to speak of."""
    if found.lines:
        yield _sums(found)
    if isinstance(found.proposal, Equalizing):
        yield _proposal(found, found.proposal)
    elif found.proposal:
        yield _no_proposal(found.proposal)


def _sums(found: Reckoning) -> Sheet:
    chart = estate(found.totals)
    estate_total = found.totals.community_estate
    return page(
        "sums",
        _("What it comes to"),
        Trust.ARITHMETIC,
        _("The sums for each kind of property."),
        {
            "groups": tuple(_groups(found)),
            "left_out": missing_words(found.case, _unknown_amounts(found.totals.left_out)),
            "value_day": value_day(found.on),
            "pictured": chart is not None,
            "quasi": Code.QUASI_COMMUNITY in found.totals.by_code,
            "community": dollars(estate_total.net),
            "comes_back": bool(found.repayments),
            "injury": any(one.has(Point.INJURY_MONEY) for one in found.characters),
            "all_to_one": _all_to_one(found),
            "half": dollars(estate_total.net / 2) if estate_total.net > 0 else "",
        },
        pictures={"estate": chart} if chart else {},
    )


def _all_to_one(found: Reckoning) -> str:
    """What a judge may do with a small estate where the other side cannot be found."""
    estate_total, on = found.totals.community_estate, found.on
    unseen = served_unseen(found.case)
    if not unseen or estate_total.net < 0 or not small_when_spouse_is_missing(estate_total, on):
        return ""
    limit = dollars(Decimal(figure("money.missing_spouse_limit", on).value))
    return _(
        "The other side was served by newspaper or posting. If they cannot be found, and what you own "
        "together is worth less than {limit} after debts, a judge can give all of it to you."
    ).format(limit=limit)


def _groups(found: Reckoning) -> Iterator[Group]:
    left_out = {line.key for line in found.totals.left_out}
    for code, title in _titles().items():
        counted = [line for line in found.lines if line.code is code and line.key not in left_out]
        if counted:
            rows = tuple(_row(found, line) for line in counted)
            yield Group(title, rows, _total(found.totals.of(code)) if len(rows) > 1 else None)


def _titles() -> dict[Code, str]:
    return {
        Code.COMMUNITY: _("Taken to be community: it belongs to you both"),
        Code.QUASI_COMMUNITY: _("Taken to be quasi-community: shared like community"),
        Code.PETITIONER_SEPARATE: _("Taken to be yours alone"),
        Code.RESPONDENT_SEPARATE: _("Taken to be the other side's alone"),
        Code.MIXED: _("Part community, part separate"),
        Code.UNKNOWN: _("Not known yet"),
        Code.NOT_DIVIDED: _("Not divided by a court"),
    }


def _row(found: Reckoning, line: Line) -> Row:
    name = listed_name(found.case, line.key)
    if line.key.startswith("debt"):
        return Row(name, "", dollars(line.owed), dollars(line.net))
    return _amounts(name, line.value, line.owed, line.net)


def _total(total: Total) -> Row:
    return _amounts(_("Together"), total.value, total.owed, total.net)


def _amounts(name: str, value: Decimal | None, owed: Decimal | None, net: Decimal | None) -> Row:
    return Row(name, dollars(value), dollars(owed), dollars(net))


def _unknown_amounts(lines: tuple[Line, ...]) -> Iterator[str]:
    for line in lines:
        yield from (f"{line.key}.{name}" for name in ("value", "owed") if getattr(line, name) is None)


# The filer's own proposal


def _proposal(found: Reckoning, told: Equalizing) -> Sheet:
    return _proposal_page(
        {
            "refused": None,
            "rows": tuple(_taken(found, award) for award in told.awards),
            "you": dollars(told.petitioner),
            "other": dollars(told.respondent),
            "back": tuple(_back(told)),
            "payment": _payment(told),
            "you_end_with": dollars(told.petitioner_ends_with),
            "other_ends_with": dollars(told.respondent_ends_with),
            "left_out": tuple(listed_name(found.case, line.key) for line in told.left_out),
        }
    )


def _no_proposal(refused: Refused) -> Sheet:
    return _proposal_page({"refused": refused})


def _proposal_page(values: dict[str, object]) -> Sheet:
    return page(
        "proposal",
        _("Your own proposal, made even"),
        Trust.ARITHMETIC,
        _("Who would pay whom by it."),
        values,
    )


def _taken(found: Reckoning, award: Award) -> Taken:
    name = listed_name(found.case, award.line.key)
    if award.line.proposal is Proposal.HALF_EACH:
        name = _("{thing} (half each)").format(thing=name)
    return Taken(name, dollars(award.petitioner), dollars(award.respondent))


def _back(told: Equalizing) -> Iterator[str]:
    """Separate money that comes back besides; below zero it goes to the respondent."""
    if told.repaid_to_petitioner > 0:
        yield _("Besides, the other side pays you back {amount} of your separate money.").format(
            amount=dollars(told.repaid_to_petitioner)
        )
    if told.repaid_to_petitioner < 0:
        yield _("Besides, you pay the other side back {amount} of their separate money.").format(
            amount=dollars(-told.repaid_to_petitioner)
        )


def _payment(told: Equalizing) -> str:
    amount = dollars(told.payment)
    if told.payer is Who.PETITIONER:
        return _("You would pay the other side {amount}.").format(amount=amount)
    if told.payer is Who.RESPONDENT:
        return _("The other side would pay you {amount}.").format(amount=amount)
    return _("It is even. Nobody would pay anybody.")
