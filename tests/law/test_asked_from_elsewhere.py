"""What forms, pages and commands ask of the law, and no rule asks in its own cases."""

from datetime import date
from typing import Any

import pytest

from firstpaper.facts import Case, Day
from firstpaper.facts.choices import AssetKind, DebtKind, NullityGround
from firstpaper.law.agenda import agenda
from firstpaper.law.changes import changes
from firstpaper.law.finding import waits
from firstpaper.law.measures.character import asset_character
from firstpaper.law.measures.character.outcome import Table
from firstpaper.law.measures.character.plea import plea
from firstpaper.law.measures.character.times import Span, span_of
from firstpaper.law.measures.children import concerns_children
from firstpaper.law.measures.nullity import defeated
from firstpaper.law.measures.record import appeared_on
from firstpaper.law.measures.residence import needless_keys
from firstpaper.law.measures.service import Serving, serves_again, serving
from firstpaper.law.property_words import kind_words
from firstpaper.law.register import findings
from firstpaper.locale import speaking
from firstpaper.locale.rows import either, in_a_row

ON = date(2026, 11, 30)
FILED = {"filed_on": "2026-11-02"}
SERVED = {"method": "personal", "served_on": "2026-11-05"}


def case_of(**facts: Any) -> Case:
    return Case.model_validate({"matter": {"kind": "dissolution", "unions": ["marriage"]}, **facts})


@pytest.mark.parametrize(
    ("facts", "holds"),
    [
        ({}, None),
        ({"children": {"family": []}}, False),
        ({"children": {"family": ["grown"]}}, False),
        ({"children": {"family": ["unborn_together"]}}, True),
        ({"children": {"family": ["minor_together"], "how_many": 2}}, True),
        (
            {
                "children": {"family": ["minor_together"], "how_many": 1},
                "child": [{"name": "Lucia", "born_on": "2016-02-29", "parentage": "born_to_both"}],
            },
            True,
        ),
        (
            {
                "children": {"family": ["minor_together"], "how_many": 1},
                "child": [{"name": "Lucia", "born_on": "2000-02-29", "parentage": "born_to_both"}],
            },
            False,
        ),
        (
            {
                "children": {
                    "family": ["from_others"],
                    "others_in_union": True,
                    "others_born_on": "2020-01-01",
                },
                "dates": {"married_on": "2015-06-01"},
            },
            None,
        ),
    ],
)
def test_whether_there_is_a_child_to_decide_about(facts: dict[str, Any], holds: bool | None) -> None:
    assert concerns_children(case_of(**facts), ON) is holds


def test_once_one_spouse_surely_has_the_time_nothing_hangs_on_the_other() -> None:
    since = "2010-01-01"
    here = {"lives": "this_county", "state_since": since, "county_since": since, "intends_to_stay": True}
    case = case_of(residence={"petitioner": here, "respondent": {"lives": "abroad"}})
    needless = needless_keys(case, ON)
    assert "residence.respondent.state_since" in needless
    assert not [key for key in needless if "petitioner" in key]
    unsure = {**here, "state_since": "2010-01-01?"}
    assert needless_keys(case_of(residence={"petitioner": unsure}), ON) == frozenset()


@pytest.mark.parametrize(
    ("facts", "left"),
    [
        ({"record": FILED}, Serving.SERVE),
        ({"record": {**FILED, "service": SERVED}}, Serving.PROVE),
        ({"record": {**FILED, "service": {**SERVED, "proof_filed_on": "2026-11-09"}}}, Serving.NOTHING),
        ({"record": {**FILED, "service": SERVED, "response_filed_on": "2026-11-20"}}, Serving.NOTHING),
        ({"record": {**FILED, "service": SERVED, "amended_on": "2026-11-12"}}, Serving.SERVE),
        (
            {"record": {**FILED, "amended_on": "2026-11-12", "amended_served_on": "2026-11-13"}},
            Serving.PROVE,
        ),
    ],
)
def test_what_is_left_to_do_about_the_service(facts: dict[str, Any], left: Serving) -> None:
    case = case_of(**facts)
    assert serving(case, ON) is left
    assert serves_again(case) is (case.record.amended_on is not None)


def test_in_a_joint_petition_both_take_part_from_the_filing_on() -> None:
    apart = case_of(record={**FILED, "response_filed_on": "2026-11-20", "appeared_on": "2026-11-18"})
    assert appeared_on(apart, ON) == date(2026, 11, 18)
    assert appeared_on(case_of(record={**FILED, "joint": True}), ON) == date(2026, 11, 2)


