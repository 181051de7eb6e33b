"""Listing what the two own and owe, at a terminal, on the command line and by table."""

import json
import stat
from collections.abc import Callable
from pathlib import Path

import pytest
from typer.testing import CliRunner

from firstpaper.casefile import CaseFile
from firstpaper.cli.app import app
from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.schedule import MOST_LISTED, Asset
from tests.cli.person import ON, Sitting, flat

MENU = "Type a number, or leave: "
MORE = "Tell about papers and notes too? Type yes or no: "
YES_NO = "Type yes or no: "
WHICH = "just Enter to go back: "
PICK = "just Enter to go on: "

Schedule = Callable[..., dict[str, object]]


def invoke(*arguments: str) -> tuple[int, dict[str, object], list[dict[str, str]]]:
    done = CliRunner().invoke(app, [*arguments, "--on", ON, "--json"])
    envelope = json.loads(done.stdout)
    return done.exit_code, envelope["data"], envelope["errors"]


@pytest.fixture
def schedule(home: Path, monkeypatch: pytest.MonkeyPatch) -> Schedule:
    """Run the command on the case in this process; what it gives as data."""
    monkeypatch.chdir(home.parent)

    def run(*arguments: str) -> dict[str, object]:
        code, data, errors = invoke("schedule", "home.case", *arguments)
        assert (code, errors) == (0, [])
        return data

    return run


def case_at(path: Path) -> Case:
    return CaseFile.load(path).case


# --- on the command line ---------------------------------------------------------------------------------

CREDIT_UNION = ("add", "asset", "kind=checking", "words=Credit union", "value=1,200", "how=earned")


def test_a_thing_is_added_changed_and_taken_out(schedule: Schedule, home: Path) -> None:
    data = schedule(*CREDIT_UNION)
    assert data["changed"] == ["asset.1.how", "asset.1.kind", "asset.1.value", "asset.1.words"]
    (row,) = data["asset"]  # type: ignore[misc]
    assert row["facts"] == {"kind": "checking", "words": "Credit union", "value": "1200", "how": "earned"}
    assert row["open"][0] == "asset.1.owed"
    assert schedule("change", "asset", "1", "value=1300", "by=both")["changed"] == [
        "asset.1.by",
        "asset.1.value",
    ]
    schedule("add", "thing", "kind=vehicle", "words=Car")
    assert schedule("change", "asset", "1", "value=")["changed"] == ["asset.1.value"]
    gone = schedule("remove", "asset", "1")
    assert [row["facts"]["words"] for row in gone["asset"]] == ["Car"]  # type: ignore[attr-defined]
    assert [one.words for one in case_at(home).asset] == ["Car"]


def test_what_holds_for_all_and_the_incomes_are_set(schedule: Schedule, home: Path) -> None:
    data = schedule("set", "agreement=no", "in_california=don't know", "income.petitioner_net=2,450")
    assert data["changed"] == ["income.petitioner_net", "schedule.agreement", "schedule.in_california"]
    case = case_at(home)
    assert (case.schedule.agreement, case.schedule.in_california) == (False, DONT_KNOW)
    assert case.income.petitioner_net == 2450


def test_what_hung_on_a_changed_fact_goes_with_it_and_is_named(schedule: Schedule) -> None:
    schedule("add", "asset", "kind=savings", "last_four=4821")
    data = schedule("change", "asset", "1", "kind=vehicle")
    assert data["left_out"] == ["asset.1.last_four"]
    assert "asset.1.last_four" in data["changed"]  # type: ignore[operator]


def test_facts_may_come_in_any_order(schedule: Schedule) -> None:
    data = schedule(
        "add",
        "asset",
        "house.price=240000",
        "mixed=yes",
        "title=petitioner",
        "how=owned_before",
        "kind=real_estate",
    )
    (row,) = data["asset"]  # type: ignore[misc]
    assert row["facts"]["house"] == {"price": "240000"}


