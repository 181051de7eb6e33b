"""The amended petition: what it changes against the earlier one, and what must be served again."""

from collections.abc import Iterator
from itertools import groupby
from typing import NamedTuple

from firstpaper.forms.amending import Changed, PageChange, changed_items, changed_pages
from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.forms.when import has_a_minor_child
from firstpaper.law.figure import figure
from firstpaper.law.measures.record import answered_first
from firstpaper.law.measures.service import goes_as_a_later_paper, notice_may_go_by_mail
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

REPEATED = ("head2.", "head3.")
"""The tops of pages 2 and 3, which only say the caption again."""


class Line(NamedTuple):
    """One changed item: where it stands, what it is, and what it said and says."""

    place: str
    label: str
    before: str
    now: str


class Part(NamedTuple):
    """The changed items under one heading of the form."""

    title: str
    lines: tuple[Line, ...]


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The sheet of changes, where an earlier petition was named to hold this one against."""
    if brief.earlier is None:
        return
    changed = changed_items(brief.earlier.items, brief.items)
    items = tuple(one for one in changed if not one.now.concept.startswith(REPEATED))
    yield Sheet(
        template="amended.html",
        title=_("What changes in the amended petition"),
        running=_("What changes in the amended petition"),
        purpose=_("It shows what is new, and what must be served again. Do not file it."),
        follows=True,
        values={
            "parts": tuple(_parts(items)),
            "pages": tuple(_pages(brief)),
            "filed": brief.earlier.filed_on,
            "children": has_a_minor_child(brief.case, brief.on),
            "answered": answered_first(brief.case, brief.on),
            "as_later_paper": goes_as_a_later_paper(brief.case, brief.on),
            "by_mail": notice_may_go_by_mail(brief.case, brief.on),
            "response_days": figure("response.days", brief.on).value,
        },
    )


def _parts(items: tuple[Changed, ...]) -> Iterator[Part]:
    for title, group in groupby(items, key=lambda one: one.now.part):
        yield Part(title, tuple(_line(one) for one in group))


def _line(one: Changed) -> Line:
    return Line(one.now.place, one.now.label, _said(one.before), _said(one.now))


def _said(answer: ItemAnswer) -> str:
    words = {
        Action.MARK: _("marked"),
        Action.WRITE: answer.value,
        Action.BLANK: _("empty"),
        Action.SIGN: _("signed by hand"),
        Action.FILL: _("filled in by you"),
        Action.OTHERS: _("filled in by somebody else"),
    }
    return words[answer.action]


def _pages(brief: Brief) -> Iterator[str]:
    assert brief.earlier is not None
    how = {
        PageChange.NEW: _("{label} is new."),
        PageChange.GONE: _("{label} is gone."),
        PageChange.CHANGED: _("{label} has changed."),
    }
    behind = [page for page in brief.attachments if page.form == PETITION]
    for page in changed_pages(brief.earlier.attachments, behind):
        yield how[page.how].format(label=page.label)