def test_a_date_says_its_name_for_others_its_words_on_the_picture_and_whether_it_is_ahead() -> None:
    case = case_of(record={**FILED, "service": SERVED})
    (due,) = [one.deadline for one in agenda(case, ON).entries if one.deadline.key == "response.petition"]
    assert due.neutral
    assert "petition" not in due.neutral.lower()
    assert due.chart is not None
    assert due.chart.title
    assert due.ahead(due.rolled)
    assert not due.ahead(date(2027, 12, 31))
    assert due.day_ahead(date(2026, 11, 6)) == due.target
    bare = [one.deadline for one in agenda(case, ON).entries if one.deadline.chart is None]
    assert bare


def test_no_fee_waiver_is_taken_for_granted_in_a_year_of_which_we_know_no_law() -> None:
    case = case_of(record={"fee": "waiver_asked", "waiver_filed_on": "1995-03-01"})
    assert not [one for one in agenda(case, ON).entries if "waiver" in one.deadline.key]
    later = case_of(record={"fee": "waiver_asked", "waiver_filed_on": "2026-11-02"})
    assert [one for one in agenda(later, ON).entries if "waiver" in one.deadline.key]


def test_a_change_says_something_and_a_day_to_wait_for_is_a_finding_that_waits() -> None:
    new_here = {"lives": "this_county", "state_since": "2026-07-01", "county_since": "2026-07-01"}
    soon = case_of(residence={"petitioner": new_here, "respondent": {"lives": "abroad"}})
    assert [one for one in changes(soon, ON) if one.says_something]
    just = {"lives": "this_county", "state_since": "2026-05-30", "county_since": "2026-05-30"}
    close = case_of(residence={"petitioner": just, "respondent": {"lives": "abroad"}})
    assert [one.id for one in findings(close, ON) if waits(one)] == ["residence.same_spouse"]
    assert [one.id for one in findings(soon, ON) if waits(one)] == []


@pytest.mark.parametrize(
    ("ground", "facts", "key"),
    [
        ("under_age", {"minor": "petitioner", "minor_born_on": "1990-01-01"}, "grounds.minor_born_on"),
        ("under_age", {"minor": "petitioner", "minor_born_on": "1990-01-01?"}, None),
        ("bigamy", {"prior_spouse_missing": True}, "grounds.prior_spouse_missing"),
        ("prior_spouse", {"prior_spouse_missing": False}, "grounds.prior_spouse_missing"),
        ("physical_incapacity", {"incapacity_continues": False}, "grounds.incapacity_continues"),
        ("physical_incapacity", {"incapacity_continues": True}, None),
    ],
)
def test_the_fact_that_shows_that_a_ground_was_never_there(
    ground: str, facts: dict[str, Any], key: str | None
) -> None:
    known = {name: value for name, value in facts.items() if name in type(Case().grounds).model_fields}
    case = Case.model_validate(
        {
            "matter": {"kind": "nullity", "unions": ["marriage"]},
            "dates": {"married_on": "2022-11-26"},
            "grounds": {"filer": "spouse", "nullity": [ground], **known},
        }
    )
    assert defeated(case, NullityGround(ground), ON) == key


def test_a_table_whose_rows_say_nothing_is_a_mistake_of_ours() -> None:
    with pytest.raises(LookupError):
        Table[object]().first(object())


def test_nobody_pleads_for_what_no_court_divides() -> None:
    degree = case_of(
        dates={"married_on": "2015-06-01"},
        schedule={"agreement": False},
        asset=[{"kind": "other", "words": "Degree", "how": "training"}],
    )
    assert plea(asset_character(degree, 1, ON)) is None


def test_a_span_of_one_day_is_that_day_and_one_unsure_ends_where_the_years_end() -> None:
    assert span_of(Day(2020, 5, 1)).whole == date(2020, 5, 1)
    assert span_of(Day(2020)).whole is None
    assert Span().whole is None
    assert span_of(Day(2020, 5, 1, unsure=True)) == Span(date(2019, 5, 1), date(2021, 5, 1))


def test_kinds_are_said_in_words_and_words_in_a_row() -> None:
    assert kind_words(AssetKind.VEHICLE)
    assert kind_words(DebtKind.CREDIT_CARD)
    assert either(["a", "b", "c"]) == "a or b or c"
    assert in_a_row(["a", "b", "c"]) == "a, b and c"
    assert in_a_row([]) == ""


@pytest.mark.parametrize(
    ("last", "row"),
    [
        ("Ingrid", "Björn e Ingrid"),
        ("Hilda", "Björn e Hilda"),
        ("Ian", "Björn y Ian"),
        ("Yolanda", "Björn y Yolanda"),
        ("Yves", "Björn e Yves"),
    ],
)
def test_spanish_has_another_word_for_and_before_the_sound_i(last: str, row: str) -> None:
    # Real Academia Española, Diccionario panhispánico de dudas, "y"
    with speaking("es"):
        assert in_a_row(["Björn", last]) == row
    assert in_a_row(["Björn", last]) == f"Björn and {last}"
