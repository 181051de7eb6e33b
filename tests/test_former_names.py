"""A name that was given up stays good: for a person who types it, for a script and in a case file."""

import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner

from firstpaper import former_names as module
from firstpaper.casefile import CaseFile
from firstpaper.cli.app import app
from firstpaper.data_files import DataFileError
from firstpaper.facts import Case
from firstpaper.former_names import Named, called_now, former_names, formerly
from firstpaper.intake import asking, facts_from
from firstpaper.intake.events import events
from firstpaper.intake.kinds import recorded_places, told_places
from firstpaper.intake.tables import facts_from_table
from firstpaper.law.agenda import agenda
from firstpaper.law.deadline_register import all_deadlines
from firstpaper.law.register import all_rules, findings, is_rule, rule_called
from firstpaper.packet.calendar import calendar

ON = date(2026, 12, 6)
TABLE = """
facts:
  petitioner.telephone: petitioner.phone
  matter.county: court.county
  child.*.called: child.*.name
  asset.*.label: asset.*.words
  record.day_filed: record.filed_on
rules:
  residence.six_months: residence.state
dates:
  response.thirty_days: response.petition
events:
  lodged: filed
"""
SERVED = {"filed_on": "2026-12-01", "service": {"method": "personal", "served_on": "2026-12-05"}}


@pytest.fixture
def renamed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A table of the test's own, in the folder in which its commands run."""
    path = tmp_path / "former_names.yaml"
    path.write_text(TABLE, encoding="utf-8")
    monkeypatch.setattr(module, "FILE", path)
    monkeypatch.chdir(tmp_path)
    return tmp_path


def run(*words: str) -> dict[str, Any]:
    done = CliRunner().invoke(app, [*words, "--json"])
    assert done.exit_code in (0, 1), done.output
    data: dict[str, Any] = json.loads(done.stdout)["data"]
    return data


def test_every_name_of_today_is_in_use_and_no_former_one_is() -> None:
    in_use = {
        Named.FACT: {*told_places(), *recorded_places()},
        Named.RULE: set(all_rules()),
        Named.DATE: set(all_deadlines()),
        Named.EVENT: {topic.name for topic in events().topics},
    }
    for kind, names in former_names().items():
        assert set(names.values()) <= in_use[kind]
        assert not names.keys() & in_use[kind]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (
            TABLE.replace("  lodged: filed", "  lodged: stamped\n  stamped: filed"),
            "lodged: stamped was",
        ),
        (
            TABLE.replace("child.*.name", "petitioner.name"),
            "child.*.called: what is told of",
        ),
        (TABLE.replace(": filed", ": 3"), "events > lodged: this must be some words"),
        (TABLE.replace("events:", "happenings:"), "happenings: nothing is known by that name"),
    ],
)
def test_a_name_that_leads_nowhere_is_refused(renamed: Path, text: str, says: str) -> None:
    (renamed / "former_names.yaml").write_text(text, encoding="utf-8")
    with pytest.raises(DataFileError) as refused:
        former_names()
    assert says in str(refused.value)


@pytest.mark.usefixtures("renamed")
def test_a_rule_answers_to_the_name_that_it_had() -> None:
    assert called_now(Named.RULE, "residence.six_months") == "residence.state"
    assert not is_rule("residence.six_months")
    assert rule_called("residence.six_months") is rule_called("residence.state")
    case = Case.model_validate({"matter": {"kind": "dissolution"}})
    assert findings(case, ON, ["residence.six_months"]) == findings(case, ON, ["residence.state"])


def test_why_prints_the_page_of_today(renamed: Path) -> None:
    (renamed / "home.case").write_text(CaseFile().to_json())
    page = run("why", "residence.six_months", "home.case")
    assert (page["id"], page["formerly"]) == ("residence.state", ["residence.six_months"])
    assert page["findings"] == run("why", "residence.state", "home.case")["findings"]
    question = run("why", "petitioner.telephone")
    assert (question["key"], question["formerly"]) == ("petitioner.phone", ["petitioner.telephone"])


