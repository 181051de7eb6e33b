"""The explanations of a form, read whole and held to its edition, the rules, the questions and the law."""

import re
from collections import Counter
from collections.abc import Iterator
from datetime import date
from functools import cache
from pathlib import Path

from firstpaper.data_files import Place
from firstpaper.forms.edition import Item, editions, slug
from firstpaper.forms.explanation import EXPLAINED, FIGURE, Explanation, figure_words, load_explanation
from firstpaper.intake.events import events
from firstpaper.intake.loading import bank, listing
from firstpaper.law.citation import CitationError
from firstpaper.law.figure import UnknownFigureError
from firstpaper.law.figure_file import FigureNotInForce
from firstpaper.law.register import is_rule
from firstpaper.law.source import cited


@cache
def explanations(form: str) -> tuple[Explanation, ...]:
    """Every explanation of a form in printed order.

    Raises DataFileError naming the file for a name that stands nowhere, and the concepts that stand in no
    file or in two.
    """
    found = tuple(load_explanation(path, form) for path in paths(form))
    for path, each in zip(paths(form), found, strict=True):
        for problem in unknown_names(each):
            raise Place(f"{path.parent.name}/{path.name}").error(problem)
    spoken_of = Counter(concept for each in found for concept in concepts_of(each))
    for concept, times in spoken_of.items():
        if times > 1:
            raise Place(slug(form)).error(f"{concept} is explained in {times} files")
    if missing := [item.concept for item in _items(form) if item.concept not in spoken_of]:
        raise Place(slug(form)).error(f"explained in no file: {', '.join(missing)}")
    return found


def paths(form: str) -> tuple[Path, ...]:
    """The files of a form, in printed order."""
    return tuple(sorted((EXPLAINED / slug(form)).glob("*.yaml")))


def concepts_of(explained: Explanation) -> tuple[str, ...]:
    """Every concept that an explanation speaks of, each row of a table by itself."""
    return tuple(item.concept for item in _items(explained.form) if speaks_of(explained, item))


def speaks_of(explained: Explanation, item: Item) -> bool:
    """Whether the explanation is of this item; a `*` in it stands for the number of the row."""
    return any(name.replace("*", str(item.row)) == item.concept for name in explained.concepts)


def unknown_names(explained: Explanation) -> Iterator[str]:
    """What an explanation names that is nowhere: concepts, rules, questions, citations and figures."""
    known = {name for item in _items(explained.form) for name in _names(item)}
    yield from (f"{explained.form} has no {each}" for each in explained.concepts if each not in known)
    yield from (f"there is no rule {each}" for each in explained.rules if not is_rule(each))
    yield from (f"there is no question {each}" for each in explained.questions if each not in _questions())
    yield from _unknown_law(explained)
    yield from _unknown_figures(explained)


def _names(item: Item) -> Iterator[str]:
    yield item.concept
    if item.row:
        yield re.sub(rf"\.{item.row}(?=\.|$)", ".*", item.concept, count=1)


def _unknown_law(explained: Explanation) -> Iterator[str]:
    for source in explained.sources:
        try:
            cited(source)
        except CitationError as unknown:
            yield str(unknown)


def _unknown_figures(explained: Explanation) -> Iterator[str]:
    for name in (name for text in explained.words for name in FIGURE.findall(text)):
        try:
            figure_words(name, date.max)
        except UnknownFigureError as unknown:
            yield str(unknown)
        except FigureNotInForce:
            continue


@cache
def _items(form: str) -> tuple[Item, ...]:
    """The items of every edition of a form, each concept once."""
    return tuple({item.concept: item for edition in editions(form) for item in edition.items}.values())


@cache
def _questions() -> frozenset[str]:
    topics = (*bank().topics, *listing().topics, *events().topics)
    return frozenset(question.key for topic in topics for question in topic.questions)
