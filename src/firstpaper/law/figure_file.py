"""What a figures file holds, and the strict reading of one.

A file is checked whole when it is read: equal keys, unknown or missing properties, days out of
order and inexact numbers are refused, each with the file and the place in it. What has been read
cannot be changed.
"""

from collections.abc import Mapping
from datetime import date, timedelta
from itertools import pairwise
from pathlib import Path
from types import MappingProxyType
from typing import Any, NamedTuple

from firstpaper.counting import short_date, spell_date
from firstpaper.data_files import Place, read_file
from firstpaper.law.authority import Certainty
from firstpaper.locale import _

_ONE_DAY = timedelta(days=1)


class FigureNotInForce(LookupError):
    """The law sets no such figure on that day, or none that we know."""

    def __init__(self, message: str, name: str) -> None:
        super().__init__(message)
        self.name = name


class FigureValue(NamedTuple):
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


class NoValue(NamedTuple):
    """A written-down span in which a figure has no value, and why."""

    why: str
    since: date
    until: date | None


class Figure(NamedTuple):
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
    """The figures of one file, checked; raises DataFileError naming the file and the place."""
    place = Place(path.name)
    return tuple(_figure(place.into(name), path.stem, name, shape) for name, shape in read_file(path).items())


class _Head(NamedTuple):
    """What all the values of a figure share."""

    name: str
    what: str
    unit: str


def _figure(place: Place, topic: str, name: object, shape: object) -> Figure:
    if not isinstance(name, str) or not name.startswith(f"{topic}."):
        raise place.error(f"a figure in this file has a name that begins with {topic + '.'!r}")
    properties = place.properties(shape, needed=("what", "unit", "values"), allowed=("note",))
    head = _Head(name, _words(place, properties, "what"), _words(place, properties, "unit"))
    inside = place.into("values")
    values = inside.mapping(properties["values"])
    days = _days(inside, values)
    ends = [*(following - _ONE_DAY for following in days[1:]), None]
    spans = tuple(
        _span(inside.into(since), head, values[since], since, until)
        for since, until in zip(days, ends, strict=True)
    )
    if isinstance(spans[0], NoValue):
        raise inside.into(days[0]).error("the first span has no value; leave it out")
    return Figure(head.name, head.what, head.unit, _note(place, properties), spans)


def _days(place: Place, values: Mapping[object, object]) -> list[date]:
    days = [place.into(day).day(day) for day in values]
    for earlier, later in pairwise(days):
        if later < earlier:
            raise place.into(later).error(f"out of order: this comes after {earlier}")
    return days


def _span(place: Place, head: _Head, shape: object, since: date, until: date | None) -> FigureValue | NoValue:
    raw = place.mapping(shape)
    if "value" in raw and raw["value"] is None:
        ended = place.properties(raw, needed=("value", "why"))
        return NoValue(_words(place, ended, "why"), since, until)
    needed = ("value", "authority", "certainty", "checked_on")
    properties = place.properties(raw, needed=needed, allowed=("note",))
    return FigureValue(
        name=head.name,
        what=head.what,
        value=_frozen(place.into("value"), properties["value"]),
        unit=head.unit,
        authority=_words(place, properties, "authority"),
        certainty=place.into("certainty").one_of(Certainty, properties["certainty"]),
        checked_on=place.into("checked_on").day(properties["checked_on"]),
        since=since,
        until=until,
        note=_note(place, properties),
    )


def _note(place: Place, properties: Mapping[str, object]) -> str:
    return _words(place, properties, "note") if "note" in properties else ""


def _words(place: Place, properties: Mapping[str, object], name: str) -> str:
    return " ".join(place.into(name).text(properties[name]).split())


def _frozen(place: Place, value: object) -> Any:
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


def _key(place: Place, key: object) -> str | int:
    """YAML reads a bare `on` or `no` as a yes or no, so those must be quoted."""
    if isinstance(key, bool) or not isinstance(key, str | int):
        raise place.into(key).error("a name here must be a word or a whole number; quote it")
    return key
