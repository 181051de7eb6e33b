"""The figures of docs/explanation/speed.md: what each thing costs, and how that grows. Printed, not asserted.

    PYTHONPATH=. python tests/benchmarks/speed.py [FILES_ON_THE_SHELF...]

All of it is processor time, for the program itself and in the system, so that other work on the computer
counts less. What is compared takes turns in one run. Run it in an environment with an installed wheel to
measure what people have: a checkout reads its YAML.
"""

import os
import platform
import subprocess
import sys
from collections.abc import Callable, Iterator
from datetime import date
from itertools import cycle, islice
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import process_time

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.cli.files.households import households
from firstpaper.facts import Case
from firstpaper.facts.choices import AssetKind
from firstpaper.intake import facts_from, next_question, standing
from firstpaper.law.register import findings
from firstpaper.packet import build
from tests.benchmarks.cold import FIRSTPAPER, FLOOR, cold, processor_seconds
from tests.benchmarks.packet import bare, lines_of

ON = date(2026, 11, 30)
PLAIN = "plain-childless-divorce"
ROUNDS = 9
PACKETS = 40, 160, 640
A_YEAR = 130_000


def main(shelves: list[int]) -> None:
    print(f"{platform.machine()}, {os.cpu_count()} cores, load {os.getloadavg()[0]:.1f}, ", end="")
    print(f"Python {platform.python_version()}")
    cases = {name: facts_from(path.read_text("utf-8"), ON)[0] for name, path in households().items()}
    with TemporaryDirectory() as folder:
        for part in (_cold, _warm, _rules):
            _show(part(Path(folder), cases))
        _show(_folders(Path(folder), list(cases.values()), shelves))
        _show(_growth(Path(folder), cases[PLAIN]))


def _show(lines: Iterator[tuple[str, str]]) -> None:
    for words, figure in lines:
        print(f"{words:58s} {figure}", flush=True)


def _cold(folder: Path, _cases: dict[str, Case]) -> Iterator[tuple[str, str]]:
    """New processes, in turns with a bare typer command."""
    costs = cold(folder, ROUNDS)
    for words, cost in costs.items():
        yield words, f"{cost:8.1f} ms {cost / costs[FLOOR]:6.2f} of a {FLOOR}"


def _warm(_folder: Path, cases: dict[str, Case]) -> Iterator[tuple[str, str]]:
    """A packet in a process that has drawn one before, in turns with its words on a bare canvas."""
    case = cases[PLAIN]
    for name, other in cases.items():
        if name != PLAIN:
            build(other, ON).pdf()
    first = _took(lambda: build(case, ON).pdf())
    lines = lines_of(build(case, ON).pdf())
    packets, floors = [], []
    for _round in range(ROUNDS):
        packets.append(_took(lambda: build(case.model_copy(), ON).pdf()))
        floors.append(_took(lambda: bare(lines)))
    packet, floor = median(packets), median(floors)
    for words, took in (("after those of others alone", first), ("warm", packet)):
        yield f"packet of {len(lines)} pages, {words}", f"{took:8.1f} ms {took / floor:6.2f} of a bare canvas"


def _rules(_folder: Path, cases: dict[str, Case]) -> Iterator[tuple[str, str]]:
    """All rules on each household, of which nothing is remembered."""
    costs = {
        name: median(_rules_took(standing(case)) for _round in range(ROUNDS)) for name, case in cases.items()
    }
    fullest = max(costs, key=lambda name: costs[name])
    yield f"all rules, {fullest}", f"{costs[fullest]:8.1f} ms"
    yield "all rules, mean of the households", f"{sum(costs.values()) / len(costs):8.1f} ms"


def _folders(folder: Path, cases: list[Case], shelves: list[int]) -> Iterator[tuple[str, str]]:
    """Commands that work on a folder, on every core."""
    for files in shelves:
        took = _command(_filled(folder, cases, files), "shelf")
        yield f"shelf, {files} cases", f"{took:8.1f} s {1000 * took / files:7.2f} ms a case"
    one = _command(_filled(folder, cases, 1), "packet", "--all")
    for count in PACKETS:
        each = (_command(_filled(folder, cases, count), "packet", "--all") - one) / (count - 1)
        figure = f"{1000 * each:8.1f} ms {1 / each:6.1f} a second on a core"
        yield f"a packet among {count} (packet --all)", figure
        yield f"{A_YEAR} packets", f"{A_YEAR * each / 3600:8.1f} hours of one core"


def _growth(folder: Path, case: Case) -> Iterator[tuple[str, str]]:
    """What more children, more things and more saves add."""
    for count in (1, 10, 30):
        grown = case.with_fact("children.family", ("minor_together",)).with_fact("children.how_many", count)
        for number in range(1, count + 1):
            grown = grown.with_fact(f"child.{number}.name", f"Child {number} Okafor")
            grown = grown.with_fact(f"child.{number}.born_on", f"2016-03-{number:02}")
        asks = _took(lambda one=grown: next_question(one))
        yield f"{count} children", f"{_drawn(grown):8.1f} ms a packet {asks:7.2f} ms to the next question"
    for count in (1, 30, 99):
        grown = case
        for number in range(1, count + 1):
            grown = grown.with_fact(f"asset.{number}.kind", AssetKind.VEHICLE)
        yield f"{count} things listed", f"{_drawn(grown):8.1f} ms a packet"
    with OpenCase(folder / "saves.case", begin=True) as opened:
        for saves in (100, 1000):
            cost = _took(lambda times=saves: _saved(opened, case, times)) / saves
            yield f"{saves} saves in one sitting", f"{cost:8.2f} ms a save"


def _drawn(case: Case) -> float:
    """Milliseconds for a packet whose like was drawn before: the least of a few."""
    return min(_took(lambda: build(case.model_copy(), ON).pdf()) for _round in range(ROUNDS))


def _saved(opened: OpenCase, case: Case, times: int) -> None:
    for number in range(times):
        opened.keep(CaseFile(case.with_fact("petitioner.phone", f"555-{number:04}")))


def _rules_took(case: Case) -> float:
    return _took(lambda: findings(case, ON))


def _took(work: Callable[[], object]) -> float:
    """Milliseconds of this process."""
    start = process_time()
    work()
    return (process_time() - start) * 1000


def _filled(folder: Path, cases: list[Case], files: int) -> Path:
    """A folder of so many case files: the invented households over and over."""
    here = folder / str(files)
    if not here.exists():
        here.mkdir()
        for number, case in enumerate(islice(cycle(cases), files)):
            CaseFile(case).save(here / f"{number:04}.case")
    return here


def _command(folder: Path, *words: str) -> float:
    """Seconds that a command takes of all processors together."""
    before = processor_seconds()
    subprocess.run([*FIRSTPAPER, *words, str(folder), "--on", str(ON)], capture_output=True, check=False)
    return processor_seconds() - before


if __name__ == "__main__":
    main([int(each) for each in sys.argv[1:]] or [40, 400])
