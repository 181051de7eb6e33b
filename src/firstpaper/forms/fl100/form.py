"""FL-100, the petition: its parts in printed order."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.fl100 import (
    FORM,
    caption,
    child_support,
    children,
    community_property,
    custody,
    grounds,
    other_requests,
    partner_support,
    relationship,
    residence,
    separate_property,
    signing,
    statistics,
)

PARTS = (
    caption,
    relationship,
    residence,
    statistics,
    children,
    grounds,
    custody,
    child_support,
    partner_support,
    separate_property,
    community_property,
    other_requests,
    signing,
)


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The petition for a filing on the day `on`. Raises NoEditionError where no edition is known for it."""
    return (filled(edition_for(FORM, on), tuple(_answers(case, on))),)


def _answers(case: Case, on: date) -> Iterator[Answer]:
    for part in PARTS:
        yield from part.answers(case, on)
