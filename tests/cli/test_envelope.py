"""What other programs build on: one envelope for every command, its keys, and the exit statuses."""

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile
from firstpaper.cli.shapes import SHAPES, Envelope, Many
from firstpaper.cli.shapes.law import ItemPage, ItemPages, QuestionPage, RulePage, Why
from tests.cli.every_command import COMMANDS, FAILS, names, set_out, set_out_wrong
from tests.cli.person import ON, Ran, written

Run = Callable[..., Ran]

ENVELOPE = ["firstpaper", "command", "exit", "data", "errors"]


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, home: Path) -> Path:
    set_out(tmp_path, CaseFile.load(home))
    set_out_wrong(tmp_path)
    (tmp_path / "words").write_text("six plain words to lock it\n")
    return home


@pytest.mark.parametrize("command", SHAPES)
def test_a_command_that_works_gives_the_envelope_and_the_shape_of_the_reference(
    run: Run, command: str
) -> None:
    ran = run(*COMMANDS[command], "--json")
    assert list(ran.envelope) == ENVELOPE
    assert ran.envelope["firstpaper"] == 1
    assert ran.envelope["command"] == command
    assert ran.envelope["exit"] == ran.exit == 0
    assert ran.envelope["errors"] == []
    Envelope.model_validate(ran.envelope)
    SHAPES[command].model_validate(ran.envelope["data"])


@pytest.mark.parametrize("command", FAILS)
def test_a_command_that_fails_gives_the_same_envelope_and_says_the_same(run: Run, command: str) -> None:
    arguments, code = FAILS[command]
    ran = run(*arguments, "--json")
    assert list(ran.envelope) == ENVELOPE
    assert ran.envelope["command"] == command
    assert ran.envelope["exit"] == ran.exit == 2
    assert ran.envelope["data"] == {}
    [error] = ran.envelope["errors"]
    assert list(error) == ["code", "message"]
    assert error["code"] == code
    in_words = run(*arguments)
    assert in_words.exit == 2
    assert in_words.out == ""
    assert " ".join(error["message"].split()) == in_words.said


def test_an_answer_that_is_typed_for_change_has_its_shape_too(run: Run) -> None:
    typed = run("change", "home.case", "court.branch", "--on", ON, "--json", typed="Annex\n")
    assert typed.envelope["data"].keys() == {"answered", "applicable", "open_questions", "passed"}
    SHAPES["change"].model_validate(typed.envelope["data"])
    nobody = run("change", "home.case", "court.branch", "--on", ON, "--json")
    assert (nobody.exit, nobody.envelope["errors"][0]["code"]) == (2, "answer_needed")


@pytest.mark.parametrize(
    ("page", "kind"),
    [
        ("residence.state", RulePage),
        ("petitioner.name", QuestionPage),
        ("2a", ItemPage),
        ("children", ItemPages),
    ],
)
@pytest.mark.parametrize("case", [[], ["home.case"]])
def test_each_kind_of_page_has_its_shape(run: Run, page: str, kind: type, case: list[str]) -> None:
    data = run("why", page, *case, "--on", ON, "--json").envelope["data"]
    shape = Why.model_validate(data).root
    assert type(shape) is kind
    assert ("on" in data) == (bool(case) and kind in (RulePage, ItemPage))


@pytest.mark.parametrize(
    "words",
    [
        ["change", "home.case", "listed.case", "court.branch=Annex"],
        ["check", "home.case", "gone.case", "--on", ON],
        ["packet", "home.case", "listed.case", "--on", ON],
    ],
)
def test_many_results_have_the_shape_that_the_reference_describes(run: Run, words: list[str]) -> None:
    data = run(*words, "--json").envelope["data"]
    Many.model_validate(data)
    shape = SHAPES[words[0]]
    for one in data["cases"]:
        if not one["errors"]:
            shape.model_validate(one["data"])


def test_every_command_is_held_to_the_envelope() -> None:
    assert names() == {words[0] for words in COMMANDS.values()} == set(FAILS) == set(SHAPES)
    assert set(SHAPES) <= COMMANDS.keys()


