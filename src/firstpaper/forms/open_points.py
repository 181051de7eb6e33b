"""What is still open in a case: questions without an answer, and items that are not finished."""

from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.forms.answer import ItemAnswer
from firstpaper.forms.fl100.form import form as petition
from firstpaper.forms.open_answers import open_items
from firstpaper.intake import Asked, asked
from firstpaper.law.measures.record import judged_on
from firstpaper.law.measures.residence import needless_keys


class OpenPoints(NamedTuple):
    """Both, where nothing else makes the answer needless."""

    questions: tuple[Asked, ...]
    items: tuple[ItemAnswer, ...]


def open_points(case: Case, on: date, items: Sequence[ItemAnswer] | None = None) -> OpenPoints:
    """What is open in a standing case for a filing on the day `on`.

    `items` are those of its petition, where they were worked out already.
    """
    judged = judged_on(case, on)
    needless = needless_keys(case, judged)
    questions = (one for one in asked(case) if case.fact(one.key) is None and one.key not in needless)
    if items is None:
        items = petition(case, judged)[0].items
    return OpenPoints(tuple(questions), tuple(open_items(items, needless)))
