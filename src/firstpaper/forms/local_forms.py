"""Papers and habits of single courts: a short list of what sources name, and never a whole one."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path

import yaml

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
    """Everything on the list, by county."""
    told = yaml.load(FILE.read_text(encoding="utf-8"), getattr(yaml, "CSafeLoader", yaml.SafeLoader))  # noqa: S506
    return {county: tuple(map(_paper, papers)) for county, papers in told.items()}


def _paper(told: Mapping[str, object]) -> LocalPaper:
    return LocalPaper(**{**told, "certainty": Certainty(str(told["certainty"]))})  # type: ignore[arg-type]
