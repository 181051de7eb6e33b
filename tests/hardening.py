"""Print the figures for what is promised in docs/explanation/safety.md.

    python -m tests.hardening                  the full run
    python -m tests.hardening --share 0.01     a hundredth of it
    python -m tests.hardening kills disks      only some of it
    python -m tests.hostile.feeding --help     the mangling in pieces
    python -m tests.hardening mangling --readers facts tables --first 500000
                                               some readers, from another input on: a run in pieces

Each part checks what it counts and ends the run with an error where a promise does not hold. The fuzzing
needs atheris (Linux on x86-64; in the "dev" extra).
"""

import argparse
import json
import re
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from random import Random

from firstpaper.casefile import CaseFile
from firstpaper.errors import UserError
from firstpaper.packet import build
from tests.hostile import disks
from tests.hostile.feeding import SEED, counted, with_faults
from tests.hostile.flips import QUICK, flipped_everywhere, forged_everywhere, sealed_household
from tests.hostile.hammering import hammered
from tests.hostile.kills import killed_again_and_again
from tests.hostile.mangling import mangled_document
from tests.hostile.steps import every_command, killed_at_every_step
from tests.hostile.targets import HERE, TARGETS, TODAY

Figures = Mapping[str, object]

KILLS = 1000
STEPS = 1_000
"""For each command. More than it has: the full run ends with its last step."""
HAMMERING_SECONDS = 60
MANGLED = 1_000_000
"""For each reader. Some hours on a core of its own; tables, blanks and their maps take longer."""
DOCUMENTS = 40
"""Of so many case files one gets other values."""
DRAFTED = 500
FUZZED = {
    "dates": 2_000_000,
    "answers": 60_000,
    "things": 60_000,
    "events": 60_000,
    "facts": 20_000,
    "tables": 12_000,
    "case files": 50_000,
    "blanks": 20_000,
    "blanks looked at": 20_000,
    "maps of blanks": 50_000,
    "sealed files": 500_000,
    "sheet markup": 200_000,
    "own sheets": 30_000,
    "passphrases": 100_000,
    "the screen": 35_000,
}


def kills(share: float) -> Iterator[tuple[str, Figures]]:
    """Interviews killed by SIGKILL at random moments, half of them sealed."""
    times = max(1, int(KILLS * share / 2))
    for sealed in (False, True):
        with _folder() as folder:
            what = "sealed interviews killed" if sealed else "plain interviews killed"
            yield what, killed_again_and_again(folder, times, Random(SEED), sealed=sealed)


def steps(share: float) -> Iterator[tuple[str, Figures]]:
    """Every command killed at every system call by which it changes a file."""
    kills = 0
    for name in every_command():
        figures = killed_at_every_step(max(3, int(STEPS * share)), only=(name,))
        kills += figures.kills
        yield f"{name}, killed at each step", figures.told() | {"kills so far": kills}


def disk(share: float) -> Iterator[tuple[str, Figures]]:
    """Full disks, folders without permission, folders that go away."""
    with _folder() as folder:
        yield "file size limit", disks.limited_at_every_size(folder, max(10, int(10 / share)))
    with _folder() as folder:
        yield "full disk of its own", disks.filled_to_the_last_byte(folder) or {"not tried": "needs root"}
    yield "permission lost", disks.without_permission()
    with _folder() as folder:
        yield "folder vanished", {"told": disks.gone_meanwhile(folder)}


def hammering(share: float) -> Iterator[tuple[str, Figures]]:
    """Writers side by side on one case file."""
    seconds = max(2.0, HAMMERING_SECONDS * share)
    for writers, killed in ((2, False), (2, True), (4, True)):
        with _folder() as folder:
            yield "writers on one file", hammered(folder, seconds, writers, Random(SEED), kills=killed)


def flips(_share: float) -> Iterator[tuple[str, Figures]]:
    """Every byte of a sealed file changed once."""
    yield "by chance", flipped_everywhere(sealed_household())
    yield "by a forger", forged_everywhere(sealed_household(QUICK))


def mangling(share: float) -> Iterator[tuple[str, Figures]]:
    """Good inputs with faults put into them, and what of them can be read drafted into a packet."""
    times = max(1, int(MANGLED * share))
    for name in TARGETS:
        yield f"{name}, with faults", counted(name, range(times), with_faults(name))
    seeds = TARGETS["case files"].seeds()
    yield (
        "case files, other values",
        counted(
            "case files", range(max(1, times // DOCUMENTS)), lambda random: mangled_document(seeds, random)
        ),
    )
    yield "drafted from such files", {"packets": _drafted(seeds, max(1, int(DRAFTED * share)))}


def fuzzing(share: float) -> Iterator[tuple[str, Figures]]:
    """Inputs found by following the branches of the program."""
    for name, runs in FUZZED.items():
        wanted = max(1000, int(runs * share))
        command = [sys.executable, "-m", "tests.hostile.fuzzing", name, "--runs", str(wanted)]
        done = subprocess.run(command, capture_output=True, text=True, check=False)
        said = done.stdout + done.stderr
        if done.returncode:
            raise AssertionError(f"{name}: {done.stdout[-2000:]} {done.stderr[-1000:]}")
        ran = re.search(r"number_of_executed_units:\s*(\d+)", said)
        slowest = re.search(r"slowest_unit_time_sec:\s*(\d+)", said)
        yield (
            f"{name}, fuzzed",
            {
                "inputs": int(ran[1]) if ran else 0,
                "slowest, whole seconds": int(slowest[1]) if slowest else 0,
                "faults": 0,
            },
        )


PARTS: dict[str, Callable[[float], Iterator[tuple[str, Figures]]]] = {
    "kills": kills,
    "steps": steps,
    "disks": disk,
    "hammering": hammering,
    "flips": flips,
    "mangling": mangling,
    "fuzzing": fuzzing,
}


def main() -> None:
    """Run the parts asked for and print a line of figures for each of their steps."""
    options = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    options.add_argument("parts", nargs="*", choices=[[], *PARTS], help="which parts; without any: all")
    options.add_argument("--share", type=float, default=1.0, help="how much of the full run")
    asked = options.parse_args()
    for part in asked.parts or PARTS:
        began = time.monotonic()
        for what, figures in PARTS[part](asked.share):
            seconds = time.monotonic() - began
            print(f"{part}: {what}: {json.dumps(figures)} ({seconds:.0f} s)", flush=True)
            began = time.monotonic()


@contextmanager
def _folder() -> Iterator[Path]:
    with tempfile.TemporaryDirectory(prefix="hardening-") as name:
        yield Path(name)


def _drafted(seeds: list[bytes], times: int) -> int:
    drafted = number = 0
    while drafted < times:
        number += 1
        try:
            file = CaseFile.parsed(HERE, mangled_document(seeds, Random(SEED + number)))
        except UserError:
            continue
        packet = build(file.case, TODAY)
        assert packet.html()
        assert drafted % 20 or packet.pdf().startswith(b"%PDF-")
        drafted += 1
    return drafted


if __name__ == "__main__":
    main()
