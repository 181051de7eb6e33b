"""The one strict reader of our data files: questions, figures, authorities, editions, explanations, tables.

Whatever a file should not hold is an error that names the file and the place: a name written twice, a
property nobody knows, one that is missing, a value of another kind. What a person brings in a file of facts
is read elsewhere (`intake.plain_yaml`), and refused in words for people.
"""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import MISSING, fields
from datetime import date, datetime
from enum import StrEnum
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple, TypeVar, get_type_hints

from firstpaper.prebuilt import Read, prebuilt

T = TypeVar("T")
Choice = TypeVar("Choice", bound=StrEnum)


class DataFileError(ValueError):
    """A data file is not as it should be; the message names the file and the place in it."""


def read_file(path: Path, *, file: str = "", as_written: bool = False) -> dict[str, Any]:
    """The names at the top of a file, each with what stands under it; raises DataFileError.

    With `as_written` every value stays the text it was written as, so that `No` is a word and `2026-03-14`
    no day. `file` names the file in messages, where its own name is not enough.
    """
    content = path.read_bytes()
    shape: dict[str, Any] | None = prebuilt(path, content, Read.WORDS if as_written else Read.VALUES)
    if shape is not None:
        return shape
    return read_text(file or path.name, content.decode(), as_written=as_written)


def read_text(file: str, text: str, *, as_written: bool = False) -> dict[str, Any]:
    """The same for text that was read already; `file` names it in messages."""
    from firstpaper.strict_yaml import YamlRefused, content_of  # noqa: PLC0415  (slow to import)

    try:
        content = content_of(text, as_written)
    except YamlRefused as refused:
        raise Place(file, refused.parts).error(refused.problem) from refused
    return Place(file).mapping(content)


class Place(NamedTuple):
    """Where in which file, for messages, and what may stand there. Every check raises DataFileError."""

    file: str
    parts: tuple[object, ...] = ()

    def into(self, part: object) -> "Place":
        """The place of that part of it."""
        return Place(self.file, (*self.parts, part))

    def error(self, problem: str) -> DataFileError:
        """The error that says what is wrong at this place."""
        return DataFileError(f"{' > '.join(str(part) for part in (self.file, *self.parts))}: {problem}")

    def mapping(self, shape: object) -> dict[Any, Any]:
        """What stands here, which must be names with something under each."""
        if not isinstance(shape, dict) or not shape:
            raise self.error("this must be names with something under each")
        return shape

    def sequence(self, shape: object) -> list[Any]:
        """What stands here, which must be a list of something."""
        if not isinstance(shape, list) or not shape:
            raise self.error("this must be a list")
        return shape

    def rows(self, shape: object) -> Iterator[tuple["Place", Any]]:
        """Each row of the list that stands here, with its own place; rows count from 1."""
        return ((self.into(number), row) for number, row in enumerate(self.sequence(shape), 1))

    def properties(
        self, shape: object, *, needed: Collection[str], allowed: Collection[str] = ()
    ) -> dict[str, Any]:
        """What stands here, which must be these names, and no other."""
        properties = self.mapping(shape)
        for name in properties:
            if name not in needed and name not in allowed:
                raise self.into(name).error("nothing is known by that name here")
        for name in needed:
            if name not in properties:
                raise self.into(name).error("this is missing")
        return properties

    def text(self, shape: object, *within: object) -> str:
        """The words that stand here, or at the parts named: so that no place need be made for each text."""
        words = shape.strip() if isinstance(shape, str) else ""
        if not words:
            raise Place(self.file, (*self.parts, *within)).error("this must be some words")
        return words

    def day(self, shape: object) -> date:
        """The day that stands here."""
        if not isinstance(shape, date) or isinstance(shape, datetime):
            raise self.error("this must be a day, as 2026-01-01")
        return shape

    def one_of(self, choices: type[Choice], shape: object) -> Choice:
        """The one of these that stands here."""
        try:
            return choices(str(shape))
        except ValueError as unknown:
            raise self.error(f"this must be one of {', '.join(choices)}") from unknown


def built(model: type[T], place: Place, shape: dict[str, Any], **given: Any) -> T:
    """The dataclass built from a mapping, every property known, present and of the declared type."""
    hints, needed = _declared(model)  # type: ignore[arg-type]
    properties = place.properties({**shape, **given}, needed=needed, allowed=hints)
    for name, value in shape.items():
        if not _fits_hint(value, hints[name]):
            raise place.into(name).error(f"this is no {hints[name]}: {value!r}")
    return model(**properties)


@cache
def _declared(model: type[Any]) -> tuple[Mapping[str, Any], Collection[str]]:
    """The properties of a dataclass, each with its type, and those that have no default."""
    hints = get_type_hints(model)
    known = {field.name: hints[field.name] for field in fields(model)}
    return known, [field.name for field in fields(model) if field.default is MISSING]


def _fits_hint(value: object, hint: Any) -> bool:
    return isinstance(value, hint) and (hint is bool or not isinstance(value, bool))