def test_an_answer_is_changed_by_the_name_that_it_had(renamed: Path) -> None:
    (renamed / "home.case").write_text(CaseFile().to_json())
    assert run("change", "home.case", "petitioner.telephone=559-555-0142")["changed"] == [
        {"key": "petitioner.phone", "before": None, "after": "559-555-0142"}
    ]


@pytest.mark.usefixtures("renamed")
def test_a_file_of_facts_and_a_table_may_use_the_old_names() -> None:
    case, problems = facts_from("matter.county: Kern\nchild:\n  - called: Ada Soto\n", ON)
    assert problems == ()
    assert (case.court.county, case.child[0].name) == ("Kern", "Ada Soto")
    case, problems = facts_from_table("asset,label\n1,Car\n", ON)
    assert problems == ()
    assert case.asset[0].words == "Car"


@pytest.mark.usefixtures("renamed")
def test_a_question_of_a_row_is_found_by_the_name_that_it_had() -> None:
    asked = asking("child.2.called", Case.nothing())
    assert asked
    assert asked.key == "child.2.name"
    assert asking("child.2.nickname", Case.nothing()) is None


def test_a_case_file_that_holds_old_names_is_read_whole(renamed: Path) -> None:
    now = Case.model_validate(
        {
            "petitioner": {"name": "Maria Soto", "phone": "559-555-0142"},
            "court": {"county": "Kern"},
            "child": [{"name": "Ada Soto"}, {"name": "Ben Soto"}],
            "record": {"filed_on": "2026-12-01"},
        }
    )
    document = json.loads(CaseFile(now, ("petitioner.email", "court.branch")).to_json())
    facts = document["facts"]
    facts["petitioner"]["telephone"] = facts["petitioner"].pop("phone")
    facts["matter"] = {"county": facts.pop("court")["county"]}
    facts["child"] = [{"called": one["name"]} for one in facts["child"]]
    facts["record"]["day_filed"] = facts["record"].pop("filed_on")
    document["passed"] = ["petitioner.telephone", "nobody.knows"]
    path = renamed / "old.case"
    path.write_text(json.dumps(document))
    read = CaseFile.load(path)
    assert read.case == now
    assert read.passed == ("petitioner.phone",)


def test_an_event_and_a_date_say_what_they_were_called(renamed: Path) -> None:
    case = Case.model_validate({"matter": {"kind": "dissolution"}, "record": SERVED})
    (renamed / "home.case").write_text(CaseFile(case).to_json())
    recorded = run("record", "home.case", "lodged", "day_filed=2026-12-02", "--on", "2026-12-06")
    assert recorded["event"] == "filed"
    assert [one["formerly"] for one in recorded["recorded"] if one["event"] == "filed"] == [["lodged"]]
    dates = {one["key"]: one["formerly"] for one in run("dates", "home.case", "--on", "2026-12-06")["dates"]}
    assert dates["response.petition"] == ["response.thirty_days"]
    assert formerly(Named.DATE, "dismissal.untried") == ()


def test_a_calendar_knows_a_date_by_its_first_name(renamed: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """So that a newer file takes the place of an older one, and no entry stands twice."""
    case = Case.model_validate({"matter": {"kind": "dissolution"}, "record": SERVED})
    found = agenda(case, ON)
    with_table = uids(calendar(found, "abcdefghijklmnopqrst"))
    table = renamed / "none.yaml"
    table.write_text("facts:\nrules:\ndates:\nevents:\n")
    monkeypatch.setattr(module, "FILE", table)
    without = uids(calendar(found, "abcdefghijklmnopqrst"))
    assert len(with_table - without) == len(without - with_table) == 1


def uids(text: bytes) -> set[str]:
    return {line for line in text.decode().splitlines() if line.startswith("UID:")}
