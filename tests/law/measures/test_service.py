"""Which text on service counts, and when both are shown.

Code Civ. Proc. 415.20 and 417.10 as operative January 1, 2027 (Stats. 2025, ch. 563): three tries, wider
mailing and photographs. How service on both sides of that day is treated is not stated, so near it both
texts are shown, and to somebody who has not served yet.
"""

from datetime import date

import pytest

from firstpaper.facts import Case, Day
from firstpaper.facts.choices import ServiceMethod, Special
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.measures.record import appeared_on, took_part, took_part_first
from firstpaper.law.measures.service import (
    Serving,
    certainty,
    goes_as_a_later_paper,
    lacks_its_day,
    needs_an_order,
    new_text_begins,
    notice_may_go_by_mail,
    proof_texts,
    serving,
)

NEW_YEAR = date(2027, 1, 1)
ON = date(2026, 11, 25)


def served(on: str | None, method: str | None = "personal") -> Case:
    return Case.model_validate(
        {"record": {"filed_on": "2026-05-04", "service": {"method": method, "served_on": on}}}
    )


@pytest.mark.parametrize(
    ("served_on", "looked_on", "tries", "both"),
    [
        (None, date(2025, 12, 31), 0, False),  # the next text, of 2026, asks the same
        (None, date(2026, 1, 1), 0, True),  # not served yet: it may be on either side of the change
        (None, date(2026, 12, 31), 0, True),
        (None, NEW_YEAR, 3, False),
        ("2026-12-31", date(2026, 12, 31), 0, True),
        ("2027-01-01", date(2027, 1, 5), 3, False),
        ("2026-06-01", date(2026, 6, 2), 0, False),
        ("2026-06-01", date(2026, 12, 31), 0, False),
        ("2026-06-01", NEW_YEAR, 0, True),
        ("2026-06-01", date(2027, 2, 1), 0, True),
    ],
)
def test_the_day_of_service_names_the_text_and_near_the_change_both_are_shown(
    served_on: str | None, looked_on: date, tries: int, both: bool
) -> None:
    texts = proof_texts(served(served_on), looked_on)
    assert (texts.now.tries, texts.now.photographs) == (tries, tries == 3)
    assert texts.changes_on == (NEW_YEAR if both else None)
    assert (texts.then.tries if texts.then else None) == (3 if both else None)


@pytest.mark.parametrize("on", [date(2026, 1, 1), date(2026, 12, 31), NEW_YEAR, date(2028, 5, 1)])
def test_the_change_is_the_same_day_seen_from_either_side(on: date) -> None:
    assert new_text_begins(on) == NEW_YEAR


def test_a_method_without_its_day_is_no_less_sure_than_the_law() -> None:
    on = date(2026, 11, 25)
    assert certainty(served(None, None), on) is Certainty.STATUTE
    assert certainty(served(None), on) is Certainty.STATUTE
    printed = {"method": ServiceMethod.PUBLICATION, "first_published_on": "2026-06-01"}
    case = Case.model_validate({"record": {"filed_on": "2026-05-04", "service": printed}})
    assert certainty(case, on) is figure("service.complete_days.publication", on).certainty


@pytest.mark.parametrize(
    ("amended_served_on", "proof_filed_on", "left"),
    [
        (None, "2026-06-10", Serving.SERVE),  # the proof is that of the first petition
        ("2026-09-08", "2026-06-10", Serving.PROVE),
        ("2026-09-08", None, Serving.PROVE),
        ("2026-09-08", "2026-09-08", Serving.NOTHING),
        ("2026-09", "2026-09-30", Serving.PROVE),  # the day must be whole to tell whose proof it is
    ],
)
def test_an_amended_petition_is_served_and_proved_for_itself(
    amended_served_on: str | None, proof_filed_on: str | None, left: Serving
) -> None:
    """Code Civ. Proc. 417.30, 471.5(a): it is served on each party it affects, with a proof of its own."""
    first = {"method": "personal", "served_on": "2026-06-01", "proof_filed_on": proof_filed_on}
    amended = {"amended_on": "2026-09-01", "amended_served_on": amended_served_on}
    case = Case.model_validate({"record": {"filed_on": "2026-05-04", "service": first, **amended}})
    assert serving(case, date(2026, 11, 25)) is left


