"""The dates as a person keeps them: what is ahead, done, not needed any more, and not running yet."""

from collections.abc import Mapping
from datetime import date
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.choices import FeeState, FinalDisclosure, ServiceMethod
from firstpaper.law.agenda import Agenda, State, agenda
from firstpaper.law.deadline_register import deadlines
from tests.any_case import any_case, filing_days

ON = date(2027, 1, 6)
BY_HAND = {"method": "personal", "served_on": "2026-12-05"}
FILED = {"filed_on": "2026-12-01"}
SERVED = {**FILED, "service": BY_HAND}


def found(on: date = ON, *, kind: str = "dissolution", wanted: bool | None = None, **record: Any) -> Agenda:
    case = {"matter": {"kind": kind}, "waiver": {"wanted": wanted}, "record": record}
    return agenda(Case.model_validate(case), on)


def states(of: Agenda) -> dict[str, tuple[State, date | None]]:
    return {one.deadline.key: (one.state, one.done_on) for one in of.entries}


def starts(of: Agenda) -> dict[str, str]:
    return {one.example.key: one.starts for one in of.later}


DONE: Mapping[str, tuple[str, dict[str, Any], date]] = {
    "a response": ("response.petition", {**SERVED, "response_filed_on": "2026-12-28"}, date(2026, 12, 28)),
    "a default": ("response.default_from", {**SERVED, "default_asked_on": "2027-01-05"}, date(2027, 1, 5)),
    "the papers": ("dismissal.serve_by", SERVED, date(2026, 12, 5)),
    "the first date for them": ("dismissal.unserved", SERVED, date(2026, 12, 5)),
    "the proof": (
        "dismissal.prove_by",
        {**FILED, "service": {**BY_HAND, "proof_filed_on": "2026-12-08"}},
        date(2026, 12, 8),
    ),
    "my disclosure": (
        "disclosure.petitioner",
        {**FILED, "disclosure_served_on": "2026-12-03"},
        date(2026, 12, 3),
    ),
    "their disclosure": (
        "disclosure.respondent",
        {**SERVED, "response_filed_on": "2026-12-20", "other_disclosure_served_on": "2026-12-22"},
        date(2026, 12, 22),
    ),
    "the form back": (
        "service.acknowledgment",
        {
            **FILED,
            "service": {
                "method": "acknowledgment",
                "mailed_on": "2026-12-02",
                "acknowledged_on": "2026-12-08",
                "acknowledgment_back_on": "2026-12-09",
            },
        },
        date(2026, 12, 9),
    ),
}


@pytest.mark.parametrize(
    ("told", "state"),
    [
        (FinalDisclosure.BOTH_SERVED, State.DONE),
        (FinalDisclosure.BOTH_WAIVED, State.NOT_NEEDED),
        (FinalDisclosure.MINE_SERVED, State.AHEAD),
    ],
)
def test_a_final_disclosure_before_a_trial_is_done_without_a_day_or_given_up(
    told: FinalDisclosure, state: State
) -> None:
    """Fam. Code 2105(a) and (d)."""
    answered = {**SERVED, "response_filed_on": "2026-12-20", "trial_on": "2027-03-15"}
    assert states(found(**answered, final_disclosure=told))["disclosure.final"] == (state, None)


@pytest.mark.parametrize(("key", "record", "done_on"), DONE.values(), ids=DONE)
def test_what_was_done_is_ticked_with_its_day(key: str, record: dict[str, Any], done_on: date) -> None:
    assert states(found(**record))[key] == (State.DONE, done_on)


@pytest.mark.parametrize(("key", "record", "done_on"), DONE.values(), ids=DONE)
def test_it_was_not_done_before_its_day(key: str, record: dict[str, Any], done_on: date) -> None:
    earlier = found(date(2026, 12, 1), **record)
    assert states(earlier).get(key, (State.AHEAD,))[0] is not State.DONE


NEEDLESS = {
    "no default once a response is in": (
        "response.default_from",
        {**SERVED, "response_filed_on": "2026-12-28"},
    ),
    "no default once they took part": ("response.default_from", {**SERVED, "appeared_on": "2026-12-28"}),
    "no service once they took part": ("dismissal.serve_by", {**FILED, "appeared_on": "2026-12-28"}),
    "no proof once they took part": ("dismissal.prove_by", {**SERVED, "response_filed_on": "2026-12-28"}),
    "no end for delay with an order": ("dismissal.finish_by", {**FILED, "support_or_custody_order": True}),
    "no warning for delay with an order": ("dismissal.untried", {**FILED, "support_or_custody_order": True}),
}


