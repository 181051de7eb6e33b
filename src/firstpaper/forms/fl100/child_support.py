"""Item 7: child support. Three printed sentences, and one line for other words."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.forms.answer import Answer, blank
from firstpaper.forms.fl100.places import space
from firstpaper.forms.fl100.words import line_of_words, page_of_words
from firstpaper.forms.open_answers import still_open
from firstpaper.forms.pages import Attachment
from firstpaper.forms.saying import not_asked
from firstpaper.law.measures.children import concerns_children
from firstpaper.locale import _

BOX, WORDS = "support.child.other", "support.child.other.words"


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 7a to 7d."""
    yield blank(
        "support.child.request",
        _("Nothing to mark. The judge can order child support wherever there are children of both."),
        "Fam. Code 4001",
    )
    yield blank(
        "support.child.assignment",
        _("Nothing to mark. Child support is most often taken straight out of the pay."),
        "Fam. Code 5230(a)",
    )
    yield blank(
        "support.child.interest",
        _("Nothing to mark. Support that is paid late costs interest."),
        "Code Civ. Proc. 685.010(a)",
    )
    yield from _other(case, on)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The other words, where they are longer than the line."""
    if not concerns_children(case, on):
        return None
    return page_of_words(case, "7d", "Child support", known(case.support.child_other), space(WORDS, on))


def _other(case: Case, on: date) -> Iterator[Answer]:
    concerned = concerns_children(case, on)
    if concerned is None:
        yield from (still_open(case, concept, "children.family") for concept in (BOX, WORDS))
    elif not concerned:
        none = _("There is no child under 18 of both of you, born or on the way.")
        yield from (blank(concept, none) for concept in (BOX, WORDS))
    elif known(case.support.child_other) is None:
        yield from (still_open(case, concept, "support.child_other") for concept in (BOX, WORDS))
    elif words := known(case.support.child_other):
        yield from line_of_words(BOX, WORDS, words, attachment_page(case, on))
    else:
        yield from (blank(concept, not_asked()) for concept in (BOX, WORDS))
