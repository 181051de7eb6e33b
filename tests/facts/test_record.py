"""What is recorded after the filing: kept in the case file, never asked for, and never set aside."""

from collections.abc import Iterator
from datetime import time

import pytest
from pydantic import BaseModel, ValidationError

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.choices import (
    FeeState,
    FinalDisclosure,
    Kind,
    LaterService,
    MailGoes,
    ServedBy,
    ServiceMethod,
    WaiverDenial,
    Who,
)
from firstpaper.facts.matter import Period
from firstpaper.facts.record import Attempt, Closure, Record
from firstpaper.intake import AnswerRefused, put, standing
from firstpaper.intake.engine import set_aside
from firstpaper.intake.kinds import places

A_DAY = Day(2026, 12, 1)
SERVICE_DAYS = [
    "served_on",
    "mailed_on",
    "acknowledged_on",
    "acknowledgment_back_on",
    "first_published_on",
    "first_posted_on",
    "complete_on",
    "accepted_on",
    "proof_filed_on",
]
DAYS = [
    "filed_on",
    "waiver_filed_on",
    "waiver_denied_on",
    "response_filed_on",
    "appeared_on",
    "default_asked_on",
    "disclosure_served_on",
    "other_disclosure_served_on",
    "amended_on",
    "revoked_on",
    "amended_served_on",
    "summary_filed_on",
    "summary_revoked_on",
    "trial_on",
    "judgment_on",
    "dismissed_on",
    "withdrawn_on",
    "referred_on",
    "transferred_on",
    "reconciled_on",
    "serve_agreed_until",
    "trial_agreed_until",
]
FULL = {
    **{f"record.{name}": A_DAY for name in DAYS},
    **{f"record.service.{name}": A_DAY for name in SERVICE_DAYS},
    "record.case_number": "26FL001234",
    "record.amends": "older.case",
    "record.amended_in": "newer.case",
    "record.joint": True,
    "record.fee": FeeState.WAIVER_ASKED,
    "record.service.method": ServiceMethod.SUBSTITUTED,
    "record.service.attempts": (Attempt(on=A_DAY, at=time(18, 30)), Attempt(on=A_DAY)),
    "record.service.served_by": ServedBy.OFFICIAL,
    "record.service.server_age": 41,
    "record.waiver_denied_why": WaiverDenial.INCOMPLETE,
    "record.revoked_by": Who.RESPONDENT,
    "record.amended_served_how": LaterService.MAIL,
    "record.mail_goes": MailGoes.SAFE_AT_HOME,
    "record.support_or_custody_order": DONT_KNOW,
    "record.final_disclosure": FinalDisclosure.BOTH_WAIVED,
    "record.time_left_out": (Period(start=A_DAY, why="a stay"), Period(start=A_DAY, end=A_DAY)),
    "record.court_closed": (Closure(first=A_DAY, why="flood"), Closure(first=A_DAY, last=A_DAY)),
    "record.calendar_id": "abcdefghijklmnopqrst",
}


@pytest.fixture(scope="module")
def full() -> Case:
    case = Case().with_fact("matter.kind", Kind.DISSOLUTION)
    for key, value in FULL.items():
        case = case.with_fact(key, value)
    return case


def _leaves(model: type[BaseModel], prefix: str) -> Iterator[str]:
    for name, field in model.model_fields.items():
        inner = field.annotation
        if isinstance(inner, type) and issubclass(inner, BaseModel):
            yield from _leaves(inner, f"{prefix}{name}.")
        else:
            yield f"{prefix}{name}"


def test_every_recorded_fact_is_tried_here() -> None:
    assert set(_leaves(Record, "record.")) == set(FULL)


def test_a_full_record_survives_a_file(full: Case) -> None:
    text = full.model_dump_json(exclude_unset=True)
    assert Case.model_validate_json(text) == full
    assert '"attempts":[{"on":"2026-12-01","at":"18:30:00"},{"on":"2026-12-01"}]' in text


def test_what_is_recorded_always_stands(full: Case) -> None:
    assert standing(full).record == full.record
    assert [key for key in set_aside(full) if key.startswith("record.")] == []


def test_no_question_asks_for_what_is_recorded() -> None:
    assert [key for key in places() if key.startswith("record.")] == []
    with pytest.raises(AnswerRefused):
        put(Case(), "record.filed_on", A_DAY)


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("record.service.method", "pigeon"),
        ("record.filed_on", "yesterday"),
        ("record.service.attempts", ({"at": "18:30"},)),
        ("record.mail_goes", "mars"),
        ("record.calendar_id", "Dana and Luis"),
        ("record.case_number", "123-45-6789"),
    ],
)
def test_what_does_not_fit_is_refused(key: str, value: object) -> None:
    with pytest.raises(ValidationError):
        Case().with_fact(key, value)
