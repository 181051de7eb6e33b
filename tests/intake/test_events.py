"""The events after the filing: whole as data, asked only where they fit, and never left contradicting."""

from datetime import date, time
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.choices import FeeState, LaterService, ServedBy, ServiceMethod
from firstpaper.facts.matter import Period
from firstpaper.facts.record import Attempt, Closure, Record
from firstpaper.forms import forms_needed
from firstpaper.intake import AnswerRefused, echo, read_answer
from firstpaper.intake.events import (
    CLOSED,
    METHOD,
    as_they_happened,
    details,
    event,
    events,
    happened_already,
    in_short,
    recorded,
    told_with,
    with_detail,
    without_event,
)
from firstpaper.intake.kinds import recorded_places
from firstpaper.intake.predicates import OF_EVENTS
from firstpaper.intake.question import Question
from firstpaper.law.register import all_rules
from firstpaper.packet.templates import templates_folder
from tests.each import for_each
from tests.intake.predicates_of import predicates_of

TODAY = date(2027, 6, 1)
DAY = Day(2026, 12, 5)
TOPICS = events().topics
QUESTIONS: list[Question] = [question for topic in TOPICS for question in topic.questions]
PREDICATES = predicates_of(OF_EVENTS)
LATER_FORMS = {"FL-115", "FL-117"}

each_question = for_each(QUESTIONS, lambda question: question.key)


def case_of(**told: Any) -> Case:
    case = Case()
    for key, value in told.items():
        case = case.with_fact("record." + key.replace("__", "."), value)
    return case


def served(method: str, **told: Any) -> Case:
    return case_of(service__method=method, **{f"service__{name}": value for name, value in told.items()})


NEVER_TOLD = {"record.calendar_id", "record.amends", "record.amended_in"}
"""What the program itself keeps: a word drawn at random, and the names of case files."""


# --- the data -----------------------------------------------------------------------------------


def test_every_recorded_fact_belongs_to_exactly_one_event() -> None:
    keys = [question.key for question in QUESTIONS]
    assert len(keys) == len(set(keys))
    assert set(recorded_places()) - set(keys) == NEVER_TOLD
    assert set(Record.model_fields) == {key.split(".")[1] for key in recorded_places()}


@each_question
def test_what_a_detail_feeds_exists(question: Question) -> None:
    assert set(question.feeds.rules) <= set(all_rules())
    ours = {path.stem for path in templates_folder().glob("*.html")} | {"dates-ahead"}
    asked_for = {needed.form for needed in forms_needed(Case(), TODAY)}
    assert set(question.feeds.sheets) <= ours | asked_for | LATER_FORMS
    assert question.feeds.items == ()


SET_BEFOREHAND = ("record.service.complete_on", "record.trial_on")


@each_question
def test_a_day_that_somebody_recorded_has_come(question: Question) -> None:
    if question.key.endswith("_on"):
        assert question.not_after_today is (question.key not in SET_BEFOREHAND)


@each_question
def test_every_example_is_an_answer(question: Question) -> None:
    topic = next(topic for topic in TOPICS if question in topic.questions)
    (one,) = [one for one in details(topic, _fits(question)) if one.key == question.key]
    for example in one.question.examples:
        copied_today = read_answer(one, example, CHECKED)
        value = read_answer(one, example, TODAY)
        assert value == copied_today
        assert read_answer(one, echo(one, value), TODAY) == value


CHECKED = date(2026, 11, 25)
"""The day on which the law here was checked: nobody who copies an example then is told that it is to come."""

BY_A_HELPER = served(ServiceMethod.PERSONAL).with_fact("record.service.served_by", ServedBy.SOMEBODY_ELSE)


def _fits(question: Question) -> Case:
    """A case in which the detail is asked for."""
    cases = [
        Case(),
        case_of(joint=True, revoked_on=DAY),
        case_of(fee="waiver_denied"),
        case_of(amended_on=DAY, amended_served_how="mail"),
        *(served(method) for method in ServiceMethod),
        BY_A_HELPER,
    ]
    return next(case for case in cases if question.applies is None or question.applies(case))


def test_the_filing_and_its_fee_are_told_together() -> None:
    filed = event("filed")
    assert filed
    assert [topic.name for topic in told_with(filed)] == ["filed", "fee"]
    fee = event("fee")
    assert fee
    assert told_with(fee) == (fee,)
    assert event("field") is None


# --- when a detail is asked for -------------------------------------------------------------------

