"""The last day to say that a spouse is no parent of a child born in the marriage, for each such child."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.children import presumed_children
from firstpaper.law.measures.parentage import challenge_by


@deadline(
    "Last day to file and serve a paper that says that the other is no parent",
    rule="children.marital_presumption",
    cite="Fam. Code 7541(b)",
    if_missed="After that, the law most often holds to both as parents. Ask a lawyer.",
    neutral="last day for a paper",
)
def marital_presumption(case: Case, on: date) -> list[Dated]:
    """Two years from the birth; nothing once they are over, for nobody has to fight it."""
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Dated]:
    for child in presumed_children(case, on):
        due = challenge_by(case, child.born, on) if child.born else None
        if due and not due.missed(on):
            yield Dated(due, part=child.key, about=child.name or "")
