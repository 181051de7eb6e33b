"""The summons, the property declarations, the custody sheet and the fee waiver, each in single cases.

Summons: Code Civ. Proc. 412.20; Cal. Rules of Court, rule 5.50. Never one FL-160 for both classes of
property: the instructions of the sheet. Fee waiver: Gov. Code 68632; limits of 2026 from 91 Fed. Reg. 1797,
at 200 percent.
The columns of FL-160 behind a petition: common practice, no source.
"""

from datetime import date
from typing import Any

import pytest

from firstpaper.facts import Case
from firstpaper.facts.choices import AssetKind, CommunityKind, DebtKind
from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.filing import filled_forms
from firstpaper.forms.fl160.things import ASSET_LINES, DEBT_LINES, TOLD_OF
from firstpaper.forms.fw001.form import Reason, reason

ON = date(2026, 12, 1)
COUPLE: dict[str, Any] = {
    "matter": {"unions": ["marriage"], "kind": "dissolution", "amended": False},
    "petitioner": {"name": "Ana Soto", "mailing": {"street": "PO Box 118", "city": "Fresno", "zip": "93701"}},
    "respondent": {"name": "Luis Reyes"},
    "court": {
        "county": "Fresno",
        "address": {"street": "1130 Example Avenue", "city": "Fresno", "zip": "93724"},
    },
    "dates": {
        "married_on": "2012-06-14",
        "separation_told_on": "2026-08-30",
        "separation_acted_on": "2026-09-05",
    },
}


def forms(**facts: Any) -> dict[tuple[str, str], dict[str, ItemAnswer]]:
    found = filled_forms(Case.model_validate({**COUPLE, **facts}), ON)
    return {(form.form, form.use): {answer.concept: answer for answer in form.items} for form in found}


# --- FL-110 -----------------------------------------------------------------------------------------


def test_the_summons_names_both_and_leaves_the_rest_to_the_clerk() -> None:
    found = forms()["FL-110", ""]
    assert found["notice.respondent"].value == "Luis Reyes"
    assert found["petitioner"].value == "Ana Soto"
    assert found["court"].value.startswith("Superior Court of California, County of Fresno")
    assert found["filer"].value.endswith("Self-represented")
    assert found["case_number"].action is found["issued"].action is Action.BLANK


def test_a_new_summons_in_an_amended_case_carries_its_number() -> None:
    amended = {**COUPLE["matter"], "amended": True, "case_number": "26FL001234"}
    assert forms(matter=amended)["FL-110", ""]["case_number"].value == "26FL001234"


# --- FL-160 -----------------------------------------------------------------------------------------

THINGS: dict[str, Any] = {
    "schedule": {"agreement": False, "in_california": True},
    "asset": [
        {"kind": "vehicle", "words": "2018 minivan", "acquired_on": "2018-05-01", "how": "bought",
         "source": "community", "by": "both", "title": "joint", "last_four": "4471"},
        {"kind": "savings", "words": "Old savings", "acquired_on": "2005-01-01", "how": "owned_before",
         "by": "petitioner", "mixed": False, "title": "petitioner", "traced": True},
    ],
    "debt": [],
}  # fmt: skip
BOTH_ON_FL_160 = {
    "property": {"separate_how": "fl_160", "community_how": "fl_160", "community_kinds": ["home"]}
}


def test_each_class_has_a_sheet_of_its_own_with_its_own_box() -> None:
    found = forms(**BOTH_ON_FL_160)
    for use, marked, empty in (
        ("separate property", "class.separate", "class.community"),
        ("community property", "class.community", "class.separate"),
    ):
        sheet = found["FL-160", use]
        assert sheet[marked].action is Action.MARK
        assert sheet[empty].action is Action.BLANK
    assert ("FL-160", "separate property") not in forms(property={"community_how": "fl_160"})


