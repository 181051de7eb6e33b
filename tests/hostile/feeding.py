"""Feed a reader good inputs with faults put into them, and count how they were met.

    python -m tests.hostile.feeding dates --inputs 1000000
    python -m tests.hostile.feeding facts tables --inputs 250000 --first 500000

An input is made from its number alone. So a long run can be made in pieces, side by side or on other days.
"""

import argparse
import json
import time
from collections.abc import Callable, Iterable
from functools import partial
from random import Random

from tests.hostile.mangling import mangled, small
from tests.hostile.targets import TARGETS, fed

SEED = 20261130
WHOLE = 100
"""Of so many inputs one is made from a whole file, where a reader takes long."""
PIECE = 10_000
"""So many inputs a line of figures."""

Figures = dict[str, int]


def counted(name: str, numbers: Iterable[int], make: Callable[[Random], bytes]) -> Figures:
    """How the inputs of these numbers were met; an input that was met wrongly ends the run with an error."""
    counts = {"inputs": 0, "taken": 0, "refused": 0, "faults": 0}
    for number in numbers:
        counts["inputs"] += 1
        counts[fed(name, make(Random(SEED + number)))] += 1
    return counts


def with_faults(name: str) -> Callable[[Random], bytes]:
    """What makes an input for a reader: a good one, small or whole, with one to four faults in it."""
    return partial(_spoiled, name, TARGETS[name].seeds())


def _spoiled(name: str, seeds: list[bytes], random: Random) -> bytes:
    return mangled([small(name, seeds, random)] if random.randrange(WHOLE) else seeds, random)


def main() -> None:
    """Feed the readers asked for, and print a line of figures for each piece of the run."""
    options = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    options.add_argument("names", choices=TARGETS, nargs="+")
    options.add_argument("--inputs", type=int, default=PIECE, help="for each reader")
    options.add_argument("--first", type=int, default=0, help="the number of the first input")
    asked = options.parse_args()
    for name in asked.names:
        _fed_in_pieces(name, range(asked.first, asked.first + asked.inputs))


def _fed_in_pieces(name: str, numbers: range) -> None:
    make = with_faults(name)
    for start in range(numbers.start, numbers.stop, PIECE):
        began = time.monotonic()
        figures = counted(name, range(start, min(start + PIECE, numbers.stop)), make)
        print(f"{name} from {start}: {json.dumps(figures)} ({time.monotonic() - began:.0f} s)", flush=True)


if __name__ == "__main__":
    main()
