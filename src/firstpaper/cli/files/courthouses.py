"""Courthouse addresses already typed, found in the other case files of the same folder.

A paralegal files in the same few courthouses all year. Nothing is kept for this: no list, no trace;
the case files that are there are read when the question comes. Only a courthouse's own address leaves
another case.
"""

from collections import Counter
from collections.abc import Iterator
from itertools import islice
from pathlib import Path

from firstpaper.casefile.document import CaseFile
from firstpaper.errors import UserError
from firstpaper.facts import known
from firstpaper.facts.matter import Court
from firstpaper.facts.people import Address

MOST_FILES = 200


def courthouses_nearby(path: Path, county: str) -> tuple[Address, ...]:
    """Courthouse addresses of `county` in the case files beside `path`, the most used one first."""
    counted = Counter(
        address
        for court in _courts(path)
        if (known(court.county) or "").casefold() == county.casefold() and (address := known(court.address))
    )
    return tuple(address for address, _times in counted.most_common())


def _courts(path: Path) -> Iterator[Court]:
    for other in islice(_beside(path), MOST_FILES):
        try:
            yield CaseFile.load(other).case.court
        except UserError:
            continue


def _beside(path: Path) -> Iterator[Path]:
    try:
        names = sorted(path.absolute().parent.iterdir())
    except OSError:
        return iter(())
    return (one for one in names if one.name != path.name and one.is_file())
