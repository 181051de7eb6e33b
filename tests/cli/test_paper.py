"""`firstpaper paper`: blank sheets and a file of facts, and what it never writes over."""

import stat
from collections.abc import Callable
from io import BytesIO
from pathlib import Path

from pypdf import PdfReader

from firstpaper.casefile import CaseFile
from tests.cli.person import ON, Ran, flat

Run = Callable[..., Ran]


def text_of(pdf: Path) -> str:
    return flat(" ".join(page.extract_text() for page in PdfReader(BytesIO(pdf.read_bytes())).pages))


def test_the_sheets_come_without_a_case_and_for_their_owner_alone(run: Run, tmp_path: Path) -> None:
    ran = run("paper")
    assert ran.exit == 0
    assert "The question sheets are in question-sheets.pdf." in flat(ran.out)
    assert "where the other person cannot find them" in flat(ran.out)
    (made,) = tmp_path.iterdir()
    assert made.name == "question-sheets.pdf"
    assert stat.S_IMODE(made.stat().st_mode) == 0o600
    assert "child.2.name" in text_of(made)
    assert PdfReader(made).metadata["/Title"] == "Question sheets"  # type: ignore[index]


def test_a_topic_and_a_number_of_children_can_be_chosen(run: Run, tmp_path: Path) -> None:
    assert (
        run("paper", "-o", "some.pdf", "--topic", "children", "--topic", "Court", "--children", "3").exit == 0
    )
    text = text_of(tmp_path / "some.pdf")
    assert "child.3.name" in text
    assert "child.4.name" not in text
    assert text.index("court.county") < text.index("child.1.name")
    assert "petitioner.mailing" not in text


def test_what_was_made_is_told_to_programs(run: Run, tmp_path: Path) -> None:
    envelope = run("paper", "-o", "a.pdf", "--facts", "a.yaml", "--topic", "court", "--json").envelope
    assert envelope["command"] == "paper"
    room = {"children": 2, "things": 0, "debts": 0}
    assert envelope["data"] == {"pdf": "a.pdf", "facts": "a.yaml", "topics": ["court"], **room}
    assert sorted(path.name for path in tmp_path.iterdir()) == ["a.pdf", "a.yaml"]


def test_a_file_of_facts_is_filled_in_and_entered(run: Run, tmp_path: Path) -> None:
    ran = run("paper", "--facts", "facts.yaml")
    assert ran.out.endswith("firstpaper enter home.case facts.yaml\n")
    (made,) = tmp_path.iterdir()
    assert stat.S_IMODE(made.stat().st_mode) == 0o600
    text = made.read_text("utf-8")
    assert "911" in text[:500]
    assert "1-800-799-7233" in text[:500]
    filled = text.replace("#court.county:", "court.county: Fresno").replace(
        "#child.1.name:", "child.1.name: Ada Okafor"
    )
    made.write_text(filled, "utf-8")
    assert run("enter", "home.case", "facts.yaml", "--on", ON).exit == 0
    case = CaseFile.load(tmp_path / "home.case").case
    assert case.court.county == "Fresno"
    assert case.child[0].name == "Ada Okafor"


def test_a_file_that_somebody_may_have_filled_in_is_left_alone(run: Run, tmp_path: Path) -> None:
    assert run("paper", "--facts", "facts.yaml").exit == 0
    before = (tmp_path / "facts.yaml").read_bytes()
    ran = run("paper", "--facts", "facts.yaml", "-o", "sheets.pdf")
    assert ran.exit == 2
    assert "somebody may have written answers in it" in ran.said
    assert (tmp_path / "facts.yaml").read_bytes() == before
    assert not (tmp_path / "sheets.pdf").exists()
    assert run("paper", "--facts", ".").exit == 2


def test_sheets_replace_sheets_and_nothing_else(run: Run, home: Path) -> None:
    assert run("paper", "-o", "a.pdf", "--topic", "court").exit == 0
    assert run("paper", "-o", "a.pdf", "--topic", "court").exit == 0
    before = home.read_bytes()
    ran = run("paper", "-o", "home.case")
    assert ran.exit == 2
    assert "It was left alone" in ran.said
    assert home.read_bytes() == before


def test_what_cannot_be_printed_is_told_with_what_can(run: Run, tmp_path: Path) -> None:
    unknown = run("paper", "--topic", "shoes\x1b[2J")
    assert unknown.exit == 2
    assert "There is no topic called shoes" in unknown.said
    assert "safety, matter, people, court" in unknown.said
    for count in ("31", "-1"):
        ran = run("paper", "--children", count)
        assert ran.exit == 2
        assert "room for 0 to 30 children" in ran.said
    assert run("paper", "--children", "two").exit == 2
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_not_there_is_told(run: Run) -> None:
    for option, name in (("-o", "a.pdf"), ("--facts", "a.yaml")):
        ran = run("paper", option, f"nowhere/{name}")
        assert ran.exit == 2
        assert "is not there" in ran.said


def test_sheets_for_things_and_debts_are_drawn_where_there_is_room_for_them(run: Run) -> None:
    plain = run("paper", "--json").envelope["data"]
    assert "thing" not in plain["topics"]
    data = run("paper", "--things", "2", "--json").envelope["data"]
    assert {"everything", "thing", "house", "income"} <= set(data["topics"])
    assert "debt" not in data["topics"]
    named = run("paper", "--topic", "debt", "--facts", "debts.yaml", "--json").envelope["data"]
    assert (named["topics"], named["debts"]) == (["debt"], 1)
    assert run("paper", "--things", "100", "--json").envelope["errors"][0]["code"] == "too_many_listed"


def test_sheets_for_one_kind_of_case_hold_what_its_usual_case_is_asked(run: Run, tmp_path: Path) -> None:
    assert run("paper", "-o", "all.pdf").exit == 0
    assert run("paper", "-o", "divorce.pdf", "--for", "divorce", "--no-children").exit == 0
    assert run("paper", "-o", "nullity.pdf", "--for", "nullity").exit == 0
    divorce, nullity = text_of(tmp_path / "divorce.pdf"), text_of(tmp_path / "nullity.pdf")
    assert "petitioner.name" in divorce
    assert "requests.former_name" in divorce
    assert "child." not in divorce
    assert "grounds.nullity" not in divorce
    assert "grounds.nullity" in nullity
    assert "child.2.name" in nullity
    pages = {name: len(PdfReader(tmp_path / f"{name}.pdf").pages) for name in ("all", "divorce")}
    assert pages["divorce"] <= 15
    assert pages["all"] <= 50
