"""The petition, form FL-100: every answer placed on the edition that a filing day calls for."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, ItemAnswer
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm
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
from firstpaper.forms.placing import placed

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


def petition(case: Case, on: date) -> tuple[ItemAnswer, ...]:
    """What to do with every item of FL-100 for a filing on the day `on`, in printed order.

    `case` holds standing facts. Raises NoEditionError where no edition is known for the day.
    """
    return placed(edition_for(FORM, on), tuple(_answers(case, on)))


def petition_form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The petition as a form to fill in."""
    return (FilledForm(edition_for(FORM, on), petition(case, on)),)


def _answers(case: Case, on: date) -> Iterator[Answer]:
    for part in PARTS:
        yield from part.answers(case, on)
