"""Fuzz one target with atheris, which follows the branches that an input takes through the program.

    python -m tests.hostile.fuzzing dates 1000000

The sealed files have a checksum at their end that no fuzzer guesses, so it is put right for every input.
"""

import sys
import tempfile
from hashlib import sha256
from pathlib import Path

import atheris

with atheris.instrument_imports(include=["firstpaper", "yaml", "json", "jinja2"]):
    from tests.hostile.targets import TARGETS, fed

SECONDS_FOR_ONE = 60
"""On the clock: what never ends is caught by this, what is slow by the target itself."""
MEGABYTES = 1500
LONGEST = {"facts": 4000, "tables": 4000, "case files": 12_000, "sheet markup": 2000, "own sheets": 1000}


def main(name: str, runs: int) -> None:
    """Feed `runs` inputs; the process ends with status 0 only where every one of them was met."""

    def feed(data: bytes) -> None:
        fed(name, data + sha256(data).digest() if name == "sealed files" else data)

    with tempfile.TemporaryDirectory() as corpus:
        for number, seed in enumerate(TARGETS[name].seeds()):
            Path(corpus, f"{number}").write_bytes(seed)
        limits = [
            f"-artifact_prefix={tempfile.gettempdir()}/",
            f"-runs={runs}",
            f"-timeout={SECONDS_FOR_ONE}",
            f"-rss_limit_mb={MEGABYTES}",
        ]
        longest = f"-max_len={LONGEST.get(name, 400)}"
        atheris.Setup([sys.argv[0], *limits, longest, "-print_final_stats=1", "-verbosity=0", corpus], feed)
        atheris.Fuzz()


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]))
