"""What the other side gets: one list, which the envelope, the proof of service and the cover all read."""

from collections.abc import Iterable, Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.forms.attachments import attachments
from firstpaper.forms.needed import FormNeeded, Goes, forms_needed
from firstpaper.forms.pages import Attachment


class Served(NamedTuple):
    """One paper in the envelope: a copy of what was filed, or a `blank` form to answer with.

    `form` is its number, empty for a paper that has none, and `only_if` the case in which it is there.
    """

    name: str
    form: str
    blank: bool
    only_if: str = ""


def served(needed: Iterable[FormNeeded], pages: Iterable[Attachment]) -> tuple[Served, ...]:
    """Everything in the envelope with the first papers: first the copies, then the blank forms."""
    first = tuple(form for form in needed if not form.later)
    copies = (Served(form.label, form.form, False, form.only_if) for form in first if form.copy_served)
    ours = (Served(page.label, "", False) for page in pages)
    blanks = (Served(form.form, form.form, True, form.only_if) for form in first if form.goes is Goes.SERVE)
    return (*copies, *ours, *blanks)


def served_filled_and_blank(case: Case, on: date) -> frozenset[str]:
    """The numbers of the forms that surely go along twice: a copy as filed, and a blank one."""
    papers = served(forms_needed(case, on), attachments(case, on))
    return frozenset(_twice(tuple(paper for paper in papers if not paper.only_if)))


def _twice(papers: tuple[Served, ...]) -> Iterator[str]:
    filed = {paper.form for paper in papers if not paper.blank}
    return (paper.form for paper in papers if paper.blank and paper.form in filed)