Example = tuple[str, Case]
FEE = {state: case_of(fee=state) for state in FeeState}
HOW = {method: served(method) for method in ServiceMethod}
AMENDED, REVOKED = case_of(amended_on=DAY), case_of(joint=True, revoked_on=DAY)
HOLDS: tuple[Example, ...] = (
    ("asked_for_a_waiver", FEE[FeeState.WAIVER_ASKED]),
    ("asked_for_a_waiver", FEE[FeeState.WAIVER_GRANTED]),
    ("was_denied_a_waiver", FEE[FeeState.WAIVER_DENIED]),
    ("was_denied_a_waiver", case_of(fee="paid", waiver_denied_on=DAY)),
    ("is_denied_a_waiver", FEE[FeeState.WAIVER_DENIED]),
    ("was_left_with_another", HOW[ServiceMethod.SUBSTITUTED]),
    ("was_handed_over_or_left", HOW[ServiceMethod.PERSONAL]),
    ("was_handed_over_or_left", HOW[ServiceMethod.SUBSTITUTED]),
    ("was_served_by_a_person", HOW[ServiceMethod.PERSONAL]),
    ("was_served_by_a_person", HOW[ServiceMethod.ACKNOWLEDGMENT]),
    ("was_served_by_a_helper", BY_A_HELPER),
    ("was_mailed", HOW[ServiceMethod.SUBSTITUTED]),
    ("was_mailed", HOW[ServiceMethod.ACKNOWLEDGMENT]),
    ("was_mailed", HOW[ServiceMethod.OUT_OF_STATE_MAIL]),
    ("was_mailed_with_the_form", HOW[ServiceMethod.ACKNOWLEDGMENT]),
    ("was_published", HOW[ServiceMethod.PUBLICATION]),
    ("was_posted", HOW[ServiceMethod.POSTING]),
    ("ends_as_ordered", HOW[ServiceMethod.COURT_DIRECTED]),
    ("ends_as_ordered", HOW[ServiceMethod.ABROAD]),
    ("ends_as_ordered", HOW[ServiceMethod.POSTING]),
    ("filed_together", case_of(joint=True)),
    ("has_an_amended_paper", AMENDED),
    ("has_an_amended_paper", REVOKED),
    ("mailed_the_amended_paper", AMENDED.with_fact("record.amended_served_how", LaterService.MAIL)),
)
HOLDS_NOT: tuple[Example, ...] = (
    ("asked_for_a_waiver", FEE[FeeState.PAID]),
    ("was_denied_a_waiver", FEE[FeeState.WAIVER_GRANTED]),
    ("was_denied_a_waiver", FEE[FeeState.PAID]),
    ("is_denied_a_waiver", case_of(fee="paid", waiver_denied_on=DAY)),
    ("was_left_with_another", HOW[ServiceMethod.PERSONAL]),
    ("was_handed_over_or_left", HOW[ServiceMethod.ACKNOWLEDGMENT]),
    ("was_served_by_a_person", HOW[ServiceMethod.POSTING]),
    ("was_served_by_a_helper", HOW[ServiceMethod.PERSONAL]),
    ("was_mailed", HOW[ServiceMethod.PERSONAL]),
    ("was_mailed_with_the_form", HOW[ServiceMethod.OUT_OF_STATE_MAIL]),
    ("was_published", HOW[ServiceMethod.POSTING]),
    ("was_posted", HOW[ServiceMethod.PUBLICATION]),
    ("ends_as_ordered", HOW[ServiceMethod.ACKNOWLEDGMENT]),
    ("filed_together", case_of(joint=False)),
    ("has_an_amended_paper", case_of(joint=True, amended_on=DAY)),
    ("has_an_amended_paper", case_of(revoked_on=DAY)),
    ("mailed_the_amended_paper", case_of(amended_served_how="mail")),
    ("mailed_the_amended_paper", AMENDED.with_fact("record.amended_served_how", LaterService.PERSONAL)),
)


@pytest.mark.parametrize(("name", "case"), HOLDS)
def test_holds(name: str, case: Case) -> None:
    assert PREDICATES[name](case) is True


@pytest.mark.parametrize(("name", "case"), HOLDS_NOT)
def test_holds_not(name: str, case: Case) -> None:
    assert PREDICATES[name](case) is False


def test_every_predicate_is_tried_both_ways_and_holds_for_nothing_told_or_unknown() -> None:
    assert {name for name, _case in HOLDS} == {name for name, _case in HOLDS_NOT} == PREDICATES.keys()
    unknown = case_of(**{key.removeprefix("record.").replace(".", "__"): DONT_KNOW for key in _told_keys()})
    for name in PREDICATES:
        assert PREDICATES[name](Case()) is False
        assert PREDICATES[name](unknown) is False


def _told_keys() -> list[str]:
    return [question.key for question in QUESTIONS]


# --- recording and taking back ----------------------------------------------------------------------


def test_another_way_of_service_takes_out_the_days_of_the_first() -> None:
    case = with_detail(with_detail(Case(), METHOD, "personal"), "record.service.served_on", DAY)
    again = with_detail(case, METHOD, "substituted")
    assert recorded(again) == {METHOD: ServiceMethod.SUBSTITUTED}
    same = with_detail(case, METHOD, ServiceMethod.PERSONAL)
    assert recorded(same) == recorded(case)


