"""What the Tab key offers: case files, the names of answers and their choices, events and their details.

Nothing here opens a case file: what Tab shows is on the screen of whoever looks on.
"""

from collections.abc import Iterable, Iterator
from enum import StrEnum
from pathlib import Path


class Shell(StrEnum):
    """The shells in which Tab can complete words."""

    BASH = "bash"
    ZSH = "zsh"
    FISH = "fish"


def answers(incomplete: str) -> list[str]:
    """Case files, topics and keys of answers; after a key and "=", the words to choose from."""
    from firstpaper.intake import bank

    key, is_value, begun = incomplete.partition("=")
    if is_value:
        return [f"{key}={value}" for value in _values(key) if value.startswith(begun)]
    names = (name for topic in bank().topics for name in (topic.name, *_keys(topic.name)))
    return [*_files(incomplete), *_beginning(names, incomplete)]


def events(incomplete: str) -> list[str]:
    """Case files, events, and the details of any event."""
    from firstpaper.intake.events import events as every

    topics = every().topics
    details = dict.fromkeys(
        f"{question.key.rpartition('.')[2]}=" for topic in topics for question in topic.questions
    )
    names = (*(topic.name for topic in topics), "day=", *details)
    return [*_files(incomplete), *_beginning(names, incomplete)]


def listing(incomplete: str) -> list[str]:
    """Case files, what can be done with the list, and the names of what can be told."""
    from firstpaper.intake.tables import columns

    names = dict.fromkeys(f"{name}=" for group in ("asset", "debt") for name in columns(group))
    words = ("add", "change", "remove", "set", "asset", "debt", *names)
    return [*_files(incomplete), *_beginning(words, incomplete)]


def pages(incomplete: str) -> list[str]:
    """Items of the petition, topics of the forms, rules, and keys of answers."""
    from firstpaper.forms.explained_names import names
    from firstpaper.intake import bank
    from firstpaper.law.register import all_rules

    keys = (key for topic in bank().topics for key in _keys(topic.name))
    return _beginning(dict.fromkeys([*names(), *all_rules(), *keys]), incomplete)


def guides(incomplete: str) -> list[str]:
    """The forms that are explained line by line, and the word for the road after the filing."""
    from firstpaper.forms.explained_names import forms_explained

    return [name for name in (*forms_explained(), "after") if name.lower().startswith(incomplete.lower())]


def topics(incomplete: str) -> list[str]:
    """The names of the topics."""
    from firstpaper.intake import bank

    return [topic.name for topic in bank().topics if topic.name.startswith(incomplete.lower())]


def stages(incomplete: str) -> list[str]:
    """The stages of a case."""
    from firstpaper.cli.files.shelf import Stage

    return [stage for stage in Stage if stage.startswith(incomplete.lower())]


def _keys(topic: str) -> Iterator[str]:
    from firstpaper.intake import bank

    found = next(one for one in bank().topics if one.name == topic)
    yield from (question.key.replace("*", "1") for question in found.questions)


def _values(key: str) -> Iterator[str]:
    from firstpaper.facts import Case
    from firstpaper.intake import AnswerKind, asking

    try:
        asked = asking(key, Case.nothing())
    except KeyError:
        return
    if asked is None:
        return
    yield from (choice.value for choice in asked.choices)
    if asked.kind is AnswerKind.YES_NO:
        yield from ("yes", "no")


def _files(incomplete: str) -> Iterator[str]:
    """The case files and folders that begin so."""
    from glob import escape

    typed = Path(incomplete)
    folder = typed if incomplete.endswith("/") else typed.parent
    start = "" if incomplete.endswith("/") else typed.name
    try:
        for path in sorted(folder.glob(f"{escape(start)}*")):
            if path.suffix == ".case":
                yield str(path)
            elif path.is_dir() and not path.name.endswith(".copies"):
                yield f"{path}/"
    except OSError:
        return


def _beginning(names: Iterable[str], incomplete: str) -> list[str]:
    return [name for name in names if incomplete and name.startswith(incomplete.lower())]
