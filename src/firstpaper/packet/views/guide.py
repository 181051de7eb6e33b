"""The read-along of a form: every item explained in the order of the sheet, with nothing to fill in.

No name stands in it, and of a case no more than which boxes are marked and where something is written.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import groupby
from typing import NamedTuple

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import Edition, NoEditionError, edition_for, editions
from firstpaper.forms.explained_copies import Copy, copies_of
from firstpaper.forms.explained_names import entries
from firstpaper.forms.explanation import Explanation, Trap
from firstpaper.forms.filled import FilledForm
from firstpaper.law.figure import figure
from firstpaper.locale import _
from firstpaper.packet.views.sheet import Sheet

MOST_REASONS = 2


@dataclass(frozen=True, slots=True)
class Explained:
    """One item as it is printed: what it is called, what is said of it, and what this case does there."""

    name: str
    says: Explanation
    sources: str
    unconfirmed: str
    here: tuple[str, ...]

    @property
    def traps(self) -> tuple[tuple[Trap, str], ...]:
        """Each trap, with where it is known from unless that is a section named for the item anyway."""
        return tuple((trap, self._source(trap)) for trap in self.says.traps)

    def _source(self, trap: Trap) -> str:
        if trap.common:
            return _("common practice")
        return "" if trap.cite in self.says.cites else trap.cite


class Part(NamedTuple):
    """The items under one heading of the form."""

    title: str
    items: tuple[Explained, ...]


def sheets(form: str, on: date, filled: Sequence[FilledForm] | None = None) -> Iterator[Sheet]:
    """The read-along of a form as the law stands on the day `on`.

    `filled` are the copies that a case uses, where the read-along is of a case.
    """
    edition = _edition(form, on)
    title = _("{form}, line by line").format(form=form)
    yield Sheet(
        template="guide.html",
        title=title,
        running=title,
        style="reading",
        values={
            "title": title,
            "form_title": _(edition.title),
            "edition": edition.printed,
            "caution": _(edition.caution) if edition.caution else "",
            "of_case": filled is not None,
            "used": bool(filled),
            "hotline": figure("help.domestic_violence_hotline", on).value,
            "parts": tuple(_parts(form, edition, on, filled)),
        },
    )


def _edition(form: str, on: date) -> Edition:
    try:
        return edition_for(form, on)
    except NoEditionError:
        return editions(form)[0]


def _parts(form: str, edition: Edition, on: date, filled: Sequence[FilledForm] | None) -> Iterator[Part]:
    parts = {item.concept: item.part for item in edition.items}

    def part(one: Explanation) -> str:
        return _(parts[one.concepts[0].replace("*", "1")])

    for title, group in groupby((entry.read() for entry in entries(form)), key=part):
        yield Part(title, tuple(_explained(one, on, filled) for one in group))


def _explained(one: Explanation, on: date, filled: Sequence[FilledForm] | None) -> Explained:
    says = one.on(on)
    number = one.item.partition(":")[0]
    named = f"{number}. {says.title}" if number[:1].isdigit() else says.title
    return Explained(
        name=named,
        says=says,
        sources=in_short(one.cites),
        unconfirmed="; ".join(one.not_confirmed),
        here=tuple(_here(copies_of(one, filled))) if filled else (),
    )


def in_short(citations: Sequence[str]) -> str:
    """Citations in one line, the code named once for its neighbours: "Fam. Code 70(a)(1), 771(a)"."""
    each = [_CODE.fullmatch(one) for one in citations]
    runs = groupby(zip(citations, each, strict=True), key=lambda one: one[1][1] if one[1] else one[0])
    return "; ".join(_run(code, [found[2] for _one, found in run if found]) for code, run in runs)


_CODE = re.compile(r"((?:[A-Z]\w+\. )+Code|Code Civ\. Proc\.) (.+)")


def _run(code: str, sections: Sequence[str]) -> str:
    return f"{code} {', '.join(sections)}" if sections else code


def _here(copies: Sequence[Copy]) -> Iterator[str]:
    """What a case does at the item, on each copy of the form."""
    for form, items in copies:
        words = " ".join(_done(items))
        yield f"{form.use}: {words}" if form.use else words


def _done(items: Sequence[ItemAnswer]) -> Iterator[str]:
    said: Mapping[Action, str] = {
        Action.MARK: _("Marked: {labels}."),
        Action.WRITE: _("Something is written here: {labels}."),
        Action.SIGN: _("By hand, on the day you sign: {labels}."),
        Action.FILL: _("You fill this in yourself: {labels}."),
        Action.OTHERS: _("Somebody else fills this in: {labels}."),
    }
    for action, words in said.items():
        if labels := [one.label for one in items if one.action is action]:
            yield words.format(labels="; ".join(labels))
    if waiting := [one.label for one in items if one.open_key]:
        yield _("Still open: {labels}.").format(labels="; ".join(waiting))
    if all(one.action is Action.BLANK and not one.open_key for one in items):
        yield _("All of it stays empty.")
    yield from _reasons(items)


def _reasons(items: Sequence[ItemAnswer]) -> Sequence[str]:
    """Why boxes are marked, or why all stays empty. Why words are written is on the worksheet."""
    marked = [one for one in items if one.action is Action.MARK]
    empty = items if all(one.action is Action.BLANK for one in items) else ()
    return list(dict.fromkeys(one.because for one in marked or empty if one.because))[:MOST_REASONS]
