"""Fuzz one target with atheris, which follows the branches that an input takes through the program.

    python -m tests.hostile.fuzzing dates 1000000
    python -m tests.hostile.fuzzing facts 0 --seconds 1200 --corpus found

Without a number of runs, or with 0, the seconds end it. What opened a new branch is kept in the corpus; what
was met wrongly lies beside it as `crash-...`. The sealed files have a checksum at their end that no fuzzer
guesses, so it is put right for every input.
"""

import argparse
import sys
import tempfile
from hashlib import sha256
from pathlib import Path

import atheris

with atheris.instrument_imports(include=["firstpaper", "yaml", "json", "jinja2", "pypdf"]):
    from tests.hostile.targets import TARGETS, fed

SECONDS_FOR_ONE = 60
"""On the clock: what never ends is caught by this, what is slow by the target itself."""
MEGABYTES = 1500
LONGEST = {
    "facts": 4000,
    "tables": 4000,
    "case files": 12_000,
    "sheet markup": 2000,
    "own sheets": 1000,
    "blanks": 8000,
}


def main(name: str, runs: int, seconds: int, corpus: Path) -> None:
    """Feed the inputs; the process ends with status 0 only where every one of them was met."""

    def feed(data: bytes) -> None:
        fed(name, data + sha256(data).digest() if name == "sealed files" else data)

    corpus.mkdir(parents=True, exist_ok=True)
    for number, seed in enumerate(TARGETS[name].seeds()):
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


def _asked() -> argparse.Namespace:
    options = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    options.add_argument("name", choices=TARGETS)
    options.add_argument("runs", type=int, nargs="?", default=0)
    options.add_argument("--seconds", type=int, default=0, help="0: until the runs are done")
    options.add_argument("--corpus", type=Path, help="a folder to keep; without it, one that is thrown away")
    return options.parse_args()


if __name__ == "__main__":
    asked = _asked()
    with tempfile.TemporaryDirectory() as passing:
        main(asked.name, asked.runs, asked.seconds, asked.corpus or Path(passing, "corpus"))
