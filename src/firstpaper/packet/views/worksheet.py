"""Worksheets: what to do with every item of FL-100, page by page."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import groupby

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

MOST_NAMED = 5


@dataclass(frozen=True, slots=True)
class Row:
    """One line of a worksheet: one item, or neighbouring items left blank for the same reason.

    `kind` is the action, or "open" where an answer is still missing and "printed" where the form
    holds only words to read. `lines` is the exact text to write, line by line.
    """

    kind: str
    place: str
    labels: tuple[str, ...]
    lines: tuple[str, ...]
    because: str
    authority: str
    continues: str
    note: str

    @property
    def named(self) -> str:
        """The items by their labels; a long run by its first and last."""
        if len(self.labels) > MOST_NAMED:
            return _("all from “{first}” to “{last}”").format(first=self.labels[0], last=self.labels[-1])
        return "; ".join(self.labels)


@dataclass(frozen=True, slots=True)
class Section:
    """The lines under one heading of the form."""

    part: str
    rows: tuple[Row, ...]


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One worksheet for each page of the petition."""
    last = max((answer.page for answer in brief.items), default=0)
    for page, answers in groupby(brief.items, key=lambda answer: answer.page):
        found = tuple(answers)
        form = found[0].form
        title = _("Worksheet for {form}, page {page} of {last}").format(form=form, page=page, last=last)
        yield Sheet(
            template="worksheet.html",
            title=title,
            running=title,
            purpose=_("Copy it onto page {page} of the blank form.").format(page=page),
            values={
                "title": title,
                "form": form,
                "edition": found[0].edition,
                "sections": tuple(sections(found)),
                "first_page": page == 1,
            },
        )


def sections(answers: Iterable[ItemAnswer]) -> Iterator[Section]:
    """The answers under the headings they stand under on the form."""
    for part, group in groupby(answers, key=lambda answer: answer.part):
        yield Section(part, tuple(rows(group)))


def rows(answers: Iterable[ItemAnswer]) -> Iterator[Row]:
    """The lines of a section. Neighbours that stay blank for one reason share a line.

    A reason that the line above has just given is not said again.
    """
    said = ""
    for _key, group in groupby(answers, key=_shared):
        row = _row(tuple(group))
        yield replace(row, because="", authority="") if row.because == said else row
        said = row.because


def _shared(answer: ItemAnswer) -> tuple[str, ...]:
    kind = _kind(answer)
    return (kind, answer.because) if kind in ("blank", "printed", "open") else (answer.concept,)


def _kind(answer: ItemAnswer) -> str:
    if answer.action is Action.BLANK and answer.kind == "statement":
        return "printed"
    if answer.action is Action.BLANK and answer.open_key:
        return "open"
    return answer.action.value


def _row(group: tuple[ItemAnswer, ...]) -> Row:
    first = group[0]
    return Row(
        kind=_kind(first),
        place=", ".join(dict.fromkeys(answer.item for answer in group)),
        labels=tuple(answer.label for answer in group),
        lines=tuple(first.value.splitlines()),
        because=first.because,
        authority="; ".join(dict.fromkeys(answer.authority for answer in group if answer.authority)),
        continues=first.continues,
        note=first.note,
    )
