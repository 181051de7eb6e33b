"""Every place that the developers' pages name is there."""

import re
from pathlib import Path

import pytest

from tests.docs.page import DOCS

ROOT = DOCS.parent
PAGE = DOCS / "explanation" / "where-things-are.md"
BESIDE = ("src/", "tests/", "templates/", "docs/", "demo/")
PATH = re.compile(r"`([\w./-]+(?:/|\.py|\.yaml|\.md))`")


def named(page: Path) -> list[str]:
    """The files and folders of a page, without those that stand for any."""
    return [place for place in PATH.findall(page.read_text("utf-8")) if not re.search("NN-|NAME", place)]


@pytest.mark.parametrize("place", dict.fromkeys(named(PAGE)))
def test_a_place_that_the_page_names_is_there(place: str) -> None:
    folder = ROOT if place.startswith(BESIDE) else ROOT / "src" / "firstpaper"
    assert (folder / place).exists()


@pytest.mark.parametrize("place", dict.fromkeys(named(ROOT / "DEVELOPERS.md")))
def test_a_place_that_the_guide_for_developers_names_is_there(place: str) -> None:
    """It names files in the package by their end, as `batch.py`, where the folder stands before it."""
    assert (ROOT / place).exists() or any(
        path.as_posix().endswith(f"/{place.rstrip('/')}") for path in (ROOT / "src").rglob("*")
    )
