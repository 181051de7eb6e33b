"""How long a clinic waits to see its shelf: the median, printed, nothing asserted.

    python tests/benchmarks/shelf.py [FILES] [RUNS]

The case files are the invented households over and over, so that most of them are complete.
"""

import subprocess
import sys
from datetime import date
from itertools import cycle, islice
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

from firstpaper.casefile import CaseFile
from firstpaper.cli.households import households
from firstpaper.intake import facts_from

ON = date(2026, 11, 30)


def main(files: int, runs: int) -> None:
    with TemporaryDirectory() as folder:
        paths = sorted(households().values())
        for number, path in enumerate(islice(cycle(paths), files)):
            case, _problems = facts_from(path.read_text("utf-8"), ON)
            CaseFile(case).save(Path(folder) / f"{number:04}.case")
        times = [_milliseconds(folder) for _ in range(runs + 1)][1:]
        print(f"firstpaper shelf, {files} case files {median(times):8.1f} ms")


def _milliseconds(folder: str) -> float:
    command = [sys.executable, "-m", "firstpaper", "shelf", folder, "--on", str(ON)]
    start = perf_counter()
    subprocess.run(command, capture_output=True, check=True)
    return (perf_counter() - start) * 1000


if __name__ == "__main__":
    numbers = [int(each) for each in sys.argv[1:]]
    main(*numbers, *(200, 5)[len(numbers) :])
