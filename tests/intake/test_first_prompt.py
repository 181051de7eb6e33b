"""The first prompt comes at once: what it needs is loaded, and nothing else."""

import subprocess
import sys
from functools import cache

import pytest

LATER = (
    "dateutil",
    "difflib",
    "firstpaper.counting",
    "firstpaper.intake.entering",
    "firstpaper.intake.reading",
    "firstpaper.law",
    "jinja2",
    "pypdf",
    "reportlab",
)


@cache
def said_by(code: str) -> set[str]:
    """The words that a new process says, which has the facts loaded and then runs `code`."""
    whole = f"import sys; from firstpaper.facts import Case; {code}"
    ran = subprocess.run([sys.executable, "-c", whole], capture_output=True, text=True, check=True)
    return set(ran.stdout.split())


def loaded_by(code: str) -> set[str]:
    """The modules that a new process has loaded after it ran `code`."""
    return said_by(f"{code}; print(*sys.modules)")


def test_the_names_of_the_package_cost_nothing_to_import() -> None:
    modules = loaded_by("import firstpaper.intake")
    assert "firstpaper.intake" in modules
    assert {name for name in modules if name.startswith(("firstpaper.intake.", "yaml"))} == set()


@pytest.mark.parametrize("later", LATER)
def test_the_first_question_waits_for_nothing_that_only_later_ones_need(later: str) -> None:
    assert later not in loaded_by("from firstpaper.intake import next_question; next_question(Case()).ask")


def test_only_the_first_bank_file_is_read_for_the_first_question() -> None:
    assert said_by(
        "from firstpaper.intake import bank, next_question; next_question(Case()); print(len(bank().loaded))"
    ) == {"1"}


def test_every_exported_name_is_there() -> None:
    names = "import firstpaper.intake as i; print(*[getattr(i, name).__name__ for name in i.__all__])"
    assert {"next_question", "AnswerRefused", "facts_from", "echo"} <= said_by(names)


def test_a_name_that_is_not_exported_is_an_ordinary_error() -> None:
    with pytest.raises(ImportError):
        from firstpaper.intake import nothing_like_it  # type: ignore[attr-defined]  # noqa: F401, PLC0415
