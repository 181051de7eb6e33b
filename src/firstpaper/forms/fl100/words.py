"""Lines for the filer's own words: on the sheet where they fit, else on a page behind it."""

from collections.abc import Iterator

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, mark, write
from firstpaper.forms.edition import Item
from firstpaper.forms.filed_words import meaning
from firstpaper.forms.pages import Attachment, attachment, see
from firstpaper.locale import _


def page_of_words(case: Case, item: str, title: str, words: str | None, line: Item) -> Attachment | None:
    """The page that takes the words, where they do not fit on the line of the sheet."""
    if not words or line.holds(words):
        return None
    asks = f"Petitioner asks the court for the following, in addition to what is marked in item {item[:-1]}:"
    return attachment(case, item, title, (asks, *paragraphs(words)))


def line_of_words(
    box: str, concept: str, words: str, page: Attachment | None, *, ours: bool = False, says: str = ""
) -> Iterator[Answer]:
    """The box, and its line: the words themselves, or where to find them. `ours` were put by us.

    `says` is what they mean, where that is not plain to the reader.
    """
    label = page.label if page else ""
    own = _("You want to add something in your own words.")
    yield mark(box, _("You ask for more than the boxes say.") if ours else own, continues=label)
    if page:
        too_long = _("The words are too long for the line. They are on {label}.").format(label=label)
        there = meaning(lambda: see(page))
        told = "\n".join((there, says)) if says else there
        yield write(concept, see(page), too_long, _("common practice"), continues=label, meaning=told)
    else:
        fits = _("It asks for what you told us of.") if ours else _("Your own words. They fit on the line.")
        yield write(concept, words, fits, meaning=says)


def paragraphs(words: str) -> tuple[str, ...]:
    """Typed text as paragraphs, without empty ones."""
    return tuple(line.strip() for line in words.splitlines() if line.strip())
