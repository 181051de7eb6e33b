"""Words a person sees, in their language.

Every string shown to a person passes through `_`, so that a translation is a catalog and never a change of
code. The language is a context, not the process's: inside `speaking("en")` English is spoken, whatever the
language around it, so that one packet holds sheets for two readers. Where nobody chose, FIRSTPAPER_LANG
does: the language of the computer may be the other spouse's. What is made inside one language is never
kept for another.
"""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from gettext import NullTranslations

from firstpaper.locale.catalogs import ENGLISH, catalog, offered

__all__ = [
    "ENGLISH",
    "_",
    "_c",
    "_n",
    "by_paragraph",
    "language",
    "offered",
    "paragraphs",
    "speak",
    "speaking",
    "tag",
]

_SPOKEN: ContextVar[str] = ContextVar("language")


@contextmanager
def speaking(language: str) -> Iterator[None]:
    """Whatever is said inside is said in that language."""
    before = _SPOKEN.set(language)
    try:
        yield
    finally:
        _SPOKEN.reset(before)


def speak(language: str) -> None:
    """Speak that language from here on, until the context ends or another is chosen."""
    _SPOKEN.set(language)


def language() -> str:
    """The language spoken, as its catalog is called: "en" or "es"."""
    return _SPOKEN.get(None) or _preset()


def tag(of: str | None = None) -> str:
    """The tag of a language for PDF and HTML, such as "es-US"; of the one spoken where none is named."""
    return catalog(of or language()).info().get("language", "en-US")


def _(words: str) -> str:
    """The words in the reader's language."""
    return _spoken().gettext(words) if words else ""


def _n(one: str, many: str, count: int) -> str:
    """The singular or plural words for `count`, in the reader's language."""
    return _spoken().ngettext(one, many, count)


def _c(context: str, words: str) -> str:
    """Words that mean two things, in the reader's language; `context` tells which, as in "short month"."""
    return _spoken().pgettext(context, words)


def noted(words: str) -> str:
    """Words kept as they stand in the code, for a table that `_` looks up where one of them is shown."""
    return words


def by_paragraph(words: str) -> str:
    """A text of several paragraphs in the reader's language: each is a message of its own, on one line."""
    return "\n\n".join(map(_, paragraphs(words)))


def paragraphs(words: str) -> Iterator[str]:
    """The paragraphs of a text, each on one line."""
    return (" ".join(each.split()) for each in words.split("\n\n"))


def _spoken() -> NullTranslations:
    return catalog(language())


@cache
def _preset() -> str:
    return os.environ.get("FIRSTPAPER_LANG") or ENGLISH
