"""What a passphrase costs a person in waiting: medians in milliseconds, printed, nothing asserted.

    python tests/benchmarks/sealed.py [ROUNDS]

The key is made once, when the file is opened or locked. Every answer after that is saved with the key at
hand, so a locked sitting must feel like an open one.
"""

import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.casefile.sealing import Seal
from tests.hostile.flips import PASSPHRASE
from tests.hostile.targets import HERE, TARGETS


def main(rounds: int) -> None:
    """Print the figures."""
    file = CaseFile.parsed(HERE, TARGETS["case files"].seeds()[0])
    with TemporaryDirectory() as folder:
        for words, seal in (("open", None), ("locked", Seal.new(PASSPHRASE))):
            path = Path(folder) / f"{words}.case"
            with OpenCase(path, begin=True) as opened:
                if seal:
                    opened.seal_with(seal)
                opened.keep(file)
                print(f"{words}: save one answer       {timed(lambda: opened.keep(file), rounds):7.1f} ms")
                print(f"{words}: take one back         {timed(lambda: undone(opened, file), rounds):7.1f} ms")
            print(f"{words}: open the case file    {timed(partial(opening, path), rounds):7.1f} ms")
    print(f"make the key of a passphrase {timed(lambda: Seal.new(PASSPHRASE), rounds):7.1f} ms")


def timed(work: Callable[[], object], rounds: int) -> float:
    """The median time of `work`, in milliseconds."""
    times = []
    for _round in range(rounds):
        start = perf_counter()
        work()
        times.append((perf_counter() - start) * 1000)
    return median(times)


def opening(path: Path) -> None:
    """Open a case file for writing, as a sitting begins."""
    with OpenCase(path, passphrases=[PASSPHRASE]):
        pass


def undone(opened: OpenCase, file: CaseFile) -> None:
    """Save another answer, and take it back."""
    opened.keep(file.with_case(file.case.with_fact("court.branch", "Annex")))
    opened.undo()


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 25)