@pytest.mark.parametrize(
    ("told", "left"),
    [
        ({}, Serving.SERVE),
        ({"amended_served_on": "2026-09-07"}, Serving.PROVE),
        ({"amended_served_on": "2026-09-07", "proof_filed_on": "2026-09-06"}, Serving.PROVE),
        ({"amended_served_on": "2026-09-07", "proof_filed_on": "2026-09-07"}, Serving.NOTHING),
        ({"amended_served_on": "2026-09-07", "response_filed_on": "2026-09-06"}, Serving.PROVE),
        ({"amended_served_on": "2026-09-07", "response_filed_on": "2026-09-07"}, Serving.NOTHING),
        ({"amended_served_on": "2026-09-07", "response_filed_on": "2026-09"}, Serving.NOTHING),
        ({"response_filed_on": "2026-09-06"}, Serving.SERVE),  # it may answer the first petition
    ],
)
@pytest.mark.parametrize(
    "took_part_before",
    [
        {"record": {"appeared_on": "2026-06-20"}},
        {"record": {"appeared_on": "2026-06"}},
        {"matter": {"amended": True, "other_side_answered": True}},
    ],
)
def test_an_amended_petition_is_served_on_somebody_who_took_part_like_a_later_paper(
    told: dict[str, str], left: Serving, took_part_before: dict[str, dict[str, object]]
) -> None:
    """Code Civ. Proc. 471.5(a): "must be served upon the defendants affected"; rules 5.66(a), 5.68(c)."""
    proof = told.get("proof_filed_on", "2026-06-04")
    first = {"method": "personal", "served_on": "2026-06-01", "proof_filed_on": proof}
    record = {"filed_on": "2026-05-04", "service": first, "amended_on": "2026-09-01"}
    newer = {key: day for key, day in told.items() if key != "proof_filed_on"}
    case = Case.model_validate(
        {
            "matter": took_part_before.get("matter", {}),
            "record": {**record, **took_part_before.get("record", {}), **newer},
        }
    )
    assert serving(case, ON) is left
    assert goes_as_a_later_paper(case, ON)


@pytest.mark.parametrize(
    ("facts", "ordered"),
    [
        ({}, True),
        ({"record.appeared_on": Day(2026, 6, 20)}, False),
        ({"record.amended_on": Day(2026, 9, 1)}, True),
        ({"record.amended_on": Day(2026, 9, 1), "record.appeared_on": Day(2026, 6, 20)}, False),
        ({"people.special": ()}, False),
    ],
)
def test_only_somebody_who_is_to_be_served_and_took_no_part_needs_an_order(
    facts: dict[str, object], ordered: bool
) -> None:
    """Code Civ. Proc. 415.50; Cal. Rules of Court, rule 5.68(c)."""
    case = (
        Case()
        .with_fact("record.filed_on", Day(2026, 5, 4))
        .with_fact("people.special", (Special.OTHER_SIDE_MISSING,))
    )
    for key, value in facts.items():
        case = case.with_fact(key, value)
    assert needs_an_order(case, ON) is ordered


@pytest.mark.parametrize(
    ("matter", "took"),
    [
        ({"amended": True, "other_side_answered": True}, True),
        ({"amended": True, "other_side_answered": False}, False),
        ({"amended": True, "other_side_answered": "don't know"}, False),
        ({"amended": False, "other_side_answered": True}, False),
        ({}, False),
    ],
)
def test_a_response_told_of_without_its_day_is_taking_part_but_starts_no_time(
    matter: dict[str, object], took: bool
) -> None:
    """Code Civ. Proc. 1014; Cal. Rules of Court, rule 5.62(b)(1): a response is a general appearance."""
    case = Case.model_validate({"matter": matter, "record": {"filed_on": "2026-05-04"}})
    assert took_part(case, ON) is took
    assert appeared_on(case, ON) is None


