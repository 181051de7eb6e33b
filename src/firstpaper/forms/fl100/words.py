"""Lines for the filer's own words: on the sheet where they fit, else on a page behind it."""

from collections.abc import Iterator

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, mark, write
from firstpaper.forms.edition import Item
from firstpaper.forms.pages import Attachment, attachment, see
from firstpaper.locale import _


def page_of_words(case: Case, item: str, title: str, words: str | None, line: Item) -> Attachment | None:
    """The page that takes the words, where they do not fit on the line of the sheet."""
    if not words or line.holds(words):
        return None
    asks = f"Petitioner asks the court for the following, in addition to what is marked in item {item[:-1]}:"
    return attachment(case, item, title, (asks, *paragraphs(words)))


def line_of_words(box: str, concept: str, words: str, page: Attachment | None) -> Iterator[Answer]:
    """The box, and its line: the words themselves, or where to find them."""
    label = page.label if page else ""
    yield mark(box, _("You want to add something in your own words."), continues=label)
    if page:
        too_long = _("Your words are too long for the line. They are on {label}.").format(label=label)
        yield write(concept, see(page), too_long, _("common practice"), continues=label)
    else:
        yield write(concept, words, _("Your own words. They fit on the line."))


def paragraphs(words: str) -> tuple[str, ...]:
    """Typed text as paragraphs, without empty ones."""
    return tuple(line.strip() for line in words.splitlines() if line.strip())
