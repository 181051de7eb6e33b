"""The one strict reader of our data files: questions, figures, authorities, editions, explanations, tables.

Whatever a file should not hold is an error that names the file and the place: a name written twice, a
property nobody knows, one that is missing, a value of another kind. What a person brings in a file of facts
is read elsewhere (`intake.plain_yaml`), and refused in words for people.
"""

from collections.abc import Collection, Iterator
from dataclasses import MISSING, dataclass, fields
from datetime import date, datetime
from enum import StrEnum
from pathlib import Path
from typing import Any, TypeVar, get_type_hints

import yaml

T = TypeVar("T")
Choice = TypeVar("Choice", bound=StrEnum)

_TYPED = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
_AS_WRITTEN = getattr(yaml, "CBaseLoader", yaml.BaseLoader)
_TEXT, _LIST, _NAMES = (f"tag:yaml.org,2002:{kind}" for kind in ("str", "seq", "map"))


class DataFileError(ValueError):
    """A data file is not as it should be; the message names the file and the place in it."""


def read_file(path: Path, *, as_written: bool = False) -> dict[str, Any]:
    """The names at the top of a file, each with what stands under it; raises DataFileError.

    With `as_written` every value stays the text it was written as, so that `No` is a word and `2026-03-14`
    no day.
    """
    return read_text(path.name, path.read_text(encoding="utf-8"), as_written=as_written)


def read_text(file: str, text: str, *, as_written: bool = False) -> dict[str, Any]:
    """The same for text that was read already; `file` names it in messages."""
    place = Place(file)
    try:
        loader = (_AS_WRITTEN if as_written else _TYPED)(text)
        node = loader.get_single_node()
        content = _content(loader, place, node) if node else None
    except DataFileError:
        raise
    except (yaml.YAMLError, ValueError) as broken:
        raise place.error(f"this is not YAML that can be read: {broken}") from broken
    return place.mapping(content)


@dataclass(frozen=True, slots=True)
class Place:
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

    def text(self, shape: object) -> str:
        """The words that stand here."""
        if not isinstance(shape, str) or not shape.strip():
            raise self.error("this must be some words")
        return shape.strip()

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
    known = {field.name: field for field in fields(model)}  # type: ignore[arg-type]
    needed = [name for name, field in known.items() if field.default is MISSING]
    properties = place.properties({**shape, **given}, needed=needed, allowed=known)
    hints = get_type_hints(model)
    for name, value in shape.items():
        if not _fits_hint(value, hints[name]):
            raise place.into(name).error(f"this is no {hints[name]}: {value!r}")
    return model(**properties)


def _fits_hint(value: object, hint: Any) -> bool:
    return isinstance(value, hint) and (hint is bool or not isinstance(value, bool))


def _content(loader: Any, place: Place, node: yaml.Node) -> Any:
    """What a node holds. YAML readers let the last of two equal names win; here two are an error."""
    if isinstance(node, yaml.ScalarNode):
        return node.value if node.tag == _TEXT else loader.construct_object(node)
    if isinstance(node, yaml.SequenceNode) and node.tag == _LIST:
        return [_content(loader, place.into(number), each) for number, each in enumerate(node.value, 1)]
    if isinstance(node, yaml.MappingNode) and node.tag == _NAMES:
        return _names(loader, place, node)
    raise place.error(f"nothing of the kind {node.tag} is read here")


def _names(loader: Any, place: Place, node: yaml.MappingNode) -> dict[Any, Any]:
    content: dict[Any, Any] = {}
    for key, value in node.value:
        if not isinstance(key, yaml.ScalarNode):
            raise place.error(f"a name must be one word, in line {key.start_mark.line + 1}")
        name = _content(loader, place, key)
        here = place.into(name)
        if name in content:
            raise here.error(f"written twice, again in line {key.start_mark.line + 1}")
        content[name] = _content(loader, here, value)
    return content
