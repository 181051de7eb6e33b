"""Editions: where each concept stands on one printed edition of an official form.

An edition is a YAML file in `editions/`. It holds item numbers, pages, labels in our own words, how much
text fits, and whether a person has laid the file beside the official sheet. A new edition of a form is a
new file; code speaks of concepts alone. A file is checked whole when it is read.
"""

from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, field
from datetime import date
from enum import StrEnum
from functools import cache
from pathlib import Path
from textwrap import wrap
from types import MappingProxyType
from typing import Any

from firstpaper.counting import short_date
from firstpaper.data_files import Place, built, read_file
from firstpaper.locale import _, beside, english

MONTHS = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)
EDITIONS = Path(__file__).parent / "editions"
COLUMNS = Path(__file__).with_name("columns.yaml")


class NoEditionError(LookupError):
    """No edition of the form is known for that day."""


class ItemKind(StrEnum):
    """What an item of a form is on paper. A statement is printed text with nothing to mark."""

    BOX = "box"
    TEXT = "text"
    DATE = "date"
    NUMBER = "number"
    SIGNATURE = "signature"
    STATEMENT = "statement"


@dataclass(frozen=True, slots=True)
class Item:
    """One item of an edition.

    `item` is its number on the sheet and `page` its page; None while nobody has seen them. `was` is the
    number it had on the edition before, as a hint.
    `fits` is how many characters go on one line (None: no limit worth naming), `lines` how many lines
    there are; both are estimates on the small side. `row` counts from 1 where the item stands in a
    printed table, and is 0 elsewhere. `confirmed` says that a person found the item on
    the official sheet. `note` warns of a doubt about the sheet itself. `columns` are the pieces that it is
    written in, by name, with what each is called; empty where it is one piece. `times` is how many rows
    of them are printed, as far as we know.
    """

    concept: str
    item: str | None
    kind: ItemKind
    label: str
    page: int | None
    part: str
    was: str = ""
    confirmed: bool = False
    fits: int | None = None
    lines: int = 1
    note: str = ""
    row: int = 0
    times: int = 1
    columns: Mapping[str, str] = field(default_factory=dict)

    @property
    def words(self) -> str:
        """The label as it is printed, with the number of its row, and what it means beside."""
        return beside(self.label, number=self.row)

    def holds(self, text: str) -> bool:
        """Whether the text fits into the space the sheet gives it."""
        return self.fits is None or sum(_lines(line, self.fits) for line in text.splitlines()) <= self.lines


@dataclass(frozen=True, slots=True)
class Watch:
    """A day from which another edition may be in use, and why."""

    since: date
    why: str
    authority: str


@dataclass(frozen=True, slots=True)
class Edition:
    """One edition of a form, its items in printed order.

    `edition` is the date on the sheet, and `where` the place that shows it; `edition` is None where no such
    sheet was seen, and then `valid_from` says from when we take it to be in use. `rows` says how many rows
    are printed for things that repeat, by name. `valid_from` and `valid_to` are None while not known.
    `caution` is what a filer must know of the whole sheet before trusting what we say of it. `seen` tells
    whether somebody has seen its items: a sheet that nobody has may ask for more than we know of.
    """

    form: str
    title: str
    edition: date | None
    where: str
    pages: int
    valid_from: date | None
    valid_to: date | None
    verified_against_pdf: bool
    watch: Watch | None
    items: tuple[Item, ...]
    rows: Mapping[str, int]
    caution: str = ""
    seen: bool = True

    @property
    def printed(self) -> str:
        """Its date as the sheet shows it; empty where that is not known."""
        return as_printed(self.edition) if self.edition else ""

    @property
    def begins(self) -> date:
        """The first day on which we take it to be in use."""
        return self.valid_from or self.edition or date.max

    @property
    def numbered(self) -> bool:
        """Whether the number of every item is known."""
        return all(item.item is not None for item in self.items)

    @property
    def words(self) -> tuple[str, ...]:
        """Everything in the file that a person sees, for translators."""
        places = (item.item for item in self.items if item.item and not any(map(str.isdigit, item.item)))
        around = (*places, self.title, self.where, self.caution, self.watch.why if self.watch else "")
        of_items = (
            text for item in self.items for text in (item.part, item.label, item.note, *item.columns.values())
        )
        return tuple(text for text in dict.fromkeys((*around, *of_items)) if text)

    def item(self, concept: str) -> Item:
        """The item of that concept; KeyError where the edition has none."""
        for item in self.items:
            if item.concept == concept:
                return item
        raise KeyError(concept)

    def in_use(self, on: date) -> bool:
        """Whether a filing on that day may use this edition, as far as we know."""
        return self.begins <= on and (self.valid_to is None or on <= self.valid_to)

    def may_be_replaced(self, on: date) -> bool:
        """Whether another edition may be in use by that day."""
        return self.watch is not None and self.watch.since <= on


