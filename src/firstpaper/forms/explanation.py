"""One item of a form explained: what it asks, what a mark does, what speaks for each choice, where traps lie.

An explanation is a YAML file in `explained/<form>/`, read strictly. Its words are data for translators. A
number, a date or an amount that the law sets is never typed into them: `{figure:residence.state_months}`
stands for the figure of that name on the day asked for.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, fields, replace
from datetime import date
from functools import cache, partial
from pathlib import Path
from types import MappingProxyType
from typing import Any, TypeVar

from firstpaper.data_files import Place, built, read_file
from firstpaper.law.figure import UnknownFigureError, figure
from firstpaper.law.source import cited
from firstpaper.locale import _

EXPLAINED = Path(__file__).parent / "explained"
COMMON_PRACTICE = "common practice"
"""The source, in the authorities, of what is told in the trade and has no published source."""
PRACTICE = EXPLAINED / "practice.yaml"

Part = TypeVar("Part", "Side", "Trap", "Change")
FIGURE = re.compile(r"\{figure:([\w.()-]+)\}")


@dataclass(frozen=True, slots=True)
class Side:
    """One of the lawful choices at an item, with what speaks for it and against it."""

    choice: str
    speaks_for: str
    speaks_against: str


@dataclass(frozen=True, slots=True)
class Trap:
    """What goes wrong here, with where that is known from.

    `practice` is a row of the list of common practice, which has no published source; `cite` names the law
    instead. `but` is the other side, where the statute or another practice says otherwise.
    """

    says: str
    practice: str = ""
    cite: str = ""
    but: str = ""

    @property
    def common(self) -> bool:
        """Whether it is told in the trade and stands in no law."""
        return bool(self.practice) or self.cite == COMMON_PRACTICE


@dataclass(frozen=True, slots=True)
class Change:
    """What the law says otherwise from a known day on."""

    since: date
    says: str
    cite: str


@dataclass(frozen=True, slots=True)
class Explanation:
    """One item explained.

    `item` is its number as printed, or a name of ours where the sheet has none. `concepts` are the places of
    the edition that it speaks of, with `*` for the number of a row. `marked` and `left` are empty where there
    is nothing to mark. `rules` and `questions` are what the answer rests on.
    """

    form: str
    item: str
    title: str
    concepts: tuple[str, ...]
    asks: str
    means: str
    marked: str = ""
    left: str = ""
    help: str = ""
    topic: str = ""
    cites: tuple[str, ...] = ()
    sides: tuple[Side, ...] = ()
    traps: tuple[Trap, ...] = ()
    rules: tuple[str, ...] = ()
    questions: tuple[str, ...] = ()
    changes: tuple[Change, ...] = ()

    @property
    def place(self) -> str:
        """The form and the item, as a person says it: "FL-100 2a"."""
        return f"{self.form} {self.item}"

    @property
    def words(self) -> tuple[str, ...]:
        """Everything in the file that a person sees, for translators and for the measure of how it reads."""
        own = (self.title, self.asks, self.means, self.marked, self.left, self.help)
        sides = (text for side in self.sides for text in (side.choice, side.speaks_for, side.speaks_against))
        traps = (text for trap in self.traps for text in (trap.says, trap.but))
        changes = (change.says for change in self.changes)
        return tuple(text for text in (*own, *sides, *traps, *changes) if text)

    @property
    def sources(self) -> tuple[str, ...]:
        """Every citation in it, the law of its traps and changes too, each once."""
        traps = (trap.cite for trap in self.traps if trap.cite)
        return tuple(dict.fromkeys([*self.cites, *traps, *(change.cite for change in self.changes)]))

    @property
    def not_confirmed(self) -> tuple[str, ...]:
        """The law it cites that nobody has read itself. Common practice is no law, and its trap says so."""
        law = (source for source in self.sources if source != COMMON_PRACTICE)
        each = (one for source in law for one in cited(source))
        return tuple(dict.fromkeys(one.cite for one in each if not one.source.certainty.confirmed))

    def on(self, day: date) -> "Explanation":
        """The same in the reader's language, with the figures of that day; FigureNotInForce where none is.

        A change that is still to come speaks with the figures of its own day.
        """
        said = partial(_with_figures, day)
        own: dict[str, Any] = {name: said(getattr(self, name)) for name in _OWN_WORDS}
        return replace(
            self,
            **own,
            sides=tuple(_said(side, said) for side in self.sides),
            traps=tuple(_said(trap, said) for trap in self.traps),
            changes=tuple(
                _said(change, partial(_with_figures, max(day, change.since))) for change in self.changes
            ),
        )


_OWN_WORDS = ("title", "asks", "means", "marked", "left", "help")
_SAID = {"says", "but", "choice", "speaks_for", "speaks_against"}


def _with_figures(day: date, text: str) -> str:
    return FIGURE.sub(lambda found: figure_words(found[1], day), _(text))


def _said(part: Part, said: Callable[[str], str]) -> Part:
    names = (each.name for each in fields(part) if each.name in _SAID)
    words: dict[str, Any] = {name: said(getattr(part, name)) for name in names}
    return replace(part, **words)


def figure_words(name: str, on: date) -> str:
    """A figure as words: its value, or the part of it that is named after the figure's own name.

    Raises UnknownFigureError for a name that no figure has, and FigureNotInForce for a day without a value.
    """
    try:
        return figure(name, on).in_words
    except UnknownFigureError:
        whole, _dot, part = name.rpartition(".")
        if whole.count(".") != 1:
            raise
        found = figure(whole, on)
        parts = {str(key): value for key, value in dict(found.value).items()}
        if part not in parts:
            raise
        return found._replace(value=parts[part]).in_words


@cache
def practices() -> Mapping[str, str]:
    """The rows of common practice by id, each with a name of ours."""
    return MappingProxyType(read_file(PRACTICE))


def load_explanation(path: Path, form: str) -> Explanation:
    """The explanation in one file; raises DataFileError naming the file and the place."""
    name = f"{path.parent.name}/{path.name}"
    place, shape = Place(name), read_file(path, file=name)
    texts = {each: _texts(place.into(each), shape.pop(each)) for each in _LISTS & shape.keys()}
    parts = {each: _parts(place.into(each), shape.pop(each), *_PARTS[each]) for each in _PARTS.keys() & shape}
    found = built(Explanation, place, shape, form=form, **{"concepts": ()} | texts, **parts)
    _refuse(place, found)
    return found


_LISTS = {"concepts", "cites", "rules", "questions"}
_PARTS: dict[str, tuple[type[Any], dict[str, str]]] = {
    "sides": (Side, {"for": "speaks_for", "against": "speaks_against"}),
    "traps": (Trap, {}),
    "changes": (Change, {"from": "since"}),
}
"""The lists in a file, what each row becomes, and the names that a row has in the file alone."""


def _texts(place: Place, shape: object) -> tuple[str, ...]:
    texts = place.sequence(shape) if shape != [] else []
    for text in texts:
        if not isinstance(text, str):
            raise place.error(f"this must be text; put it in quotes: {text!r}")
        if texts.count(text) > 1:
            raise place.error(f"{text} is written twice")
    return tuple(texts)


def _parts(place: Place, shape: object, model: type[Part], named: Mapping[str, str]) -> tuple[Part, ...]:
    return tuple(_part(here, row, model, named) for here, row in (place.rows(shape) if shape != [] else ()))


def _part(place: Place, shape: object, model: type[Part], named: Mapping[str, str]) -> Part:
    row = {named.get(name, name): value for name, value in place.mapping(shape).items()}
    return built(model, place, row)


def _refuse(place: Place, found: Explanation) -> None:
    """What one file can get wrong by itself."""
    if not found.concepts:
        raise place.into("concepts").error("this is missing")
    if len(found.sides) == 1:
        raise place.into("sides").error("one choice is none: name at least two, or leave this out")
    for number, trap in enumerate(found.traps, 1):
        if bool(trap.practice) == bool(trap.cite):
            raise place.into("traps").into(number).error("this needs either practice or cite")
        if trap.practice and trap.practice not in practices():
            raise (place.into("traps").into(number).error(f"common practice has no row {trap.practice}"))
    for text in found.words:
        if "{" in (left := FIGURE.sub("", text)) or "}" in left:
            raise place.error(f"braces hold only figures, as {{figure:residence.state_months}}: {text!r}")
