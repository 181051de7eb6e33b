"""Every figure, rule and source of law with the day it was last checked, oldest check first."""

from collections.abc import Iterable, Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.cli.words.sources import certainty_words
from firstpaper.counting import short_date
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureValue, all_figures
from firstpaper.law.register import Rule, all_rules
from firstpaper.law.source import Source, all_sources
from firstpaper.locale import _

LONGEST_VALUE = 60


class Checked(NamedTuple):
    """One value of a figure, one rule or one source, as it stands on a day or begins later.

    `used_by` are the rules that rest on a source. `since` is None where we do not keep the first day.
    """

    kind: str
    name: str
    what: str
    value: str
    authority: tuple[str, ...]
    certainty: Certainty
    since: date | None
    until: date | None
    checked_on: date
    age_days: int
    used_by: tuple[str, ...] = ()

    def stale(self, days: int) -> bool:
        """Whether the last check is more than so many days old."""
        return self.age_days > days

    def is_about(self, word: str) -> bool:
        """Whether the word stands in its name, in its words, or in what it rests on. Case does not matter."""
        words = (self.name, self.what, *self.authority)
        return any(word.strip().casefold() in each.casefold() for each in words)


def checked_law(on: date) -> tuple[Checked, ...]:
    """What is in force on the day or begins later, the oldest check first. Law of the past is left out."""
    values = (value for figure in all_figures() for value in figure.values)
    found = [_of_value(value, on) for value in values if _still_matters(value.until, on)]
    found += [_of_rule(rule, on) for rule in all_rules().values() if _still_matters(rule.until, on)]
    used_by = _used_by()
    sources = (source for source in all_sources() if _still_matters(source.until, on))
    found += [_of_source(source, used_by.get(source.cite, ()), on) for source in sources]
    return tuple(sorted(found, key=lambda one: (one.checked_on, one.kind, one.name, one.since or date.min)))


def to_check_again(law: Iterable[Checked], days: int) -> tuple[Checked, ...]:
    """The figures and sources last checked more than so many days ago.

    A rule is not among them: it is as old as its sources, and those name it.
    """
    return tuple(one for one in law if one.kind != "rule" and one.stale(days))


def law_text(entries: Iterable[Checked], on: date) -> str:
    """One paragraph an entry: what it is, where it comes from, how sure and when it was checked."""
    return "\n\n".join("\n".join(_lines(one, on)) for one in entries)


def law_data(one: Checked) -> dict[str, object]:
    """One entry for programs."""
    return {
        "kind": one.kind,
        "name": one.name,
        "what": one.what,
        "value": one.value,
        "authority": list(one.authority),
        "certainty": one.certainty,
        "since": one.since,
        "until": one.until,
        "checked_on": one.checked_on,
        "age_days": one.age_days,
        "used_by": list(one.used_by),
    }


def _still_matters(until: date | None, on: date) -> bool:
    return until is None or until >= on


def _of_value(value: FigureValue, on: date) -> Checked:
    return Checked(
        kind="figure",
        name=value.name,
        what=_(value.what),
        value=value.in_words,
        authority=(value.authority,),
        certainty=value.certainty,
        since=value.since,
        until=value.until,
        checked_on=value.checked_on,
        age_days=(on - value.checked_on).days,
    )


def _of_rule(rule: Rule, on: date) -> Checked:
    return Checked(
        kind="rule",
        name=rule.id,
        what=_(rule.title),
        value="",
        authority=rule.authority,
        certainty=rule.certainty,
        since=rule.since,
        until=rule.until,
        checked_on=rule.checked_on,
        age_days=(on - rule.checked_on).days,
    )


def _of_source(source: Source, used_by: tuple[str, ...], on: date) -> Checked:
    return Checked(
        kind="source",
        name=source.cite,
        what=_(source.about),
        value="",
        authority=(source.cite,),
        certainty=source.certainty,
        since=source.since,
        until=source.until,
        checked_on=source.checked_on,
        age_days=(on - source.checked_on).days,
        used_by=used_by,
    )


def _used_by() -> dict[str, tuple[str, ...]]:
    """The rules that rest on each source, by its citation."""
    found: dict[str, dict[str, None]] = {}
    for rule in all_rules().values():
        for one in rule.sources:
            found.setdefault(one.source.cite, {})[rule.id] = None
    return {cite: tuple(rules) for cite, rules in found.items()}


def _lines(one: Checked, on: date) -> Iterator[str]:
    yield f"{one.name}: {one.what}"
    if one.value and len(one.value) <= LONGEST_VALUE:
        yield "  " + _("Value: {value}").format(value=one.value)
    if one.kind == "source":
        yield "  " + certainty_words(one.certainty).capitalize()
    else:
        yield "  " + _("Source: {sources} ({how_sure})").format(
            sources="; ".join(one.authority), how_sure=certainty_words(one.certainty)
        )
    if one.used_by:
        yield "  " + _("Rests on it: {rules}").format(rules=", ".join(one.used_by))
    if one.since and one.since > on:
        yield "  " + _("Begins on {day}").format(day=short_date(one.since))
    elif one.until:
        yield "  " + _("Ends with {day}").format(day=short_date(one.until))
    yield "  " + _("Last checked on {day}").format(day=short_date(one.checked_on))