def edition_for(form: str, on: date) -> Edition:
    """The newest edition of the form that a filing on the day `on` may use; NoEditionError if none."""
    in_use = [edition for edition in editions(form) if edition.in_use(on)]
    if not in_use:
        unknown = _("We know no edition of form {form} for a filing on {date}.")
        raise NoEditionError(unknown.format(form=form, date=short_date(on)))
    newest = in_use[-1]
    return _MEASURED.get().get((newest.form, newest.printed), newest)


_MEASURED: ContextVar[Mapping[tuple[str, str], "Edition"]] = ContextVar(
    "measured", default=MappingProxyType({})
)


@contextmanager
def measured(editions: Iterable["Edition"]) -> Iterator[None]:
    """While this lasts, these stand for ours of the same form and date: somebody brought the sheet itself.

    What fits then comes from the sheet and not from our estimate, and so does what goes to an attachment.
    """
    token = _MEASURED.set({(one.form, one.printed): one for one in editions})
    try:
        yield
    finally:
        _MEASURED.reset(token)


def is_known(form: str, on: date) -> bool:
    """Whether some edition of the form is known for a filing on that day."""
    return any(edition.in_use(on) for edition in editions(form))


@cache
def editions(form: str) -> tuple[Edition, ...]:
    """Every edition of a form, oldest first."""
    read = (load_edition(path) for path in EDITIONS.glob(f"{slug(form)}-*.yaml"))
    return tuple(sorted(read, key=lambda edition: edition.begins))


def slug(form: str) -> str:
    """A form's number as its files are named: "fl105a" for "FL-105(A)"."""
    return "".join(letter for letter in form.lower() if letter.isalnum())


@cache
def all_editions() -> tuple[Edition, ...]:
    """Every edition of every form."""
    return tuple(load_edition(path) for path in sorted(EDITIONS.glob("*.yaml")))


def load_edition(path: Path) -> Edition:
    """The edition in one file, checked; raises DataFileError naming the file and the place."""
    shape = read_file(path)
    place = Place(path.name)
    parts = place.into("parts").sequence(shape.pop("parts", None))
    watch = shape.pop("watch", None)
    edition = built(
        Edition,
        place,
        shape,
        items=tuple(_items(place.into("parts"), parts)),
        rows=MappingProxyType(dict(_rows(parts))),
        watch=_watch(place.into("watch"), watch),
    )
    _refuse_duplicates(place, edition)
    return edition


def as_printed(day: date) -> str:
    """An edition's date as the sheet shows it, in English whatever the reader's language."""
    return english(f"{MONTHS[day.month - 1]} {day.day}, {day.year}")


def _lines(line: str, width: int) -> int:
    return 1 if len(line) <= width else max(1, len(wrap(line, width)))


def _items(place: Place, parts: list[Any]) -> Iterator[Item]:
    for here, shape in place.rows(parts):
        part = here.mapping(shape)
        around = {"part": part.get("title"), **({"page": part["page"]} if "page" in part else {})}
        for inside, item in here.into("items").rows(part.get("items")):
            for each in _repeated(inside, inside.mapping(item)):
                kind = inside.into("kind").one_of(ItemKind, each.pop("kind", None))
                columns = _columns(inside.into("columns"), each.pop("columns", None))
                yield built(Item, inside, {**each, **around}, kind=kind, columns=columns)


def _repeated(place: Place, shape: dict[str, Any]) -> Iterator[dict[str, Any]]:
    """The items of a printed table, row by row; an ordinary item as it is."""
    if "rows" not in shape:
        yield dict(shape)
        return
    for number in range(1, shape["rows"] + 1):
        for item in place.into("items").sequence(shape.get("items")):
            yield {**item, "concept": item["concept"].replace("*", str(number)), "row": number}


def _rows(parts: list[Any]) -> Iterator[tuple[str, int]]:
    for part in parts:
        for item in part["items"]:
            if "rows" in item:
                yield item["of"], item["rows"]


def _watch(place: Place, shape: object) -> Watch | None:
    if shape is None:
        return None
    told = place.mapping(shape)
    return built(Watch, place, {"since" if key == "from" else key: value for key, value in told.items()})


def _columns(place: Place, shape: object) -> Mapping[str, str]:
    """The pieces of an item: a set that several forms share, by its name, or the edition's own."""
    if shape is None:
        return MappingProxyType({})
    told = place.mapping(_all_columns().get(shape, shape) if isinstance(shape, str) else shape)
    return MappingProxyType({str(name): str(words) for name, words in told.items()})


@cache
def _all_columns() -> dict[str, Any]:
    return read_file(COLUMNS)


def shared_columns(name: str) -> Mapping[str, str]:
    """A set of columns that several forms share: the name of each, and what it is called."""
    return MappingProxyType({str(one): str(words) for one, words in _all_columns()[name].items()})


def _refuse_duplicates(place: Place, edition: Edition) -> None:
    seen: set[str] = set()
    for item in edition.items:
        if item.concept in seen:
            raise place.error(f"{item.concept} stands twice")
        if item.page is not None and not 1 <= item.page <= edition.pages:
            raise place.error(f"{item.concept} is on page {item.page} of {edition.pages}")
        seen.add(item.concept)