@pytest.mark.parametrize(("key", "record"), NEEDLESS.values(), ids=NEEDLESS)
def test_what_something_else_ended_is_not_needed_any_more(key: str, record: dict[str, Any]) -> None:
    """Code Civ. Proc. 417.30, 583.161, 583.220; Cal. Rules of Court, rule 5.74."""
    assert states(found(**record))[key] == (State.NOT_NEEDED, None)


def test_an_open_date_is_ahead_then_missed_after_the_court_day() -> None:
    """Served on December 2, 2026: day 30 is New Year's Day, so the law moves it to January 4."""
    record = {**FILED, "service": {**BY_HAND, "served_on": "2026-12-02"}}
    for on, state in ((date(2027, 1, 4), State.AHEAD), (date(2027, 1, 5), State.MISSED)):
        assert states(found(on, **record))["response.petition"][0] is state


def test_a_first_day_that_has_come_is_possible() -> None:
    for on, state in ((date(2027, 1, 4), State.AHEAD), (date(2027, 1, 5), State.POSSIBLE)):
        assert states(found(on, **SERVED))["response.default_from"][0] is state


def test_a_waiver_by_silence_has_passed_the_day_after() -> None:
    """Cal. Rules of Court, rule 3.53: filed November 23, 2026, so the court has until December 2."""
    asked = {"filed_on": "2026-11-23", "fee": FeeState.WAIVER_ASKED, "waiver_filed_on": "2026-11-23"}
    for on, state in ((date(2026, 12, 2), State.AHEAD), (date(2026, 12, 3), State.PASSED)):
        assert states(found(on, **asked))["fees.waiver_deemed"][0] is state


# --- what does not run yet ------------------------------------------------------------------------------


def test_before_the_service_the_answer_and_the_end_wait_for_it() -> None:
    waiting = starts(found(**FILED))
    assert {
        waiting[key] for key in ("response.petition", "response.default_from", "waiting.earliest_end")
    } == {"once the papers are served"}
    assert waiting["service.acknowledgment"] == "if mailed with form FL-117"
    assert waiting["disclosure.respondent"] == "once the other side responds"


def test_the_example_is_as_if_it_happened_on_that_day() -> None:
    """Fam. Code 2020, 2339(a): served on January 6, 2027."""
    examples = {one.example.key: one.example for one in found(**FILED).later}
    assert (examples["response.petition"].target, examples["response.petition"].rolled) == (
        date(2027, 2, 5),
        date(2027, 2, 5),
    )
    assert examples["waiting.earliest_end"].target == date(2027, 7, 7)


@pytest.mark.parametrize(
    ("service", "words"),
    [
        (
            {"method": "acknowledgment", "mailed_on": "2026-12-10"},
            "once form FL-117 is signed, if it comes back",
        ),
        ({"method": "substituted", "served_on": "2026-12-10"}, "once a copy is mailed to the same place"),
        ({"method": "abroad"}, "once service is complete"),
    ],
)
def test_a_way_of_service_says_what_it_waits_for(service: dict[str, Any], words: str) -> None:
    assert starts(found(**FILED, service=service))["response.petition"] == words


def test_a_day_of_service_told_in_part_waits_for_nothing_we_could_name() -> None:
    waiting = starts(found(**FILED, service={"method": "personal", "served_on": "2026-12"}))
    assert "response.petition" not in waiting


def test_a_wanted_fee_waiver_waits_for_its_request_and_a_denial() -> None:
    assert (
        starts(found(date(2026, 11, 30), wanted=True))["fees.waiver_deemed"]
        == "once you ask for the fee waiver"
    )
    assert starts(found(wanted=True))["fees.waiver_denied"] == "if the fee waiver is denied"
    assert "fees.waiver_denied" not in starts(found(wanted=True, **FILED, fee=FeeState.PAID))
    asked = found(**FILED, fee=FeeState.WAIVER_ASKED, waiver_filed_on="2027-01-05")
    assert starts(asked)["fees.waiver_denied"] == "if the fee waiver is denied"
    assert "fees.waiver_denied" not in starts(found(**FILED, fee=FeeState.PAID))
    assert "fees.waiver_deemed" not in starts(found(**FILED))


def test_an_amended_paper_waits_for_its_service() -> None:
    amended = starts(found(**SERVED, amended_on="2027-01-05"))
    assert amended["response.amended_petition"] == "once the amended paper is served"
    revoked = starts(found(**FILED, joint=True, revoked_on="2027-01-05"))
    assert revoked["response.revocation"] == "once the amended paper is served"


def test_a_joint_petition_waits_for_no_service_and_no_response() -> None:
    assert starts(found(**FILED, joint=True)) == {}


