"""How long a clinic waits for its folder: the shelf of 40, 400 and 4,000 cases, and packets a second.

    python tests/benchmarks/shelf.py [FILES...]

Medians of three, printed, nothing asserted; of 4,000 one run. The case files are the invented households over
and over, so that most of them are complete. Packets are drafted of the first 40.
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
from firstpaper.cli.files.households import households
from firstpaper.intake import facts_from

ON = date(2026, 11, 30)
SIZES = (40, 400, 4000)
PACKETS = 40
RUNS = 3


def main(sizes: list[int]) -> None:
    with TemporaryDirectory() as folder:
        for files in sizes:
            here = Path(folder) / str(files)
            here.mkdir()
            _fill(here, files)
            runs = 1 if files >= SIZES[-1] else RUNS
            took = median(_seconds("shelf", here) for _ in range(runs))
            print(
                f"firstpaper shelf, {files:5} case files {took:8.2f} s {1000 * took / files:7.2f} ms a case"
            )
        here = Path(folder) / "packets"
        here.mkdir()
        _fill(here, PACKETS)
        took = _seconds("packet", "--all", here)
        print(
            f"firstpaper packet --all, {PACKETS} cases {took:8.2f} s {PACKETS / took:7.2f} packets a second"
        )


def _fill(folder: Path, files: int) -> None:
    paths = sorted(households().values())
    cases = [facts_from(path.read_text("utf-8"), ON)[0] for path in paths]
    for number, case in enumerate(islice(cycle(cases), files)):
        CaseFile(case).save(folder / f"{number:04}.case")


def _seconds(*words: object) -> float:
    command = [sys.executable, "-m", "firstpaper", *map(str, words), "--on", str(ON)]
    start = perf_counter()
    subprocess.run(command, capture_output=True, check=False)
    return perf_counter() - start


if __name__ == "__main__":
    main([int(each) for each in sys.argv[1:]] or list(SIZES))
