"""The same work on many files: in this process where there are few, on every core where that pays."""

import gc
import multiprocessing
import os
import signal
import sys
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path
from typing import TypeVar

T = TypeVar("T")

PAYS_FROM = 60
"""Files from which on a second process saves more than it costs to start one."""
BATCH = 20
"""Files that a process takes at a time: few enough that none waits long for the other at the end."""
LEFT_OVER = 100_000
"""Objects left over from finished files, after which they are looked through: some twenty packets."""


def over_all(
    work: Callable[[Path], T],
    files: Sequence[Path],
    told: Callable[[int, int], None] | None = None,
    *,
    pays_from: int | None = None,
    batch: int = BATCH,
) -> Iterator[T]:
    """What `work` gives for each file, in the order of the files. `told` hears how many of how many are done.

    `work` and what it gives must be fit to be handed to another process. What it raises is raised here.
    """
    for done, result in enumerate(_results(work, files, pays_from or PAYS_FROM, batch), 1):
        if told:
            told(done, len(files))
        yield result


def cores() -> int:
    """How many processes can work at the same time here."""
    try:
        return len(os.sched_getaffinity(0))
    except AttributeError:  # a system that does not tell
        return os.cpu_count() or 1


def _results(work: Callable[[Path], T], files: Sequence[Path], pays_from: int, batch: int) -> Iterator[T]:
    if len(files) < pays_from:
        yield from map(work, files)
        return
    _tidy_up_now_and_then()
    if cores() == 1:
        yield from map(work, files)
        return
    yield work(files[0])  # what it loads, the other processes have then too
    sys.stdout.flush()
    sys.stderr.flush()
    with multiprocessing.get_context(_way_to_start()).Pool(cores(), _begin) as pool:
        yield from pool.imap(work, files[1:], chunksize=batch)


def _tidy_up_now_and_then() -> None:
    """Collect garbage, which one command of one case never lives to need: of thousands it would pile up."""
    gc.set_threshold(LEFT_OVER)
    gc.enable()


def _begin() -> None:
    """Leave Ctrl-C and the end of the program to the process that started this one. Tidy up as it does."""
    _tidy_up_now_and_then()
    gc.freeze()  # what is loaded stays
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    signal.signal(signal.SIGTERM, signal.SIG_DFL)


def _way_to_start() -> str:
    """A copy of this process where the system makes one safely: everything is loaded in it already."""
    return "fork" if sys.platform == "linux" else "spawn"
