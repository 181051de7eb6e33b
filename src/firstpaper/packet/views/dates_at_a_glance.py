"""Your dates at a glance: the residence bars and the line of time, where there is something to see."""

from collections.abc import Iterator

from firstpaper.law.measures.nullity import grounds, time_limit
from firstpaper.law.measures.record import filed_on, recorded_days
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.pictures.chart import Chart
from firstpaper.packet.pictures.residence import residence
from firstpaper.packet.pictures.timeline import timeline
from firstpaper.packet.views.sheet import Sheet


def before_the_filing(brief: Brief) -> Iterator[Sheet]:
    """One sheet with one picture or two; none for a case whose days raise no question."""
    bars = residence(brief.case, brief.on)
    if bars or _has_limit(brief):
        yield _sheet(brief, bars)


def since_the_filing(brief: Brief) -> Iterator[Sheet]:
    """One sheet with the line of time; none where nothing was recorded."""
    if any(recorded_days(brief.case.record)):
        yield _sheet(brief)


def _sheet(brief: Brief, bars: Chart | None = None) -> Sheet:
    line = timeline(brief.case, brief.on)
    return Sheet(
        template="dates-at-a-glance.html",
        title=_("Your dates at a glance"),
        running=_("Your dates at a glance"),
        purpose=_("Pictures of the days that matter in your case."),
        values={
            "brief": brief,
            "bars": bars is not None,
            "two_diamonds": bars is not None and sum(len(row.marks) for row in bars.rows) > 1,
            "filed": filed_on(brief.case, brief.on),
        },
        pictures={"timeline": line, **({"residence": bars} if bars else {})},
        follows=True,
    )


def _has_limit(brief: Brief) -> bool:
    """Whether a ground of a nullity has a last day."""
    return any(time_limit(brief.case, ground, brief.on).last_day for ground in grounds(brief.case))
