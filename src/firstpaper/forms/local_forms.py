"""Papers and habits of single courts: a short list of what sources name, and never a whole one."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

from firstpaper.data_files import Place, built, read_file
from firstpaper.law.authority import Certainty

FILE = Path(__file__).with_name("local_forms.yaml")


@dataclass(frozen=True, slots=True)
class LocalPaper:
    """One paper or habit of one court. `number` is empty where it is a habit and not a form."""

    says: str
    source: str
    certainty: Certainty
    checked_on: date
    number: str = ""


def local_papers(county: str | None) -> tuple[LocalPaper, ...]:
    """What we know of the court of that county; nothing where we know of nothing, or no county is told."""
    return all_local_papers().get(county or "", ())


@cache
def all_local_papers() -> Mapping[str, tuple[LocalPaper, ...]]:
    """Everything on the list, by county; raises DataFileError where the file is not as it should be."""
    return read_papers(FILE)


def read_papers(path: Path) -> Mapping[str, tuple[LocalPaper, ...]]:
    """The papers of a file, by county; raises DataFileError naming the place."""
    place = Place(path.name)
    return {county: _papers(place.into(county), papers) for county, papers in read_file(path).items()}


def _papers(place: Place, shape: object) -> tuple[LocalPaper, ...]:
    return tuple(_paper(here, here.mapping(paper)) for here, paper in place.rows(shape))


def _paper(place: Place, told: dict[str, Any]) -> LocalPaper:
    certainty = place.into("certainty").one_of(Certainty, told.pop("certainty", ""))
    return built(LocalPaper, place, told, certainty=certainty)
