"""The list of papers of single courts is read strictly, as every data file is."""

from pathlib import Path

import pytest

from firstpaper.data_files import DataFileError
from firstpaper.forms.local_forms import read_papers
from firstpaper.law.authority import Certainty

PAPER = (
    "Kern:\n  - says: A habit.\n    source: A page\n    certainty: secondary\n    checked_on: 2026-11-25\n"
)


def file_of(tmp_path: Path, text: str) -> Path:
    path = tmp_path / "papers.yaml"
    path.write_text(text, "utf-8")
    return path


def test_a_paper_is_read_with_where_it_comes_from(tmp_path: Path) -> None:
    (one,) = read_papers(file_of(tmp_path, PAPER))["Kern"]
    assert (one.says, one.certainty, one.number) == ("A habit.", Certainty.SECONDARY, "")


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        (PAPER + PAPER, "papers.yaml > Kern: written twice, again in line 6"),
        (PAPER + "    color: red\n", "papers.yaml > Kern > 1 > color: nothing is known by that name"),
        (PAPER.replace("    source: A page\n", ""), "papers.yaml > Kern > 1 > source: this is missing"),
        (PAPER.replace("secondary", "sure"), "papers.yaml > Kern > 1 > certainty: this must be one of"),
        (PAPER.replace("2026-11-25", "soon"), "papers.yaml > Kern > 1 > checked_on"),
        ("Kern: none\n", "papers.yaml > Kern: this must be a list"),
    ],
)
def test_what_the_file_should_not_hold_is_refused_with_the_place(
    tmp_path: Path, text: str, problem: str
) -> None:
    with pytest.raises(DataFileError) as refused:
        read_papers(file_of(tmp_path, text))
    assert problem in str(refused.value)
