"""The equity in a house over time: how much was separate and how much community, bar by bar."""

from firstpaper.facts.money import in_dollars
from firstpaper.law.measures.estimates.house import HouseShare
from firstpaper.locale import _
from firstpaper.packet.pictures.patterns import Pattern
from firstpaper.packet.pictures.shares import Bar, Key, Part, Shares

SEPARATE, COMMUNITY = Pattern.WHITE, Pattern.BLACK


def house_over_time(found: HouseShare) -> Shares:
    """A bar for each stage at which there was any equity."""
    bars = []
    for when, separate, community in found.stages:
        whole = separate + community
        if whole <= 0:
            continue
        title = _("{when}: {amount}").format(when=when[:1].upper() + when[1:], amount=in_dollars(whole))
        says = _("{title}: separate {separate}, community {community}.").format(
            title=title, separate=in_dollars(separate), community=in_dollars(community)
        )
        parts = (Part(SEPARATE, separate), Part(COMMUNITY, community))
        bars.append(Bar(title, tuple(part for part in parts if part.amount > 0), says))
    return Shares(
        _("This picture shows what the house was worth after its loan, and whose that was."),
        tuple(bars),
        (Key(SEPARATE, _("Separate: the owner's alone")), Key(COMMUNITY, _("Community: of you both"))),
    )
