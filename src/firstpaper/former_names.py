"""Names that were given up, and what each is called now, read from `former_names.yaml`.

Rules, questions, dates and events go by names that people type and that scripts, files of facts and case
files hold. A name that is changed stays good: it stands in the file beside the new one.
"""

from collections.abc import Mapping
from enum import StrEnum
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from firstpaper.data_files import Place

FILE = Path(__file__).with_suffix(".yaml")


class Named(StrEnum):
    """What goes by a name."""

    FACT = "facts"
    RULE = "rules"
    DATE = "dates"
    EVENT = "events"


def called_now(kind: Named, name: str) -> str:
    """What is called so now: the name itself, unless it was given up."""
    return former_names()[kind].get(name, name)


def formerly(kind: Named, name: str) -> tuple[str, ...]:
    """The names that it had before, the oldest first."""
    return tuple(old for old, new in former_names()[kind].items() if new == name)


def former_names() -> Mapping[Named, Mapping[str, str]]:
    """The names given up, each with the one of today, by kind; raises DataFileError."""
    return _read(FILE)


@cache
def _read(path: Path) -> Mapping[Named, Mapping[str, str]]:
    from firstpaper.data_files import Place, read_file  # noqa: PLC0415  (only for a name not in use, and slow)

    place = Place(path.name)
    told = place.properties(read_file(path), needed=tuple(Named))
    return {kind: _names(place.into(kind), told[kind]) for kind in Named}


def _names(place: "Place", shape: object) -> Mapping[str, str]:
    names = place.mapping(shape) if shape is not None else {}
    for old, new in names.items():
        here = place.into(old)
        if here.text(new) in names:
            raise here.error(f"{new} was given up too: write what it is called now")
        if str(old).count("*") != new.count("*"):
            raise here.error("what is told of each row stays with its row")
    return MappingProxyType(names)
