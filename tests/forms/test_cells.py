"""Answers in pieces: the pieces say the same as the words, and the edition names the columns."""

from datetime import date
from pathlib import Path

import pytest
from hypothesis import given, settings

from firstpaper.data_files import DataFileError
from firstpaper.facts import Case
from firstpaper.forms import Filing, filled_forms
from firstpaper.forms.answer import Action, ItemAnswer, write
from firstpaper.forms.edition import all_editions, edition_for, slug
from firstpaper.forms.filing import FOLDER, every_form, maker, plan
from firstpaper.forms.placing import MisplacedError, placed
from firstpaper.intake import standing
from tests.any_case import any_case, filing_days
from tests.households.golden import households

ON = date(2026, 12, 1)
IN_PIECES = {(one.form, item.concept) for one in all_editions() for item in one.items if item.columns}


def answers(case: Case, on: date) -> list[ItemAnswer]:
    return [
        one for filing in Filing for form in filled_forms(standing(case), on, filing) for one in form.items
    ]


@settings(max_examples=40, deadline=None)
@given(any_case(), filing_days())
def test_an_answer_with_columns_is_given_in_pieces_that_stand_in_its_words(case: Case, on: date) -> None:
    for one in answers(case, on):
        if (one.form, one.concept) in IN_PIECES and one.action is Action.WRITE and not one.continues:
            assert one.cells, one
            for row in one.rows:
                assert list(row) == list(one.columns)
                for column, cell in row.items():
                    pieces = cell.split() if column == "city_zip" else [cell]
                    assert all(piece in one.value for piece in pieces) or column == "relation", (column, one)
        else:
            assert not one.cells or (one.form, one.concept) in IN_PIECES


def test_the_pieces_of_each_kind_are_in_some_household() -> None:
    told = {
        (one.form, one.concept) for each in households() for one in answers(each.case, each.on) if one.cells
    }
    assert {form for form, _concept in told} >= {"FL-105", "FL-110", "FL-160", "FL-311", "FL-700", "FW-001"}


def test_pieces_that_do_not_fit_the_columns_are_refused() -> None:
    edition = edition_for("FL-110", ON)
    wrong = [write(item.concept, "x", cells=(("one",),)) for item in edition.items]
    with pytest.raises(MisplacedError, match=r"not in the columns: .*court"):
        placed(edition, tuple(wrong))


def test_every_form_has_one_entry_point_and_stands_in_a_filing() -> None:
    folders = {path.parent.name for path in FOLDER.parent.glob("*/form.py")}
    assert folders == {slug(name) for name in every_form()}
    for name in every_form():
        assert all(form.form in (name, f"{name}(A)") for form in maker(name)(Case(), ON))
    with pytest.raises(LookupError, match="FL-999"):
        maker("FL-999")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("stage: first\nmain: FL-100\nfills: [FL-999]\n", "nothing answers for form FL-999"),
        ("stage: soon\nmain: FL-100\nfills: [FL-100]\n", "must be one of first, later"),
        ("stage: first\nmain: FL-110\nfills: [FL-100]\n", "one of those to fill in"),
    ],
)
def test_a_filing_that_is_not_as_it_should_be_names_file_and_place(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, words: str, told: str
) -> None:
    (tmp_path / "petition.yaml").write_text(words)
    monkeypatch.setattr("firstpaper.forms.filing.FOLDER", tmp_path)
    with pytest.raises(DataFileError, match=told):
        plan.__wrapped__(Filing.PETITION)


def test_each_filing_has_its_file() -> None:
    assert {path.stem for path in FOLDER.glob("*.yaml")} == set(Filing)
