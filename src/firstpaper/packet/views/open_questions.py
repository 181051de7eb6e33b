"""The questions still open, so that they can be answered away from the computer."""

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import NamedTuple

from firstpaper.facts import DontKnow
from firstpaper.forms.answer import ItemAnswer
from firstpaper.forms.open_answers import item_numbers
from firstpaper.intake import Asked
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet


class Open(NamedTuple):
    """One open question: its words, why it matters, and whether "I don't know" was answered."""

    ask: str
    why: str
    unknown: bool


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The sheet of open questions and items; none where nothing is open."""
    if not brief.open_questions and not brief.open_items:
        return
    topics = tuple(
        (_(topic.title), tuple(_open(brief, one) for one in group))
        for topic, group in groupby(brief.open_questions, key=lambda one: one.topic)
    )
    yield Sheet(
        template="open-questions.html",
        title=_("Questions still open"),
        running=_("Questions still open"),
        purpose=_("Write the answers here, then type them in with “change”."),
        follows=True,
        values={
            "topics": topics,
            "count": len(brief.open_questions),
            "wait": bool(brief.unfinished),
            "items": tuple(_alike(brief.open_items)),
        },
    )


def _alike(items: Sequence[ItemAnswer]) -> Iterator[tuple[str, str]]:
    """Items that wait for the same, by what they are called together, with what they wait for."""
    by_reason: dict[str, list[ItemAnswer]] = {}
    for item in items:
        by_reason.setdefault(item.because, []).append(item)
    for because, alike in by_reason.items():
        yield _names(alike), because


def _names(alike: Sequence[ItemAnswer]) -> str:
    """What items are called together, by form: their numbers, with the labels where there is only one."""
    by_form = groupby(alike, key=lambda one: one.form)
    return "; ".join(f"{form}: {_on_one(tuple(items))}" for form, items in by_form)


def _on_one(items: Sequence[ItemAnswer]) -> str:
    if len({one.number for one in items}) > 1 or not items[0].number:
        return item_numbers(items)
    return f"{items[0].number} {'; '.join(dict.fromkeys(one.label for one in items))}"


def _open(brief: Brief, one: Asked) -> Open:
    unknown = isinstance(brief.case.fact(one.key), DontKnow)
    return Open(ask=one.ask, why=one.why, unknown=unknown)
