"""Fuzz one target with atheris, which follows the branches that an input takes through the program.

    python -m tests.hostile.fuzzing dates --runs 1000000
    python -m tests.hostile.fuzzing facts tables --seconds 1200 --corpus found

Without a number of runs the seconds end it, for each reader. What opened a new branch is kept in the corpus;
what was met wrongly lies beside it as `crash-...`. The sealed files have a checksum at their end that no
fuzzer guesses, so it is put right for every input. It begins with small good inputs, and with what was found
before. Each reader gets a child of this process, so that the program is made ready to be followed once.
"""

import argparse
import os
import sys
import tempfile
from hashlib import sha256
from pathlib import Path
from random import Random

import atheris

with atheris.instrument_imports(include=["firstpaper", "yaml", "json", "jinja2", "pypdf"]):
    from tests.hostile.mangling import FEWER, small
    from tests.hostile.targets import TARGETS, fed, found

SECONDS_FOR_ONE = 60
"""On the clock: what never ends is caught by this, what is slow by the target itself."""
MEGABYTES = 1500
FEW = 60
"""How many small good inputs it begins with where whole ones take long."""
LONGEST = {
    "facts": 4000,
    "tables": 4000,
    "case files": 12_000,
    "sheet markup": 2000,
    "own sheets": 1000,
    "blanks": 8000,
    "blanks looked at": 8000,
}


def main(name: str, runs: int, seconds: int, corpus: Path) -> None:
    """Feed the inputs; the process ends with status 0 only where every one of them was met."""

    def feed(data: bytes) -> None:
        fed(name, data + sha256(data).digest() if name == "sealed files" else data)

    corpus.mkdir(parents=True, exist_ok=True)
    for number, seed in enumerate([*_good(name), *(data for data, _met in found(name))]):
        (corpus / f"{number}").write_bytes(seed)
    limits = [
        f"-artifact_prefix={corpus}-",
        f"-runs={runs or -1}",
        f"-max_total_time={seconds}",
        f"-timeout={SECONDS_FOR_ONE}",
        f"-rss_limit_mb={MEGABYTES}",
        f"-max_len={LONGEST.get(name, 400)}",
    ]
    atheris.Setup([sys.argv[0], *limits, "-print_final_stats=1", "-verbosity=0", str(corpus)], feed)
    atheris.Fuzz()


def _good(name: str) -> list[bytes]:
    seeds = TARGETS[name].seeds()
    return [small(name, seeds, Random(number)) for number in range(FEW)] if name in FEWER else seeds


def _each(asked: argparse.Namespace, passing: Path) -> int:
    """Fuzz one reader after the other; how many of them met an input wrongly."""
    wrong = 0
    for name in asked.names:
        child = os.fork()
        if not child:
            main(name, asked.runs, asked.seconds, (asked.corpus or passing) / name.replace(" ", "-"))
        wrong += os.waitpid(child, 0)[1] != 0
    return wrong


def _asked() -> argparse.Namespace:
    options = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    options.add_argument("names", choices=TARGETS, nargs="+")
    options.add_argument("--runs", type=int, default=0, help="inputs for each; 0: until the seconds are over")
    options.add_argument("--seconds", type=int, default=0, help="0: until the runs are done")
    options.add_argument("--corpus", type=Path, help="a folder to keep; without it, one that is thrown away")
    return options.parse_args()


if __name__ == "__main__":
    asked = _asked()
    with tempfile.TemporaryDirectory() as passing:
        sys.exit(_each(asked, Path(passing)))
