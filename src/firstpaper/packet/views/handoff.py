"""The hand-off sheet: one page for the lawyer or volunteer who looks at the case next."""

from collections.abc import Iterator
from dataclasses import dataclass

from firstpaper.counting import short_date
from firstpaper.facts import Day, known
from firstpaper.facts.choices import Who
from firstpaper.intake import echo
from firstpaper.law.finding import Finding, Outcome, Weight
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

MOST_FINDINGS = 6


@dataclass(frozen=True, slots=True)
class Line:
    """A label and what was told."""

    label: str
    words: str


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One page: facts, dates with their counting, findings, and the choices the filer made."""
    weighty = [one for one in brief.findings if one.weight is not Weight.GOOD_TO_KNOW]
    yield Sheet(
        template="hand-off.html",
        title=_("For the lawyer or volunteer"),
        running=_("Hand-off sheet"),
        purpose=_("Take this page to the self-help center or a lawyer."),
        values={
            "brief": brief,
            "facts": tuple(_facts(brief)),
            "counts": tuple(_counts(brief)),
            "findings": weighty[:MOST_FINDINGS],
            "more": max(0, len(weighty) - MOST_FINDINGS),
            "choices": tuple(_choices(brief)),
        },
    )
