"""Whole cases in which something stops a filing: those of the rules' own cases, and of the households."""

from collections.abc import Iterator
from datetime import date
from functools import cache
from typing import NamedTuple

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.intake import next_question, standing
from firstpaper.law.finding import Finding, Weight
from firstpaper.law.measures.record import is_filed
from firstpaper.law.register import all_rules, findings
from tests.cli.person import HOUSEHOLDS, facts_of
from tests.law.rule_cases import RULE_CASES, RuleCase, laid_over

ON = date(2026, 12, 7)


class Stopped(NamedTuple):
    """A case that is not filed yet, with every question answered, in which something stops the filing."""

    name: str
    case: Case
    on: date

    def __str__(self) -> str:
        return self.name

    @property
    def stops(self) -> tuple[Finding, ...]:
        """What stops it, heaviest first."""
        return stops(self.case, self.on)


def stops(case: Case, on: date) -> tuple[Finding, ...]:
    """What stops a filing of a case on the day `on`."""
    return tuple(one for one in findings(standing(case), on) if one.weight is Weight.STOP)


def stopped_cases() -> Iterator[Stopped]:
    """One of every way in which the rules' own cases and the households are stopped."""
    yield from _stopped_cases()


@cache
def _stopped_cases() -> tuple[Stopped, ...]:
    each = (*_of_rules(), *_of_households())
    found = {tuple((stop.id, stop.mended_by) for stop in one.stops): one for one in reversed(each)}
    return tuple(one for ids, one in found.items() if ids and not is_filed(standing(one.case)))


def _of_rules() -> Iterator[Stopped]:
    stopping = (one for one in RULE_CASES if any(found.weight is Weight.STOP for found in _found(one)))
    return (Stopped(str(one), _whole(one), one.on) for one in stopping)


def _of_households() -> Iterator[Stopped]:
    return (Stopped(path.stem, facts_of(path.stem), ON) for path in sorted(HOUSEHOLDS.glob("*.yaml")))


def _found(one: RuleCase) -> tuple[Finding, ...]:
    return all_rules()[one.rule].apply(one.case, one.on)


def _whole(one: RuleCase) -> Case:
    """The facts of a rule's case in a plain household; whatever is open then is not known."""
    plain = facts_of("plain-childless-divorce").model_dump(mode="json", exclude_none=True)
    case = Case.model_validate(laid_over(plain, one.facts))
    while question := next_question(case):
        case = case.with_fact(question.key, DONT_KNOW)
    return case
