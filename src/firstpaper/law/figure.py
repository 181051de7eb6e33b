"""Figures: the dated numbers and lists that the law sets, read from `figures/<topic>.yaml`.

A figure is asked for by name and day. It answers with the value in force on that day, its
authority, how sure we are of it and when somebody last checked it. Before the first value, and
after a known end, it refuses by name; it never guesses. The first part of a name is the name of
its file, and only that file is read.
"""

from collections.abc import Mapping
from datetime import date
from functools import cache, lru_cache
from pathlib import Path
from types import MappingProxyType

from firstpaper.counting import CourtCalendar, DayAfter, FixedDay, HolidayRule, NthWeekday, YearlyDay
from firstpaper.data_files import Place
from firstpaper.law.figure_file import (
    Figure,
    FigureNotInForce,
    FigureValue,
    NoValue,
    load_figures,
)
from firstpaper.locale import _

__all__ = [
    "Figure",
    "FigureNotInForce",
    "FigureValue",
    "NoValue",
    "UnknownFigureError",
    "all_figures",
    "court_calendar",
    "figure",
    "oldest_check",
]

FIGURES = Path(__file__).parent / "figures"
NO_CLOSURES: Mapping[date, str] = MappingProxyType({})
WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


class UnknownFigureError(LookupError):
    """There is no figure of that name."""


def figure(name: str, on: date) -> FigureValue:
    """The figure of that name as in force on the day `on`.

    Raises UnknownFigureError for a name no file has, and FigureNotInForce, with the floor or the end in
    plain words, for a day without a value.
    """
    topic = _topic(name.partition(".")[0])
    if name not in topic:
        raise UnknownFigureError(_("No figure is called {name}.").format(name=name))
    return topic[name].on(on)


def all_figures() -> tuple[Figure, ...]:
    """Every figure of every topic, by file and then as written."""
    return tuple(each for path in sorted(FIGURES.glob("*.yaml")) for each in _topic(path.stem).values())


def oldest_check() -> date:
    """The day of the oldest check among all values: the law is checked as of then, not later."""
    return min(value.checked_on for each in all_figures() for value in each.values)


def court_calendar(closures: Mapping[date, str] = NO_CLOSURES) -> CourtCalendar:
    """The court calendar of `figures/court_holidays.yaml`, with one-off closures added."""
    return _court_calendar(tuple(sorted(closures.items())))


@lru_cache(maxsize=16)
def _court_calendar(closures: tuple[tuple[date, str], ...]) -> CourtCalendar:
    holidays = _topic("court_holidays")
    values = [value for each in holidays.values() if each.unit == "yearly day" for value in each.values]
    rules = [
        HolidayRule(value.value["name"], _yearly_day(value), value.since, value.until) for value in values
    ]
    years = holidays["court_holidays.years_worked_out"].values[-1].value
    return CourtCalendar(rules, dict(closures), checked_years=range(years["first"], years["last"] + 1))


def _yearly_day(value: FigureValue) -> YearlyDay:
    place = Place("court_holidays.yaml").into(value.name)
    try:
        match dict(value.value):
            case {"month": month, "day": day}:
                return FixedDay(month, day)
            case {"month": month, "weekday": weekday, "nth": nth} if weekday in WEEKDAYS:
                return NthWeekday(month, WEEKDAYS.index(weekday), nth)
            case {"day_after": other}:
                return DayAfter(_yearly_day(figure(other, value.since)))
    except ValueError as wrong:
        raise place.error(str(wrong)) from wrong
    raise place.error("no day of the year can be read from this")


@cache
def _topic(topic: str) -> Mapping[str, Figure]:
    """The figures of one file by name; empty for a topic that has no file."""
    path = FIGURES / f"{topic}.yaml"
    known = topic.isidentifier() and path.is_file()
    return MappingProxyType({each.name: each for each in load_figures(path)} if known else {})
