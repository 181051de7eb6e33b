"""Proof-reading a form that somebody filled in elsewhere against the case, item by item."""

from collections.abc import Iterator, Mapping
from enum import StrEnum
from typing import NamedTuple

from firstpaper.blanks.blank import Blank
from firstpaper.blanks.filling import filling
from firstpaper.blanks.mapping import Map
from firstpaper.blanks.wanted import Wanted, wanted
from firstpaper.forms.filled import FilledForm


class How(StrEnum):
    """How an item on the paper stands against the case."""

    DIFFERENT = "different"
    MISSING = "missing"
    EXTRA = "extra"


class Difference(NamedTuple):
    """One item that is not as the case has it: what is on the paper, and what should be."""

    how: How
    what: Wanted
    on_paper: str
    should_be: str


def compared(
    form: FilledForm, one: Map, blank: Blank, held: Mapping[tuple[str, str], str]
) -> tuple[Difference, ...]:
    """Every difference, in the order of the fields. `held` is what the fields of the paper hold."""
    return tuple(_each(form, one, blank, held))


def _each(
    form: FilledForm, one: Map, blank: Blank, held: Mapping[tuple[str, str], str]
) -> Iterator[Difference]:
    ours = {each.key: each for each in wanted(form.edition)}
    what = filling(form, one, blank)
    should = {entry.key: "marked" if entry.marked else entry.text for entry in what.entries}
    left = {item.item.concept for item in what.left}
    for line in one.lines:
        each = ours.get(line.takes)
        if each is None or each.by_hand or (each.concept in left and line.key not in should):
            continue
        paper, wants = _plain(held.get(line.key, "")), _plain(should.get(line.key, ""))
        if paper != wants:
            how = How.MISSING if not paper else How.EXTRA if not wants else How.DIFFERENT
            yield Difference(how, each, held.get(line.key, ""), should.get(line.key, ""))


def _plain(text: str) -> str:
    return " ".join(text.split()).casefold()


def fits(one: Map, blank: Blank) -> bool:
    """Whether the paper has the fields of the map, by name, kind and page: the same blank, filled in."""
    there = {(spot.key, spot.kind, spot.place.page) for spot in blank.spots}
    return all((line.key, line.kind, line.page) in there for line in one.lines)
