"""Work on many files as a command begins it: `python -m tests.cli.many_files CORES FILES`.

It forks, which a process in which tests run must not do: that one has threads.
"""

import gc
import json
import sys
from pathlib import Path
from typing import ClassVar

from firstpaper.cli import processes
from firstpaper.cli.processes import PAYS_FROM, over_all

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


def work(path: Path) -> tuple[str, int]:
    """The name of the file, and how many rings are alive after it."""
    for _ring in range(RINGS):
        Ring()
    return path.stem, Ring.alive


def main(cores: int, files: int) -> None:
    """Print the names as they came, the most rings alive, what was told, and whether garbage is collected."""
    processes.cores = lambda: cores
    gc.disable()
    told: list[tuple[int, int]] = []
    names, alive = zip(*over_all(work, FILES[:files], lambda *done: told.append(done)), strict=True)
    print(json.dumps({"names": names, "most": max(alive), "told": told, "collects": gc.isenabled()}))


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
