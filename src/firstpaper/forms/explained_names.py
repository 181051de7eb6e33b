"""Which explanation a name means: an item as it is printed, a form, a topic, or a concept of an edition.

Nothing is taken apart to find it: the few lines that name an entry are read as text, so that one page can
be shown without loading the others.
"""

import re
from collections.abc import Iterator, Sequence
from functools import cache
from pathlib import Path
from typing import NamedTuple

from firstpaper.forms.edition import editions
from firstpaper.forms.explanation import EXPLAINED, Explanation, load_explanation

MAIN = "FL-100"
"""The form that is meant where none is named."""
_NAMED = re.compile(r"^(item|topic|title): *[\"']?(.+?)[\"']?$", re.MULTILINE)
_LIST = re.compile(r"^(concepts|questions):(.+?)(?:^(?=\w)|\Z)", re.MULTILINE | re.DOTALL)
_KEY = re.compile(r"[\w.*]+")
_FORM = re.compile(r"(f[lw])(\d+)([a-z]?)")


class Entry(NamedTuple):
    """What an explanation is called, without what it says."""

    form: str
    item: str
    title: str
    topic: str
    concepts: tuple[str, ...]
    questions: tuple[str, ...]
    path: Path

    @property
    def place(self) -> str:
        """The form and the item, as a person says it: "FL-100 2a"."""
        return f"{self.form} {self.item}"

    @property
    def short(self) -> str:
        """The least that a person can type for it: the item alone where that is one of the petition."""
        return self.item if self.form == MAIN and self.item[:1].isdigit() else self.place.lower()

    def read(self) -> Explanation:
        """The explanation itself; DataFileError where its file is not as it should be."""
        return _explanation(self.path, self.form)


@cache
def _explanation(path: Path, form: str) -> Explanation:
    return load_explanation(path, form)


def forms_explained() -> tuple[str, ...]:
    """The number of every form with explanations, the petition first."""
    return tuple(form_number(path.name) for path in sorted(EXPLAINED.iterdir()) if path.is_dir())


def form_number(slug: str) -> str:
    """The number of a form as it is printed, from the name of its folder: "FL-105(A)" from "fl105a"."""
    found = _FORM.fullmatch(slug)
    if found is None:
        raise ValueError(f"{slug!r} is no folder of a form")
    letters, number, part = found.groups()
    return f"{letters.upper()}-{number}" + (f"({part.upper()})" if part else "")


@cache
def entries(form: str) -> tuple[Entry, ...]:
    """The entries of a form in printed order; none for a form that nothing explains."""
    return tuple(_entry(form, path) for path in sorted((EXPLAINED / _slug(form)).glob("*.yaml")))


def entries_called(name: str) -> tuple[Entry, ...]:
    """The entries that a person may mean by a name, in printed order; none where it names nothing.

    A form may stand before it ("FL-105 3", "fl-105:homes"); without one the petition comes first.
    """
    form, rest = _form_and_rest(name)
    if form is not None:
        return _in_form(form, rest) if rest else entries(form)
    return _in_form(MAIN, rest) or tuple(one for each in forms_explained() for one in _by_word(each, rest))


def parts_of(entry: Entry) -> tuple[Entry, ...]:
    """The entries of the items that stand under this one on the sheet."""
    key = _plain(entry.item)
    return tuple(one for one in entries(entry.form) if one is not entry and _under(_plain(one.item), key))


@cache
def entry_of(form: str, concept: str) -> Entry | None:
    """The entry that speaks of a concept of a form."""
    return next((one for one in entries(form) if _has(one, concept)), None)


def entries_fed_by(question: str, concepts: Sequence[str]) -> tuple[Entry, ...]:
    """The entries that an answer leads to: of the petition's concepts, else those that name its question."""
    main = (entry_of(MAIN, concept) for concept in concepts)
    found = tuple(dict.fromkeys(one for one in main if one))
    return found or tuple(
        one for form in forms_explained() for one in entries(form) if question in one.questions
    )


def names() -> Iterator[str]:
    """Every name of an entry: its item, its topic, its place."""
    for form in forms_explained():
        for one in entries(form):
            yield from filter(None, (one.topic, one.short))


def _in_form(form: str, name: str) -> tuple[Entry, ...]:
    return _by_item(form, name) or _by_word(form, name)


def _by_item(form: str, name: str) -> tuple[Entry, ...]:
    """The entry of that item; else the entries of the items under it; else the one it stands under."""
    key = _plain(name.lower().removeprefix("item "))
    if not key:
        return ()
    each = [(one, _plain(one.item)) for one in entries(form)]
    exact = tuple(one for one, item in each if item == key)
    under = tuple(one for one, item in each if _under(item, key))
    return exact or under or (_by_printed_number(form, key) if key[0].isdigit() else ())


def _by_printed_number(form: str, key: str) -> tuple[Entry, ...]:
    """The entries of what stands at a number on the sheet, or stood there on the edition before."""
    items = [(item, _plain(item.item or item.was)) for edition in editions(form) for item in edition.items]
    there = [item.concept for item, number in items if number == key]
    under = [item.concept for item, number in items if number and _under(number, key)]
    return tuple(one for one in entries(form) if any(_has(one, each) for each in there or under))


def _by_word(form: str, name: str) -> tuple[Entry, ...]:
    topic = tuple(one for one in entries(form) if one.topic.lower() == name.lower())
    return topic or tuple(one for one in entries(form) if _has(one, name))


def _has(entry: Entry, concept: str) -> bool:
    return concept in entry.concepts or re.sub(r"\.\d+(?=\.|$)", ".*", concept, count=1) in entry.concepts


def _under(item: str, key: str) -> bool:
    """Whether an item is a part of another: "2a" of "2", but not "21"."""
    rest = item.removeprefix(key)
    return item.startswith(key) and bool(rest) and not (key[-1].isdigit() and rest[0].isdigit())


def _form_and_rest(name: str) -> tuple[str | None, str]:
    head, _mark, rest = re.sub(r"\s*:\s*|\s+", " ", name.strip()).partition(" ")
    folder = _slug(head)
    if _FORM.fullmatch(folder) and (EXPLAINED / folder).is_dir():
        return form_number(folder), rest
    return None, name.strip()


def _slug(form: str) -> str:
    return _plain(form)


def _plain(text: str) -> str:
    return "".join(letter for letter in text.lower() if letter.isalnum())


def _entry(form: str, path: Path) -> Entry:
    text = path.read_text(encoding="utf-8")
    told = {found[1]: found[2] for found in _NAMED.finditer(text)}
    lists = {found[1]: tuple(_KEY.findall(found[2])) for found in _LIST.finditer(text)}
    return Entry(
        form=form,
        item=told.get("item", ""),
        title=told.get("title", ""),
        topic=told.get("topic", ""),
        concepts=lists.get("concepts", ()),
        questions=lists.get("questions", ()),
        path=path,
    )