def test_findings_and_values_have_their_names(run: Run) -> None:
    data = run("check", "home.case", "--on", ON, "--json").envelope["data"]
    assert data["on"] == ON
    assert "residence.state" in [finding["id"] for finding in data["findings"]]
    assert data["values"]["marriage.length"] == {"years": 4, "months": 2}
    assert {finding["weight"] for finding in data["findings"]} <= {
        "stop",
        "get_advice",
        "look_again",
        "good_to_know",
    }


def test_what_changes_soon_has_its_names(run: Run, tmp_path: Path) -> None:
    written(tmp_path, "separation-now-divorce-later")
    changes = run("check", "home.case", "--on", "2026-11-25", "--json").envelope["data"]["changes"]
    assert {"residence.separation_first", "requests.intent_to_amend"} <= {
        change["rule"] for change in changes
    }
    assert all("2026-11-25" < change["on"] <= "2027-01-24" for change in changes)


@pytest.mark.parametrize("words", [["--form", "fl 110"], ["--all"]])
def test_every_form_is_given_the_same_way(run: Run, words: list[str]) -> None:
    items = run("items", "home.case", *words, "--on", ON, "--json").envelope["data"]["items"]
    assert "FL-110" in {item["form"] for item in items}
    court = next(item for item in items if (item["form"], item["concept"]) == ("FL-110", "court"))
    assert list(court["cells"][0]) == ["county", "street", "city_zip", "branch"]


def test_a_form_that_is_not_known_or_not_used_says_so(run: Run) -> None:
    for form, code in (("XX-9", "no_such_form"), ("FL-311", "form_not_used")):
        ran = run("items", "home.case", "--form", form, "--on", ON, "--json")
        assert [error["code"] for error in ran.envelope["errors"]] == [code]


def test_items_have_their_names_and_every_item_of_the_form_is_there(run: Run) -> None:
    items = run("items", "home.case", "--on", ON, "--json").envelope["data"]["items"]
    assert {item["form"] for item in items} == {"FL-100"}
    by_concept = {item["concept"]: item for item in items}
    assert len(by_concept) == len(items)
    assert by_concept["cap.petitioner"]["value"] == "Dana Marie Okafor"
    assert by_concept["children.none"]["action"] == "mark"
    assert by_concept["signing.petitioner"]["action"] == "sign"


def test_a_question_can_be_explained_to_a_program(run: Run) -> None:
    data = run("why", "petitioner.phone", "--json").envelope["data"]
    assert data["key"] == "petitioner.phone"
    assert {"concept": "cap.phone", "words": "page 1, caption: Your telephone number"} in data["items"]


def test_the_envelope_is_plain_ascii(run: Run, folder: Path) -> None:
    file = CaseFile.load(folder)
    file.with_case(file.case.with_fact("petitioner.name", "Łucja Żółć")).save(folder)
    ran = run("items", "home.case", "--on", ON, "--json")
    assert ran.out.isascii()
    assert "Łucja Żółć" in [item["value"] for item in ran.envelope["data"]["items"]]


def test_a_finding_that_stops_a_filing_is_exit_1_for_check_and_packet(run: Run, folder: Path) -> None:
    file = CaseFile.load(folder)
    file.with_case(file.case.with_fact("dates.separation_told_on", "2019-03-03")).save(folder)
    checked = run("check", "home.case", "--on", ON, "--json")
    assert checked.exit == checked.envelope["exit"] == 1
    assert checked.envelope["data"]["findings"][0]["id"] == "dates.order"
    drafted = run("packet", "home.case", "--on", ON, "--json")
    assert drafted.exit == 1
    assert "dates.order" in drafted.envelope["data"]["stops"]
    assert (folder.parent / "home.pdf").read_bytes().startswith(b"%PDF-")


def test_the_same_case_on_another_day_is_another_answer(run: Run, tmp_path: Path) -> None:
    written(tmp_path, "separation-now-divorce-later")

    def outcome(on: str) -> str:
        found = run("check", "home.case", "--on", on, "--json").envelope["data"]["findings"]
        return json.dumps([one for one in found if one["id"].startswith("residence.")])

    assert outcome("2026-11-25") != outcome("2028-11-25")
