"""What an amended petition says differently from the one it replaces, item by item and page by page."""

from collections.abc import Iterable, Iterator
from enum import StrEnum
from typing import NamedTuple

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.pages import Attachment


class PageChange(StrEnum):
    """How a page behind the petition differs."""

    NEW = "new"
    GONE = "gone"
    CHANGED = "changed"


class Changed(NamedTuple):
    """One item whose answer is not the same as before."""

    before: ItemAnswer
    now: ItemAnswer


class ChangedPage(NamedTuple):
    """One page behind the petition that is not the same as before."""

    label: str
    how: PageChange


def changed_items(before: Iterable[ItemAnswer], now: Iterable[ItemAnswer]) -> tuple[Changed, ...]:
    """The items of both petitions whose answers differ, in printed order.

    What is asked for counts, and not the reason given for it. An item that one edition alone has is left
    out, for there is nothing to hold it against.
    """
    earlier = {answer.concept: answer for answer in before}
    return tuple(
        Changed(earlier[answer.concept], answer)
        for answer in now
        if answer.concept in earlier and _said(answer) != _said(earlier[answer.concept])
    )


def changed_pages(before: Iterable[Attachment], now: Iterable[Attachment]) -> tuple[ChangedPage, ...]:
    """The pages that came, went or changed, in the order of the new petition, those that went last."""
    return tuple(_pages({page.label: page for page in before}, {page.label: page for page in now}))


def _pages(before: dict[str, Attachment], now: dict[str, Attachment]) -> Iterator[ChangedPage]:
    for label, page in now.items():
        if label not in before:
            yield ChangedPage(label, PageChange.NEW)
        elif _content(page) != _content(before[label]):
            yield ChangedPage(label, PageChange.CHANGED)
    yield from (ChangedPage(label, PageChange.GONE) for label in before if label not in now)


def _said(answer: ItemAnswer) -> tuple[Action, str]:
    """What stands on the sheet: an open item is empty like one left empty."""
    return answer.action, answer.value


def _content(page: Attachment) -> tuple[object, ...]:
    return page.paragraphs, page.columns, page.rows
