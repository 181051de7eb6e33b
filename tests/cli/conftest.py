"""Fixtures of the command line: a folder, a case file in it, and a way to run or sit at a command."""

from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

import pytest

from tests.cli.person import ON, Ran, Sitting, answers_of, run_in, written


@pytest.fixture
def run(tmp_path: Path) -> Callable[..., Ran]:
    """Run a command in an empty folder."""
    return partial(run_in, tmp_path)


@pytest.fixture
def typed_answers() -> dict[str, str]:
    """What a person would type at each question of the plain childless household."""
    return answers_of("plain-childless-divorce")


@pytest.fixture
def sit(tmp_path: Path) -> Iterator[Callable[..., Sitting]]:
    """Begin a sitting of `ask`, or of another command that asks."""
    begun: list[Sitting] = []

    def begin(command: str = "ask", *more: str, **environment: str) -> Sitting:
        begun.append(Sitting(tmp_path / "home.case", command, "home.case", *more, "--on", ON, **environment))
        return begun[-1]

    yield begin
    for sitting in begun:
        sitting.stop()


@pytest.fixture
def home(tmp_path: Path) -> Path:
    """The case file of the plain childless household, complete."""
    return written(tmp_path, "plain-childless-divorce")