ANNOUNCED = {
    "kind": "dissolution",
    "amended": True,
    "first_kind": "legal_separation",
    "first_stated_intent": True,
    "other_side_answered": False,
}


@pytest.mark.parametrize(
    ("told", "by_mail"),
    [
        ({}, True),
        ({"first_stated_intent": False}, False),
        ({"other_side_answered": True}, False),
        ({"other_side_answered": "don't know"}, False),
        ({"first_kind": "nullity"}, False),
        ({"kind": "legal_separation"}, False),
    ],
)
def test_only_a_separation_that_announced_its_divorce_goes_on_by_mail_while_nobody_answered(
    told: dict[str, object], by_mail: bool
) -> None:
    """Fam. Code 2321(b)."""
    assert notice_may_go_by_mail(Case.model_validate({"matter": {**ANNOUNCED, **told}}), ON) is by_mail


@pytest.mark.parametrize(
    ("recorded", "by_mail"),
    [
        ({}, True),
        ({"response_filed_on": "2026-11-25"}, False),
        ({"response_filed_on": "2026-11"}, False),
        ({"response_filed_on": "2026-11-26"}, True),
        ({"response_filed_on": "don't know"}, True),
        ({"appeared_on": "2026-11-20"}, False),
        ({"appeared_on": "2026-11-20", "amended_on": "2026-11-21"}, False),
        ({"response_filed_on": "2026-11-20", "amended_on": "2026-11-21"}, False),
        ({"response_filed_on": "2026-11-21", "amended_on": "2026-11-21"}, True),
        ({"response_filed_on": "2026-11-22", "amended_on": "2026-11-21"}, True),
        ({"response_filed_on": "2026-11", "amended_on": "2026-11-21"}, True),
    ],
)
def test_a_recorded_answer_to_the_first_petition_counts_as_one_that_was_told(
    recorded: dict[str, object], by_mail: bool
) -> None:
    """Fam. Code 2321(b): "has not appeared"; Code Civ. Proc. 1014: a response is taking part.

    What was recorded from the day of the amended petition on may answer that one.
    """
    case = Case.model_validate({"matter": ANNOUNCED, "record": {"filed_on": "2026-06-01", **recorded}})
    assert notice_may_go_by_mail(case, ON) is by_mail
    assert took_part_first(case, ON) is not by_mail


@pytest.mark.parametrize(
    ("told", "lacks"),
    [
        ({"record.service.method": ServiceMethod.POSTING}, True),
        (
            {"record.service.method": ServiceMethod.POSTING, "record.service.complete_on": Day(2026, 12, 4)},
            False,
        ),
        ({"record.service.method": ServiceMethod.PUBLICATION}, True),
        (
            {
                "record.service.method": ServiceMethod.PUBLICATION,
                "record.service.first_published_on": Day(2026, 11, 2),
            },
            False,
        ),
        ({"record.service.method": ServiceMethod.ABROAD, "record.appeared_on": Day(2026, 11, 20)}, False),
        ({"record.service.method": ServiceMethod.POSTING, "matter.amended": True}, False),
        ({"record.service.method": ServiceMethod.PERSONAL}, False),
        ({}, False),
    ],
)
def test_a_service_by_order_lacks_its_day_until_somebody_tells_it(
    told: dict[str, object], lacks: bool
) -> None:
    case = Case.nothing().with_fact("record.filed_on", Day(2026, 10, 5))
    for key, value in told.items():
        case = case.with_fact(key, value)
    assert lacks_its_day(case, date(2026, 12, 7)) is lacks
