"""Placing answers on an edition of a form: each concept once, and nothing that is not on the sheet."""

from collections import Counter
from dataclasses import replace

from firstpaper.facts.text import in_latin_letters
from firstpaper.forms.answer import Action, Answer, ItemAnswer
from firstpaper.forms.edition import Edition, Item
from firstpaper.locale import _, english


class MisplacedError(ValueError):
    """The answers and the edition do not cover the same concepts, each exactly once."""


def placed(edition: Edition, answers: tuple[Answer, ...]) -> tuple[ItemAnswer, ...]:
    """The answers on the items of the edition; MisplacedError names what is missing, unknown or double."""
    by_concept = {answer.concept: answer for answer in answers}
    _refuse_misplaced(edition, answers)
    return tuple(_on_item(edition, item, by_concept[item.concept]) for item in edition.items)


def _fits_columns(edition: Edition, answer: Answer) -> bool:
    """Whether its rows have a cell for each column of the item, where the edition has it."""
    if not answer.cells:
        return True
    columns = next((len(item.columns) for item in edition.items if item.concept == answer.concept), None)
    return columns is None or all(len(row) == columns for row in answer.cells)


def _refuse_misplaced(edition: Edition, answers: tuple[Answer, ...]) -> None:
    answered = Counter(answer.concept for answer in answers)
    printed = {item.concept for item in edition.items}
    problems = {
        "not answered": printed - answered.keys(),
        "not on this edition": answered.keys() - printed,
        "answered twice": {concept for concept, times in answered.items() if times > 1},
        "not in the columns": {answer.concept for answer in answers if not _fits_columns(edition, answer)},
    }
    told = [f"{problem}: {', '.join(sorted(concepts))}" for problem, concepts in problems.items() if concepts]
    if told:
        raise MisplacedError(f"{edition.form} of {edition.edition}: {'; '.join(told)}")


def _on_item(edition: Edition, item: Item, answer: Answer) -> ItemAnswer:
    answer = _left_to_the_filer_if_not_latin(_said_if_too_long(item, answer))
    return ItemAnswer(
        form=edition.form,
        edition=edition.printed,
        page=item.page,
        item=item.item or "",
        was=item.was,
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
        columns=tuple(item.columns),
        cells=answer.cells,
        meaning=answer.meaning,
    )


def _left_to_the_filer_if_not_latin(answer: Answer) -> Answer:
    """Words in letters that the court does not read: the filer writes them, a name as a passport has it."""
    if in_latin_letters(answer.value):
        return answer
    words = _(
        "The court reads Latin letters. So write this in them, a name just as a passport or an ID card "
        "has it: {words}."
    ).format(words=english("; ".join(answer.value.splitlines())))
    return replace(answer, action=Action.FILL, value="", because=words, cells=(), meaning="")


def _said_if_too_long(item: Item, answer: Answer) -> Answer:
    """A name or an address that is longer than its line: nothing is cut off, and the filer is told."""
    if item.holds(answer.value):
        return answer
    small = _("This is longer than the line. Write small, or go on in the space below. Leave nothing out.")
    return replace(answer, because=f"{answer.because} {small}")
