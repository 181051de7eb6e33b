"""The road from here: from the service to the judgment in order, with the days of the case where known."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind
from firstpaper.law.agenda import Agenda, State, agenda
from firstpaper.law.figure import figure
from firstpaper.law.measures.disclosure import petitioner_disclosure, served_unseen
from firstpaper.law.measures.record import happened, joint
from firstpaper.law.measures.service import service_complete
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.either_way import if_filed_together
from firstpaper.packet.views.sheet import Sheet

FIGURES = {
    "response_days": "response.days",
    "disclosure_days": "disclosure.days",
    "revoked_days": "response.after_revocation_days",
    "final_days": "disclosure.final_days_before_trial",
    "waiting_months": "waiting.months",
}
"""The numbers of the law on this sheet, by the name that the template has for each."""


@dataclass(frozen=True, slots=True)
class Ways:
    """Which ways to a judgment are still open, by what was recorded.

    `filed_together` says that the joint way was taken; `could_end` is the first day on which a divorce could
    end by it, in words, while it is only planned.
    """

    apart: bool = True
    together: bool = False
    silent: bool = True
    answered: bool = True
    filed_together: bool = False
    could_end: str = ""


ALL = Ways(together=True)


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The sheet of one case."""
    yield sheet(brief.on, brief.case, if_filed_together(brief))


def sheet(on: date, case: Case | None = None, if_together: Agenda | None = None) -> Sheet:
    """The road as the law stands on the day `on`; with the standing facts of a case its own ways and days.

    `if_together` holds the dates of the joint way, where that is open too.
    """
    kind = known(case.matter.kind) if case else None
    ways = _ways(case, on) if case else ALL
    return Sheet(
        template="road.html",
        title=_("The road from here"),
        running=_("The road from here"),
        purpose=_("From the filing to the judgment: which paper, by whom, and from which day."),
        values={
            "ways": _both_ways(ways, if_together) if if_together else ways,
            "of_case": case is not None,
            "served": case is not None and service_complete(case, on) is not None,
            "unseen": case is not None and served_unseen(case) and petitioner_disclosure(case, on) is None,
            "days": _days(case, on) if case else defaultdict(str),
            "divorce": kind in (None, Kind.DISSOLUTION),
            "nullity": kind in (None, Kind.NULLITY),
            "only_nullity": kind is Kind.NULLITY,
            **{name: figure(of, on).value for name, of in FIGURES.items()},
            "hotline": figure("help.domestic_violence_hotline", on).value,
        },
    )


def _ways(case: Case, on: date) -> Ways:
    record = happened(case, on)
    answered = known(record.response_filed_on) or known(record.appeared_on)
    asked = known(record.default_asked_on)
    if joint(case):
        return Ways(apart=False, together=True, filed_together=True)
    return Ways(silent=not answered, answered=not asked)


def _both_ways(alone: Ways, if_together: Agenda) -> Ways:
    ends = (one.deadline.target for one in if_together.ahead if one.deadline.key == EARLIEST_END)
    return replace(alone, together=True, could_end=next(map(spell_date, ends), ""))


EARLIEST_END = "waiting.earliest_end"


def _days(case: Case, on: date) -> Mapping[str, str]:
    """The days of the case that are still open, in words, by the name of the date without its dot."""
    open_now = {
        one.deadline.key.replace(".", "_"): spell_date(one.deadline.target)
        for one in agenda(case, on).entries
        if one.state in (State.AHEAD, State.POSSIBLE, State.MISSED)
    }
    return defaultdict(str, open_now)