def test_the_columns_go_by_the_use() -> None:
    found = forms(**BOTH_ON_FL_160)
    separate, community = found["FL-160", "separate property"], found["FL-160", "community property"]
    assert "column F" in separate["columns.assets"].because
    assert "column D" in separate["columns.debts"].because
    assert "only column A" in community["columns.assets"].because
    assert "column F" not in community["columns.assets"].because
    assert "column F" in separate["class.separate"].because
    assert "Fill in only column A (what it is). The others" in community["class.community"].because


def test_what_was_told_of_by_kind_is_left_to_the_filer() -> None:
    community = forms(**BOTH_ON_FL_160)["FL-160", "community property"]
    assert community["line.1"].action is Action.FILL
    assert community["line.4"].action is Action.BLANK


def test_what_was_told_of_is_left_to_the_filer_until_its_kind_was_listed() -> None:
    kinds = {"community_kinds": ["accounts", "debts"], "elsewhere_kinds": ["vehicles"]}
    told = {"property": {**BOTH_ON_FL_160["property"], **kinds}}
    untold = forms(**told)["FL-160", "community property"]
    left = {name for name, one in untold.items() if one.action is Action.FILL}
    assert left == {f"line.{number}" for number in (4, 5, 6, 7, *DEBT_LINES)}

    checking = {**THINGS["asset"][0], "kind": "checking", "words": "Checking"}
    loan = {"kind": "unsecured_loan", "words": "Loan", "by": "respondent", "for_family": False}
    found = forms(**told, **{**THINGS, "asset": [checking], "debt": [loan]})
    left = {
        (use, name)
        for (form, use), sheet in found.items()
        for name, one in sheet.items()
        if form == "FL-160" and one.action is Action.FILL
    }
    assert left == {("community property", "line.4")}


def test_debts_told_of_as_a_sum_are_never_denied_on_the_list() -> None:
    sheet = forms(**BOTH_ON_FL_160, summary={"debts": "1800"})["FL-160", "community property"]
    assert all(sheet[f"line.{number}"].action is Action.FILL for number in DEBT_LINES)
    none = forms(**BOTH_ON_FL_160, summary={"debts": "0"})["FL-160", "community property"]
    assert all(none[f"line.{number}"].action is Action.BLANK for number in DEBT_LINES)


def test_what_was_listed_stands_on_the_sheet_of_its_class() -> None:
    found = forms(**BOTH_ON_FL_160, **THINGS)
    separate, community = found["FL-160", "separate property"], found["FL-160", "community property"]
    assert community["line.4"].value == "2018 minivan ending 4471"
    assert community["line.5"].action is Action.BLANK
    assert separate["line.5"].value == "Old savings: Petitioner"
    assert "minivan" not in separate["line.4"].value


def test_what_nobody_can_place_for_sure_is_left_to_the_judge_and_says_so() -> None:
    house = {**THINGS["asset"][1], "kind": "real_estate", "words": "House on Elm Street", "mixed": True}
    ring = {"kind": "valuables", "words": "Ring"}
    found = forms(**BOTH_ON_FL_160, **{**THINGS, "asset": [house, ring, {}, {"kind": "pension"}]})
    separate, community = found["FL-160", "separate property"], found["FL-160", "community property"]
    assert community["line.1"].value == "House on Elm Street (community and separate parts to be determined)"
    assert community["line.3"].value == "Ring (character to be determined)"
    assert community["line.12"].value == "Pension (character to be determined)"
    assert not any("Elm" in answer.value for answer in separate.values())
    assert "It is not clear who owns these: House on Elm Street; Ring; pension. " in (
        separate["columns.assets"].because
    )
    assert "not settled" in community["columns.assets"].because


def test_no_amount_and_no_proposal_stands_on_the_sheet_behind_a_petition() -> None:
    car = {**THINGS["asset"][0], "value": "17654.32", "owed": "1234.50", "proposal": "petitioner"}
    found = forms(**BOTH_ON_FL_160, **{**THINGS, "asset": [car]})
    for use in ("separate property", "community property"):
        words = " ".join(answer.value for answer in found["FL-160", use].values())
        assert "17" not in words
        assert "1,234" not in words
        assert "column" not in words


