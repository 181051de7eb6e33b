"""Worksheets: what to do with every item of FL-100, page by page."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet
from firstpaper.locale import _


@dataclass(frozen=True, slots=True)
class Row:
    """One line of a worksheet: one item, or neighbouring items left blank for the same reason."""

    items: tuple[str, ...]
    labels: tuple[str, ...]
    action: Action
    value: str
    because: str
    authority: str
    continues: str

    @property
    def place(self) -> str:
        """Where on the form: the item numbers, each once, in order."""
        return ", ".join(dict.fromkeys(item for item in self.items if item))


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One worksheet for each page of the petition."""
    pages = groupby(brief.items, key=lambda answer: answer.page)
    last = max((answer.page for answer in brief.items), default=0)
    for page, answers in pages:
        found = tuple(answers)
        first = found[0]
        title = _("Worksheet for {form}, page {page} of {last}").format(form=first.form, page=page, last=last)
        yield Sheet(
            template="worksheet.html",
            title=title,
            running=title,
            purpose=_("Copy from this sheet onto page {page} of the blank form.").format(page=page),
            values={
                "title": title,
                "form": first.form,
                "edition": first.edition,
                "page": page,
                "rows": rows(found),
                "first_page": page == 1,
            },
        )


def rows(answers: tuple[ItemAnswer, ...]) -> tuple[Row, ...]:
    """The lines of a worksheet. Neighbours that stay blank for one reason share a line."""
    return tuple(_row(tuple(group)) for _key, group in groupby(answers, key=_shared))


def _shared(answer: ItemAnswer) -> tuple[str, str]:
    return ("", answer.because) if answer.action is Action.BLANK else (answer.concept, "")


def _row(group: tuple[ItemAnswer, ...]) -> Row:
    first = group[0]
    return Row(
        items=tuple(answer.item for answer in group),
        labels=tuple(answer.label for answer in group),
        action=first.action,
        value=first.value,
        because=first.because,
        authority=first.authority,
        continues=first.continues,
    )
