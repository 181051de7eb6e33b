"""What a figures file holds, and the strict reading of one.

A file is checked whole when it is read: equal keys, unknown or missing properties, days out of
order and inexact numbers are refused, each with the file and the place in it. What has been read
cannot be changed.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from itertools import pairwise
from pathlib import Path
from types import MappingProxyType
from typing import Any

import yaml

from firstpaper.counting import short_date, spell_date
from firstpaper.law.authority import Certainty
from firstpaper.locale import _

_LOADER = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
_ONE_DAY = timedelta(days=1)


class FigureFileError(ValueError):
    """A figures file is not as it should be; the message names the file and the place in it."""


class FigureNotInForce(LookupError):
    """The law sets no such figure on that day, or none that we know."""

    def __init__(self, message: str, name: str) -> None:
        super().__init__(message)
        self.name = name


@dataclass(frozen=True, slots=True)
class FigureValue:
    """One value of a figure, in force from `since` to `until`, both days included.

    `until` is None while no end is known. `value` is a number, a text, a yes or no, a date, or a
    tuple or read-only mapping of such.
    """

    name: str
    what: str
    value: Any
    unit: str
    authority: str
    certainty: Certainty
    checked_on: date
    since: date
    until: date | None
    note: str = ""

    @property
    def in_words(self) -> str:
        """The value as a person reads it, as "yes" or "low: 435, high: 450"; without the unit."""
        return _in_words(self.value)


@dataclass(frozen=True, slots=True)
class NoValue:
    """A written-down span in which a figure has no value, and why."""

    why: str
    since: date
    until: date | None


@dataclass(frozen=True, slots=True)
class Figure:
    """A named figure with all its spans, oldest first, without gaps."""

    name: str
    what: str
    unit: str
    note: str
    spans: tuple[FigureValue | NoValue, ...]

    @property
    def values(self) -> tuple[FigureValue, ...]:
        """The spans that have a value."""
        return tuple(span for span in self.spans if isinstance(span, FigureValue))

    def on(self, day: date) -> FigureValue:
        """The value in force on that day; raises FigureNotInForce when there is none."""
        begun = [span for span in self.spans if span.since <= day]
        if not begun:
            before = _("We have no value before {floor} for this figure: {what} ({name}).")
            raise self._not_in_force(before, floor=short_date(self.spans[0].since))
        span = begun[-1]
        if isinstance(span, NoValue):
            none = _("There is no value on {day} for this figure: {what} ({name}). From {since}, {why}")
            since = short_date(span.since)
            raise self._not_in_force(none, day=short_date(day), since=since, why=_(span.why))
        return span

    def _not_in_force(self, message: str, **words: str) -> FigureNotInForce:
        return FigureNotInForce(message.format(what=_(self.what), name=self.name, **words), self.name)


def _in_words(value: Any) -> str:
    match value:
        case None:
            return _("not known")
        case bool():
            return _("yes") if value else _("no")
        case date():
            return spell_date(value)
        case Mapping():
            return ", ".join(f"{name}: {_in_words(each)}" for name, each in value.items())
        case tuple():
            return "; ".join(_in_words(each) for each in value)
    return _(str(value))


def load_figures(path: Path) -> tuple[Figure, ...]:
    """The figures of one file, checked; raises FigureFileError naming the file and the place."""
    return tuple(
        _figure(_Place(path.name, (name,)), path.stem, name, shape)
        for name, shape in _mapping(_Place(path.name), _read(path)).items()
    )


@dataclass(frozen=True, slots=True)
class _Place:
    """Where in which file, for messages."""

    file: str
    parts: tuple[object, ...] = ()

    def into(self, part: object) -> "_Place":
        return _Place(self.file, (*self.parts, part))

    def error(self, problem: str) -> FigureFileError:
        where = f"{self.file}: {' > '.join(str(part) for part in self.parts)}" if self.parts else self.file
        return FigureFileError(f"{where}: {problem}")


@dataclass(frozen=True, slots=True)
class _Head:
    """What all the values of a figure share."""

    name: str
    what: str
    unit: str


def _read(path: Path) -> object:
    try:
        loader = _LOADER(path.read_text(encoding="utf-8"))
        node = loader.get_single_node()
        content = loader.construct_document(node) if node else None
    except (yaml.YAMLError, ValueError) as broken:
        raise FigureFileError(f"{path.name}: this is not YAML that can be read: {broken}") from broken
    _refuse_duplicates(_Place(path.name), node)
    return content


def _refuse_duplicates(place: _Place, node: yaml.Node | None) -> None:
    """YAML readers let the last of two equal keys win; here two of them are an error."""
    if isinstance(node, yaml.MappingNode):
        seen = set()
        for key, value in node.value:
            if key.value in seen:
                raise place.into(key.value).error(f"written twice, again in line {key.start_mark.line + 1}")
            seen.add(key.value)
            _refuse_duplicates(place.into(key.value), value)
    elif isinstance(node, yaml.SequenceNode):
        for number, item in enumerate(node.value, 1):
            _refuse_duplicates(place.into(number), item)


def _figure(place: _Place, topic: str, name: object, shape: object) -> Figure:
    if not isinstance(name, str) or not name.startswith(f"{topic}."):
        raise place.error(f"a figure in this file has a name that begins with {topic + '.'!r}")
    properties = _properties(place, shape, needed={"what", "unit", "values"}, allowed={"note"})
    head = _Head(name, _text(place, properties, "what"), _text(place, properties, "unit"))
    inside = place.into("values")
    values = _mapping(inside, properties["values"])
    days = _days(inside, values)
    ends = [*(following - _ONE_DAY for following in days[1:]), None]
    spans = tuple(
        _span(inside.into(since), head, values[since], since, until)
        for since, until in zip(days, ends, strict=True)
    )
    if isinstance(spans[0], NoValue):
        raise inside.into(days[0]).error("the first span has no value; leave it out")
    return Figure(head.name, head.what, head.unit, _note(place, properties), spans)


def _days(place: _Place, values: Mapping[object, object]) -> list[date]:
    days = [_day(place.into(day), day) for day in values]
    for earlier, later in pairwise(days):
        if later < earlier:
            raise place.into(later).error(f"out of order: this comes after {earlier}")
    return days


def _span(
    place: _Place, head: _Head, shape: object, since: date, until: date | None
) -> FigureValue | NoValue:
    raw = _mapping(place, shape)
    if "value" in raw and raw["value"] is None:
        ended = _properties(place, raw, needed={"value", "why"}, allowed=set())
        return NoValue(_text(place, ended, "why"), since, until)
    needed = {"value", "authority", "certainty", "checked_on"}
    properties = _properties(place, raw, needed=needed, allowed={"note"})
    return FigureValue(
        name=head.name,
        what=head.what,
        value=_frozen(place.into("value"), properties["value"]),
        unit=head.unit,
        authority=_text(place, properties, "authority"),
        certainty=_certainty(place, properties),
        checked_on=_day(place.into("checked_on"), properties["checked_on"]),
        since=since,
        until=until,
        note=_note(place, properties),
    )


def _mapping(place: _Place, shape: object) -> Mapping[Any, object]:
    if not isinstance(shape, Mapping) or not shape:
        raise place.error("this must be a list of names with something under each")
    return shape


def _properties(place: _Place, shape: object, *, needed: set[str], allowed: set[str]) -> Mapping[str, object]:
    properties = _mapping(place, shape)
    for missing in sorted(needed - properties.keys()):
        raise place.error(f"{missing} is missing")
    for unknown in sorted(properties.keys() - needed - allowed, key=str):
        raise place.into(unknown).error("nothing is known by that name here")
    return properties


def _day(place: _Place, shape: object) -> date:
    if not isinstance(shape, date) or isinstance(shape, datetime):
        raise place.error("this must be a day, as 2026-01-01")
    return shape


def _certainty(place: _Place, properties: Mapping[str, object]) -> Certainty:
    text = _text(place, properties, "certainty")
    try:
        return Certainty(text)
    except ValueError as unknown:
        raise place.into("certainty").error(f"this must be one of {', '.join(Certainty)}") from unknown


def _note(place: _Place, properties: Mapping[str, object]) -> str:
    return _text(place, properties, "note") if "note" in properties else ""


def _text(place: _Place, properties: Mapping[str, object], key: str) -> str:
    text = properties[key]
    if not isinstance(text, str) or not text.strip():
        raise place.into(key).error("this must be some words")
    return " ".join(text.split())


def _frozen(place: _Place, value: object) -> Any:
    """The value with every list and mapping made read-only."""
    if isinstance(value, Mapping):
        return MappingProxyType({_key(place, key): _frozen(place.into(key), value[key]) for key in value})
    if isinstance(value, list):
        return tuple(_frozen(place.into(number), each) for number, each in enumerate(value, 1))
    if isinstance(value, float):
        raise place.error("a fraction is not exact; use a smaller unit, or quote it as text")
    if value is None or isinstance(value, bool | int | str | date):
        return value
    raise place.error(f"a figure cannot hold a {type(value).__name__}")


def _key(place: _Place, key: object) -> str | int:
    """YAML reads a bare `on` or `no` as a yes or no, so those must be quoted."""
    if isinstance(key, bool) or not isinstance(key, str | int):
        raise place.into(key).error("a name here must be a word or a whole number; quote it")
    return key