def test_a_list_that_is_too_long_goes_on_and_says_so() -> None:
    many = [
        {**THINGS["asset"][0], "words": f"Car number {number} of a long row of cars"} for number in range(9)
    ]
    box = forms(**BOTH_ON_FL_160, **{**THINGS, "asset": many})["FL-160", "community property"]["line.27"]
    assert (box.action, box.continues) == (Action.MARK, "FL-161")


OWNED = {
    "real_estate": 1,
    "household": 2,
    "valuables": 3,
    "vehicle": 4,
    "savings": 5,
    "checking": 6,
    "other_deposit": 7,
    "cash": 8,
    "tax_refund": 9,
    "life_insurance": 10,
    "investments": 11,
    "pension": 12,
    "retirement_account": 13,
    "money_owed_to_us": 14,
    "business": 15,
    "digital": 16,
    "pet": 16,
    "other": 16,
}
OWED = {
    "student_loan": 19,
    "tax": 20,
    "support_owed": 21,
    "unsecured_loan": 22,
    "credit_card": 23,
    "other": 24,
}


def test_every_kind_told_stands_on_its_own_line() -> None:
    assert (set(OWNED), set(OWED)) == (set(AssetKind), set(DebtKind))
    listed = {
        "asset": [{"kind": kind, "words": f"Thing {kind}"} for kind in OWNED],
        "debt": [{"kind": kind, "words": f"Debt {kind}"} for kind in OWED],
    }
    sheet = forms(**BOTH_ON_FL_160, **{**THINGS, **listed})["FL-160", "community property"]
    for words, lines in (("Thing", OWNED), ("Debt", OWED)):
        for kind, line in lines.items():
            found = [name for name, answer in sheet.items() if f"{words} {kind} (" in answer.value]
            assert found == [f"line.{line}"], kind


def test_what_has_no_words_is_named_by_its_kind_as_a_thing_or_as_a_debt() -> None:
    listed = {"asset": [{"kind": "other"}], "debt": [{"kind": "other"}]}
    sheet = forms(**BOTH_ON_FL_160, **{**THINGS, **listed})["FL-160", "community property"]
    assert sheet["line.16"].value.startswith("Other asset")
    assert sheet["line.24"].value.startswith("Other debt")


def test_what_no_other_item_takes_stands_with_the_separate_property() -> None:
    ring = {"kind": "valuables", "words": "Aunt's ring", "how": "inherited", "by": "petitioner"}
    alone = {"property": {"separate_how": "fl_160", "community_how": "none"}}
    sheet = forms(**alone, **{**THINGS, "asset": [ring]})["FL-160", "separate property"]
    assert sheet["line.3"].value == "Aunt's ring (character to be determined): Petitioner"
    assert "So list them here" in sheet["columns.assets"].because
    assert "Aunt's ring" not in forms(**BOTH_ON_FL_160, **{**THINGS, "asset": [ring]})[
        "FL-160", "separate property"
    ]["line.3"].value  # fmt: skip


def test_every_kind_told_of_in_general_has_lines() -> None:
    assert set(TOLD_OF) == set(CommunityKind)
    assert {line for kind in TOLD_OF.values() for line in kind} <= {*ASSET_LINES, *DEBT_LINES}


# --- FL-311 -----------------------------------------------------------------------------------------

CHILD: dict[str, Any] = {
    "children": {"family": ["minor_together"], "how_many": 1},
    "child": [{"name": "Lucia", "born_on": "2016-02-29", "parentage": "born_to_both"}],
}


def test_the_custody_sheet_says_the_same_as_item_6() -> None:
    custody = {
        "legal": "joint",
        "physical": "petitioner",
        "visits": "respondent",
        "sheets": ["fl_311", "fl_312"],
    }
    found = forms(**CHILD, custody=custody, safety={"dangers": []})["FL-311", ""]
    assert found["custody"].value == "Lucia; 02/29/2016; Petitioner and Respondent jointly; Petitioner"
    assert found["supervised"].action is Action.BLANK
    assert found["abduction"].continues == "FL-312"
    assert found["holidays"].action is Action.BLANK


