"""Case files that together tell every fact there is, with every answer that can be chosen.

    python -m tests.casefile.every_fact      write those of the schema of now, when a version is made

They are kept in `schemas/` for good; see `test_schemas`.
"""

import json
import shutil
from collections.abc import Iterator, Mapping
from enum import Enum
from functools import cache
from pathlib import Path
from random import Random
from typing import Any, get_args, get_origin

from pydantic import BaseModel

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.casefile.sealing import Seal
from firstpaper.casefile.upgrades import SCHEMA
from firstpaper.facts import Case
from tests.any_case import household

FOLDER = Path(__file__).parent / "schemas"
PASSPHRASE = "marble otter seven violins"
DRAWN = 400

Told = tuple[str, object]
"""The key of a fact, and what was answered: a choice, yes, no, nothing, or just that it was a value."""


def told_in(facts: Mapping[str, Any]) -> set[Told]:
    """What the facts of a case file tell, rows and lists without their numbers."""
    return every_answer() & set(_told(facts, ""))


def _told(told: Any, key: str) -> Iterator[Told]:
    if isinstance(told, dict):
        for name, value in told.items():
            yield from _told(value, f"{key}.{name}".lstrip("."))
    elif isinstance(told, list):
        for value in told:
            yield from _told(value, key)
    else:
        yield key, "value"
        yield key, told


@cache
def every_answer() -> frozenset[Told]:
    """Every fact of today, with each answer that can be chosen."""
    return frozenset(_answers(Case, ""))


def _answers(kind: Any, key: str) -> Iterator[Told]:
    if isinstance(kind, type) and issubclass(kind, BaseModel):
        for name, field in kind.model_fields.items():
            yield from _answers(field.annotation, f"{key}.{name}".lstrip("."))
    elif isinstance(kind, type) and issubclass(kind, Enum):
        yield from ((key, one.value) for one in kind)
    elif kind is bool:
        yield from ((key, True), (key, False))
    elif kind is type(None):
        yield key, None
    elif get_origin(kind) is None:
        yield key, "value"
    else:
        for part in get_args(kind):
            if part is not Ellipsis and (isinstance(part, type) or get_origin(part)):
                yield from _answers(part, key)


def chosen() -> Iterator[str]:
    """Case files, as few as will do, that tell every answer between them."""
    files = [CaseFile(household(Random(number))).to_json() for number in range(DRAWN)]
    told = {text: told_in(json.loads(text)["facts"]) for text in files}
    missing = set().union(*told.values())
    while missing:
        best = max(files, key=lambda text: len(told[text] & missing))
        missing -= told[best]
        yield best


def main() -> None:
    """Write the files of the schema of now."""
    here = FOLDER / str(SCHEMA)
    here.mkdir(exist_ok=True)
    for number, text in enumerate(chosen(), 1):
        (here / f"every-fact-{number:02}.case").write_text(text, "utf-8")
    CaseFile.load(FOLDER / "1" / "children.case").save(here / "children.case")
    shutil.copy(here / "children.case", here / "sealed.case")
    with OpenCase(here / "sealed.case") as opened:
        opened.seal_with(Seal.new(PASSPHRASE))


if __name__ == "__main__":
    main()
