"""Every kind of data file is read by the one reader, and refused by it in the same words."""

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from firstpaper.data_files import DataFileError, Place, read_text
from firstpaper.forms.edition import load_edition
from firstpaper.forms.explanation import load_explanation
from firstpaper.forms.local_forms import read_papers
from firstpaper.intake.loading import Bank
from firstpaper.law.figure_file import load_figures
from firstpaper.law.source import load_code

AUTHORITY = "name: A code\nsections:\n  70:\n    about: A\n    certainty: court\n    checked_on: 2026-11-28\n"
EXPLANATION = "item: '1'\ntitle: A\nconcepts: [a.b]\nasks: A\nmeans: B\n"
READERS: dict[str, tuple[str, Callable[[Path], object]]] = {
    "questions": ("topic: a\ntitle: A\nquestions: [{}]\n", lambda path: Bank(path.parent).topics),
    "figures": ("01-a.limit: {what: A}\n", load_figures),
    "an edition": ("form: FL-1\nparts: [{}]\n", load_edition),
    "local papers": ("Kern:\n  - says: A\n", read_papers),
    "authorities": (AUTHORITY, lambda path: load_code(path).source("70")),
    "explanations": (EXPLANATION, lambda path: load_explanation(path, "FL-100")),
}
each_reader = pytest.mark.parametrize(("text", "load"), READERS.values(), ids=READERS)


def refusal(tmp_path: Path, text: str, load: Callable[[Path], object]) -> str:
    path = tmp_path / "01-a.yaml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(DataFileError) as refused:
        load(path)
    return str(refused.value)


@each_reader
def test_a_name_written_twice_is_refused_with_file_and_place(
    tmp_path: Path, text: str, load: Callable[[Path], object]
) -> None:
    *_before, last = text.splitlines(keepends=True)
    said = refusal(tmp_path, text + last.replace("- ", "  "), load)
    assert "01-a.yaml > " in said
    assert ": written twice, again in line " in said


@each_reader
def test_what_is_no_yaml_is_refused_with_the_file(
    tmp_path: Path, text: str, load: Callable[[Path], object]
) -> None:
    said = refusal(tmp_path, text + "\x01", load)
    assert "01-a.yaml: this is not YAML that can be read: " in said


@pytest.mark.parametrize(
    ("text", "content"),
    [
        ("a: 2026-03-14", {"a": date(2026, 3, 14)}),
        ("a: no", {"a": False}),
        ("a: [1, 'x', null]", {"a": [1, "x", None]}),
        ("1: {b: c}", {1: {"b": "c"}}),
    ],
)
def test_a_value_has_its_type_or_stays_as_it_was_written(text: str, content: dict[object, object]) -> None:
    assert read_text("a.yaml", text) == content
    as_written = read_text("a.yaml", text, as_written=True)
    assert as_written == as_typed(content)


def as_typed(content: object) -> object:
    """The same with every scalar as it was written."""
    if isinstance(content, dict):
        return {str(name): as_typed(value) for name, value in content.items()}
    if isinstance(content, list):
        return [as_typed(each) for each in content]
    return {None: "null", False: "no"}.get(content, str(content))  # type: ignore[call-overload]


@pytest.mark.parametrize(
    "text", ["a: !!python/name:os.system", "a: !!set {b}", "a: !other {b: c}", "a: {<<: {b: c}}", "- a", ""]
)
def test_nothing_but_names_lists_and_plain_values_is_read(text: str) -> None:
    with pytest.raises(DataFileError, match=r"^a\.yaml"):
        read_text("a.yaml", text)


def test_a_place_says_where_it_is() -> None:
    place = Place("a.yaml").into("rows").into(2)
    assert str(place.error("wrong")) == "a.yaml > rows > 2: wrong"
    assert [str(here.error("x")) for here, _row in place.rows(["a", "b"])] == [
        "a.yaml > rows > 2 > 1: x",
        "a.yaml > rows > 2 > 2: x",
    ]
