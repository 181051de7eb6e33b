"""Papers we do not draft: what the court may want, money while the case runs, an interpreter, protection."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import known
from firstpaper.facts.choices import Danger, Special
from firstpaper.forms.local_forms import LocalPaper, local_papers
from firstpaper.law.figure import figure
from firstpaper.law.finding import Finding, Outcome
from firstpaper.law.measures.children import concerns_children
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.hand_over import NOTICE, SUMMARY, may_fit
from firstpaper.packet.views.sheet import Sheet

ASKING_FOR_MONEY = "support.asking"
"""The rule that says what brings money before the judgment, where somebody asks for support."""

SHORTER = ("joint.screen", SUMMARY, NOTICE)
NOT_OPEN = (Outcome.NOT_MET, Outcome.NEED_TO_KNOW)


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One sheet, with a section for each paper that may concern this household; none where none does."""
    case = brief.case
    county = known(case.court.county)
    local = local_papers(county)
    protection = bool(set(known(case.safety.dangers) or ()) - {Danger.HIDE_ADDRESS})
    interpreter = Special.INTERPRETER in (known(case.people.special) or ())
    money = next((one for one in brief.findings if one.id == ASKING_FOR_MONEY), None)
    closed = tuple(_closed(brief))
    if not (local or protection or interpreter or money or closed):
        return
    yield Sheet(
        template="pointers.html",
        title=_("Other papers to ask about"),
        running=_("Other papers to ask about"),
        purpose=_("Papers that we do not draft, and whom to ask about them."),
        follows=True,
        values={
            "county": county,
            "children": concerns_children(case, brief.on) is not False,
            "local": local,
            "money": money,
            "closed": closed,
            "checked_on": _oldest(local),
            "protection": protection,
            "emergency": brief.emergency,
            "enrolled": known(case.safety.safe_at_home) is True,
            "hotline": figure("help.domestic_violence_hotline", brief.on).value,
            "interpreter": interpreter,
            "language": known(case.people.language),
        },
    )


def _closed(brief: Brief) -> Iterator[Finding]:
    """The shorter ways that the filer asked about and that are not open, or not yet."""
    for one in brief.findings:
        if one.id in SHORTER and one.outcome in NOT_OPEN and not may_fit(one):
            yield one


def _oldest(local: tuple[LocalPaper, ...]) -> date | None:
    return min((paper.checked_on for paper in local), default=None)
