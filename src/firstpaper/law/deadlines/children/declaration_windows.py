"""The last day to take back a declaration of parentage, for each child."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.children import listed_children
from firstpaper.law.measures.parentage import windows_of
from firstpaper.law.words import child_words


@deadline(
    "Last day to take back a declaration of parentage",
    rule="children.declaration_windows",
    cite="Fam. Code 7575(a)",
    if_missed="After that, only a judge can set it aside, and only for a cause.",
    neutral="last day for a form",
)
def declaration_windows(case: Case, on: date) -> list[Dated]:
    """Sixty days from the later signature; nothing once they are over, for nobody has to take it back."""
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Dated]:
    for child in listed_children(case, on):
        windows = windows_of(case, child, on)
        if windows and not windows.rescind_by.missed(on):
            yield Dated(windows.rescind_by, part=child.key, about=child_words(child.number, child.name))
