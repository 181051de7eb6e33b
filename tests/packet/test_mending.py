"""What stops a filing: the next step leads on, and where an answer can mend it, the answer named does."""

from collections.abc import Iterator, Sequence
from contextlib import suppress
from datetime import date, timedelta
from itertools import islice
from typing import Any

from pydantic import ValidationError

from firstpaper.facts import Case, Day, known
from firstpaper.intake import AnswerKind, asked, standing
from firstpaper.intake.events import asking_anything
from firstpaper.law.finding import FIRST_COURT_DAY, Weight
from firstpaper.law.register import all_rules
from firstpaper.packet.next_step import next_step
from tests.each import for_each
from tests.law.rule_cases import RULE_CASES, RuleCase
from tests.stopped import Stopped, stopped_cases, stops

NOT_BY_AN_ANSWER = {
    "nullity.cohabitation": "nobody told who files",
    "nullity.last_day": "one spouse has died, a judge may soon allow a late filing, or no spouse files",
    "nullity.who_may_file": "somebody else than a spouse files, who has no other ground",
    "residence.same_spouse": "neither of the two lives in California",
}
"""Rules that can stop a filing in a way that no answer mends and no day ends, and why."""

COUNTIES = (
    "residence.exception.wedding_county",
    "residence.petitioner.own_county",
    "residence.respondent.own_county",
)
"""Where a county is named in which a case could be filed."""

MOST_TRIED = 3000


@for_each(RULE_CASES)
def test_every_stop_of_a_rule_names_the_answers_that_mend_it_or_the_day_that_ends_it(one: RuleCase) -> None:
    for found in all_rules()[one.rule].apply(one.case, one.on):
        if found.weight is Weight.STOP:
            ways = (bool(found.mended_by), FIRST_COURT_DAY in found.dates)
            assert sum(ways) == 1 or (one.rule in NOT_BY_AN_ANSWER and not any(ways)), found.says
            assert all(asking_anything(key, one.case) for key in found.mended_by)


@for_each(NOT_BY_AN_ANSWER)
def test_what_no_answer_mends_happens(rule: str) -> None:
    found = [
        each for one in RULE_CASES if one.rule == rule for each in all_rules()[rule].apply(one.case, one.on)
    ]
    assert any(
        one.weight is Weight.STOP and not one.mended_by and FIRST_COURT_DAY not in one.dates for one in found
    )


@for_each(stopped_cases())
def test_the_next_step_of_a_stopped_case_leads_on(one: Stopped) -> None:
    step = next_step(one.case, one.on)
    about = [stop for stop in one.stops if stop.title in step.words]
    assert about
    match step.command:
        case "change":
            assert step.more
            assert set(step.more) <= {each.key for each in asked(standing(one.case))}
        case "packet":
            assert step.more == ("--on", about[0].dates[FIRST_COURT_DAY].isoformat())
            assert not any(
                stop.id == about[0].id for stop in stops(one.case, about[0].dates[FIRST_COURT_DAY])
            )
        case _:
            assert (step.command, step.about) == ("why", (about[0].id,))
    assert len(one.stops) == 1 or str(len(one.stops)) in step.words


@for_each(stopped_cases())
def test_an_answer_given_again_as_the_next_step_says_takes_the_stop_away(one: Stopped) -> None:
    step = next_step(one.case, one.on)
    if step.command == "change":
        title = next(stop.title for stop in one.stops if stop.title in step.words)
        before = _entitled(title, one.case, one.on)
        tried = islice(_told_again(one.case, step.more, one.on), MOST_TRIED)
        assert any(_entitled(title, case, one.on) < before for case in tried), step


def _entitled(title: str, case: Case, on: date) -> int:
    return sum(stop.title == title for stop in stops(case, on))


def _told_again(case: Case, keys: Sequence[str], on: date) -> Iterator[Case]:
    """The case with every mixture of other answers at these keys; each can also stay as it is."""
    if not keys:
        yield case
        return
    for answer in (case.fact(keys[0]), *_others(case, keys[0], on)):
        with suppress(ValidationError):
            yield from _told_again(case.with_fact(keys[0], answer), keys[1:], on)


def _others(case: Case, key: str, on: date) -> Sequence[Any]:
    """Other answers that a person can give to a question."""
    question, now = asking_anything(key, case), known(case.fact(key))
    assert question
    values = [choice.value for choice in question.choices]
    match question.kind:
        case AnswerKind.YES_NO:
            return (True, False)
        case AnswerKind.CHOICE:
            return values
        case AnswerKind.SEVERAL:
            fewer = (tuple(each for each in now if each != gone) for gone in now or ())
            return [*fewer, *((value,) for value in values)]
        case AnswerKind.DATE:
            return [Day.of(on - timedelta(days)) for days in (1, 400, 4000, 9000)]
        case AnswerKind.PERIODS:
            return [()]
        case AnswerKind.TEXT:
            return ["", *filter(None, (known(case.fact(place)) for place in COUNTIES))]
    return []
