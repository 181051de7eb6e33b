"""The petition, form FL-100: every answer placed on the edition that a filing day calls for."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, ItemAnswer
from firstpaper.forms.edition import Edition, Item, edition_for
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
from firstpaper.locale import _

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


class MisplacedError(ValueError):
    """The answers and the edition do not cover the same concepts, each exactly once."""


def petition(case: Case, on: date) -> tuple[ItemAnswer, ...]:
    """What to do with every item of FL-100 for a filing on the day `on`, in printed order.

    `case` holds standing facts. Raises NoEditionError where no edition is known for the day.
    """
    return placed(edition_for(FORM, on), tuple(_answers(case, on)))


def placed(edition: Edition, answers: tuple[Answer, ...]) -> tuple[ItemAnswer, ...]:
    """The answers on the items of the edition; MisplacedError names what is missing, unknown or double."""
    by_concept = {answer.concept: answer for answer in answers}
    _refuse_misplaced(edition, Counter(answer.concept for answer in answers))
    return tuple(_on_item(edition, item, by_concept[item.concept]) for item in edition.items)


def _answers(case: Case, on: date) -> Iterator[Answer]:
    for part in PARTS:
        yield from part.answers(case, on)


def _refuse_misplaced(edition: Edition, answered: Counter[str]) -> None:
    printed = {item.concept for item in edition.items}
    problems = {
        "not answered": printed - answered.keys(),
        "not on this edition": answered.keys() - printed,
        "answered twice": {concept for concept, times in answered.items() if times > 1},
    }
    told = [f"{problem}: {', '.join(sorted(concepts))}" for problem, concepts in problems.items() if concepts]
    if told:
        raise MisplacedError(f"{edition.form} of {edition.edition}: {'; '.join(told)}")


def _on_item(edition: Edition, item: Item, answer: Answer) -> ItemAnswer:
    answer = _said_if_too_long(item, answer)
    return ItemAnswer(
        form=edition.form,
        edition=edition.printed,
        page=item.page,
        item=item.item,
        concept=item.concept,
        label=item.words,
        action=answer.action,
        value=answer.value,
        because=answer.because,
        authority=answer.authority,
        continues=answer.continues,
        open_key=answer.open_key,
        part=_(item.part),
        kind=item.kind,
        note=_(item.note),
        confirmed=item.confirmed,
    )


def _said_if_too_long(item: Item, answer: Answer) -> Answer:
    """A name or an address that is longer than its line: nothing is cut off, and the filer is told."""
    if item.holds(answer.value):
        return answer
    small = _("This is longer than the line. Write small, or go on in the space below. Leave nothing out.")
    return replace(answer, because=f"{answer.because} {small}")
