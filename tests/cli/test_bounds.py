"""What a stranger or a mistake may send in: bounded before it is read, and told in words."""

import io
import subprocess
import sys
import time
import tracemalloc
from datetime import date
from pathlib import Path

import pytest
from pydantic import ValidationError

from firstpaper.cli.terminal import LONGEST_LINE, Terminal
from firstpaper.facts import Case
from firstpaper.intake import facts_from
from tests.cli.person import environment

DAY = date(2026, 11, 25)


def test_a_line_without_an_end_is_read_in_pieces(monkeypatch: pytest.MonkeyPatch) -> None:
    class Endless(io.StringIO):
        """Twenty million letters without a line end, then a line."""

        left, held = 20_000_000, 0

        def readline(self, size: int = -1) -> str:  # type: ignore[override]
            assert 0 < size <= LONGEST_LINE, "the whole line would be held in memory"
            self.left -= size
            return "x" * size if self.left > 0 else "end\n" if self.left > -LONGEST_LINE else ""

    monkeypatch.setattr("sys.stdin", Endless())
    terminal = Terminal()
    tracemalloc.start()
    assert terminal.read("? ") == "x" * LONGEST_LINE
    assert tracemalloc.get_traced_memory()[1] < 3_000_000
    tracemalloc.stop()


def test_a_name_of_millions_of_letters_is_refused_before_it_is_looked_at() -> None:
    began = time.process_time()
    with pytest.raises(ValidationError, match="too_long"):
        Case().with_fact("petitioner.name", "n" * 9_000_000)
    assert time.process_time() - began < 0.5, "a bound, not a benchmark: it took two seconds before"


def test_a_list_longer_than_any_household_has_is_refused_as_such() -> None:
    lines = "".join(f"  - 1/{n % 28 + 1}/2020 to 2/1/2021, Fresno, CA\n" for n in range(15_000))
    case, problems = facts_from(f"child.1.homes:\n{lines}", DAY)
    assert case == Case.nothing()
    assert [one.message for one in problems] == ["There is room for 300 here."]


@pytest.mark.parametrize("how", [["-OO"], []])
def test_python_without_its_words_is_refused_in_words(tmp_path: Path, how: list[str]) -> None:
    more = {} if how else {"PYTHONOPTIMIZE": "2"}
    command = [sys.executable, *how, "-m", "firstpaper", "check", "missing.case"]
    done = subprocess.run(
        command, cwd=tmp_path, env=environment(**more), capture_output=True, text=True, check=False
    )
    assert done.returncode != 0
    assert "Start it without that" in done.stderr
    assert "Traceback" not in done.stderr
