"""The Spanish pages: one for each English one, with the same commands, and what they show is printed."""

import re
from pathlib import Path

import pytest

from tests.cli.person import run_in, written
from tests.docs.page import DOCS, blocks, check_shown, command_in, words_of

SPANISH = DOCS / "es"
PAGES = sorted(
    path.relative_to(DOCS) for folder in ("how-to", "tutorial") for path in (DOCS / folder).glob("*.md")
)
MENDED = ("June 31 2017", "June 30 2017")
TYPED = re.compile(r"^(?:\$ )?(firstpaper [^#\n]*)", re.MULTILINE)


def _typed(page: Path) -> list[str]:
    """The commands that a page sets apart, in order, without what is said beside them."""
    return [one.strip() for one in TYPED.findall(page.read_text("utf-8"))]


def test_each_page_has_its_spanish_one() -> None:
    assert sorted(path.relative_to(SPANISH) for path in SPANISH.glob("*/*.md")) == PAGES


@pytest.mark.parametrize("page", PAGES, ids=str)
def test_it_shows_the_same_commands(page: Path) -> None:
    assert _typed(SPANISH / page) == _typed(DOCS / page)


@pytest.mark.parametrize(
    ("page", "case"),
    [
        ("tutorial/first-packet.md", None),
        ("how-to/keep-track-after-filing.md", "mine.case"),
        ("how-to/list-what-you-own-and-owe.md", "home.case"),
    ],
)
def test_it_does_what_it_says(page: str, case: str | None, tmp_path: Path) -> None:
    if case:
        written(tmp_path, "plain-childless-divorce").rename(tmp_path / case)
    facts = tmp_path / "facts.yaml"
    for kind, text in blocks(SPANISH / page):
        if kind != "console":
            (facts if kind == "yaml" else tmp_path / "debts.csv").write_text(text, "utf-8")
            continue
        command, shown = command_in(text)
        done = run_in(tmp_path, "--language", "es", *words_of(command, tmp_path))
        check_shown(command, shown, done.out + done.err)
        if "no se puede usar" in done.out + done.err:
            facts.write_text(facts.read_text("utf-8").replace(*MENDED), "utf-8")
