"""When a default can be asked for: the time to respond is over in silence, and nobody asked yet.

The 30 days are those of the summons (Code Civ. Proc. 412.20(a)(3)). In a joint petition, and where both
filed, there is none (Cal. Rules of Court, rule 5.74(c)(2)).
"""

from datetime import date
from typing import Any

import pytest

from firstpaper.facts import Case
from firstpaper.law.measures.response import can_ask_for_default, default_from

SERVED = {"filed_on": "2026-05-04", "service": {"method": "personal", "served_on": "2026-06-01"}}
"""Served on a Monday; the thirtieth day is Wednesday, July 1."""


def case(**more: Any) -> Case:
    return Case.model_validate({"record": {**SERVED, **more}})


@pytest.mark.parametrize(
    ("on", "open_"), [(date(2026, 7, 1), False), (date(2026, 7, 2), True), (date(2026, 9, 1), True)]
)
def test_a_default_can_be_asked_for_from_the_day_after_the_time_to_respond(on: date, open_: bool) -> None:
    opens = default_from(case(), on)
    assert opens
    assert opens.rolled == date(2026, 7, 2)
    assert can_ask_for_default(case(), on) is open_


@pytest.mark.parametrize(
    "more",
    [
        {"default_asked_on": "2026-07-06"},
        {"default_asked_on": "don't know"},
        {"response_filed_on": "2026-06-20"},
        {"appeared_on": "2026-06-20"},
        {"joint": True},
    ],
)
def test_nobody_asks_again_nor_against_somebody_who_took_part(more: dict[str, Any]) -> None:
    assert not can_ask_for_default(case(**more), date(2026, 9, 1))


def test_a_request_that_lies_ahead_was_not_made_yet() -> None:
    assert can_ask_for_default(case(default_asked_on="2026-09-02"), date(2026, 9, 1))


def test_nothing_can_be_asked_for_before_anybody_was_served() -> None:
    assert not can_ask_for_default(
        Case.model_validate({"record": {"filed_on": "2026-05-04"}}), date(2026, 9, 1)
    )
