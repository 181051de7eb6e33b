"""FL-115 and FL-117: every item answered, what was recorded filled in, and nobody signs for another."""

from datetime import date

import pytest
from hypothesis import given, settings

from firstpaper.facts import Case, Day
from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.forms.needed import forms_needed
from firstpaper.intake import standing
from firstpaper.law.measures.service import Serving, personally_served_on, service_complete, serving
from tests.any_case import any_case, filing_days

D = Day.parse
ON = date(2026, 12, 1)
FILED = {"matter.kind": "dissolution", "respondent.name": "Luis Soto", "record.filed_on": D("2026-11-25")}


def case(**changed: object) -> Case:
    told = Case()
    for key, value in {**FILED, **{k.replace("__", "."): v for k, v in changed.items()}}.items():
        told = told.with_fact(key, value)
    return told


def form(name: str, told: Case, on: date = ON) -> dict[str, ItemAnswer]:
    found = {one.form: one for one in filled_forms(told, on, Filing.SERVICE)}
    return {answer.concept: answer for answer in found[name].items}


@settings(max_examples=150, deadline=None)
@given(any_case(), filing_days())
def test_every_item_is_answered_once_with_a_reason(told: Case, on: date) -> None:
    for one in filled_forms(standing(told), on, Filing.SERVICE):
        assert [answer.concept for answer in one.items] == [item.concept for item in one.edition.items]
        for answer in one.items:
            assert answer.because.strip(), answer
            assert bool(answer.value) == (answer.action is Action.WRITE), answer


@pytest.mark.parametrize(
    ("method", "boxes"),
    [
        ("personal", {"personal"}),
        ("substituted", {"substituted", "substituted.diligence"}),
        ("acknowledgment", {"mail", "mail.acknowledged"}),
        ("out_of_state_mail", {"mail", "mail.out_of_state"}),
        (None, set()),
    ],
)
def test_the_way_that_was_recorded_is_marked_and_no_other(method: str | None, boxes: set[str]) -> None:
    # Code Civ. Proc. 415.10, 415.20(b), 415.30, 415.40
    found = form("FL-115", case(record__service__method=method))
    ways = ("personal", "substituted", "mail", "other")
    marked = {name for name, answer in found.items() if answer.action is Action.MARK}
    assert {name for name in marked if name.partition(".")[0] in ways} == boxes


def test_the_days_that_were_recorded_are_written_where_they_belong() -> None:
    found = form(
        "FL-115",
        case(
            record__service__method="substituted",
            record__service__served_on=D("2026-11-28"),
            record__service__mailed_on=D("2026-11-30"),
        ),
    )
    assert found["substituted.date"].value == "11/28/2026"
    assert found["substituted.mailed"].value == "11/30/2026"
    assert found["personal.date"].action is Action.BLANK
    assert found["mail.date"].action is Action.BLANK


def test_a_day_told_in_part_is_not_written() -> None:
    told = case(record__service__method="personal", record__service__served_on=D("2026-11"))
    assert form("FL-115", told)["personal.date"].action is Action.OTHERS


def test_the_filer_never_signs() -> None:
    # Code Civ. Proc. 414.10: not a party
    proof, acknowledgment = form("FL-115", case()), form("FL-117", case())
    assert "must not sign" in proof["server.signature"].because
    assert "must not" in acknowledgment["sender.signature"].because
    assert "Only the person who gets the papers" in acknowledgment["receiver.signature"].because


SERVERS_OWN = {
    "address",
    "server.person",
    "server.registered",
    "server.fee",
    "server.name",
    "server.signature",
}


@pytest.mark.parametrize(
    ("method", "own"),
    [
        ("personal", {"personal.time"}),
        ("substituted", {"substituted.left_with", "substituted.place", "substituted.time"}),
        ("acknowledgment", {"mail.city"}),
        ("out_of_state_mail", {"mail.city"}),
    ],
)
def test_what_only_the_server_knows_is_theirs_to_fill_in_and_never_left_empty(
    method: str, own: set[str]
) -> None:
    # Code Civ. Proc. 417.10(a): time, place and manner, and to whom
    days = {f"record__service__{name}": D("2026-11-28") for name in ("served_on", "mailed_on")}
    found = form("FL-115", case(record__service__method=method, **days))
    theirs = {name for name, answer in found.items() if answer.action is Action.OTHERS}
    assert theirs == own | SERVERS_OWN | {"server.date"}