def test_a_list_changes_nothing(schedule: Schedule, home: Path) -> None:
    schedule(*CREDIT_UNION)
    before = home.read_bytes()
    data = schedule("--list")
    assert [row["number"] for row in data["asset"]] == [1]  # type: ignore[attr-defined]
    assert data["debt"] == []
    assert home.read_bytes() == before


REFUSED = {
    "an unknown word": (["sell", "asset", "1"], "no_such_action"),
    "nothing to do": ([], "action_needed"),
    "added without a kind of row": (["add"], "nothing_to_list"),
    "added as something else": (["add", "boat", "value=5"], "nothing_to_list"),
    "added without facts": (["add", "asset"], "nothing_to_list"),
    "added with a fact taken back": (["add", "asset", "value="], "nothing_to_list"),
    "everything taken back": (["change", "asset", "1", "kind=", "words=", "value=", "how="], "nothing_left"),
    "a row that is not there": (["change", "asset", "2", "value=5"], "no_such_row"),
    "a debt that is not there": (["remove", "debt", "1"], "no_such_row"),
    "a row without a number": (["remove", "asset"], "no_such_row"),
    "a fact nobody knows": (["add", "asset", "vlaue=5"], "no_such_fact"),
    "no fact at all": (["add", "asset", "=5"], "no_such_fact"),
    "a word after set": (["set", "agreement", "no"], "no_such_fact"),
    "a fact of a row, set": (["set", "value=5"], "no_such_fact"),
    "an amount that is none": (["add", "asset", "value=much"], "fact_refused"),
    "a day to come": (["add", "asset", "acquired_on=12/31/2027"], "fact_refused"),
    "a whole account number": (["add", "asset", "kind=savings", "last_four=123456789"], "fact_refused"),
    "a social security number": (["add", "debt", "words=Loan 123-45-6789"], "fact_refused"),
    "a fact of another kind of thing": (["add", "asset", "kind=pet", "last_four=4821"], "fact_not_asked"),
}


@pytest.mark.parametrize(("arguments", "code"), REFUSED.values(), ids=REFUSED)
def test_what_cannot_be_is_refused_and_nothing_is_changed(
    home: Path, monkeypatch: pytest.MonkeyPatch, arguments: list[str], code: str
) -> None:
    monkeypatch.chdir(home.parent)
    invoke("schedule", "home.case", *CREDIT_UNION)
    before = home.read_bytes()
    status, data, errors = invoke("schedule", "home.case", *arguments)
    assert (status, data, [error["code"] for error in errors]) == (2, {}, [code])
    assert home.read_bytes() == before
    assert "123" not in errors[0]["message"]