def test_taking_back_a_way_of_service_takes_back_what_hung_on_it() -> None:
    case = served("acknowledgment", mailed_on=DAY, acknowledged_on=DAY, acknowledgment_back_on=DAY)
    topic = event("served")
    assert topic
    assert recorded(without_event(case, topic)) == {}


def test_taking_back_one_event_leaves_the_others() -> None:
    case = served("personal", served_on=DAY).with_fact("record.filed_on", DAY)
    topic = event("served")
    assert topic
    assert recorded(without_event(case, topic)) == {"record.filed_on": DAY}


def test_the_end_of_a_joint_petition_goes_when_the_two_did_not_file_together() -> None:
    case = REVOKED.with_fact("record.amended_served_on", DAY)
    assert recorded(with_detail(case, "record.joint", False)) == {"record.joint": False}


def test_what_happened_is_listed_by_event() -> None:
    topic = event("served")
    assert topic
    case = served("personal", served_on=DAY)
    assert [one.key for one in happened_already(topic, case)] == [METHOD, "record.service.served_on"]
    assert happened_already(topic, Case()) == ()


VALUES: dict[str, Any] = {
    "date": st.dates(date(2015, 1, 1), date(2035, 1, 1)).map(Day.of),
    "yes_no": st.booleans(),
    "quantity": st.integers(1, 120),
    "text": st.just("26FL001234"),
    "attempts": st.just((Attempt(on=DAY, at=time(8)),)),
    "periods": st.just((Period(start=DAY, end=DAY, why="a stay"),)),
    "closures": st.just((Closure(first=DAY, why="flood"),)),
}
STEPS = st.lists(
    st.one_of(
        st.sampled_from(QUESTIONS).flatmap(
            lambda question: st.tuples(
                st.just(question.key),
                st.one_of(
                    st.just(DONT_KNOW),
                    st.sampled_from([choice.value for choice in question.choices])
                    if question.choices
                    else VALUES[question.kind.value],
                ),
            )
        ),
        st.tuples(st.sampled_from(TOPICS), st.none()),
    ),
    max_size=15,
)


@given(STEPS)
def test_after_any_steps_every_recorded_detail_is_one_that_is_asked_for(steps: list[Any]) -> None:
    case = Case()
    for what, value in steps:
        case = with_detail(case, what, value) if isinstance(what, str) else without_event(case, what)
    asked = {one.key for topic in TOPICS for one in details(topic, case)}
    assert set(recorded(case)) <= asked
    assert Case.model_validate_json(case.model_dump_json(exclude_unset=True)) == case


# --- tries to hand over the papers ---------------------------------------------------------------------

READ = {
    "12/2/2026 6:30 pm": (Day(2026, 12, 2), time(18, 30)),
    "December 2 2026, at 8 am": (Day(2026, 12, 2), time(8)),
    "12/2/2026 12:15 a.m.": (Day(2026, 12, 2), time(0, 15)),
    "12/2/2026, 12 PM": (Day(2026, 12, 2), time(12)),
    "12/2/2026 noon": (Day(2026, 12, 2), time(12)),
    "12/2/2026 18:30": (Day(2026, 12, 2), time(18, 30)),
    "12/2/2026 0:05": (Day(2026, 12, 2), time(0, 5)),
    "December 2026": (Day(2026, 12), None),
    "12/2/2026": (Day(2026, 12, 2), None),
}


def tries(text: str, today: date = TODAY) -> Any:
    topic = event("served")
    assert topic
    (one,) = [one for one in details(topic, served("substituted")) if one.key.endswith("attempts")]
    return read_answer(one, text, today)


@pytest.mark.parametrize(("typed", "read"), READ.items())
def test_a_try_is_read(typed: str, read: tuple[Day, time | None]) -> None:
    assert tries(typed) == (Attempt(on=read[0], at=read[1]),)


