"""The estate as one bar: how much of what is left after debts is taken to be whose."""

from collections.abc import Mapping
from decimal import Decimal

from firstpaper.facts.money import in_dollars
from firstpaper.law.measures.character import Code
from firstpaper.law.measures.sums import Totals
from firstpaper.locale import _
from firstpaper.packet.pictures.patterns import Pattern
from firstpaper.packet.pictures.shares import Bar, Key, Part, Shares

LOOKS: Mapping[Code, Pattern] = {
    Code.COMMUNITY: Pattern.BLACK,
    Code.QUASI_COMMUNITY: Pattern.CROSSED,
    Code.MIXED: Pattern.FALLING,
    Code.UNKNOWN: Pattern.UPRIGHT,
    Code.PETITIONER_SEPARATE: Pattern.WHITE,
    Code.RESPONDENT_SEPARATE: Pattern.RISING,
}
FEWEST = 2
"""One part alone needs no picture."""


def estate(totals: Totals) -> Shares | None:
    """The parts that are above zero; None where there is nothing to compare."""
    nets = {code: totals.of(code).net for code in LOOKS}
    parts = {code: net for code, net in nets.items() if net > 0}
    if len(parts) < FEWEST:
        return None
    whole = sum(parts.values(), Decimal(0))
    keys = [Key(LOOKS[code], _part(code, net, whole)) for code, net in parts.items()]
    says = " ".join(f"{key.words}." for key in keys)
    below = [code for code, net in nets.items() if net < 0]
    if below:
        says = f"{says} {_below(nets, below)}"
    title = _("After debts: {amount}").format(amount=in_dollars(whole))
    bar = Bar(title, tuple(Part(LOOKS[code], net) for code, net in parts.items()), f"{title}. {says}")
    says = _("This picture shows what is left after debts, by what it is taken to be.")
    return Shares(says, (bar,), tuple(keys))


def _part(code: Code, net: Decimal, whole: Decimal) -> str:
    return _("{name}: {amount}, {percent}%").format(
        name=_names()[code], amount=in_dollars(net), percent=f"{net * 100 / whole:.0f}"
    )


def _below(nets: Mapping[Code, Decimal], below: list[Code]) -> str:
    said = "; ".join(f"{_names()[code]}: -{in_dollars(-nets[code])}" for code in below)
    return _("Not drawn, because more is owed than it is worth: {said}.").format(said=said)


def _names() -> Mapping[Code, str]:
    return {
        Code.COMMUNITY: _("Community"),
        Code.QUASI_COMMUNITY: _("Quasi-community"),
        Code.MIXED: _("Part community, part separate"),
        Code.UNKNOWN: _("Not known yet"),
        Code.PETITIONER_SEPARATE: _("Yours alone"),
        Code.RESPONDENT_SEPARATE: _("The other side's alone"),
    }