def test_in_danger_the_part_on_watched_visits_is_not_skipped() -> None:
    custody = {"legal": "joint", "physical": "petitioner", "visits": "respondent", "sheets": ["fl_311"]}
    found = forms(**CHILD, custody=custody, safety={"dangers": ["violence"]})["FL-311", ""]
    assert found["supervised"].action is Action.FILL


@pytest.mark.parametrize(
    ("wanted", "action", "says"),
    [(True, Action.FILL, "You ask that somebody watches"), (False, Action.BLANK, "You chose not to ask")],
)
def test_whether_watched_visits_are_asked_for_is_what_the_filer_said(
    wanted: bool, action: Action, says: str
) -> None:
    custody = {"physical": "petitioner", "sheets": ["fl_311"], "supervised": wanted}
    found = forms(**CHILD, custody=custody, safety={"dangers": ["violence"]})["FL-311", ""]
    assert found["supervised"].action is action
    assert says in found["supervised"].because


def test_the_custody_sheet_is_there_only_where_it_was_chosen() -> None:
    assert ("FL-311", "") not in forms(**CHILD, custody={"sheets": []})
    assert ("FL-311", "") not in forms(children={"family": []}, custody={"sheets": ["fl_311"]})


# --- FW-001 and FW-003 ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("told", "expected"),
    [
        ({"benefits": ["wic"], "household": 1, "income": "99999"}, Reason.BENEFITS),
        ({"benefits": [], "household": 3, "income": "4553.33"}, Reason.INCOME),
        ({"benefits": [], "household": 3, "income": "4553.34", "short_of_needs": False}, Reason.NONE),
        ({"benefits": [], "household": 3, "income": "4553.34", "short_of_needs": True}, Reason.NEEDS),
        (
            {"benefits": "don't know", "household": 3, "income": "9000", "short_of_needs": False},
            Reason.UNCLEAR,
        ),
        ({"benefits": []}, Reason.UNCLEAR),
        ({"benefits": [], "household": "don't know", "short_of_needs": True}, Reason.NEEDS),
    ],
)
def test_the_first_reason_that_fits_is_the_one_marked(told: dict[str, Any], expected: Reason) -> None:
    case = Case.model_validate({**COUPLE, "waiver": {"wanted": True, **told}})
    assert reason(case, ON) is expected
    found = {form.form: {a.concept: a for a in form.items} for form in filled_forms(case, ON)}["FW-001"]
    marked = [name for name in ("benefits", "income", "needs") if found[f"why.{name}"].action is Action.MARK]
    assert marked == ([expected.value] if expected.value in ("benefits", "income", "needs") else [])


@pytest.mark.parametrize(
    ("told", "filled_in"),
    [
        ({"benefits": ["ssi"]}, set()),
        ({"benefits": [], "household": 1, "income": "1000"}, {"changes", "income", "household"}),
        (
            {"benefits": [], "household": 1, "income": "9000", "short_of_needs": True},
            {"changes", "income", "household", "property", "expenses", "more"},
        ),
    ],
)
def test_the_second_page_goes_by_the_reason(told: dict[str, Any], filled_in: set[str]) -> None:
    found = forms(waiver={"wanted": True, **told})["FW-001", ""]
    page = ("changes", "income", "household", "property", "expenses", "more")
    assert {name for name in page if found[name].action is Action.FILL} == filled_in


def test_the_waiver_is_private_and_there_only_where_it_is_wanted() -> None:
    assert not {"FW-001", "FW-003"} & {form for form, _use in forms()}
    case = Case.model_validate({**COUPLE, "waiver": {"wanted": True, "benefits": ["ssi"]}})
    private = {form.form for form in filled_forms(case, ON) if form.private}
    assert private == {"FW-001", "FW-003"}


def test_the_judge_fills_in_the_order() -> None:
    found = forms(waiver={"wanted": True, "benefits": ["ssi"]})["FW-003", ""]
    assert found["filer"].value.startswith("Ana Soto")
    assert "judge" in found["order"].because