def test_several_tries_are_read_line_by_line_and_said_back() -> None:
    found = tries("12/2/2026 6:30 pm; 12/4/2026 8 am\n12/5/2026")
    assert [one.at for one in found] == [time(18, 30), time(8), None]
    topic = event("served")
    assert topic
    (one,) = [one for one in details(topic, served("substituted")) if one.key.endswith("attempts")]
    said = echo(one, found)
    assert said.startswith("Wednesday, December 2, 2026, 6:30 pm; Friday, December 4, 2026, 8:00 am;")
    assert tries(said) == found


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("12/2/2026 6:30", "6:30 am or 6:30 pm"),
        ("12/2/2026 13 pm", "no such time"),
        ("12/2/2026 24:00", "no such time"),
        ("12/2/2026 6:75 pm", "no such time"),
        ("6:30 pm", "could not be read as a date"),
        ("12/2/2027 6:30 pm", "still to come"),
        ("12/2/2026 8 am\n2/30/2026 8 am", "Line 2"),
        ("," * 5000, "could not be read"),
    ],
)
def test_a_try_that_is_not_clear_is_refused_in_words(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        tries(typed)


# --- days on which the court was closed ------------------------------------------------------------------


def closures(text: str) -> Any:
    return read_answer(_closed(), text, TODAY)


def _closed() -> Any:
    topic = event("closed")
    assert topic
    (one,) = details(topic, Case())
    return one


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("1/8/2027, power cut", Closure(first=Day(2027, 1, 8), why="power cut")),
        ("January 8, 2027", Closure(first=Day(2027, 1, 8))),
        ("1/8/2027: smoke, and no one came", Closure(first=Day(2027, 1, 8), why="smoke, and no one came")),
        (
            "1/11/2027 to 1/13/2027, flood",
            Closure(first=Day(2027, 1, 11), last=Day(2027, 1, 13), why="flood"),
        ),
        ("from 1/11/2027 to 1/13/2027", Closure(first=Day(2027, 1, 11), last=Day(2027, 1, 13))),
        ("12/24/2027, announced", Closure(first=Day(2027, 12, 24), why="announced")),
    ],
)
def test_a_closure_is_read_and_said_back(typed: str, read: Closure) -> None:
    assert closures(typed) == (read,)
    assert closures(echo(_closed(), (read,))) == (read,)


def test_several_closures_are_read_line_by_line() -> None:
    assert [one.first.day for one in closures("1/8/2027, power cut\n1/11/2027 to 1/13/2027")] == [8, 11]


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("January 2027, flood", "not a whole day"),
        ("1/8/2027 to February 2027", "not a whole day"),
        ("since 1/8/2027, flood", "last day too"),
        ("1/13/2027 to 1/11/2027", "before the start"),
        ("flood", "could not be read as a date"),
        ("1/8/2027, flood\n2/30/2027", "Line 2"),
        ("1/8/2027, account 1234567890", "last 4 digits"),
        ("1/8/2027, " + "x" * 501, "too long"),
    ],
)
def test_a_closure_that_is_not_clear_is_refused_in_words(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        closures(typed)


def test_a_detail_that_does_not_fit_is_refused_in_words() -> None:
    with pytest.raises(AnswerRefused) as refused:
        with_detail(Case(), METHOD, "by pigeon")
    assert refused.value.message


# --- closures of the court -----------------------------------------------------------------------------

FLOOD = Closure(first=Day(2027, 1, 11), last=Day(2027, 1, 13), why="flood")
POWER_CUT = Closure(first=Day(2027, 1, 8), why="power cut")


def test_a_closure_recorded_later_stands_beside_the_one_before() -> None:
    case = with_detail(Case(), CLOSED, (FLOOD,))
    assert with_detail(case, CLOSED, (POWER_CUT,)).record.court_closed == (FLOOD, POWER_CUT)


def test_a_closure_that_began_on_the_same_day_is_corrected() -> None:
    case = with_detail(Case(), CLOSED, (FLOOD, POWER_CUT))
    shorter = FLOOD.model_copy(update={"last": Day(2027, 1, 12)})
    assert with_detail(case, CLOSED, (shorter,)).record.court_closed == (POWER_CUT, shorter)


def test_events_are_told_in_the_order_of_their_days_whatever_is_usual() -> None:
    record = {
        "filed_on": "2026-08-03",
        "fee": "paid",
        "service": {"method": "personal", "served_on": "2026-08-10", "proof_filed_on": "2026-12-12"},
        "response_filed_on": "2026-09",
        "amended_on": "2026-12-07",
        "amended_served_on": "2026-12-10",
    }
    case = Case.model_validate({"record": record})
    told = [topic.name for topic in as_they_happened(case) if happened_already(topic, case)]
    assert told == ["filed", "fee", "served", "response", "amended", "amended-served", "proof"]


def test_every_event_is_among_them_once() -> None:
    assert sorted(map(id, as_they_happened(Case()))) == sorted(map(id, TOPICS))


def test_closures_are_told_on_one_line_with_their_days() -> None:
    closed = event("closed")
    assert closed
    line = in_short(closed, with_detail(Case(), CLOSED, (POWER_CUT,)))
    assert line == "The court was closed on a working day (Friday, January 8, 2027, power cut)"


def test_closures_are_taken_out_together() -> None:
    case = with_detail(Case(), CLOSED, (FLOOD, POWER_CUT))
    closed = event("closed")
    assert closed
    assert without_event(case, closed).record.court_closed is None
    assert with_detail(case, CLOSED, DONT_KNOW).record.court_closed is DONT_KNOW
