"""Words a person sees, in their language.

Every string shown to a person passes through `_`, so that a translation is a catalog and never a change of
code. The language is a context, not the process's: inside `speaking("en")` English is spoken, whatever the
language around it, so that one packet holds sheets for two readers. Where nobody chose, FIRSTPAPER_LANG
does: the language of the computer may be the other spouse's. What is made inside one language is never
kept for another.
"""

import os
import re
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from gettext import NullTranslations

from firstpaper.locale.catalogs import ENGLISH, catalog, offered

__all__ = [
    "ENGLISH",
    "RUN_ENDS",
    "RUN_STARTS",
    "_",
    "_c",
    "_n",
    "beside",
    "by_paragraph",
    "english",
    "language",
    "noted",
    "offered",
    "paragraphs",
    "printed_and_meaning",
    "speak",
    "speaking",
    "tag",
    "unmarked",
    "with_meaning",
]

RUN_STARTS, RUN_ENDS = "\u2068", "\u2069"
_BESIDE = rf"{RUN_STARTS}([^{RUN_ENDS}]*){RUN_ENDS}(?: \((.*)\))?"
_NO_MARKS = {ord(RUN_STARTS): None, ord(RUN_ENDS): None}
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


def english(words: str) -> str:
    """Words that are English in every language, marked where another one is spoken.

    The marks are those that Unicode has for a run of text by itself. Sheets turn them into the language of
    the run; wherever else words are shown, they fall away as letters that do not print.
    """
    return words if language() == ENGLISH or not words else f"{RUN_STARTS}{words}{RUN_ENDS}"


def beside(words: str, **filled: object) -> str:
    """Words that are printed in English on a form, with what they mean in the reader's language beside."""
    return with_meaning(words.format(**filled), _(words).format(**filled))


def with_meaning(printed: str, meaning: str) -> str:
    """English words with their meaning in brackets, where that says more."""
    return english(printed) if meaning in ("", printed) else f"{english(printed)} ({meaning})"


def printed_and_meaning(words: str) -> tuple[str, str]:
    """What `with_meaning` put together: the English words, and their meaning or nothing."""
    found = re.fullmatch(_BESIDE, words)
    return (found[1], found[2] or "") if found else (words, "")


def unmarked(words: str) -> str:
    """The words without the marks around what is English in them."""
    return words.translate(_NO_MARKS)


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
