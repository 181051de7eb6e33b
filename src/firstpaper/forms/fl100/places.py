"""How much room the sheet has, and where a list of property stands: FL-160, a page, or its lines."""

from collections.abc import Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.forms.answer import Answer, blank, mark
from firstpaper.forms.edition import Item, edition_for
from firstpaper.forms.fl100 import FORM
from firstpaper.forms.pages import Attachment
from firstpaper.locale import _


def space(concept: str, on: date) -> Item:
    """The space that the edition for a filing on that day gives a concept."""
    return edition_for(FORM, on).item(concept)


class Places(NamedTuple):
    """The boxes of one class of property, and the FL-160 that belongs to it alone."""

    fl_160: str
    attachment: str
    listed: str
    rows: str
    sheet: str
    authority: str

    @property
    def all(self) -> tuple[str, ...]:
        """The concepts in printed order."""
        return (self.fl_160, self.attachment, self.listed, self.rows)

    def marked(self, page: Attachment | None, rows: Answer | None) -> Iterator[Answer]:
        """The boxes for a list on `page`, on the lines (`rows`), or without either on form FL-160."""
        elsewhere = _("You are listing these in another box.")
        if page is None and rows is None:
            form = _("You chose to list it on form FL-160. Use one FL-160 for this class of property alone.")
            yield mark(self.fl_160, form, self.authority, continues=_(self.sheet))
        else:
            yield blank(self.fl_160, elsewhere)
        if page:
            too_long = _("Your list is too long for the lines. It is on {label}.").format(label=page.label)
            yield mark(self.attachment, too_long, self.authority, continues=page.label)
        else:
            yield blank(self.attachment, elsewhere)
        if rows and page is None:
            yield mark(self.listed, _("Your list fits on the lines."), self.authority)
            yield rows
        else:
            yield from (blank(concept, elsewhere) for concept in (self.listed, self.rows))
