"""`firstpaper guide`: where the pages go, what is refused, and what is left of them."""

from collections.abc import Callable
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.cli.person import ON, Ran, flat

Run = Callable[..., Ran]


def test_a_read_along_without_a_case_goes_into_this_folder(run: Run, tmp_path: Path) -> None:
    ran = run("guide", "fl110", "--on", ON)
    assert flat(ran.out) == "The pages to read are in guide-FL-110.pdf."
    assert PdfReader(tmp_path / "guide-FL-110.pdf").metadata.title == "FL-110, line by line"  # type: ignore[union-attr]


def test_without_a_name_it_is_the_petition(run: Run, tmp_path: Path) -> None:
    assert run("guide", "--on", ON).exit == 0
    assert (tmp_path / "guide-FL-100.pdf").exists()


def test_that_of_a_case_lies_beside_it_and_goes_with_it(run: Run, home: Path) -> None:
    assert run("guide", "FL-110", "home.case", "--on", ON).exit == 0
    assert run("guide", "after", "home.case", "--on", ON).exit == 0
    made = {path.name for path in home.parent.glob("*.pdf")}
    assert made == {"home-guide-FL-110.pdf", "home-guide-after.pdf"}

    assert run("erase", "home.case", "--yes").exit == 0
    assert list(home.parent.glob("*.pdf")) == []


def test_it_can_be_locked_and_read_with_the_passphrase(run: Run, home: Path) -> None:
    (home.parent / "words").write_text("marble otter seven violins\n")
    ran = run("guide", "FL-110", "home.case", "--seal", "--passphrase-from", "words", "--on", ON)
    assert ran.exit == 0, ran.said
    locked = PdfReader(home.parent / "home-guide-FL-110.pdf")
    assert locked.is_encrypted
    assert locked.decrypt("marble otter seven violins")


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (["FL-999"], "no_such_guide"),
        (["home.case"], "no_such_guide"),
        (["FL-110", "--seal"], "case_to_seal"),
        (["FL-110", "home.case", "--seal", "--html", "x.html"], "only_pdf_locked"),
        (["FL-110", "gone.case"], "case_file_missing"),
        (["FL-110", "-o", "letter.txt"], "not_our_output"),
    ],
    ids=lambda words: " ".join(words) if isinstance(words, list) else words,
)
def test_what_cannot_be_is_said_and_nothing_is_written(
    run: Run, home: Path, words: list[str], code: str
) -> None:
    (home.parent / "letter.txt").write_text("Dear court,\n")
    ran = run("guide", *words, "--on", ON, "--json")
    assert ran.exit == 2
    assert [error["code"] for error in ran.envelope["errors"]] == [code]
    assert list(home.parent.glob("*.pdf")) == []


def test_the_version_for_a_screen_is_one_page_with_nothing_to_fetch(run: Run, home: Path) -> None:
    assert run("guide", "FL-100", "home.case", "--html", "guide.html", "--on", ON).exit == 0
    page = home.with_name("guide.html").read_text("utf-8")
    assert "<script" not in page
    assert "In your case:" in page
    assert "Okafor" not in page
