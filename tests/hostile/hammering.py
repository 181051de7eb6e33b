"""Processes that write to one case file as fast as they can, while some of them are killed.

Each keeps its own count in the file: it reads the count, adds one, saves, and then notes what it saved in a
file of its own. A count that goes back, or that is less than what was noted, is an answer that was lost.
"""

import subprocess
import sys
import time
from itertools import pairwise
from pathlib import Path
from random import Random

from firstpaper.casefile import CaseFile

FACT = "petitioner.other_names"
LEAST_KILLS = 3
PATIENCE = 120
"""Seconds that a busy machine may take longer than was asked for."""
WRITES = f"""
import sys
from pathlib import Path
from firstpaper.casefile import OpenCase
from firstpaper.errors import UserError
path, me = Path(sys.argv[1]), sys.argv[2]
with open(sys.argv[3], "a", buffering=1) as notes:
    while True:
        try:
            with OpenCase(path, begin=True) as opened:
                counts = dict(name.split() for name in opened.case.petitioner.other_names or ())
                counts[me] = str(int(counts.get(me, 0)) + 1)
                names = tuple(f"{{name}} {{count}}" for name, count in counts.items())
                opened.keep(opened.file.with_case(opened.case.with_fact("{FACT}", names)))
                notes.write(counts[me] + "\\n")
        except UserError as error:
            if error.code != "case_file_in_use":
                notes.write(error.code + "\\n")
"""


def hammered(folder: Path, seconds: float, writers: int, random: Random, *, kills: bool) -> dict[str, int]:
    """Let `writers` processes write for some seconds; what was saved, and that nothing was lost."""
    path = folder / "home.case"
    names = [f"W{number}" for number in range(writers)]
    running = {name: _begin(path, name) for name in names}
    end = time.monotonic() + seconds
    before = dict.fromkeys(names, 0)
    killed = 0
    while time.monotonic() < end or killed < LEAST_KILLS * kills or not _all_have_saved(path, names):
        assert time.monotonic() < end + PATIENCE, "a writer does not get through"
        time.sleep(random.uniform(0.1, 0.4))
        name = random.choice(names)
        if kills and _saves_of(path, name) > before[name]:  # not while it is still starting
            _stop(running[name])
            before[name] = _saves_of(path, name)
            running[name] = _begin(path, name)
            killed += 1
    for process in running.values():
        _stop(process)
    counts = dict(name.split() for name in CaseFile.load(path).case.petitioner.other_names or ())
    saves = 0
    for name in names:
        noted = _notes(path, name).read_text().splitlines()
        assert all(note.isdecimal() for note in noted), f"a writer met {set(noted)}"
        numbers = [int(note) for note in noted]
        assert all(earlier < later for earlier, later in pairwise(numbers))
        assert int(counts.get(name, 0)) >= max(numbers, default=0), "a save was lost"
        saves += int(counts.get(name, 0))
    assert saves > writers
    return {"writers": writers, "writers killed": killed, "saves": saves, "saves lost": 0}


def _begin(path: Path, name: str) -> subprocess.Popen[bytes]:
    return subprocess.Popen([sys.executable, "-c", WRITES, path, name, _notes(path, name)])


def _all_have_saved(path: Path, names: list[str]) -> bool:
    return all(_saves_of(path, name) for name in names)


def _saves_of(path: Path, name: str) -> int:
    """How many saves a writer has noted."""
    return len(_notes(path, name).read_text().splitlines())


def _notes(path: Path, name: str) -> Path:
    notes = path.with_name(f"{name}.notes")
    notes.touch()
    return notes


def _stop(process: subprocess.Popen[bytes]) -> None:
    process.kill()
    process.wait()
