"""The hand-off sheet: one page for the lawyer or volunteer who looks at the case next."""

from collections.abc import Iterator

from firstpaper.law.measures.record import is_filed
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.piles import Pile
from firstpaper.packet.views.handoff.facts import facts
from firstpaper.packet.views.handoff.flags import counts, flags
from firstpaper.packet.views.handoff.requests import requests
from firstpaper.packet.views.sheet import Sheet


def before_the_filing(brief: Brief) -> Iterator[Sheet]:
    """The sheet of a case that is not filed yet."""
    if not is_filed(brief.case):
        yield sheet(brief)


def since_the_filing(brief: Brief) -> Iterator[Sheet]:
    """The sheet of a case that the court has."""
    if is_filed(brief.case):
        yield sheet(brief)


def sheet(brief: Brief) -> Sheet:
    """Facts, every finding that needs a second look, how it was counted, and what the filer asks for."""
    return Sheet(
        template="hand-off.html",
        style="reading",
        title=_("For the lawyer or volunteer"),
        running=_("Private: for your lawyer only. Not to be filed."),
        pile=Pile.HAND_OFF,
        purpose=_("Take it to the self-help center or a lawyer. Keep it apart from the papers you file."),
        values={
            "brief": brief,
            "facts": tuple(facts(brief)),
            "flags": tuple(flags(brief.findings)),
            "counts": tuple(counts(brief.findings)),
            "requests": tuple(requests(brief)),
        },
    )
