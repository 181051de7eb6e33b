"""What the law of this program rests on: sections, court rules, opinions and pages, read from `authorities/`.

One file a code, one entry a section: what it is about, the words we quote, how sure we are of them,
when somebody last held them against the official text, and where that text is. Rules and figures cite
them; a rule is as sure as the least sure of its sources and as fresh as the oldest.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cache, lru_cache
from pathlib import Path
from types import MappingProxyType
from typing import NamedTuple

from firstpaper.data_files import Place, built, read_text
from firstpaper.law.authority import Certainty
from firstpaper.law.citation import CitationError, Reference, references

AUTHORITIES = Path(__file__).parent / "authorities"
_ENTRY = re.compile(r"^  (?=\S)", re.MULTILINE)
_WHOLE = ""


class Source(NamedTuple):
    """One section, court rule, opinion or page.

    `words` are its own words by paragraph ("(a)(1)", or "" for words under no paragraph), in order; None
    where we know the paragraph and quote nothing. `since` is set only for a text that began, or
    begins, on a known day and has another before it; `address` is empty where we know none.
    """

    cite: str
    about: str
    certainty: Certainty
    checked_on: date
    words: Mapping[str, str | None]
    since: date | None
    until: date | None
    address: str

    def has(self, paragraph: str) -> bool:
        """Whether we know that paragraph; the section as a whole is always known."""
        return not paragraph or any(each.startswith(paragraph) for each in self.words)


class Cited(NamedTuple):
    """A source as one citation names it: the whole of it, or the paragraphs from the first to the last."""

    source: Source
    paragraph: str = ""
    last_paragraph: str = ""

    @property
    def cite(self) -> str:
        """The source as it is cited, with its paragraphs: "Fam. Code 2330(b)(1)-(b)(3)"."""
        last = f"-{self.last_paragraph}" if self.last_paragraph else ""
        number, bracket, act = self.source.cite.partition(" (")
        return f"{number}{self.paragraph}{last}{bracket}{act}"

    @property
    def quotes(self) -> tuple[tuple[str, str], ...]:
        """The paragraphs named that we quote, each with its words."""
        return tuple(
            (name, words) for name, words in self.source.words.items() if words and self._names(name)
        )

    def _names(self, paragraph: str) -> bool:
        if not self.last_paragraph:
            return paragraph.startswith(self.paragraph)
        named = list(self.source.words)
        first = next(at for at, name in enumerate(named) if name.startswith(self.paragraph))
        last = max(at for at, name in enumerate(named) if name.startswith(self.last_paragraph))
        return first <= named.index(paragraph) <= last


class Code(NamedTuple):
    """One file: a code with its sections, or, where `cite` is empty, sources that are cited whole.

    `entries` are the sections as text. A section is taken apart when it is first asked for: a finding
    names a handful, and all of them together cost more time than a check of a household.
    """

    file: str
    name: str
    cite: str
    address: str
    entries: Mapping[str, str]

    def source(self, section: str) -> Source:
        """One entry, checked; raises DataFileError naming the file and the place."""
        place = Place(self.file).into(section)
        (shape,) = read_text(self.file, self.entries[section]).values()
        entry = built(_Entry, place, place.mapping(shape))
        return Source(
            cite=self.citation(section),
            about=entry.about,
            certainty=place.into("certainty").one_of(Certainty, entry.certainty),
            checked_on=entry.checked_on,
            words=MappingProxyType(dict(_words(place.into("words"), entry.words))),
            since=entry.since,
            until=entry.until,
            address=entry.address or self.address.format(section=section.partition(" (")[0]),
        )

    def citation(self, section: str) -> str:
        """How the section is cited, with its code."""
        return f"{self.cite} {section}".strip()


@dataclass(frozen=True, slots=True)
class _Head:
    name: str
    cite: str = ""
    address: str = ""


@dataclass(frozen=True, slots=True)
class _Entry:
    about: str
    certainty: str
    checked_on: date
    words: object = None
    since: date | None = None
    until: date | None = None
    address: str = ""


def load_code(path: Path) -> Code:
    """One file of authorities, its entries not yet taken apart; raises DataFileError."""
    head, _sections, body = path.read_text(encoding="utf-8").partition("\nsections:\n")
    place = Place(path.name)
    told = built(_Head, place, read_text(path.name, head))
    entries: dict[str, str] = {}
    for entry in _ENTRY.split(body)[1:]:
        section = entry.partition(":\n")[0].strip("'")
        if section in entries:
            raise place.into(section).error("written twice")
        entries[section] = entry
    return Code(path.name, told.name, told.cite, told.address, MappingProxyType(entries))


def _words(place: Place, shape: object) -> Iterator[tuple[str, str | None]]:
    if isinstance(shape, str):
        yield _WHOLE, shape
    elif shape is not None:
        for paragraph, words in place.mapping(shape).items():
            if not isinstance(words, str | None):
                raise place.into(paragraph).error("this must be the words of the law, or nothing")
            yield (_WHOLE if paragraph == "lead" else paragraph), words


@cache
def all_codes() -> tuple[Code, ...]:
    """Every file of authorities."""
    return tuple(load_code(path) for path in sorted(AUTHORITIES.glob("*.yaml")))


def all_sources() -> tuple[Source, ...]:
    """Every source, code by code and section by section as the files have them."""
    return tuple(_source(code.citation(section)) for code in all_codes() for section in code.entries)


@cache
def _source(citation: str) -> Source:
    code, section = _places()[citation]
    return code.source(section)


@cache
def _places() -> Mapping[str, tuple[Code, str]]:
    """Where each source stands, by its citation."""
    return {code.citation(section): (code, section) for code in all_codes() for section in code.entries}


@lru_cache(maxsize=1024)
def cited(citation: str) -> tuple[Cited, ...]:
    """What a citation names, one by one. Raises CitationError for what our authorities do not have."""
    codes = {code.cite: code for code in all_codes() if code.cite}
    return tuple(each for one in references(citation, codes) for each in _found(one, codes))


def _found(one: Reference, codes: Mapping[str, Code]) -> Iterator[Cited]:
    for name in _names(one, codes):
        if name not in _places():
            raise CitationError(f"{name!r} is not in {AUTHORITIES.name}/: add it, or cite what is there")
        found = Cited(_source(name), one.paragraph, _last(one))
        for paragraph in (found.paragraph, found.last_paragraph):
            if not found.source.has(paragraph):
                raise CitationError(f"{name!r} has no paragraph {paragraph!r} in {AUTHORITIES.name}/")
        yield found


def _names(one: Reference, codes: Mapping[str, Code]) -> Sequence[str]:
    if one.section is None:
        return [one.code]
    code = codes[one.code]
    return [code.citation(section) for section in _run(one, code)]


def _run(one: Reference, code: Code) -> Sequence[str]:
    """The sections named, with the act where one is named. A run takes in what we have between its ends."""
    act = f" ({one.act})" if one.act else ""
    ends = [f"{section}{act}" for section in (one.section, one.last_section) if section]
    known = list(code.entries)
    if len(ends) == 1 or not all(end in known for end in ends):
        return ends
    return [name for name in known[known.index(ends[0]) : known.index(ends[1]) + 1] if " (" not in name]


def _last(one: Reference) -> str:
    """The last paragraph of a run, whole: "(a)(1)-(5)" ends with "(a)(5)"."""
    if not one.last_paragraph:
        return ""
    return one.paragraph[: one.paragraph.rindex("(")] + one.last_paragraph
