"""Worksheets: what to do with every item of a form, page by page."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date
from itertools import groupby

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import Edition
from firstpaper.forms.filled import FilledForm
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

MOST_NAMED, MOST_HEADED = 5, 3
MOST_ON_ONE = 2
"""Pages of a form that one worksheet takes."""
SHARED = ("blank", "printed", "open", "fill")
"""Kinds of line that neighbours share where the reason is the same."""


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
        return self._named(MOST_NAMED)

    @property
    def headed(self) -> str:
        """The same for the narrow heading of a line, where less has room."""
        return self._named(MOST_HEADED)

    def _named(self, most: int) -> str:
        if len(self.labels) > most:
            return _("all from “{first}” to “{last}”").format(first=self.labels[0], last=self.labels[-1])
        return "; ".join(self.labels)


@dataclass(frozen=True, slots=True)
class Section:
    """The lines under one heading of the form."""

    part: str
    rows: tuple[Row, ...]


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The worksheets of every form that is not private."""
    for form in brief.filled:
        if not form.private:
            yield from of_form(form, brief.on)


def private_sheets(brief: Brief) -> Iterator[Sheet]:
    """The worksheets of the forms that are kept apart from what the other side gets."""
    for form in brief.filled:
        if form.private:
            yield from of_form(form, brief.on)


def of_form(form: FilledForm, on: date) -> Iterator[Sheet]:
    """The worksheets of one copy of a form: one a page of a long form, else one for the whole."""
    long = form.edition.pages > MOST_ON_ONE
    by_page = groupby(form.items, key=lambda answer: answer.page if long else None)
    pages = [(page, tuple(found)) for page, found in by_page]
    named = _("{form} ({use})").format(form=form.form, use=form.use) if form.use else form.form
    for number, (page, answers) in enumerate(pages):
        title = _title(named, page, form.edition.pages)
        yield Sheet(
            template="worksheet.html",
            title=title,
            running=title,
            purpose=_purpose(page, private=form.private),
            group=_("Worksheets for {form}").format(form=form.form),
            values={
                "title": title,
                "cautions": tuple(_cautions(form, on)) if number == 0 else (),
                "numbered": form.edition.numbered,
                "sections": tuple(sections(answers)),
            },
        )


def _title(form: str, page: int | None, pages: int) -> str:
    if page is None:
        return _("Worksheet for {form}").format(form=form)
    return _("Worksheet for {form}, page {page} of {last}").format(form=form, page=page, last=pages)


def _purpose(page: int | None, *, private: bool) -> str:
    if private:
        return _("Private: keep it apart. Copy it onto the blank form.")
    if page is None:
        return _("Copy it onto the blank form.")
    return _("Copy it onto page {page} of the blank form.").format(page=page)


def _cautions(form: FilledForm, on: date) -> Iterator[str]:
    """What to look at before trusting the sheet, and how to use it."""
    edition = form.edition
    if edition.may_be_replaced(on) and edition.watch:
        made_for = _("This sheet is made for the {form} that says “{edition}” in its lower left corner.")
        newest = _("Take the newest one from the court's website. If it has another date, go by the words.")
        if edition.printed:
            yield made_for.format(form=form.form, edition=edition.printed)
        yield f"{_(edition.watch.why)} {newest}"
    elif edition.printed:
        look = _("Look at the lower left corner of your blank {form}. It should say “{edition}”.")
        yield f"{look.format(form=form.form, edition=edition.printed)} {_other_date(edition)}"
    if edition.caution:
        yield _(edition.caution)
    if form.private:
        yield _("This form is private. Keep it apart from the papers that the other side gets.")
    if form.form == PETITION:
        yield _("Do just what each line says. Tick the small box when you have copied it.")


def _other_date(edition: Edition) -> str:
    if edition.numbered:
        return _("If it shows another date, do not trust the item numbers here. Ask the self-help center.")
    return _("If it shows another date, ask the self-help center.")


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
    return (kind, answer.because) if kind in SHARED else (answer.concept,)


def _kind(answer: ItemAnswer) -> str:
    if answer.action is Action.BLANK and answer.kind == "statement":
        return "printed"
    if answer.action is Action.BLANK and answer.open_key:
        return "open"
    return answer.action.value


def _places(group: tuple[ItemAnswer, ...]) -> str:
    found = tuple(dict.fromkeys(filter(None, map(_place, group))))
    if len(found) > MOST_NAMED:
        return _("{first} to {last}").format(first=found[0], last=found[-1])
    return ", ".join(found)


def _place(answer: ItemAnswer) -> str:
    """The number of the item; in brackets the one it had before, where the number of today is not known."""
    return answer.item or (f"({answer.was})" if answer.was else "")


def _row(group: tuple[ItemAnswer, ...]) -> Row:
    first = group[0]
    return Row(
        kind=_kind(first),
        place=_places(group),
        labels=tuple(answer.label for answer in group),
        lines=tuple(first.value.splitlines()),
        because=first.because,
        authority="; ".join(dict.fromkeys(answer.authority for answer in group if answer.authority)),
        continues=first.continues,
        note=first.note,
    )