def test_the_sender_and_the_receiver_of_fl_117_fill_in_their_own_lines() -> None:
    # Code Civ. Proc. 415.30(a): the days run from the mailing
    theirs = {name for name, answer in form("FL-117", case()).items() if answer.action is Action.OTHERS}
    lines = {"sender": ("name", "signature"), "receiver": ("date", "name", "signature")}
    assert theirs == {"mailed"} | {f"{who}.{each}" for who, own in lines.items() for each in own}


@pytest.mark.parametrize(("served", "asked"), [("2026-12-31", False), ("2027-01-01", True)])
@pytest.mark.parametrize(("method", "by_hand"), [("personal", True), ("out_of_state_mail", False)])
def test_photographs_go_behind_the_proof_of_service_by_hand_from_2027(
    served: str, asked: bool, method: str, by_hand: bool
) -> None:
    # Code Civ. Proc. 417.10(a)(1) as operative January 1, 2027
    done = {f"record__service__{name}": D(served) for name in ("served_on", "mailed_on")}
    told = case(record__service__method=method, **done)
    said = " ".join(answer.because for answer in form("FL-115", told, date(2027, 1, 20)).values())
    assert ("photographs" in said) is (asked and by_hand)


def test_a_second_proof_says_that_it_is_for_the_amended_petition() -> None:
    amended = case(record__amended_on=D("2026-11-28"), record__amended_served_on=D("2026-11-30"))
    assert "amended" in form("FL-115", amended)["papers.petition"].because
    assert "amended" not in form("FL-115", case())["papers.petition"].because


def test_only_papers_surely_in_the_envelope_are_marked() -> None:
    plain = form("FL-115", case())
    assert plain["papers.petition"].action is Action.MARK
    assert plain["papers.fl105"].action is plain["papers.more"].action is Action.FILL
    child = case(
        children__family=("minor_together",),
        children__how_many=1,
        child__1__name="Lucia",
        child__1__born_on=D("2016-02-29"),
        child__1__parentage="born_to_both",
        property__community_how="fl_160",
    )
    for name in ("FL-115", "FL-117"):
        found = form(name, child)
        assert {found[f"papers.{each}"].action for each in ("more", "fl105", "fl160")} == {Action.MARK}
        assert found["papers.fl140"].action is Action.FILL


def test_a_form_that_may_be_in_the_envelope_is_left_to_whoever_fills_it() -> None:
    """A proof that leaves one out does not show that it came (Code Civ. Proc. 417.10(a))."""
    unsure = case(children__family=("unborn_together",))
    for name in ("FL-115", "FL-117"):
        found = form(name, unsure)
        assert {found[f"papers.{each}"].action for each in ("more", "fl105", "other")} == {Action.FILL}
        assert "Only if more forms" in found["papers.fl105"].because


def test_names_that_are_not_ours_to_write_are_copied_from_the_stamped_petition() -> None:
    for told in (case(respondent__name="Ольга Петрова"), case(grounds__filer="parent_or_guardian"), case()):
        assert "stamped" in form("FL-115", told)["caption.names"].because
    named = case(petitioner__name="Ana Soto")
    assert form("FL-115", named)["caption.names"].action is Action.WRITE


def test_in_prison_whoever_handed_the_papers_over_signs() -> None:
    """Pen. Code 4013: staff may hand them on, and only who did it can swear (Code Civ. Proc. 417.10(a))."""
    assert "A friend" in form("FL-115", case())["server.person"].because
    locked_up = form("FL-115", case(people__special=("other_side_locked_up",)))
    assert "into the prisoner's hands" in locked_up["server.person"].because


def test_the_case_number_is_copied_from_the_stamped_petition_until_it_is_known() -> None:
    assert form("FL-117", case())["caption.case_number"].open_key == "matter.case_number"
    assert "stamped" in form("FL-117", case())["caption.case_number"].because
    numbered = form("FL-117", case(matter__case_number="26FL00123"))
    assert numbered["caption.case_number"].value == "26FL00123"


