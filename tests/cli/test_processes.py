"""The same work on many files: in order, on every core, and in no more memory than a few of them need."""

import gc
from collections.abc import Iterator
from pathlib import Path
from typing import ClassVar

import pytest

from firstpaper.cli import processes
from firstpaper.cli.processes import LEFT_OVER, PAYS_FROM, over_all

FILES = [Path(f"{number}.case") for number in range(5 * PAYS_FROM)]
RINGS = 2_000
"""What the work on a file leaves over; all of it would be several times what is allowed to pile up."""


class Ring:
    """Something that only a collection of garbage ever ends."""

    __slots__ = ("itself",)
    alive: ClassVar[int] = 0

    def __init__(self) -> None:
        self.itself = self
        Ring.alive += 1

    def __del__(self) -> None:
        Ring.alive -= 1


def left_over(_path: Path) -> int:
    for _ring in range(RINGS):
        Ring()
    return Ring.alive


def stem(path: Path) -> str:
    return path.stem


@pytest.fixture
def without_collecting() -> Iterator[None]:
    """As a command begins, and afterwards as before."""
    was, thresholds = gc.isenabled(), gc.get_threshold()
    gc.disable()
    yield
    gc.set_threshold(*thresholds)
    gc.collect()
    if was:
        gc.enable()


@pytest.mark.usefixtures("without_collecting")
@pytest.mark.parametrize("cores", [1, 2])
def test_what_finished_files_left_over_does_not_pile_up(cores: int, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(processes, "cores", lambda: cores)
    most = max(over_all(left_over, FILES))
    assert RINGS < most < LEFT_OVER + 2 * RINGS < len(FILES) * RINGS / 2


@pytest.mark.usefixtures("without_collecting")
def test_a_few_files_are_done_as_one_is() -> None:
    assert list(over_all(stem, FILES[:3])) == ["0", "1", "2"]
    assert not gc.isenabled()


@pytest.mark.usefixtures("without_collecting")
def test_the_results_come_in_the_order_of_the_files_and_each_is_told() -> None:
    told: list[tuple[int, int]] = []
    assert list(over_all(stem, FILES, lambda *done: told.append(done))) == [one.stem for one in FILES]
    assert told == [(number, len(FILES)) for number in range(1, len(FILES) + 1)]
