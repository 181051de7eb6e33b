"""The answers of a case shown, written as a file of facts, and put on pages to sign."""

from collections.abc import Callable
from pathlib import Path

from firstpaper.casefile import CaseFile
from firstpaper.intake.differing import differences
from tests.cli.person import ON, Ran, flat, without, written
from tests.packet.reading_pdf import page_words

Run = Callable[..., Ran]


def test_the_answers_are_read_back_by_topic(run: Run, home: Path) -> None:
    run("schedule", "home.case", "add", "asset", "kind=cash", "words=Box")
    run("record", "home.case", "filed", "day=11/25/2026", "--on", ON)
    said = run("show", "home.case", "--on", ON).out
    assert "The two of you" in said
    assert "Dana Marie Okafor" in said
    assert "1. Box (cash)" in said
    assert "Wednesday, November 25, 2026" in flat(said)
    only = run("show", "home.case", "--topic", "court").out
    assert "Fresno" in only
    assert "Okafor" not in only
    assert "These are the topics:" in run("show", "home.case", "--topic", "shoes").said


def test_a_file_of_facts_made_from_a_case_gives_the_same_case(run: Run, home: Path, tmp_path: Path) -> None:
    assert run("show", "home.case", "--yaml", "facts.yaml").exit == 0
    assert (tmp_path / "facts.yaml").stat().st_mode & 0o777 == 0o600
    assert run("enter", "again.case", "facts.yaml", "--on", ON).exit == 0
    assert differences(CaseFile.load(home).case, CaseFile.load(tmp_path / "again.case").case) == ()
    assert run("show", "home.case", "--yaml", "facts.yaml").exit == 2
    piped = run("show", "home.case", "--yaml", "-")
    assert piped.out == (tmp_path / "facts.yaml").read_text("utf-8")
    assert "not locked" in piped.said


def test_files_are_piped_on_one_at_a_time_and_named_as_what_they_are(
    run: Run, home: Path, tmp_path: Path
) -> None:
    assert run("paper", "--topic", "court", "--facts", "-").out.startswith("#")
    assert not (tmp_path / "-").exists()
    for words in (
        ["show", "home.case", "--yaml", "-", "--pdf", "-"],
        ["packet", "home.case", "-o", "-", "--html", "-", "--on", ON],
        ["shelf", ".", "--csv", "-", "--ics", "-"],
        ["schedule", "home.case", "--csv-things", "-", "--csv-debts", "-"],
    ):
        ran = run(*words)
        assert (ran.exit, ran.out) == (2, "")
        assert "cannot both go to standard output" in ran.said
    for words in (
        ["show", "home.case", "--yaml", "facts.pdf"],
        ["paper", "--facts", "facts.txt"],
        ["shelf", ".", "--csv", "list.txt"],
        ["schedule", "home.case", "--csv-things", "things.txt"],
    ):
        before = sorted(tmp_path.iterdir())
        assert "has a name that ends with" in run(*words).said
        assert sorted(tmp_path.iterdir()) == before


def test_the_pages_to_sign_hold_the_answers_and_tell_of_no_danger(
    run: Run, home: Path, tmp_path: Path
) -> None:
    file = CaseFile.load(home)
    file.with_case(file.case.with_fact("safety.dangers", ("afraid",))).save(home)
    without(home, "court.branch")
    assert run("show", "home.case", "--pdf", "read.pdf", "--on", ON).exit == 0
    words = flat(" ".join(page_words((tmp_path / "read.pdf").read_bytes())))
    assert "Dana Marie Okafor" in words
    assert "Signature" in words
    assert "Not answered yet" in words
    assert "afraid" not in words


def test_the_answers_of_a_family_are_signed_on_the_second_page(run: Run, tmp_path: Path) -> None:
    written(tmp_path, "two-children-moved-county")
    assert run("show", "home.case", "--pdf", "read.pdf", "--on", ON).exit == 0
    first, second = page_words((tmp_path / "read.pdf").read_bytes())
    assert "Your full legal name: Marisol Quintero Vega" in flat(first)
    assert "Signature" in second


def test_only_what_is_open_is_printed_for_a_case(run: Run, home: Path, tmp_path: Path) -> None:
    without(home, "court.branch", "petitioner.phone")
    assert run("paper", "home.case", "-o", "open.pdf", "--facts", "open.yaml").exit == 0
    text = (tmp_path / "open.yaml").read_text("utf-8")
    keys = [
        line[1:].partition(":")[0]
        for line in text.splitlines()
        if line.startswith("#") and line[1:2].islower()
    ]
    assert {"court.branch", "petitioner.phone"} <= set(keys)
    assert "petitioner.name" not in keys
    (tmp_path / "open.yaml").write_text("court.branch: Annex\npetitioner.phone: none\n", "utf-8")
    assert run("enter", "home.case", "open.yaml").exit == 0
