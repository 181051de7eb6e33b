"""What is compiled of the templates says what they say, and serves only them."""

from pathlib import Path
from typing import Any

import pytest
from jinja2 import TemplateAssertionError

from firstpaper.packet import templates
from firstpaper.packet.templates import templates_folder
from firstpaper.sheet_code import FILTERS, SUFFIX, compiled, environment_of


@pytest.fixture
def built(tmp_path: Path) -> Path:
    """The folder of templates of an installed package."""
    for path in templates_folder().rglob("*.html"):
        here = tmp_path / path.relative_to(templates_folder())
        here.parent.mkdir(exist_ok=True)
        here.write_bytes(path.read_bytes())
    for name, code in compiled(tmp_path):
        (tmp_path / name).write_bytes(code)
    return tmp_path


def _refused(*_names: Any) -> Any:
    raise AssertionError("a template was compiled")


def test_every_filter_has_the_name_by_which_it_is_compiled() -> None:
    assert tuple(templates.FILTERS) == FILTERS


def test_no_template_of_an_installed_package_has_to_be_compiled(
    built: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    environment = environment_of(built)
    monkeypatch.setattr(environment, "compile", _refused)
    names = environment.list_templates(extensions=["html"])
    assert len(names) > 30
    for name in names:
        assert environment.get_template(name).name == name
    (built / names[0]).with_suffix(SUFFIX).unlink()
    environment.cache.clear()
    with pytest.raises(AssertionError, match="was compiled"):
        environment.get_template(names[0])


def test_the_code_says_what_the_template_says(tmp_path: Path) -> None:
    (tmp_path / "a.html").write_text(
        "<p>{{ what }} {% trans %}and{% endtrans %} {{ 'b' | day }}</p>", "utf-8"
    )
    ((name, code),) = compiled(tmp_path)
    said = _said(tmp_path)
    (tmp_path / name).write_bytes(code)
    assert _said(tmp_path) == said == "<p>&lt; and day b</p>"


def test_a_template_changed_since_is_compiled_anew_and_nothing_is_written(tmp_path: Path) -> None:
    path = tmp_path / "a.html"
    path.write_text("before {{ what }}", "utf-8")
    ((name, code),) = compiled(tmp_path)
    path.write_text("after {{ what }}", "utf-8")
    (tmp_path / name).write_bytes(code)
    assert _said(tmp_path) == "after &lt;"
    (tmp_path / name).write_bytes(b"damaged" + code)
    assert _said(tmp_path) == "after &lt;"
    assert (tmp_path / name).read_bytes() == b"damaged" + code
    assert sorted(each.suffix for each in tmp_path.iterdir()) == [SUFFIX, ".html"]


def test_a_filter_that_nobody_knows_stops_the_build(tmp_path: Path) -> None:
    (tmp_path / "a.html").write_text("{{ 1 | spelled }}", "utf-8")
    with pytest.raises(TemplateAssertionError, match="spelled"):
        list(compiled(tmp_path))


def _said(folder: Path) -> str:
    environment = environment_of(folder)
    environment.filters["day"] = "day {}".format
    return environment.get_template("a.html").render(what="<")
