"""Maps: which field of one blank takes which answer, as a file that a person can read and correct.

A map is bound to the bytes of its blank and holds nothing of anybody's case, so it may be shared. A map from
a stranger is data: it is checked against its shape, and fills nothing before a person here has confirmed its
proof.
"""

import hashlib
import re
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

import yaml

from firstpaper.blanks.blank import Blank, Spot
from firstpaper.blanks.errors import MapNotReadable, MapOfAnotherBlank
from firstpaper.blanks.matching import Pair, Sure, matched
from firstpaper.blanks.wanted import wanted
from firstpaper.forms.edition import MONTHS, Edition, all_editions

VERSION = 1
LONGEST = 2_000_000
NUMBER = re.compile(r"\bF[LW]\s*-\s*\d{3}(?:\s*\([A-Z]\))?")
DATED = re.compile(rf"\b({'|'.join(MONTHS)})\s+(\d{{1,2}}),\s+(\d{{4}})")
HEAD = """\
# Which field of this blank takes which answer. Written by firstpaper blank; correct it by hand where it is
# wrong, then look at the proof and confirm it again. `takes` is empty where a field takes nothing. It holds
# nothing of anybody's case.
"""


@dataclass(frozen=True, slots=True)
class Line:
    """One field, and what it takes: the key of ours, empty for nothing."""

    field: str
    state: str
    kind: str
    page: int
    at: tuple[int, int, int, int]
    takes: str
    sure: str
    why: str = ""

    @property
    def key(self) -> tuple[str, str]:
        """What tells it from every other field of the file."""
        return self.field, self.state


@dataclass(frozen=True, slots=True)
class Map:
    """What is known of one blank. `edition` is the date it shows, empty where none that we know."""

    form: str
    edition: str
    sha256: str
    pages: int
    lines: tuple[Line, ...]
    who: str = ""
    confirmed_on: str = ""

    @property
    def doubtful(self) -> tuple[Line, ...]:
        """The fields that a person has to look at one by one."""
        return tuple(line for line in self.lines if line.takes and line.sure == Sure.DOUBTFUL)

    def taking(self, key: str) -> tuple[Line, ...]:
        """The fields that take that answer."""
        return tuple(line for line in self.lines if line.takes == key)


def recognised(blank: Blank) -> tuple[str, str]:
    """The number of the form and the date of its edition, as page 1 shows them; empty where it does not."""
    words = blank.words(1)
    known = {edition.form for edition in all_editions()}
    named = Counter("".join(found.split()) for found in NUMBER.findall(words))
    form = next((name for name, _times in named.most_common() if name in known), "")
    dated = DATED.findall(words)
    return form, "{} {}, {}".format(*dated[-1]) if dated else ""


def edition_of(form: str, printed: str) -> tuple[Edition | None, bool]:
    """Our edition of the form to match with, and whether it is the one the blank shows."""
    known = [edition for edition in all_editions() if edition.form == form]
    same = [edition for edition in known if edition.printed and edition.printed == printed]
    found = same or known
    return (found[-1] if found else None), bool(same)


def map_of(blank: Blank, form: str, printed: str, earlier: Map | None = None) -> Map:
    """The map that we propose. What an `earlier` map of another file had there is to be confirmed."""
    edition, known = edition_of(form, printed)
    pairs = {pair.spot.key: pair for pair in matched(blank, wanted(edition))} if edition else {}
    lines = tuple(_line(spot, pairs.get(spot.key), known) for spot in blank.spots)
    if earlier and earlier.form == form:
        lines = tuple(_carried(line, earlier) for line in lines)
    return Map(form, printed, blank.digest, blank.pages, lines)


def _line(spot: Spot, pair: Pair | None, known: bool) -> Line:
    box = spot.place
    at = (round(box.left), round(box.bottom), round(box.right), round(box.top))
    sure = "" if pair is None else pair.sure if known else Sure.DOUBTFUL
    takes, why = (pair.wanted.key, ", ".join(pair.why)) if pair else ("", "")
    return Line(spot.name, spot.state, str(spot.kind), box.page, at, takes, str(sure), why)


def _carried(line: Line, earlier: Map) -> Line:
    """What another file had in the field of the same name, kind and place."""
    same = (
        one
        for one in earlier.lines
        if (one.key, one.kind, one.page, one.at) == (line.key, line.kind, line.page, line.at)
    )
    before = next(same, None)
    if before is None or not before.takes:
        return line
    return replace(line, takes=before.takes, sure=str(Sure.DOUBTFUL), why="carried over")