@pytest.mark.parametrize(
    "changed",
    [
        {"record__joint": True},
        {"record__appeared_on": D("2026-11-30")},
        {"record__response_filed_on": D("2026-11-30")},
        {"record__service__proof_filed_on": D("2026-11-30")},
        {"record__service__method": "publication"},
        {"record__service__method": "posting"},
        {"record__service__method": "court_directed"},
        {"record__service__method": "abroad"},
    ],
)
def test_no_form_where_nothing_is_to_be_served_or_proved_this_way(changed: dict[str, object]) -> None:
    # Fam. Code 2331(b); Code Civ. Proc. 417.30
    assert serving(case(**changed), ON) is Serving.NOTHING
    assert filled_forms(case(**changed), ON, Filing.SERVICE) == ()


def test_fl_117_is_only_for_mail() -> None:
    assert {one.form for one in filled_forms(case(), ON, Filing.SERVICE)} == {"FL-115", "FL-117"}
    by_hand = case(record__service__method="personal")
    assert {one.form for one in filled_forms(by_hand, ON, Filing.SERVICE)} == {"FL-115"}
    mailed = {"record__service__method": "acknowledgment", "record__service__mailed_on": D("2026-11-26")}
    signed = {
        "record__service__acknowledged_on": D("2026-11-28"),
        "record__service__acknowledgment_back_on": D("2026-11-30"),
    }
    assert {one.form for one in filled_forms(case(**mailed), ON, Filing.SERVICE)} == {"FL-115", "FL-117"}
    assert {one.form for one in filled_forms(case(**mailed, **signed), ON, Filing.SERVICE)} == {"FL-115"}


@pytest.mark.parametrize(("on", "watched"), [(date(2026, 12, 31), False), (date(2027, 1, 1), True)])
def test_a_new_fl_115_is_expected_on_the_first_day_of_2027(on: date, watched: bool) -> None:
    # Code Civ. Proc. 417.10 as operative January 1, 2027
    assert edition_for("FL-115", on).may_be_replaced(on) is watched


def test_the_date_of_fl_115_is_not_claimed() -> None:
    edition = edition_for("FL-115", ON)
    assert edition.edition is None
    assert "do not know the date" in edition.caution


def test_nothing_of_a_service_by_the_filer_is_filled_in() -> None:
    # Code Civ. Proc. 414.10
    done = {
        "record__service__method": "personal",
        "record__service__served_on": D("2026-11-28"),
        "record__service__served_by": "filer",
        "record__service__proof_filed_on": D("2026-11-30"),
    }
    assert serving(case(**done), ON) is Serving.SERVE
    found = form("FL-115", case(**done))
    assert found["personal"].action is found["personal.date"].action is Action.OTHERS
    assert service_complete(case(**done), ON) is None
    assert personally_served_on(case(**done), ON) is None


def test_a_conservator_gets_a_set_too_and_neither_box_of_the_summons_is_marked_for_them() -> None:
    # Code Civ. Proc. 416.70
    plain, conserved = form("FL-115", case()), form("FL-115", case(people__special=("other_side_conserved",)))

    assert plain["notice.individual"].action is Action.MARK
    for concept in ("notice.individual", "notice.other"):
        assert conserved[concept].action is Action.BLANK
        assert "Both get a full set" in conserved[concept].because
        assert conserved[concept].authority == "Code Civ. Proc. 416.70"


def test_nobody_mails_a_form_to_somebody_who_cannot_be_found() -> None:
    # Code Civ. Proc. 415.50; Cal. Rules of Court 5.72
    gone = case(people__special=("other_side_missing",))
    assert filled_forms(gone, ON, Filing.SERVICE) == ()
    later = [each.form for each in forms_needed(gone, ON) if each.later]
    assert [form for form in later if form in ("FL-115", "FL-117", "FL-980", "FL-982", "FL-985")] == [
        "FL-980",
        "FL-982",
        "FL-985",
    ]
    posted = gone.with_fact("record.service.method", "posting")
    assert [each.form for each in forms_needed(posted, ON) if each.form.startswith("FL-98")] == ["FL-985"]
