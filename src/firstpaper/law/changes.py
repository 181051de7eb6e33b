"""What changes soon: rules that say something else for a filing on a later day.

Two filing days are compared only where something can change between them: a figure or a rule begins
or ends, or a day has come that the filer told or a finding names. Words that change from day to day
anyway, because they count from the filing, are no change; an outcome or a weight that changes always
is. A warning that only grows louder as its day comes near is not looked for.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from functools import cache
from typing import NamedTuple

from firstpaper.counting import day_after, spell_date
from firstpaper.counting.days import ONE_DAY
from firstpaper.facts import Case, Day
from firstpaper.facts.model import Facts
from firstpaper.law.figure import all_figures
from firstpaper.law.finding import Finding
from firstpaper.law.measures.record import judged_on
from firstpaper.law.register import all_rules, findings, rule_called
from firstpaper.locale import _

NEAR_DAYS = 60
"""How far ahead we look. Ours, not the law's."""

ByRule = Mapping[str, tuple[Finding, ...]]


class Change(NamedTuple):
    """One rule that says something else from the day `on`: what it says until then, and from then on."""

    on: date
    rule: str
    title: str
    before: tuple[Finding, ...]
    after: tuple[Finding, ...]

    @property
    def heavier(self) -> bool:
        """Whether filing on that day or later is worse than before."""
        return _heaviest(self.after) < _heaviest(self.before)

    @property
    def lighter(self) -> bool:
        """Whether filing on that day or later is better than before."""
        return _heaviest(self.after) > _heaviest(self.before)

    @property
    def says_something(self) -> bool:
        """Whether anything is new in what we say, and not only in how it is counted."""
        return not self.after or bool(self._new())

    def _new(self) -> list[str]:
        """What is said from that day on and was not before; where nothing is, what is new to do."""
        says = [one.says for one in self.after if one.says not in {old.says for old in self.before}]
        do = [one.do for one in self.after if one.do and one.do not in {old.do for old in self.before}]
        return says or do

    @property
    def says(self) -> str:
        """The change in one sentence or two: "From Friday, January 1, 2027: ..."."""
        nothing = (
            _("What we say stays the same.") if self.after else _("There is nothing more to watch here.")
        )
        words = " ".join(self._new() or [nothing])
        return _("From {day}: {words}").format(day=spell_date(self.on), words=words)


def changes(case: Case, on: date, days: int = NEAR_DAYS) -> tuple[Change, ...]:
    """What changes for the standing facts of a case within so many days after the filing day `on`.

    Where the clerk is closed on that day, the findings are those of the next open one, and what changes in
    between is in them.
    """
    found = _Found(case)
    judged, last = judged_on(case, on), day_after(on, days)
    turning = sorted(day for day in _turning_days(case, found.on(judged)) if judged < day <= last)
    return tuple(change for day in turning for change in _on_the_day(found, day))


class _Found:
    """The findings on one case by filing day, each day worked out once and as if the court were open.

    That the clerk is closed on a day changes nothing about the case, so it is left out.
    """

    def __init__(self, case: Case) -> None:
        self._case = case
        self._kept: dict[date, ByRule] = {}

    def on(self, day: date) -> ByRule:
        if day not in self._kept:
            by_rule: dict[str, tuple[Finding, ...]] = defaultdict(tuple)
            for one in findings(self._case, day, closed_too=True):
                if not rule_called(one.id).as_planned:
                    by_rule[one.id] += (one,)
            self._kept[day] = by_rule
        return self._kept[day]


def _turning_days(case: Case, found: ByRule) -> Iterable[date]:
    """Days on which something can change: those of the law, those named or told, and the day after them."""
    named = {day for many in found.values() for one in many for day in one.dates.values()}
    named.update(_told_days(case))
    return {*_days_of_the_law(), *named, *(day + ONE_DAY for day in named)}


def _told_days(facts: object) -> Iterator[date]:
    """Every day among the facts, a day told in part by its last possible day."""
    if isinstance(facts, Day):
        yield facts.latest
    elif isinstance(facts, Facts):
        for name in facts.model_fields_set:
            yield from _told_days(getattr(facts, name))
    elif isinstance(facts, tuple):
        for each in facts:
            yield from _told_days(each)


@cache
def _days_of_the_law() -> frozenset[date]:
    spans = [span for each in all_figures() for span in each.spans]
    rules = all_rules().values()
    ends = [each.until + ONE_DAY for each in (*spans, *rules) if each.until]
    return frozenset([*(each.since for each in (*spans, *rules)), *ends])


def _on_the_day(found: _Found, day: date) -> Iterator[Change]:
    earlier, eve, now = (found.on(day - 2 * ONE_DAY), found.on(day - ONE_DAY), found.on(day))
    for rule in sorted({*eve, *now}):
        before, after = eve.get(rule, ()), now.get(rule, ())
        stands = _stand(before) != _stand(after)
        steady = _words(earlier.get(rule, ())) == _words(before)
        if stands or (steady and _words(before) != _words(after)):
            yield Change(day, rule, (after or before)[0].title, before, after)


def _stand(many: tuple[Finding, ...]) -> list[tuple[str, ...]]:
    return sorted((one.outcome, one.weight, one.certainty) for one in many)


def _words(many: tuple[Finding, ...]) -> set[str]:
    return {one.says for one in many}


def _heaviest(many: tuple[Finding, ...]) -> int:
    """The order of the heaviest weight; more than any where nothing is said."""
    return min((one.weight.order for one in many), default=99)