def confirmed(one: Map, refused: Iterable[tuple[str, str]], who: str, on: date) -> Map:
    """The map as a person confirmed it; a field that they refused takes nothing."""
    no = set(refused)
    lines = (
        replace(line, takes="", sure="", why="refused")
        if line.key in no
        else replace(line, sure=str(Sure.CONFIRMED))
        if line.takes
        else line
        for line in one.lines
    )
    return replace(one, lines=tuple(lines), who=who, confirmed_on=on.isoformat())


def written(one: Map) -> str:
    """The map as a file."""
    told = {
        "map": VERSION,
        "form": one.form,
        "edition": one.edition,
        "blank": {"sha256": one.sha256, "pages": one.pages},
        "confirmed": {"who": one.who, "on": one.confirmed_on} if one.who else None,
        "fields": [
            {
                "field": line.field,
                "state": line.state,
                "kind": line.kind,
                "page": line.page,
                "at": list(line.at),
                "takes": line.takes,
                "sure": line.sure,
                "why": line.why,
            }
            for line in one.lines
        ],
    }
    dumper = getattr(yaml, "CSafeDumper", yaml.SafeDumper)
    return HEAD + yaml.dump(told, Dumper=dumper, sort_keys=False, allow_unicode=True, width=110)


def digest(text: str) -> str:
    """What tells this map from every other."""
    return hashlib.sha256(text.encode()).hexdigest()


def read_map(text: str, name: str) -> Map:
    """The map in a file; MapNotReadable where it has not the shape of one."""
    if len(text) > LONGEST:
        raise MapNotReadable(name=name)
    try:
        told = yaml.load(text, getattr(yaml, "CSafeLoader", yaml.SafeLoader))  # noqa: S506 - safe loaders
        return _map(told)
    except (yaml.YAMLError, KeyError, TypeError, ValueError, RecursionError) as broken:
        raise MapNotReadable(name=name) from broken


def _map(told: Any) -> Map:
    if told["map"] != VERSION:
        raise ValueError
    sure = told["confirmed"] or {"who": "", "on": ""}
    found = Map(
        _text(told["form"]),
        _text(told["edition"]),
        _text(told["blank"]["sha256"]),
        _count(told["blank"]["pages"]),
        tuple(_read_line(line) for line in told["fields"]),
        _text(sure["who"]),
        _text(sure["on"]),
    )
    _refuse_unknown(found)
    return found


def _read_line(told: Any) -> Line:
    if set(told) - {"field", "state", "kind", "page", "at", "takes", "sure", "why"}:
        raise ValueError
    left, bottom, right, top = (_number(edge) for edge in told["at"])
    words = {name: _text(told[name]) for name in ("field", "state", "kind", "takes", "sure", "why")}
    return Line(**words, page=_count(told["page"]), at=(left, bottom, right, top))


def _refuse_unknown(one: Map) -> None:
    """Every answer must be one of ours, and no field may stand twice."""
    edition, _same = edition_of(one.form, one.edition)
    ours = (
        {each.key for each in wanted(edition)} | {item.concept for item in edition.items}
        if edition
        else set()
    )
    keys = Counter(line.key for line in one.lines)
    if any(line.takes and line.takes not in ours for line in one.lines) or max(keys.values(), default=1) > 1:
        raise ValueError


def _text(told: object) -> str:
    if not isinstance(told, str) or len(told) > 1000:
        raise ValueError
    return told


def _number(told: object) -> int:
    if not isinstance(told, int) or isinstance(told, bool):
        raise ValueError
    return told


def _count(told: object) -> int:
    if _number(told) < 1:
        raise ValueError
    return _number(told)


def refuse_another(one: Map, blank: Blank, name: str) -> None:
    """Raise MapOfAnotherBlank where the map belongs to other bytes."""
    if one.sha256 != blank.digest:
        raise MapOfAnotherBlank(name=name)


def unpaired(one: Map) -> tuple[Sequence[str], Sequence[str]]:
    """What of ours has no field, and which fields take nothing."""
    edition, _same = edition_of(one.form, one.edition)
    taken = {line.takes for line in one.lines if line.takes}
    ours = [each.key for each in wanted(edition) if each.key not in taken] if edition else []
    return ours, [line.field for line in one.lines if not line.takes]