def test_a_full_list_takes_no_more(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(home.parent)
    file = CaseFile.load(home)
    full = file.case.model_copy(update={"asset": (Asset(words="Spoon"),) * MOST_LISTED})
    file.with_case(full).save(home)
    assert invoke("schedule", "home.case", *CREDIT_UNION)[2][0]["code"] == "list_full"


# --- tables ------------------------------------------------------------------------------------------------


def test_tables_go_out_and_come_back(schedule: Schedule, home: Path) -> None:
    schedule(*CREDIT_UNION)
    schedule("add", "debt", "kind=credit_card", "words==Visa", "owed=300")
    data = schedule("--csv-things", "things.csv", "--csv-debts", "debts.csv")
    assert data["tables"] == {"asset": "things.csv", "debt": "debts.csv"}
    for name in ("things.csv", "debts.csv"):
        assert stat.S_IMODE((home.parent / name).stat().st_mode) == 0o600
        assert invoke("enter", "other.case", name)[0] == 0
    other = case_at(home.parent / "other.case")
    assert (other.asset, other.debt) == (case_at(home).asset, case_at(home).debt)


def test_a_table_never_replaces_another_file(schedule: Schedule, home: Path) -> None:
    notes = home.parent / "notes.csv"
    notes.write_text("name,phone\n", "utf-8")
    _status, _data, errors = invoke("schedule", "home.case", "--csv-things", "notes.csv")
    assert errors[0]["code"] == "not_our_output"
    assert notes.read_text("utf-8") == "name,phone\n"


def test_a_bad_table_is_refused_by_row_and_column(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(home.parent)
    (home.parent / "things.csv").write_text("asset,kind,value\n1,boat,much\n", "utf-8")
    before = home.read_bytes()
    status, _data, errors = invoke("enter", "home.case", "things.csv")
    assert status == 2
    assert "Row 2, column kind:" in errors[0]["message"]
    assert "Row 2, column value:" in errors[0]["message"]
    assert home.read_bytes() == before


def test_a_table_that_is_not_utf_8_says_what_to_do(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(home.parent)
    (home.parent / "things.csv").write_bytes("asset,words\r\n1,Café\r\n".encode("cp1252"))
    assert "UTF-8" in invoke("enter", "home.case", "things.csv")[2][0]["message"]


def test_facts_that_do_not_go_with_a_thing_are_left_out_of_a_file_and_named(
    home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(home.parent)
    (home.parent / "more.yaml").write_text("asset: [{kind: pet, words: Cat, last_four: 4821}]\n", "utf-8")
    status, data, _errors = invoke("enter", "home.case", "more.yaml")
    assert status == 0
    assert data["left_out"] == ["asset.1.last_four"]
    assert case_at(home).asset == (Asset(kind="pet", words="Cat"),)


# --- at a terminal ------------------------------------------------------------------------------------------


@pytest.fixture
def listing(home: Path, sit: Callable[..., Sitting]) -> Sitting:
    """At the list of a case with nothing listed."""
    assert home.exists()
    return sit("schedule")


def test_a_first_sitting_asks_what_holds_for_all_and_then_shows_the_list(listing: Sitting) -> None:
    heard = listing.wait()
    assert "First, what holds for all of it" in heard
    assert "Did you two ever sign a paper" in heard
    listing.type("no")
    listing.type("yes")
    heard = listing.type("don't know", then=MENU)
    assert "Nothing is listed yet." in heard
    assert "What holds for all of it (all answered)" in heard
    assert "Change one" not in heard
    assert listing.file.case.schedule.agreement is False


def test_a_thing_is_told_one_question_at_a_time_and_saved_at_once(listing: Sitting) -> None:
    listing.wait()
    listing.type("done", then=MENU)
    listing.type("1")
    assert "How should the list name it?" in listing.type("checking account")
    assert "must say which thing is meant" in listing.type("why")
    listing.type("Credit union")
    assert listing.file.case.asset[0].words == "Credit union"
    assert "I understood: $1,200." in listing.type("1,200")
    assert "What would a stranger pay" in listing.type("back")
    assert "Please type an amount" in listing.type("much")
    listing.type("")
    listing.type("skip")
    listing.type("earned")
    listing.type("both")
    assert "its name on the list: Credit union" in listing.type("review")
    assert "done: enough about this one" in listing.type("help")
    heard = listing.type("done", then=MENU)
    assert "Thing 1: Credit union (checking account): $1,200" in heard
    assert (
        "Not told yet: what is owed on it; the day it came; whose name is on its paper; and 3 more." in heard
    )
    assert "Change one" in heard
    listing.child.sendline("leave")
    assert listing.end() == 0
    assert "It is saved." in listing.heard


def test_a_change_takes_out_what_hung_on_it_and_says_so(listing: Sitting) -> None:
    listing.wait()
    listing.type("done", then=MENU)
    listing.type("1")
    listing.type("savings")
    for typed in ("Nest egg", "5", "0", "earned", "me", "3/2024", "both our names", "me", "4821"):
        listing.type(typed)
    listing.type("me", then=MORE)
    listing.type("no", then=MENU)
    listing.type("3", then=WHICH)
    assert "Your answer now: Savings account" in listing.type("1")
    heard = listing.type("17")
    assert "This does not go with it any more, and was taken out:" in heard
    assert "the last four digits: 4821" in heard
    listing.type("done", then=MENU)
    listing.type("4", then=WHICH)
    listing.type("1", then=YES_NO)
    assert "Taken out: Nest egg (pet): $5." in listing.type("yes", then=MENU)
    assert listing.file.case.asset == ()


def test_leaving_in_the_middle_keeps_what_was_told(listing: Sitting) -> None:
    listing.wait()
    listing.type("done", then=MENU)
    assert "Please type a number from 1 to 4" in listing.type("7", then=MENU)
    listing.type("2")
    listing.type("credit card")
    listing.child.sendline("leave")
    assert listing.end() == 0
    assert [one.kind for one in listing.file.case.debt] == ["credit_card"]


def test_papers_and_notes_are_offered_once_all_is_told(listing: Sitting) -> None:
    listing.wait()
    listing.type("done", then=MENU)
    listing.type("2")
    for typed in ("tax", "Taxes of 2023", "900", "both", "both", "4/2024", "household", "0"):
        listing.type(typed)
    listing.type("half each", then=MORE)
    assert "For what day is the amount" in listing.type("yes")
    listing.type("done", then=MENU)


def test_one_thing_can_be_told_straight_from_the_command(home: Path, sit: Callable[..., Sitting]) -> None:
    assert home.exists()
    sitting = sit("schedule", "add", "debt")
    assert "What kind of debt is it?" in sitting.wait()
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert "Nothing was changed." in sitting.heard


def test_what_the_interview_was_told_is_listed_first_and_under_the_same_name(
    home: Path, sit: Callable[..., Sitting]
) -> None:
    told = CaseFile.load(home)
    case = told.case.with_fact("property.community_how", "list")
    told.with_case(case.with_fact("property.community_items", ("Visa card, ending 2210", "Car"))).save(home)
    listing = sit("schedule")
    assert "In the interview you named: Visa card, ending 2210; Car." in flat(listing.wait())
    heard = listing.type("done", then=MENU)
    assert "1. Tell about this one: Visa card, ending 2210" in heard
    assert "Nothing is listed yet" not in heard
    listing.type("1", then="Type 1 or 2: ")
    heard = listing.type("2")
    assert "What kind of debt is it?" in heard
    assert "How much is owed today?" in listing.type("credit card")
    heard = listing.type("done", then=MENU)
    assert "1. Tell about this one: Car" in heard
    assert (listing.file.case.debt[0].words, listing.file.case.debt[0].last_four) == ("Visa card", "2210")


def test_an_answer_is_taken_back_or_changed_in_the_middle(listing: Sitting) -> None:
    listing.wait()
    listing.type("done", then=MENU)
    listing.type("1")
    listing.type("checking account")
    listing.type("Credit union")
    listing.type("1,200")
    assert "undo: take back the last answer that was saved" in listing.type("help")
    heard = listing.type("undo")
    assert "These answers are again what they were before" in heard
    assert "What would a stranger pay" in heard
    assert listing.file.case.asset[0].value is None
    listing.type("1,300")
    heard = listing.type("change", then=PICK)
    assert "1. What is it? Checking account" in heard
    assert "2. How should the list name it? Credit union" in heard
    assert "Your answer now: Credit union" in listing.type("2")
    listing.type("Savings bank")
    assert listing.file.case.asset[0].words == "Savings bank"
    listing.type("change", then=PICK)
    assert "How much is still owed on it?" in listing.type("")


def test_what_is_taken_back_beyond_the_thing_leads_back_to_the_list(
    listing: Sitting,
) -> None:
    listing.wait()
    listing.type("no")
    listing.type("done", then=MENU)
    listing.type("1")
    listing.type("checking account")
    assert "Taken back: 1 thing" in listing.type("undo")
    heard = listing.type("undo", then=MENU)
    assert "Did you two ever sign a paper" in heard
    assert listing.file.case.schedule.agreement is None