def test_after_publication_my_disclosure_waits_for_a_response() -> None:
    """Fam. Code 2104(f), 2110."""
    record = {**FILED, "service": {"method": "publication", "first_published_on": "2026-12-05"}}
    waiting = starts(found(**record))
    assert (
        waiting["disclosure.petitioner"] == waiting["disclosure.respondent"] == "once the other side responds"
    )


# --- planned, filed, or not known -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("record", "planned", "filed_on"),
    [
        ({}, True, None),
        (FILED, False, date(2026, 12, 1)),
        ({"filed_on": "2026-12"}, False, None),
        ({"filed_on": "2027-02-01"}, False, None),
    ],
)
def test_it_says_whether_the_dates_hang_on_a_plan(
    record: dict[str, Any], planned: bool, filed_on: date | None
) -> None:
    one = found(**record)
    assert (one.planned, one.filed_on) == (planned, filed_on)
    assert bool(one.entries) is (planned or filed_on is not None)


def test_a_planned_case_is_counted_from_the_first_day_that_is_right_for_its_filing() -> None:
    """Fam. Code 2320(a): here since July 1, 2026: safe from Saturday, January 2, 2027."""
    home = {"lives": "this_county", "state_since": "2026-07-01", "county_since": "2026-07-01"}
    case = Case.model_validate(
        {
            "matter": {"kind": "dissolution", "unions": ["marriage"]},
            "court": {"county": "Fresno"},
            "residence": {"petitioner": home, "respondent": {"lives": "other_state"}},
        }
    )
    one = agenda(case, date(2026, 11, 25))
    opens, due = date(2027, 1, 4), {each.deadline.key: each.deadline for each in one.entries}
    assert (one.planned, one.begins) == (True, opens)
    assert due["disclosure.petitioner"].target == date(2027, 3, 5)  # Fam. Code 2104(f): 60 days
    (end,) = (each.example for each in one.later if each.example.key == "waiting.earliest_end")
    assert end.target == date(2027, 7, 5)  # Fam. Code 2339(a): served on the day of filing


DAYS = st.one_of(st.none(), st.dates(date(2026, 6, 1), date(2028, 6, 1)).map(str), st.just("2026-12"))
RECORDS = st.fixed_dictionaries(
    {
        "filed_on": DAYS,
        "joint": st.sampled_from([None, True, False]),
        "fee": st.sampled_from([None, *FeeState]),
        "waiver_filed_on": DAYS,
        "waiver_denied_on": DAYS,
        "service": st.fixed_dictionaries(
            {
                "method": st.sampled_from([None, *ServiceMethod]),
                "served_on": DAYS,
                "mailed_on": DAYS,
                "acknowledged_on": DAYS,
                "acknowledgment_back_on": DAYS,
                "first_published_on": DAYS,
                "complete_on": DAYS,
                "proof_filed_on": DAYS,
            }
        ),
        "response_filed_on": DAYS,
        "appeared_on": DAYS,
        "default_asked_on": DAYS,
        "amended_on": DAYS,
        "revoked_on": DAYS,
        "amended_served_on": DAYS,
        "support_or_custody_order": st.sampled_from([None, True]),
        "disclosure_served_on": DAYS,
        "other_disclosure_served_on": DAYS,
        "final_disclosure": st.sampled_from([None, *FinalDisclosure]),
        "trial_on": DAYS,
        "serve_agreed_until": DAYS,
        "trial_agreed_until": DAYS,
    }
)


@given(RECORDS, st.dates(date(2026, 6, 1), date(2032, 6, 1)))
def test_for_any_record_the_open_dates_are_the_deadlines_and_nothing_is_said_twice(
    record: dict[str, Any], on: date
) -> None:
    case = Case.model_validate({"matter": {"kind": "dissolution"}, "record": record})
    one = agenda(case, on)
    assert {entry.deadline.key for entry in one.ahead} == {each.key for each in deadlines(case, on)}
    keys = [entry.deadline.key for entry in one.entries] + [each.example.key for each in one.later]
    assert len(keys) == len(set(keys))
    assert all(a.deadline.target <= b.deadline.target for a, b in pairwise(one.entries))
    assert all(entry.done_on is None for entry in one.entries if entry.state is not State.DONE)
    assert set(one.ahead) | set(one.ended) == set(one.entries)


@settings(max_examples=60, deadline=None)
@given(any_case(), filing_days())
def test_whatever_was_told_every_date_has_its_state(case: Case, on: date) -> None:
    entries = agenda(case, on).entries
    assert all(one.done_on is None or one.state is State.DONE for one in entries)
    assert len({one.deadline.id for one in entries}) == len(entries)
