"""FL-105, the custody declaration, and an added page FL-105(A) for each child it has no room for."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.forms.answer import Answer
from firstpaper.forms.caption_box import only_names
from firstpaper.forms.edition import edition_for, is_known
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.fl105 import ADDED_PAGE, FORM, cases, children, party, signing
from firstpaper.forms.fl105.homes import printed_rows
from firstpaper.forms.pages import Attachment
from firstpaper.law.measures.children import ListedChild, listed_children
from firstpaper.locale import _

PARTS = (party, children, cases, signing)


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The form and its added pages, where the filer wants to fill them in now and a child is described."""
    return tuple(_each(case, on)) if wanted(case, on) else ()


def wanted(case: Case, on: date) -> bool:
    """Whether the filer wants it now, for a child who is listed on a day for which we know the sheet."""
    return known(case.uccjea.now) is True and bool(listed_children(case, on)) and is_known(FORM, on)


def attachment_pages(case: Case, on: date) -> tuple[Attachment, ...]:
    """The pages that go behind the declaration."""
    if not wanted(case, on):
        return ()
    page = children.attachment_page(case, on)
    return (*((page,) if page else ()), *cases.attachment_pages(case, on))


def _each(case: Case, on: date) -> Iterator[FilledForm]:
    answers = tuple(answer for part in PARTS for answer in part.answers(case, on))
    yield filled(edition_for(FORM, on), answers)
    listed = listed_children(case, on)
    for child in listed[len(children.LETTERS) :]:
        use = child.name or _("child number {number}").format(number=child.number)
        yield filled(edition_for(ADDED_PAGE, on), tuple(_added_page(case, child, listed[0], on)), use=use)


def _added_page(case: Case, child: ListedChild, first: ListedChild, on: date) -> Iterator[Answer]:
    yield from only_names(case)
    block = children.Block("child", printed_rows(ADDED_PAGE, on), first)
    yield from block.answers(case, child, on)
