"""Data files read strictly: whatever a file should not hold is an error that names the file and the place."""

from dataclasses import MISSING, dataclass, fields
from pathlib import Path
from typing import Any, TypeVar, get_type_hints

import yaml

T = TypeVar("T")


class DataFileError(ValueError):
    """A data file is not as it should be; the message names the file and the place in it."""


class _Loader(getattr(yaml, "CSafeLoader", yaml.SafeLoader)):  # type: ignore[misc]
    """YAML in which two equal keys are an error instead of the last one winning."""

    def construct_mapping(self, node: yaml.MappingNode, deep: bool = False) -> dict[Any, Any]:
        keys = [key.value for key, _value in node.value]
        for key in keys:
            if keys.count(key) > 1:
                raise yaml.constructor.ConstructorError(
                    None, None, f"{key!r} is written twice", node.start_mark
                )
        mapping: dict[Any, Any] = super().construct_mapping(node, deep)
        return mapping


def read_file(path: Path) -> dict[str, Any]:
    """The names at the top of a file, each with what stands under it."""
    return read_text(path.name, path.read_text(encoding="utf-8"))


def read_text(file: str, text: str) -> dict[str, Any]:
    """The same for text that was read already; `file` names it in messages."""
    try:
        shape = yaml.load(text, _Loader)  # noqa: S506 - a safe loader
    except yaml.YAMLError as broken:
        raise DataFileError(f"{file}: {broken}") from broken
    return Place(file).mapping(shape)


@dataclass(frozen=True, slots=True)
class Place:
    """Where in which file, for messages."""

    file: str
    parts: tuple[object, ...] = ()

    def into(self, part: object) -> "Place":
        """The place of that part of it."""
        return Place(self.file, (*self.parts, part))

    def error(self, problem: str) -> DataFileError:
        """The error that says what is wrong at this place."""
        return DataFileError(f"{' > '.join(str(part) for part in (self.file, *self.parts))}: {problem}")

    def mapping(self, shape: object) -> dict[str, Any]:
        """What stands here, which must be names with something under each."""
        if not isinstance(shape, dict):
            raise self.error("this must be names with something under each")
        return shape

    def sequence(self, shape: object) -> list[Any]:
        """What stands here, which must be a list of something."""
        if not isinstance(shape, list) or not shape:
            raise self.error("this must be a list")
        return shape


def built(model: type[T], place: Place, shape: dict[str, Any], **given: Any) -> T:
    """The dataclass built from a mapping, every property known, present and of the declared type."""
    known = {field.name: field for field in fields(model)}  # type: ignore[arg-type]
    properties = {**shape, **given}
    for name in properties.keys() - known.keys():
        raise place.into(name).error("nothing is known by that name here")
    for name, field in known.items():
        if name not in properties and field.default is MISSING:
            raise place.into(name).error("this is missing")
    hints = get_type_hints(model)
    for name, value in shape.items():
        if not _fits_hint(value, hints[name]):
            raise place.into(name).error(f"this is no {hints[name]}: {value!r}")
    return model(**properties)


def _fits_hint(value: object, hint: Any) -> bool:
    return isinstance(value, hint) and (hint is bool or not isinstance(value, bool))
