"""The forms explained item by item: nothing left out, nothing said twice, each with its source."""

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
import yaml

from firstpaper.data_files import DataFileError
from firstpaper.forms import explanations as whole
from firstpaper.forms.explanation import Explanation, figure_words, load_explanation, practices
from firstpaper.forms.explanations import explanations, paths
from firstpaper.law.figure import UnknownFigureError, figure
from tests.forms.explained import FORMS, problems

ON = date(2026, 12, 1)
ONE = {
    "item": "2a",
    "title": "A title",
    "concepts": ["residence.petitioner", "residence.respondent"],
    "asks": "What is asked?",
    "means": "At least {figure:residence.state_months} months.",
    "marked": "It is so.",
    "left": "It is not so.",
    "cites": ["Fam. Code 2320(a)"],
    "rules": ["residence.state"],
    "questions": ["residence.petitioner.lives"],
}

Change = Callable[[dict[str, object]], object]


@pytest.fixture
def written(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[..., tuple[Explanation, ...]]:
    """The explanations of FL-100 as some files have them, read whole."""
    monkeypatch.setattr(whole, "EXPLAINED", tmp_path)

    def read(*shapes: dict[str, object]) -> tuple[Explanation, ...]:
        (tmp_path / "fl100").mkdir()
        for number, shape in enumerate(shapes, 1):
            (tmp_path / f"fl100/{number:02}-one.yaml").write_text(yaml.safe_dump(shape), encoding="utf-8")
        explanations.cache_clear()
        try:
            return explanations("FL-100")
        finally:
            explanations.cache_clear()

    return read


def read_one(folder: Path, shape: dict[str, object]) -> Explanation:
    """One explanation of FL-100, read from a file by itself."""
    path = folder / "01-one.yaml"
    path.write_text(yaml.safe_dump(shape), encoding="utf-8")
    return load_explanation(path, "FL-100")


@pytest.mark.parametrize("form", FORMS)
def test_every_item_is_explained_once_with_its_source_and_in_plain_words(form: str) -> None:
    assert list(problems(form)) == []


def test_every_row_of_common_practice_stands_in_some_explanation() -> None:
    used = {trap.practice for form in FORMS for one in explanations(form) for trap in one.traps}
    assert [row for row in practices() if row not in used] == []


def test_a_file_is_read_as_it_stands(tmp_path: Path) -> None:
    one = read_one(tmp_path, ONE)

    assert (one.place, one.rules, one.sides) == ("FL-100 2a", ("residence.state",), ())
    assert one.on(ON).means == f"At least {figure('residence.state_months', ON).value} months."


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"concepts": ["residence.nobody"]}, "FL-100 has no residence.nobody"),
        ({"rules": ["residence.nothing"]}, "no rule residence.nothing"),
        ({"questions": ["residence.nothing"]}, "no question residence.nothing"),
        ({"cites": ["Fam. Code 2320(q)"]}, "no paragraph '(q)'"),
        ({"cites": ["Fam. Code 99999"]}, "is not in authorities"),
        ({"means": "After {figure:residence.nothing} months."}, "residence.nothing"),
        ({"means": "After {months} months."}, "braces hold only figures"),
        ({"traps": [{"says": "Beware."}]}, "either practice or cite"),
        ({"traps": [{"says": "Beware.", "practice": "P99"}]}, "no row P99"),
        ({"traps": [{"says": "Beware.", "practice": "P1", "cite": "Fam. Code 2320(a)"}]}, "practice or cite"),
        ({"traps": [{"says": "Beware.", "cite": "Fam. Code 2320(q)"}]}, "no paragraph '(q)'"),
        ({"sides": [{"choice": "a", "for": "b", "against": "c"}]}, "one choice is none"),
        ({"sides": [{"choice": "a", "for": "b"}] * 2}, "speaks_against: this is missing"),
        ({"changes": [{"from": "2027", "says": "a", "cite": "Fam. Code 2320(a)"}]}, "since"),
        ({"item": 2}, "this is no"),
        ({"asks": None}, "this is no"),
        ({"extra": "a"}, "nothing is known by that name"),
        ({"concepts": []}, "concepts: this is missing"),
        ({"rules": ["residence.state", "residence.state"]}, "written twice"),
        ({"rules": [12]}, "put it in quotes"),
        ({"rules": {"a": 1}}, "this must be a list"),
    ],
    ids=str,
)
def test_loading_refuses_by_name(
    written: Callable[..., tuple[Explanation, ...]], change: dict[str, object], said: str
) -> None:
    with pytest.raises(DataFileError, match=r"fl100/01-one\.yaml") as refused:
        written(ONE | change)
    assert said in str(refused.value)


def test_loading_refuses_a_concept_in_two_files(written: Callable[..., tuple[Explanation, ...]]) -> None:
    with pytest.raises(DataFileError, match=r"residence\.respondent is explained in 2 files"):
        written(ONE, ONE | {"concepts": ["residence.respondent"]})


def test_loading_refuses_a_concept_in_no_file(written: Callable[..., tuple[Explanation, ...]]) -> None:
    with pytest.raises(DataFileError, match=r"explained in no file: cap\.bar, .*grounds\.dissolution"):
        written(ONE)


def test_a_star_stands_for_every_row_of_a_table(tmp_path: Path) -> None:
    one = read_one(tmp_path, ONE | {"concepts": ["children.*.name"]})
    assert whole.concepts_of(one) == tuple(f"children.{number}.name" for number in range(1, 5))


def test_a_change_to_come_speaks_with_the_figures_of_its_own_day(tmp_path: Path) -> None:
    tries = "{figure:service.attempts_before_substituted} tries."
    change = {"from": date(2027, 1, 1), "says": tries, "cite": "Code Civ. Proc. 415.20(b)"}
    one = read_one(tmp_path, ONE | {"means": tries, "changes": [change]})

    assert (one.on(ON).means, one.on(ON).changes[0].says) == ("0 tries.", "3 tries.")


def test_a_part_of_a_figure_goes_by_its_name() -> None:
    assert figure_words("fees.first_paper.low", ON) == str(figure("fees.first_paper", ON).value["low"])
    with pytest.raises(UnknownFigureError):
        figure_words("fees.first_paper.lowest", ON)


def test_the_files_of_a_form_are_read_in_their_order(tmp_path: Path) -> None:
    for form in FORMS:
        numbers = [path.name.partition("-")[0] for path in paths(form)]
        assert numbers == sorted(numbers)
        assert all(load_explanation(path, form).form == form for path in paths(form))
