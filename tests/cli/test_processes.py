"""The same work on many files: in order, on every core, and in no more memory than a few of them need."""

import json
import subprocess
import sys
from typing import Any

import pytest

from firstpaper.cli.processes import LEFT_OVER
from tests.cli.many_files import FILES, RINGS
from tests.cli.ready import TESTS


def worked(cores: int, files: int) -> dict[str, Any]:
    command = [sys.executable, "-m", "tests.cli.many_files", str(cores), str(files)]
    ran = subprocess.run(command, capture_output=True, text=True, check=True, cwd=TESTS, timeout=120)
    return dict(json.loads(ran.stdout))


@pytest.mark.parametrize("cores", [1, 2])
def test_many_files_are_told_in_order_and_what_they_leave_over_does_not_pile_up(cores: int) -> None:
    ran = worked(cores, len(FILES))
    assert ran["names"] == [one.stem for one in FILES]
    assert ran["told"] == [[number, len(FILES)] for number in range(1, len(FILES) + 1)]
    assert RINGS < ran["most"] < LEFT_OVER + 2 * RINGS < len(FILES) * RINGS / 2


def test_a_few_files_are_done_as_one_is() -> None:
    ran = worked(2, 3)
    assert (ran["names"], ran["collects"]) == (["0", "1", "2"], False)
    assert ran["most"] == 3 * RINGS
